/** The parts of the day that come after the first answer. */

import { effect, type Signal, signal } from '@preact/signals';
import { loadPart, loadVariation, type Part, type Parts, present } from '../core';
import { answerStands } from './documents/inUse';
import { sortie, sortieMinute } from './record/sortie';

type PartSignals = { readonly [Name in keyof Parts]: Signal<Part<Parts[Name]>> };

/** Each part, or its state. */
export const parts: PartSignals = {
  reports: signal<Part<Parts['reports']>>('loading'),
  physics: signal<Part<Parts['physics']>>('loading'),
  taxi: signal<Part<Parts['taxi']>>('loading'),
  sun: signal<Part<Parts['sun']>>('loading'),
  variation: signal<Part<Parts['variation']>>('loading'),
};

/** Loads a part. Retries every minute on failure, as the network may have returned. */
function take<T extends object>(part: Signal<Part<T>>, load: () => Promise<T>): void {
  let isAsked = false;
  effect(() => {
    void sortieMinute.value;
    if (isAsked || present(part.peek()) !== null) return;
    isAsked = true;
    load()
      .then(
        (loaded) => {
          part.value = loaded;
        },
        () => {
          part.value = 'failed';
        },
      )
      .finally(() => {
        isAsked = false;
      });
  });
}

/** Loads the magnetic model when first needed, and whenever the sortie's date needs another one. */
export function followDate(): void {
  effect(() => {
    const { inputs, winds } = sortie.value;
    const isTrue = inputs.typedNorth === 'true' && winds.at(-1)?.north !== 'magnetic';
    if (!answerStands.value && isTrue) return;
    const at = new Date(sortieMinute.value);
    const inHand = present(parts.variation.peek());
    if (inHand !== null && at >= inHand.from && at <= inHand.until) return;
    loadVariation(at).then(
      (model) => {
        parts.variation.value = model;
      },
      () => {
        // Outside the years of every model, or unavailable right now: retried next minute.
        parts.variation.value = 'failed';
      },
    );
  });
}

/** Loads everything that can wait for the first answer. */
export function loadParts(): void {
  answerStands.value = true;
  take(parts.sun, loadPart.sun);
  take(parts.reports, loadPart.reports);
  take(parts.physics, loadPart.physics);
  take(parts.taxi, loadPart.taxi);
}

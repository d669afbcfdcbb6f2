/** The board of a sortie: its day as signals, and the day as it would be with the typed wind. */

import { computed, type ReadonlySignal } from '@preact/signals';
import {
  type Day,
  type Documents,
  day,
  type Hash,
  northOf,
  type Part,
  type Parts,
  readEnteredWind,
  type Sortie,
  withWind,
} from '../core';
import { memo } from './signals';

type Signals<T> = { readonly [Name in keyof T]: ReadonlySignal<T[Name]> };

/** What a board is made for. Several can coexist: they share nothing but the parts. */
export interface BoardSources {
  readonly sortie: ReadonlySignal<Sortie>;
  readonly documents: Signals<Documents>;
  /** The code of any field, by its hash; null until it is loaded. */
  readonly fieldCode: (field: Hash) => string | null;
  /**
   * The sortie's own time at its last whole minute, and the device's clock at its last second, ms.
   */
  readonly minuteMs: ReadonlySignal<number>;
  readonly secondMs: ReadonlySignal<number>;
  readonly parts: Signals<{ readonly [Name in keyof Parts]: Part<Parts[Name]> }>;
  /** What is typed of a wind but not set yet. */
  readonly draft: ReadonlySignal<string>;
  /** Whether the north that a spoken text has by itself was turned. */
  readonly turned: ReadonlySignal<boolean>;
}

export interface Board {
  readonly day: Day;
  /**
   * The day with the typed wind in use; while nothing is typed, the day as it is. `read` is what is
   * typed, even where it is a forecast and another wind stays in use.
   */
  readonly typed: Pick<Day, 'read' | 'wind' | 'windIsForecast' | 'expects'>;
}

/** Makes a board. */
export function boardOf({
  sortie,
  documents,
  fieldCode,
  parts,
  draft,
  turned,
  ...times
}: BoardSources): Board {
  const sources = {
    sortie: () => sortie.value,
    documents: {
      field: () => documents.field.value,
      aircraft: () => documents.aircraft.value,
      procedure: () => documents.procedure.value,
    },
    fieldCode,
    minuteMs: () => times.minuteMs.value,
    secondMs: () => times.secondMs.value,
    parts: {
      reports: () => parts.reports.value,
      physics: () => parts.physics.value,
      taxi: () => parts.taxi.value,
      sun: () => parts.sun.value,
      variation: () => parts.variation.value,
    },
  };
  const now = day(sources, memo);
  const typedText = computed(() => {
    const [text, { typedNorth }] = [draft.value, sortie.value.inputs];
    return { text, north: northOf(text, documents.field.value, typedNorth, turned.value) };
  });
  const withDraft = computed(() => withWind(sortie.value, typedText.value));
  const readDraft = computed(() => readEnteredWind(typedText.value));
  const typed = day({ ...sources, sortie: () => withDraft.value }, memo);
  const isTyped = computed(() => draft.value.trim() !== '');
  return {
    day: now,
    typed: {
      read: () => (isTyped.value ? readDraft.value : now.read()),
      wind: () => (isTyped.value ? typed : now).wind(),
      windIsForecast: () => (isTyped.value ? typed : now).windIsForecast(),
      expects: () => (isTyped.value ? typed : now).expects(),
    },
  };
}

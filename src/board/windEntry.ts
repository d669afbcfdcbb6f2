/** Typing a wind: kept as it is typed, in use when it is set. */

import { batch } from '@preact/signals';
import type { Event } from '../core';
import { add } from './adding';
import { draft, enteredWind, inputs, typedWind } from './board';
import { typing } from './places';

const DRAFT_KEPT_AFTER_MS = 400;
let draftTimer: ReturnType<typeof setTimeout> | undefined;

/** Takes what is typed so far; it is kept a moment after the last key, so that a reload loses nothing. */
export function typeWind(text: string): void {
  draft.value = text;
  clearTimeout(draftTimer);
  draftTimer = setTimeout(keepDraft, DRAFT_KEPT_AFTER_MS);
}

/** Keeps what is typed so far. */
export function keepDraft(): void {
  clearTimeout(draftTimer);
  if (draft.value !== inputs.value.draft) add({ kind: 'set', inputs: { draft: draft.value } });
}

/** Makes the typed wind the wind in use. What cannot be used stays typed, to be mended. */
export function setWind(): boolean {
  const text = draft.value.trim();
  if (text === '' || typedWind.value.wind === null) return false;
  clearTimeout(draftTimer);
  batch(() => {
    add(
      { kind: 'wind', text, north: inputs.value.typedNorth },
      { kind: 'set', inputs: { draft: '' } },
    );
    draft.value = '';
  });
  return true;
}

/** Takes a wind that was typed in short to the other north: what is typed, and the one in use. */
export function turnNorth(): void {
  const typedNorth = inputs.value.typedNorth === 'true' ? 'magnetic' : 'true';
  const entered = enteredWind.value;
  const again: Event[] =
    draft.value === '' && entered !== null
      ? [{ kind: 'wind', text: entered.text, north: typedNorth }]
      : [];
  add({ kind: 'set', inputs: { typedNorth } }, ...again);
}

/** What is done with a pasted text before it is read; by default nothing. */
let prepare = (text: string): string => text;

/** Lets what is loaded later choose from a pasted text, such as the newest of several reports. */
export function prepareTextsWith(choose: (text: string) => string): void {
  prepare = choose;
}

/** Takes a text that was pasted or shared; a wind in it is in use at once. Says whether it was. */
export function takeText(text: string): boolean {
  typeWind(prepare(text));
  return setWind();
}

/** Closes the keypad; a wind that can be used is set. */
export function closeKeypad(): void {
  setWind();
  keepDraft();
  typing.value = false;
}

/** Throws away what is typed, back to the wind in use. */
export function dropDraft(): void {
  draft.value = '';
  keepDraft();
}

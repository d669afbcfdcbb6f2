/** Typing a wind: kept as it is typed, in use when it is set. */

import { batch } from '@preact/signals';
import { add } from './adding';
import { draft, inputs, typedWind } from './board';
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

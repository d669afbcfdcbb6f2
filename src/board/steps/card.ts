/** The Big card: one step, the taxi pace or the wind's answer over the whole screen. */

import { effect, signal, untracked } from '@preact/signals';
import { kept } from '../../device/kept';
import { day, sortie } from '../board';
import {
  beside,
  bigCard,
  openPlace,
  type PlaceName,
  place,
  sheet,
  typing,
  watching,
} from '../places';

/** Repeats what is due; null while nothing can speak. */
export const sayAgain = signal<(() => void) | null>(null);

/** Whether the card opens by itself when line-up begins. */
export const cardAtLineUp = kept('cardAtLineUp', (stored) => stored === true);

const BESIDE_STEPS = ['wind', 'taxi', 'numbers'] as const satisfies readonly PlaceName[];

/** What the pilot wants beside the steps on a wide screen. */
export const keptBeside = kept(
  'besideSteps',
  (stored) => BESIDE_STEPS.find((known) => known === stored) ?? 'wind',
);

/** Whether the card was just closed, so that the focus returns to the key that opens it. */
let isJustClosed = false;

/** Opens the card over a place: the open one, or the one beside it, which is opened first. */
export function openCard(over: PlaceName = place.value): void {
  if (over !== place.value) openPlace(over);
  sheet.value = null;
  typing.value = false;
  bigCard.value = true;
}

/** Closes the card, back to the place. */
export function closeCard(): void {
  isJustClosed = true;
  bigCard.value = false;
}

/** Whether the card was closed since the last call. */
export function wasJustClosed(): boolean {
  const was = isJustClosed;
  isJustClosed = false;
  return was;
}

/** Starts opening the card at line-up, and remembering what stands beside the steps; call once. */
export function startCard(): void {
  effect(() => {
    beside.value = { ...beside.peek(), steps: keptBeside.value };
  });
  let before: string | null = null;
  effect(() => {
    const now = sortie.value.list === null ? (day.steps()?.walk.phase ?? null) : null;
    // Only if the pilot is in the steps: never take another window or place away.
    if (before === 'taxi' && now === 'line-up' && untracked(isWanted)) openCard();
    if (now !== null) before = now;
  });
}

const isWanted = () =>
  cardAtLineUp.value && place.value === 'steps' && sheet.value === null && !watching;

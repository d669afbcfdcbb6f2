/** Typing a wind: stored as it is typed, in use once it is set. */

import { batch, computed, signal } from '@preact/signals';
import {
  type EnteredWind,
  type Entry,
  type Event,
  type Id,
  type North,
  otherNorth,
  plainly,
} from '../../core';
import { draftKeeper } from '../../record/drafts';
import { day, draft, turned, typed } from '../board';
import { typing } from '../places';
import { add, undoable } from '../record/adding';

/**
 * The most the entry holds, characters. No report is as long, and laying out a book would block the
 * screen.
 */
export const MOST_HELD = 2000;

/** The most of a text searched for the report to take, characters: over a hundred reports. */
const MOST_LOOKED_THROUGH = 8000;

/** Whether the entry holds only part of a text too long to search. */
export const cut = signal(false);

/**
 * The name under which the device stores what is typed. It becomes an entry of a sortie only when
 * set.
 */
export const WIND_DRAFT = ' wind';

const keeper = draftKeeper(() => ({ code: WIND_DRAFT, text: draft.value }));

/** Continues with what the device stored, unless something was typed meanwhile. */
export function goOnTyping(text: string): void {
  if (draft.value === '') draft.value = text;
}

/** The entry was erased: it stays empty, and the wind in use doesn't fill it again. */
export const erased = signal(false);

/** Takes what is typed so far. */
export function typeWind(text: string): void {
  draft.value = text;
  if (text === '') turned.value = false;
  erased.value = text === '';
  cut.value = false;
  unchosen = null;
  keeper.soon();
}

/** Makes the typed wind the wind in use. What can't be used stays typed, to be corrected. */
export const setWind = (): boolean => setTyped() !== null;

/** Whether what is typed gives a wind, or is a forecast that can be judged. */
export const isUsable = computed(() =>
  typed.read().report?.kind === 'forecast' ? typed.expects() === true : typed.wind().wind !== null,
);

/** Sets the typed wind, and returns its entry; null if it can't be used. */
function setTyped(): Entry | null {
  const text = draft.value.trim();
  if (text === '' || !isUsable.value) return null;
  const entry = batch(() => {
    const [set] = add({ kind: 'wind', text, north: typedNorth() });
    draft.value = '';
    turned.value = false;
    return set ?? null;
  });
  void keeper.now();
  return entry;
}

/** Whether what is typed, or in use, is a spoken text, which implies its own north. */
const isSpoken = (): boolean => typed.read().report?.north === 'magnetic';

/** The north the typed wind is measured from. */
const typedNorth = (): North => (isSpoken() ? typed.read().north : day.inputs().typedNorth);

/** Switches a wind typed in short, or spoken, to the other north: the typed one, and the one in use. */
export function turnNorth(): void {
  const entered = day.enteredWind();
  if (isSpoken()) {
    // Its own, and not that of what is typed in short.
    if (draft.value !== '') turned.value = !turned.value;
    else if (entered !== null) {
      add({ kind: 'wind', text: entered.text, north: otherNorth(entered.north) });
    }
    return;
  }
  const typedNorth = otherNorth(day.inputs().typedNorth);
  const again: Event[] =
    draft.value === '' && entered !== null
      ? [{ kind: 'wind', text: entered.text, north: typedNorth }]
      : [];
  add({ kind: 'set', inputs: { typedNorth } }, ...again);
}

/** Which part of a text is taken; all of it, until the code that chooses is loaded. */
let chooseFrom: ((text: string) => string) | null = null;

/** The text taken before anything could choose from it, and the wind it gave. */
let unchosen: {
  readonly text: string;
  readonly wind: Id | null;
  readonly unasked: boolean;
} | null = null;

/**
 * Installs what chooses from a text, such as the newest of several reports; applies it to a text
 * taken before.
 */
export function chooseTextsWith(choose: (text: string) => string): void {
  chooseFrom = choose;
  const before = unchosen;
  if (before === null) return;
  // A forecast could not be set before anything could read it.
  const waits = before.wind === null;
  if (!waits && choose(before.text) === before.text) return;
  const [wasCut, isInUse] = [cut.value, waits || before.wind === day.enteredWind()?.id];
  if (!isInUse) return;
  batch(() => {
    if (before.wind !== null) add({ kind: 'undo', target: before.wind });
    takeText(before.text, before.unasked);
    cut.value = wasCut;
  });
}

/**
 * Takes a pasted or shared text; a wind in it is in use at once. Returns whether there was one. A
 * text that came `unasked`, with the address, can be undone with one tap.
 */
export function takeText(text: string, unasked = false): boolean {
  const looked = beginningOf(text, MOST_LOOKED_THROUGH);
  // From elsewhere: text that is drawn differently from how it reads must not get into the record.
  const within = plainly(looked, 'report');
  const taken = chooseFrom?.(within) ?? within;
  const held = beginningOf(taken, MOST_HELD);
  typeWind(held);
  cut.value = looked !== text || held !== taken;
  const set = setTyped();
  if (unasked && set !== null) undoable.value = { what: 'wind', entries: [set] };
  if (chooseFrom === null) unchosen = { text: within, wind: set?.id ?? null, unasked };
  return set !== null;
}

/**
 * As much of a text as fits: whole reports, or at least whole groups, because half of one would be
 * read as another.
 */
function beginningOf(text: string, most: number): string {
  if (text.length <= most) return text;
  const within = text.slice(0, most);
  const reports = Math.max(within.lastIndexOf('=') + 1, within.lastIndexOf('\n'));
  const end = reports > 0 ? reports : within.lastIndexOf(' ');
  return end > 0 ? within.slice(0, end) : within;
}

/** Takes over a wind of another field. It is as old as it was. */
export function takeOver({ id, text, north }: EnteredWind): void {
  const entries = add({ kind: 'wind', text, north, takenFrom: id });
  undoable.value = { what: 'wind elsewhere', entries };
}

/** Closes the keypad; a usable wind is set. */
export function closeKeypad(): void {
  setWind();
  erased.value = false;
  typing.value = false;
}

/** Discards what is typed, back to the wind in use. */
export function dropDraft(): void {
  draft.value = '';
  turned.value = false;
  erased.value = false;
  cut.value = false;
  keeper.soon();
}

import { expect, test } from 'vitest';
import { readDraft } from '../../../../src/record/drafts';
import { openPage, pass } from '../page';

const page = await openPage({ timers: true });
const { add, begin, day, draft, sortie, turned, undoChange, undoable } = page;
const entry = await import('../../../../src/board/wind/windEntry');
const { typing } = await import('../../../../src/board/places');

const IN_USE = { kind: 'wind', text: '27012KT', north: 'true' } as const;
const winds = () => sortie.value.winds.map(({ text, north }) => [text, north]);

test('closing the keypad sets a wind that can be used', () => {
  begin(IN_USE);
  typing.value = true;
  entry.typeWind('30008');
  expect(winds()).toEqual([['27012KT', 'true']]);
  entry.closeKeypad();
  expect(winds()).toEqual([
    ['27012KT', 'true'],
    ['30008', 'true'],
  ]);
  expect([draft.value, typing.value]).toEqual(['', false]);
});

test('what cannot be used stays typed, to be corrected, and the wind in use stays in use', () => {
  begin(IN_USE);
  entry.typeWind('30O08');
  expect(entry.setWind()).toBe(false);
  expect(draft.value).toBe('30O08');
  expect(day.enteredText()?.text).toBe('27012KT');
});

test('an entry erased stays empty, and the next key begins a new wind', () => {
  begin(IN_USE);
  entry.typeWind('27012K');
  entry.typeWind('');
  expect([draft.value, entry.erased.value]).toEqual(['', true]);
  entry.typeWind('3');
  expect([draft.value, entry.erased.value]).toEqual(['3', false]);
  expect(winds()).toEqual([['27012KT', 'true']]);
});

test('an entry erased and left is full of the wind in use again', () => {
  begin(IN_USE);
  entry.typeWind('');
  entry.closeKeypad();
  expect(entry.erased.value).toBe(false);
  expect(winds()).toEqual([['27012KT', 'true']]);
});

test('what is typed is dropped, back to the wind in use', () => {
  begin(IN_USE);
  entry.typeWind('300');
  entry.dropDraft();
  expect([draft.value, entry.erased.value]).toEqual(['', false]);
  expect(day.enteredText()?.text).toBe('27012KT');
});

test('what is typed is on the device soon, and gone from it once it is set', async () => {
  begin();
  entry.typeWind('30008');
  pass(200);
  expect(await readDraft(entry.WIND_DRAFT)).toMatchObject({ text: '30008' });
  entry.setWind();
  await expect.poll(() => readDraft(entry.WIND_DRAFT)).not.toMatchObject({ text: '30008' });
});

test('a draft left on the device is gone on with, unless something was typed meanwhile', () => {
  begin();
  entry.goOnTyping('300');
  expect(draft.value).toBe('300');
  entry.goOnTyping('270');
  expect(draft.value).toBe('300');
});

test('turning the north turns the wind in use, and one tap on it turns it back', () => {
  begin(IN_USE);
  entry.turnNorth();
  expect(day.inputs().typedNorth).toBe('magnetic');
  expect(winds().at(-1)).toEqual(['27012KT', 'magnetic']);
  entry.turnNorth();
  expect(day.inputs().typedNorth).toBe('true');
  expect(winds().at(-1)).toEqual(['27012KT', 'true']);
});

test('while another wind is typed, turning the north leaves the one in use as it is', () => {
  begin(IN_USE);
  entry.typeWind('30008');
  entry.turnNorth();
  expect(winds()).toEqual([['27012KT', 'true']]);
  entry.setWind();
  expect(winds().at(-1)).toEqual(['30008', 'magnetic']);
});

const SPOKEN = 'INFORMATION K 28012KT 9999 FEW030 15/08 Q1013';

// FAA AIM 4-3-6: a tower or an ATIS speaks magnetic.
test('a spoken wind is magnetic, and turning it leaves alone what is typed in short', () => {
  begin();
  entry.typeWind(SPOKEN);
  entry.turnNorth();
  expect([turned.value, day.inputs().typedNorth]).toEqual([true, 'true']);
  entry.turnNorth();
  entry.setWind();
  expect(winds()).toEqual([[SPOKEN, 'magnetic']]);
  entry.turnNorth();
  expect(winds().at(-1)).toEqual([SPOKEN, 'true']);
  expect(day.inputs().typedNorth).toBe('true');
});

test('a wind that came unasked is in use at once, and one tap takes it away', () => {
  begin(IN_USE);
  expect(entry.takeText('30008KT', true)).toBe(true);
  expect(day.enteredText()?.text).toBe('30008KT');
  expect(undoable.value?.what).toBe('wind');
  undoChange();
  expect(day.enteredText()?.text).toBe('27012KT');
});

test('letters that are drawn otherwise than they read do not get into the record', () => {
  begin();
  // U+202E turns the direction of what follows.
  entry.takeText('27012KT \u202eTK99999');
  expect(winds()[0]?.[0]).toMatch(/^27012KT/);
  expect(winds()[0]?.[0]).not.toContain('\u202e');
});

test('of a text too long to be held, whole reports are taken, and it says so', () => {
  begin();
  const report = (day: number) => `METAR XCAI ${day}0850Z 27012KT CAVOK 04/M01 Q1003=`;
  const bulletin = Array.from({ length: 200 }, (_, index) => report(10 + (index % 20)));
  entry.takeText(bulletin.join('\n'));
  const taken = winds()[0]?.[0] ?? '';
  expect(entry.cut.value).toBe(true);
  expect(taken.length).toBeLessThanOrEqual(entry.MOST_HELD);
  expect(taken.split('\n')).toEqual(bulletin.slice(0, taken.split('\n').length));
  entry.takeText('27012KT');
  expect(entry.cut.value).toBe(false);
});

/** Chooses the last line. */
const lastLine = (text: string) => text.slice(text.lastIndexOf('\n') + 1);

test('a text taken before its reader was loaded is chosen from then, but not over a later wind', () => {
  begin();
  entry.takeText('27012KT\n30008KT');
  add({ kind: 'wind', text: '09005KT', north: 'true' });
  entry.chooseTextsWith(lastLine);
  expect(day.enteredText()?.text).toBe('09005KT');
  entry.chooseTextsWith((text) => text);
});

test('chosen from later, it is still one change, which one tap takes back', async () => {
  const later = await openPage({ fresh: true, hooks: false });
  const { chooseTextsWith, takeText } = await import('../../../../src/board/wind/windEntry');
  later.begin();
  takeText('27012KT\n30008KT', true);
  expect(later.day.enteredText()?.text).toBe('27012KT\n30008KT');
  chooseTextsWith(lastLine);
  expect(later.sortie.value.winds.map(({ text }) => text)).toEqual(['30008KT']);
  chooseTextsWith((text) => text);
  later.undoChange();
  expect(later.sortie.value.winds).toEqual([]);
});

/** What is said, and when: speech is stood in for, the clock stands until time is let pass. */

import { effect } from '@preact/signals';
import { afterAll, beforeEach, expect, test, vi } from 'vitest';
import type { Event, Procedure } from '../../../../src/core';
import { openPage, pass } from '../page';

const { add, beginAt, hashOf, load, loadParts, day } = await openPage({
  fresh: true,
  timers: true,
});
await load('XLIN', 'XHAR', 'sleet', 'sleet-usual');
await loadParts('physics', 'reports', 'taxi');
const { asksToRepeat } = await import('../../../../src/board/hands/actions');
const { isForemost } = await import('../../../../src/device/foremost');
const { startVoice, setVoicing } = await import('../../../../src/board/hands/voice');
const { stepsShown } = await import('../../../../src/board/steps/leavingSteps');
const { offered, stamp, stopRoll, tick } = await import('../../../../src/board/steps/stepping');

const { procedure } = await import('../../../../src/board/documents/inUse');
const { place } = await import('../../../../src/board/places');

let said: string[] = [];

class Utterance {
  readonly text: string;
  constructor(text: string) {
    this.text = text;
  }
}

/** A browser that can speak. */
function speak(): void {
  const speechSynthesis = {
    speaking: false,
    getVoices: () => [],
    cancel: () => undefined,
    speak: ({ text }: Utterance) => void said.push(text),
  };
  vi.stubGlobal('window', { speechSynthesis });
  vi.stubGlobal('SpeechSynthesisUtterance', Utterance);
}
speak();
beforeEach(speak);
// Another file must not find what is left here.
afterAll(() => void vi.resetModules());

const due = () => {
  const main = offered.value?.main;
  return main?.what === 'tick' ? main.row.step.id : (main?.what ?? '');
};
const inEnglish = (text: string) => [{ text, language: 'en' }];
startVoice({
  due: () => inEnglish(due()),
  caution: () => [],
  call: () => inEnglish('a call'),
  gate: ({ what }) => what,
  warning: 'by the clock',
});
// As the roll's view does: what the gates are worked out from is looked at.
effect(() => void day.ladder());

/** A sortie in the Sleet with a wind, where everything is done up to brake release. */
function toTheRunway(): void {
  const wind: Event = { kind: 'wind', text: '27012KT', north: 'true' };
  beginAt('XHAR', 'sleet', wind);
  const { phases } = procedure.value as Procedure;
  const before = phases.filter(({ phase }) => ['ramp', 'taxi', 'line-up'].includes(phase));
  const steps = before.flatMap(({ steps: all }) => all);
  add(
    { kind: 'open', run: 'run-one', procedure: hashOf('sleet-usual'), list: null },
    ...steps.map(({ id }): Event => ({ kind: 'done', run: 'run-one', pass: 1, step: id, saw: {} })),
  );
}

/** Begins to listen. */
function listen(on: boolean): void {
  isForemost.value = true;
  stepsShown.value = true;
  place.value = 'steps';
  setVoicing({ on, gates: true });
  said = [];
}

test('the due step is said once as it becomes due, and not again for a change beside it', () => {
  beginAt('XLIN', 'sleet');
  listen(true);
  said = [];
  const main = offered.value?.main;
  if (main?.what !== 'tick') throw new Error('no step is due');
  tick(main.row, 'done');
  // The second step of the document.
  expect(said).toEqual(['brakes-parked']);
  add({ kind: 'set', inputs: { callsign: 'Gannet 1' } });
  add({ kind: 'noted', text: 'A bird' });
  expect(said).toEqual(['brakes-parked']);
});

test('switched off, behind another window, or away from the steps nothing is said by itself', () => {
  listen(false);
  beginAt('XLIN', 'sleet');
  listen(true);
  isForemost.value = false;
  said = [];
  beginAt('XLIN', 'sleet');
  listen(true);
  stepsShown.value = false;
  said = [];
  add({ kind: 'set', inputs: { ties: { 'sleet-usual/canopy-shut': 'seat-pins-out' } } });
  expect(due()).toBe('canopy-shut');
  expect(said).toEqual([]);
});

test('what is due is said on request, also when nothing is read aloud by itself', () => {
  listen(false);
  beginAt('XLIN', 'sleet');
  expect(said).toEqual([]);
  asksToRepeat.value += 1;
  expect(said).toEqual(['seat-pins-out']);
});

test('each gate is said when it is expected, once, and after a stop none', () => {
  listen(true);
  toTheRunway();
  const rungs = day.ladder()?.rungs ?? [];
  expect(rungs.length).toBeGreaterThan(2);
  stamp('brakes released');
  said = [];
  const [first, second, third] = rungs;
  if (first === undefined || second === undefined || third === undefined) throw new Error('few');
  pass(1000 * first.s - 20);
  expect(said).toEqual([]);
  pass(40);
  expect(said).toEqual([first.what]);
  pass(1000 * (second.s - first.s));
  expect(said).toEqual([first.what, second.what]);
  stopRoll();
  said = [];
  pass(60_000);
  expect(said).not.toContain(third.what);
  expect(rungs.map(({ what }) => what).filter((what) => said.includes(what))).toEqual([]);
});

test('a gate that was said is not said again when the ladder puts it later', () => {
  listen(true);
  toTheRunway();
  stamp('brakes released');
  said = [];
  const before = day.ladder()?.rungs[0];
  if (before === undefined) throw new Error('no gate');
  pass(1000 * before.s + 20);
  expect(said).toEqual([before.what]);
  // Hot air takes thrust, and the same gate comes later.
  add({ kind: 'set', inputs: { ownTemperatureC: 25 } });
  const after = day.ladder()?.rungs[0];
  expect(after?.what).toBe(before.what);
  expect(after?.s).toBeGreaterThan(before.s + 0.1);
  pass(1000 * ((after?.s ?? 0) - before.s) + 20);
  expect(said.filter((what) => what === before.what)).toHaveLength(1);
  stopRoll();
});

test('that gates are times is said once in a sortie, before the roll', () => {
  listen(true);
  toTheRunway();
  expect(said.filter((text) => text === 'by the clock')).toHaveLength(1);
  stepsShown.value = false;
  stepsShown.value = true;
  expect(said.filter((text) => text === 'by the clock')).toHaveLength(1);
  toTheRunway();
  expect(said.filter((text) => text === 'by the clock')).toHaveLength(2);
});

test('without gates none is said, but what is due still is', () => {
  listen(true);
  setVoicing({ gates: false });
  toTheRunway();
  stamp('brakes released');
  said = [];
  pass(60_000);
  expect(said).toEqual([]);
});

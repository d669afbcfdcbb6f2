/** Without touching the screen, only what the screen offers, and with the same care. On the demo's Sleet. */

import { expect, test } from 'vitest';
import type { Event, Phase, Procedure } from '../../../../src/core';
import { openPage, pass } from '../page';

const { add, beginAt, happened, hashOf, load, loadParts, sortie } = await openPage();
await load('XCAI', 'sleet', 'sleet-usual');
await loadParts('taxi');
const { act, lastAct } = await import('../../../../src/board/hands/actions');
const { SETTLE_MS } = await import('../../../../src/device/presses');
const { followDue } = await import('../../../../src/board/steps/due');
const { stepsShown } = await import('../../../../src/board/steps/leavingSteps');
const { offered } = await import('../../../../src/board/steps/stepping');
const { procedure } = await import('../../../../src/board/documents/inUse');
const { elapsedNowMs } = await import('../../../../src/board/flight/time');
const places = await import('../../../../src/board/places');

followDue();

/** No wind is known here: before the runway, and on it, that is gone on with first. */
function goOutside(): void {
  expect(due()).toBe('go-outside');
  expect(act('done', press({ held: true }))).toBe('done');
  pass(SETTLE_MS);
}

/** A sortie at the steps, in which every step of some phases is done. */
function begin(...phases: readonly Phase[]): void {
  places.place.value = 'steps';
  places.onRoll.value = false;
  places.bigCard.value = false;
  stepsShown.value = true;
  beginAt('XCAI', 'sleet');
  const of = procedure.value as Procedure;
  const steps = phases.flatMap(
    (phase) => of.phases.find((part) => part.phase === phase)?.steps ?? [],
  );
  if (steps.length > 0) {
    add(
      { kind: 'open', run: 'run-one', procedure: hashOf('sleet-usual'), list: null },
      ...steps.map(
        ({ id }): Event => ({ kind: 'done', run: 'run-one', pass: 1, step: id, saw: {} }),
      ),
    );
  }
  pass(SETTLE_MS);
}

const press = (more: { readonly held?: boolean; readonly brief?: boolean } = {}) => ({
  downMs: elapsedNowMs(),
  held: false,
  brief: false,
  ...more,
});
const due = () => {
  const main = offered.value?.main;
  return main?.what === 'tick' ? main.row.step.id : (main?.what ?? null);
};
const ticked = () => happened().flatMap((entry) => (entry.kind === 'done' ? [entry.step] : []));

test('a press just after the due step changed was meant for the one before, and ticks nothing', () => {
  begin();
  expect(act('done', press({ held: true }))).toBe('done');
  // The document's first steps are seat pins, then the brakes.
  expect(ticked()).toEqual(['seat-pins-out']);
  pass(SETTLE_MS - 1);
  expect(act('done', press({ held: true }))).toBe('too-soon');
  expect(ticked()).toEqual(['seat-pins-out']);
  pass(1);
  expect(act('done', press({ held: true }))).toBe('done');
  expect(ticked()).toEqual(['seat-pins-out', 'brakes-parked']);
});

test('where the steps are not shown, no press touches them', () => {
  begin();
  stepsShown.value = false;
  pass(SETTLE_MS);
  for (const action of ['done', 'back', 'hold-back', 'stopping'] as const) {
    expect(act(action, press({ held: true }))).toBe('not-here');
  }
  expect(ticked()).toEqual([]);
});

test('a critical step wants the key held, and a bare press does nothing', () => {
  begin();
  expect(act('done', press())).toBe('hold');
  pass(1000);
  expect(act('done', press())).toBe('hold');
  expect(ticked()).toEqual([]);
  expect(act('done', press({ held: true }))).toBe('done');
  expect(ticked()).toEqual(['seat-pins-out']);
});

test('what cannot be held is pressed again: not at once, and not after four seconds', () => {
  begin();
  expect(act('done', press({ brief: true }))).toBe('again');
  pass(SETTLE_MS - 1);
  expect(act('done', press({ brief: true }))).toBe('again');
  pass(4000);
  expect(act('done', press({ brief: true }))).toBe('again');
  expect(ticked()).toEqual([]);
  pass(1000);
  expect(act('done', press({ brief: true }))).toBe('done');
  expect(ticked()).toEqual(['seat-pins-out']);
});

test('the first press for one critical step does not count for the next', () => {
  begin();
  act('done', press({ brief: true }));
  add({ kind: 'set', inputs: { ties: { 'sleet-usual/controls-free': 'seat-pins-out' } } });
  expect(due()).toBe('controls-free');
  pass(1000);
  expect(act('done', press({ brief: true }))).toBe('again');
  expect(ticked()).toEqual([]);
});

test('nothing is taken back, held back or stopped where that is not offered', () => {
  begin();
  const count = happened().length;
  expect(act('back', press())).toBe('not-now');
  expect(act('stopping', press())).toBe('not-now');
  expect(act('airborne', press())).toBe('not-now');
  expect(act('brakes-released', press())).toBe('not-now');
  expect(happened()).toHaveLength(count);
  expect(lastAct.value).toMatchObject({ action: 'brakes-released', outcome: 'not-now' });
});

test('a step is held back by its key, the barrier before the runway is not', () => {
  begin('ramp');
  // The call names a runway, and none is chosen: it can be put off all the same.
  const step = offered.value?.putOff?.step.id;
  expect(step).toBeDefined();
  expect(act('hold-back', press())).toBe('done');
  expect(happened().at(-1)).toMatchObject({ kind: 'held', step });
  begin('ramp', 'taxi');
  // The calls after it, and the check itself.
  for (const { id } of happened().slice(-3)) add({ kind: 'undo', target: id });
  pass(SETTLE_MS);
  goOutside();
  expect(due()).toBe('before-runway');
  expect(act('hold-back', press())).toBe('not-now');
});

test('brakes are released by their own key alone, and so is airborne said', () => {
  begin('ramp', 'taxi', 'line-up');
  goOutside();
  expect(due()).toBe('stamp');
  expect(act('done', press({ held: true }))).toBe('not-now');
  expect(act('airborne', press())).toBe('not-now');
  expect(act('brakes-released', press())).toBe('done');
  expect(sortie.value.stamps.map(({ what }) => what)).toEqual(['brakes released']);
});

test('on the roll only stopping and airborne do anything', () => {
  begin('ramp', 'taxi', 'line-up');
  goOutside();
  act('brakes-released', press());
  pass(SETTLE_MS);
  places.onRoll.value = true;
  expect(act('done', press({ held: true }))).toBe('not-now');
  expect(act('hold-back', press())).toBe('not-now');
  expect(act('next-place', press())).toBe('not-now');
  expect(places.place.value).toBe('steps');
  expect(act('stopping', press())).toBe('done');
  expect(sortie.value.stamps.map(({ what }) => what)).toEqual(['brakes released', 'stopping']);
  pass(SETTLE_MS);
  expect(act('airborne', press())).toBe('not-now');
});

test('a stop is never too soon', () => {
  begin('ramp', 'taxi', 'line-up');
  goOutside();
  act('brakes-released', press());
  pass(100);
  expect(act('airborne', press())).toBe('too-soon');
  expect(act('stopping', press())).toBe('done');
  expect(sortie.value.stamps.map(({ what }) => what)).toEqual(['brakes released', 'stopping']);
});

test('the stopwatch passes points on Taxi, and not elsewhere', () => {
  begin();
  add({ kind: 'set', inputs: { stand: 's1', chosen: { end: '27', purpose: 'take-off' } } });
  expect(act('stopwatch', press())).toBe('not-here');
  places.place.value = 'taxi';
  expect(act('stopwatch', press())).toBe('done');
  expect(sortie.value.taxied.map(({ placed }) => placed)).toEqual([false]);
});

test('the places are gone through in the order of their keys, and round', () => {
  begin();
  places.place.value = 'wind';
  const seen = places.PLACES.map(() => {
    act('next-place', press());
    return places.place.value;
  });
  expect(seen).toEqual(['taxi', 'steps', 'numbers', 'log', 'wind']);
});

import { expect, test } from 'vitest';
import type { Event } from '../../../../src/core';
import { OPENED_MS, openPage, pass, turn } from '../page';

const { begin, happened, sortie } = await openPage({ fresh: true });
const { interrupt, interruptWhenLeft, resume } = await import(
  '../../../../src/board/steps/interruption'
);
const { comeBackToSteps, leaveSteps, stepsShown } = await import(
  '../../../../src/board/steps/leavingSteps'
);
const { askToWatch } = await import('../../../../src/board/watch');

/** Begins a sortie in which one step was done. */
const underWay = (...more: readonly Event[]) =>
  begin(
    { kind: 'open', run: 'run-one', procedure: 'hash-p', list: null },
    { kind: 'done', run: 'run-one', pass: 1, step: 'lock-off', saw: {} },
    ...more,
  );
const leftMs = () => sortie.value.run?.interruptedAt?.wallMs ?? null;
const SECOND = 1000;
const MINUTE = 60 * SECOND;

test('being called away is marked once, with the moment it began, and resumed', () => {
  underWay();
  pass(5 * SECOND);
  interrupt();
  pass(5 * SECOND);
  interrupt();
  expect(leftMs()).toBe(OPENED_MS + 5 * SECOND);
  expect(happened().filter(({ kind }) => kind === 'interrupted')).toHaveLength(1);
  resume();
  expect(leftMs()).toBeNull();
});

test('before anything was done, and after the end, nothing is interrupted', () => {
  begin();
  interrupt();
  begin({ kind: 'open', run: 'run-one', procedure: 'hash-p', list: null });
  interrupt();
  expect(happened().some(({ kind }) => kind === 'interrupted')).toBe(false);
  underWay({ kind: 'close', run: 'run-one', leadsTo: 'end' });
  interrupt();
  expect(happened().some(({ kind }) => kind === 'interrupted')).toBe(false);
});

test('in an open list it is the list that is interrupted', () => {
  underWay(
    { kind: 'open', run: 'run-list', procedure: 'hash-p', list: 'gear-unsafe' },
    { kind: 'done', run: 'run-list', pass: 1, step: 'speed', saw: {} },
  );
  interrupt();
  expect(sortie.value.list?.interruptedAt?.wallMs).toBe(OPENED_MS);
  expect(leftMs()).toBeNull();
});

test('resuming where nothing was interrupted adds nothing', () => {
  underWay();
  const count = happened().length;
  resume();
  expect(happened()).toHaveLength(count);
});

test('another place for a minute is a look, for longer an interruption from when it was opened', () => {
  underWay();
  comeBackToSteps();
  pass(10 * SECOND);
  leaveSteps();
  expect(stepsShown.value).toBe(false);
  pass(MINUTE);
  comeBackToSteps();
  expect([stepsShown.value, leftMs()]).toEqual([true, null]);
  leaveSteps();
  pass(MINUTE + 1);
  comeBackToSteps();
  expect(leftMs()).toBe(OPENED_MS + 10 * SECOND + MINUTE);
});

test('coming back twice counts the absence once', () => {
  underWay();
  leaveSteps();
  pass(2 * MINUTE);
  comeBackToSteps();
  resume();
  comeBackToSteps();
  expect(leftMs()).toBeNull();
});

interruptWhenLeft();

test('the app hidden for less than ten seconds is a glance, for longer an interruption', () => {
  underWay();
  turn('hidden');
  expect(leftMs()).toBe(OPENED_MS);
  pass(9 * SECOND);
  turn('visible');
  expect(leftMs()).toBeNull();
  turn('hidden');
  pass(10 * SECOND);
  turn('visible');
  expect(leftMs()).toBe(OPENED_MS + 9 * SECOND);
});

test('the page that watches opened in front is no leaving, staying with it for over a minute is', () => {
  underWay();
  askToWatch();
  pass(SECOND);
  turn('hidden');
  expect(leftMs()).toBeNull();
  pass(30 * SECOND);
  turn('visible');
  expect(leftMs()).toBeNull();
  askToWatch();
  pass(SECOND);
  turn('hidden');
  pass(MINUTE);
  turn('visible');
  expect(leftMs()).toBe(OPENED_MS + 31 * SECOND);
});

/** How long each phase took. */

import fc from 'fast-check';
import { expect, test } from 'vitest';
import { phaseTimes } from '../../../src/core/procedure/phaseTimes';
import { foldSortie } from '../../../src/core/sortie/fold';
import { anyRecord, RUN, WALL_MS } from '../sortie/recorder';
import { Pilot, SMALL } from './invented';

const timesOf = (pilot: Pilot) => {
  const { run, stamps } = foldSortie(pilot.entries);
  return phaseTimes(SMALL, run, stamps);
};

test('the time up to a thing done belongs to its phase', () => {
  // The recorder's clock moves on by one second with each entry; the run is opened with the first.
  const pilot = new Pilot();
  pilot.tick('done', 'pins');
  pilot.tick('done', 'flaps');
  pilot.tick('done', 'course');
  const { ms, lastMs } = timesOf(pilot);
  // Passing the lamps, which are not needed by day, is an entry of its own before the flaps.
  expect([ms.get('ramp'), ms.get('taxi'), ms.get('climb')]).toEqual([1000, 3000, undefined]);
  expect(lastMs).toBe(WALL_MS + 5000);
});

test('waiting for the brakes belongs to the line-up, the roll to the roll', () => {
  const pilot = new Pilot();
  pilot.goTo('brakes released');
  const before = timesOf(pilot).ms.get('line-up') ?? 0;
  pilot.stamp('brakes released');
  pilot.stamp('airborne');
  const { ms } = timesOf(pilot);
  expect((ms.get('line-up') ?? 0) - before).toBe(1000);
  expect(ms.get('roll')).toBe(1000);
});

test('a phase flown again begins with no time, and one that is over for good keeps its own', () => {
  const pilot = new Pilot();
  pilot.goTo('brakes released');
  const { ms: first } = timesOf(pilot);
  pilot.stamp('brakes released');
  pilot.flyAgain('take-off');
  const { ms } = timesOf(pilot);
  expect(first.get('taxi')).toBeGreaterThan(0);
  expect([ms.get('ramp'), ms.get('taxi'), ms.get('line-up')]).toEqual([first.get('ramp'), 0, 0]);
  const again = pilot.walk().position;
  if (again.kind !== 'step') throw new Error('nothing is due');
  pilot.tick('done', again.row.step.id);
  expect(timesOf(pilot).ms.get(again.row.phase)).toBeGreaterThan(0);
});

test('before anything is done no time has gone by', () => {
  expect(timesOf(new Pilot())).toEqual({ ms: new Map(), lastMs: null });
});

test('a clock set back by an hour takes no time away', () => {
  const pilot = new Pilot();
  const { at, ...done } = pilot.tick('done', 'pins');
  const setBack = { ...done, at: { ...at, wallMs: at.wallMs - 3_600_000 } };
  const { run, stamps } = foldSortie([...pilot.entries.slice(0, -1), setBack]);
  expect(phaseTimes(SMALL, run, stamps).ms.get('ramp')).toBe(0);
});

test('no phase takes less than no time, and together they take no longer than the sortie', () => {
  fc.assert(
    fc.property(anyRecord, (entries) => {
      const { run, stamps, lastAt } = foldSortie(entries);
      fc.pre(run !== null && run.id === RUN);
      const { ms } = phaseTimes(SMALL, run, stamps);
      const all = [...ms.values()];
      expect(Math.min(0, ...all)).toBe(0);
      const sum = all.reduce((total, one) => total + one, 0);
      expect(sum).toBeLessThanOrEqual((lastAt?.wallMs ?? 0) - WALL_MS);
    }),
  );
});

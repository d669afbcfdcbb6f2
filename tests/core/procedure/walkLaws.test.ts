import fc from 'fast-check';
import { expect, test } from 'vitest';
import { rowsOf } from '../../../src/core/day/steps';
import type { FlownAgain } from '../../../src/core/procedure/again';
import type { Facts } from '../../../src/core/procedure/facts';
import { passedBefore } from '../../../src/core/procedure/passed';
import { PHASES } from '../../../src/core/procedure/phases';
import type { Procedure } from '../../../src/core/procedure/procedure';
import type { StepRow, Walk } from '../../../src/core/procedure/walk';
import type { Moment } from '../../../src/core/sortie/entry';
import { foldSortie } from '../../../src/core/sortie/fold';
import { demoProcedures } from '../documents/demo';
import { LIST, OPEN_LIST } from '../sortie/recorder';
import { facts, Pilot, SMALL } from './invented';

const PROCEDURES: readonly Procedure[] = [SMALL, ...demoProcedures];

/** What a pilot can do at any moment, sensible or not. */
type Act =
  | { readonly kind: 'due'; readonly outcome: 'done' | 'held' | 'cannot' }
  | { readonly kind: 'any'; readonly outcome: 'done' | 'held' | 'cannot'; readonly which: number }
  | { readonly kind: 'undo'; readonly back: number }
  | { readonly kind: 'stamp'; readonly moment: Moment }
  | { readonly kind: 'stopped' }
  | { readonly kind: 'again'; readonly what: FlownAgain }
  | { readonly kind: 'facts'; readonly now: Facts };

const anyOutcome = fc.constantFrom('done', 'done', 'done', 'held', 'cannot');
const anyFacts = fc
  .record({
    runway: fc.constantFrom('28', '01', null),
    runwayMagnetic: fc.constantFrom(280, 10, null),
    night: fc.constantFrom(true, false, null),
    lights: fc.constantFrom(true, false, null),
    wet: fc.boolean(),
    controlled: fc.constantFrom(true, false, null),
    rotateKt: fc.constantFrom(138, 141, null),
  })
  .map(facts);

const anyAct: fc.Arbitrary<Act> = fc.oneof(
  { weight: 12, arbitrary: fc.record({ kind: fc.constant('due'), outcome: anyOutcome }) },
  {
    weight: 2,
    arbitrary: fc.record({
      kind: fc.constant('any'),
      outcome: anyOutcome,
      which: fc.nat({ max: 200 }),
    }),
  },
  { weight: 3, arbitrary: fc.record({ kind: fc.constant('undo'), back: fc.nat({ max: 6 }) }) },
  {
    weight: 1,
    arbitrary: fc.record({
      kind: fc.constant('stamp'),
      moment: fc.constantFrom<Moment>('brakes released', 'airborne', 'landed', 'stopping'),
    }),
  },
  { weight: 1, arbitrary: fc.constant({ kind: 'stopped' } as const) },
  {
    weight: 1,
    arbitrary: fc.record({
      kind: fc.constant('again'),
      what: fc.constantFrom<FlownAgain>('touch-and-go', 'take-off', 'approach'),
    }),
  },
  { weight: 1, arbitrary: fc.record({ kind: fc.constant('facts'), now: anyFacts }) },
);

/** A pilot of one of the procedures, after all this. */
const anyFlight = fc
  .record({
    which: fc.nat({ max: PROCEDURES.length - 1 }),
    acts: fc.array(anyAct, { maxLength: 60 }),
  })
  .map(({ which, acts }) => {
    const procedure = PROCEDURES[which] ?? SMALL;
    const pilot = new Pilot(procedure);
    for (const act of acts) perform(pilot, act);
    return { procedure, pilot };
  });

function perform(pilot: Pilot, act: Act): void {
  const { position, phases } = pilot.walk();
  switch (act.kind) {
    case 'due':
      if (position.kind === 'step') pilot.tick(act.outcome, position.row.step.id);
      else pilot.goOn();
      break;
    case 'any': {
      const rows = phases.flatMap(({ rows }) => rows);
      const row = rows[act.which % rows.length];
      if (row !== undefined) pilot.tick(act.outcome, row.step.id);
      break;
    }
    case 'undo': {
      const target = pilot.entries.at(-1 - act.back);
      if (target !== undefined && target.kind !== 'open') pilot.undo(target);
      break;
    }
    case 'stamp':
      pilot.stamp(act.moment);
      break;
    case 'stopped': {
      const run = `${LIST} ${pilot.entries.length}`;
      pilot.record({ ...OPEN_LIST, run });
      const leadsTo = { phase: 'taxi', reopen: ['taxi', 'line-up', 'roll'] } as const;
      pilot.record({ kind: 'close', run, leadsTo });
      break;
    }
    case 'again':
      if (foldSortie(pilot.entries).run === null) break;
      if (act.what === 'touch-and-go') pilot.stamp('landed');
      pilot.flyAgain(act.what);
      if (act.what === 'touch-and-go') pilot.stamp('airborne');
      break;
    case 'facts':
      pilot.now = act.now;
      break;
  }
}

test('every step of the procedure is in the walk once, in order, whatever was done', () => {
  fc.assert(
    fc.property(anyFlight, ({ procedure, pilot }) => {
      const { phases } = pilot.walk();
      expect(phases.map(({ phase }) => phase)).toEqual(PHASES);
      expect(phases.flatMap(({ rows }) => rows.map(({ step }) => step.id))).toEqual(
        procedure.phases.flatMap(({ steps }) => steps.map(({ id }) => id)),
      );
    }),
  );
});

/** The moments that still come. */
const awaitedIn = ({ position, next }: Walk): readonly Moment[] => [
  ...(position.kind === 'moment' ? [position.moment] : []),
  ...next.flatMap((one) => (one.kind === 'moment' ? [one.moment] : [])),
];

/** Put off in the air, and the flight has gone past it: on to the approach, or down. */
function isLeft(walked: Walk, { phase, state }: StepRow): boolean {
  if (state.kind !== 'held' || !['roll', 'climb', 'recovery'].includes(phase)) return false;
  const isDown = !awaitedIn(walked).includes('landed');
  const approach = rowsOf(walked).filter((row) => ['recovery', 'after'].includes(row.phase));
  return isDown || (phase !== 'recovery' && approach.some((row) => 'tick' in row.state));
}

test('every step is handled, due, among what follows, held back, left in the air, or tied to a moment to come', () => {
  fc.assert(
    fc.property(anyFlight, ({ pilot }) => {
      const walked = pilot.walk();
      const { phases, position, next, heldBack } = walked;
      const awaited = awaitedIn(walked);
      const inSight = new Set([
        ...(position.kind === 'step' ? [position.row.step.id] : []),
        ...next.flatMap((one) => (one.kind === 'step' ? [one.row.step.id] : [])),
        ...heldBack.map(({ step }) => step.id),
      ]);
      for (const row of phases.flatMap(({ rows }) => rows)) {
        const { step, state } = row;
        if (['done', 'cannot', 'not-needed'].includes(state.kind)) continue;
        const comes =
          inSight.has(step.id) ||
          isLeft(walked, row) ||
          (step.tiedTo !== undefined && awaited.includes(step.tiedTo));
        expect([step.id, state.kind, comes]).toEqual([step.id, state.kind, true]);
      }
    }),
    { numRuns: 300 },
  );
});

test('the sortie is at its end just when every step is handled or left in the air, and every moment is past', () => {
  fc.assert(
    fc.property(anyFlight, ({ pilot }) => {
      const walked = pilot.walk();
      const { phases, position, next } = walked;
      const left = rowsOf(walked).filter((row) => isLeft(walked, row)).length;
      const open = phases.reduce((sum, { total, handled }) => sum + total - handled, 0) > left;
      if (position.kind === 'end') expect([open, next]).toEqual([false, []]);
      else expect(open || position.kind === 'moment').toBe(true);
    }),
  );
});

test('no barrier and no release of the brakes is due while anything is held back', () => {
  fc.assert(
    fc.property(anyFlight, ({ pilot }) => {
      const { position, heldBack } = pilot.walk();
      const stops =
        (position.kind === 'step' && position.row.step.kind === 'barrier') ||
        (position.kind === 'moment' && position.moment === 'brakes released') ||
        position.kind === 'end';
      if (!stops) return;
      const due = position.kind === 'step' ? position.row.step.id : null;
      expect(heldBack.filter(({ step }) => step.id !== due)).toEqual([]);
    }),
    { numRuns: 300 },
  );
});

test('whatever was done, doing what is due comes to the end', () => {
  fc.assert(
    fc.property(anyFlight, ({ procedure, pilot }) => {
      const steps = procedure.phases.flatMap((phase) => phase.steps).length;
      const moments = 3;
      expect(pilot.goToTheEnd().length).toBeLessThanOrEqual(steps + moments);
      expect(pilot.at()).toBe('end');
    }),
    { numRuns: 50 },
  );
});

test('the counts of a phase are those of its rows', () => {
  fc.assert(
    fc.property(anyFlight, ({ pilot }) => {
      for (const { rows, total, handled } of pilot.walk().phases) {
        const kinds = rows.map(({ state }) => state.kind);
        expect(total).toBe(kinds.filter((kind) => kind !== 'not-needed').length);
        expect(handled).toBe(kinds.filter((kind) => kind === 'done' || kind === 'cannot').length);
      }
    }),
  );
});

test('what is passed is passed once, and asking under the same facts finds no more', () => {
  fc.assert(
    fc.property(anyFlight, ({ pilot }) => {
      const { position, phases } = pilot.walk();
      fc.pre(position.kind === 'step');
      const rows = phases.flatMap((part) => part.rows);
      pilot.tick('done', position.kind === 'step' ? position.row.step.id : '');
      const row = position.kind === 'step' ? position.row : null;
      expect(passedBefore(rowsOf(pilot.walk()), row, pilot.now)).toEqual([]);
      expect(rowsOf(pilot.walk())).toHaveLength(rows.length);
    }),
  );
});

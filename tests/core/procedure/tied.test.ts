/** Steps that the pilot does earlier than the procedure has them. */

import fc from 'fast-check';
import { expect, test } from 'vitest';
import { PHASES } from '../../../src/core/procedure/phases';
import { tied, tiesOf } from '../../../src/core/procedure/tied';
import { tieKey } from '../../../src/core/sortie/entry';
import { demoProcedures } from '../documents/demo';
import { SMALL } from './invented';

const ids = (procedure: typeof SMALL) =>
  procedure.phases.flatMap(({ phase, steps }) => steps.map(({ id }) => `${phase}/${id}`));
const tie = (step: string, before: string) => ({ [tieKey('invented', step)]: before });

test('a tied step stands directly before the step it is tied to', () => {
  const moved = tied(SMALL, tie('brief', 'pins'));
  expect(ids(moved).slice(0, 3)).toEqual(['ramp/brief', 'ramp/pins', 'ramp/lamps']);
});

test('tied into an earlier phase it is done there, and counts for as long as it did', () => {
  const moved = tied(SMALL, tie('heading', 'flaps'));
  expect(ids(moved)).toContain('taxi/heading');
  expect(ids(moved)).not.toContain('line-up/heading');
  const heading = moved.phases.flatMap(({ steps }) => steps).find(({ id }) => id === 'heading');
  expect(heading?.until).toBe('line-up');
});

test.each([
  ['to a later step', tie('pins', 'brief')],
  ['to itself', tie('pins', 'pins')],
  ['to a step that is no more', tie('brief', 'gone')],
  ['and is no more itself', tie('gone', 'pins')],
  ['and is the barrier', tie('barrier', 'pins')],
  ['and goes with the brakes', tie('lever', 'pins')],
  ['in another procedure', { [tieKey('another', 'brief')]: 'pins' }],
])('a step that is tied %s stays where it is', (_, ties) => {
  expect(tied(SMALL, ties)).toBe(SMALL);
  expect(tiesOf(SMALL, ties).size).toBe(0);
});

test('whatever is tied, no step is lost or doubled, and none comes later than it stood', () => {
  const anyTies = fc.constantFrom(SMALL, ...demoProcedures).chain((procedure) => {
    const all = procedure.phases.flatMap(({ steps }) => steps.map(({ id }) => id));
    const one = fc.tuple(fc.constantFrom(...all), fc.constantFrom(...all));
    return fc.array(one, { maxLength: 6 }).map((pairs) => ({
      procedure,
      all,
      ties: Object.fromEntries(pairs.map(([a, b]) => [tieKey(procedure.code, a), b])),
    }));
  });
  fc.assert(
    fc.property(anyTies, ({ procedure, all, ties }) => {
      const moved = tied(procedure, ties);
      const after = moved.phases.flatMap(({ steps }) => steps.map(({ id }) => id));
      expect([...after].sort()).toEqual([...all].sort());
      expect(moved.phases.map(({ phase }) => phase)).toEqual(
        procedure.phases.map(({ phase }) => phase),
      );
      const phaseOf = (of: typeof procedure, id: string) =>
        PHASES.indexOf(
          of.phases.find(({ steps }) => steps.some((step) => step.id === id))?.phase ?? 'after',
        );
      for (const id of all) expect(phaseOf(moved, id)).toBeLessThanOrEqual(phaseOf(procedure, id));
      // Those that are not tied keep their order among each other.
      const movers = tiesOf(procedure, ties);
      const still = (list: readonly string[]) => list.filter((id) => !movers.has(id));
      expect(still(after)).toEqual(still(all));
    }),
  );
});

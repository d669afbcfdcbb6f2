/** An own version beside its original: what differs, and how the two come together. */

import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  editedProcedure,
  type ListChange,
  type ProcedureEdit,
} from '../../../src/core/procedure/edit';
import { movedSteps, ownDifference } from '../../../src/core/procedure/ownDifference';
import { mergeOwn } from '../../../src/core/procedure/ownMerge';
import { findStep, partsOf, withAllPhases } from '../../../src/core/procedure/parts';
import type { AbnormalList, Procedure } from '../../../src/core/procedure/procedure';
import { sameDocument } from '../../../src/core/same';
import { anyEdit, listChange, stepChange, WRITTEN } from './edits';

const BASE = withAllPhases(WRITTEN);

const versionWith = (edits: readonly ProcedureEdit[], from: Procedure = BASE): Procedure =>
  edits.reduce(editedProcedure, from);

const versions = fc.array(anyEdit(BASE), { maxLength: 20 }).map((edits) => versionWith(edits));

const listEdit = (id: string, to: ListChange): ProcedureEdit => ({ kind: 'change-list', id, to });

const leading = (to: AbnormalList['then']): ListChange => Object.fromEntries([['then', to]]);

const idsIn = (procedure: Procedure, part: string) =>
  partsOf(procedure)
    .find((one) => one.part === part)
    ?.steps.map(({ id }) => id);

describe('what is one’s own', () => {
  test('a version has nothing other than itself, and any other has something', () => {
    fc.assert(
      fc.property(versions, (own) => {
        expect(ownDifference(own, own)).toEqual({ aircraft: null, options: [], parts: [] });
        const isOther = !sameDocument([own.phases, own.lists], [BASE.phases, BASE.lists]);
        expect(ownDifference(BASE, own).parts.length > 0).toBe(isOther);
      }),
    );
  });

  test('each kind of change is told in the part it was made in', () => {
    const own = versionWith([
      { kind: 'change', id: 'pins', to: { response: 'four, in the rack' } },
      { kind: 'remove', id: 'lamps' },
      { kind: 'duplicate', id: 'oil', as: 'own-1' },
      { kind: 'move', id: 'brief', to: { part: 'taxi', index: 0 } },
    ]);
    const told = ownDifference(BASE, own).parts.map((one) => ({
      part: one.part,
      added: one.added.map(({ id }) => id),
      removed: one.removed.map(({ id }) => id),
      moved: one.moved.map(({ step, from }) => `${step.id} from ${from}`),
      reworded: one.reworded.map(({ before, after }) => `${before.response} → ${after.response}`),
    }));
    expect(told).toEqual([
      {
        part: 'ramp',
        added: [],
        removed: ['lamps'],
        moved: [],
        reworded: ['set → four, in the rack'],
      },
      { part: 'taxi', added: ['own-1'], removed: [], moved: ['brief from ramp'], reworded: [] },
    ]);
  });

  test('a list that has another title and leads elsewhere is told by what it was and is', () => {
    const own = versionWith([
      listEdit('go-around', { title: 'Overshoot' }),
      listEdit('go-around', leading('end')),
    ]);
    const [one, ...others] = ownDifference(BASE, own).parts;
    expect(others).toEqual([]);
    expect(one).toMatchObject({ part: 'list/go-around', added: [], moved: [], reworded: [] });
    expect(one?.list?.before).toMatchObject({ title: 'Go-around' });
    expect(one?.list?.after).toMatchObject({ title: 'Overshoot', ...leading('end') });
  });

  test('an option that is fitted otherwise, named otherwise, new or gone is told by what it was and is', () => {
    const hook = { id: 'hook', name: 'Hook', fitted: true };
    const tank = { id: 'tank', name: 'Tank', fitted: false };
    const told = (...options: NonNullable<Procedure['options']>) =>
      ownDifference(BASE, { ...BASE, options });
    expect(told(hook)).toEqual({ aircraft: null, options: [], parts: [] });
    expect(ownDifference(BASE, { ...BASE, aircraft: 'other' })).toEqual({
      aircraft: 'other',
      options: [],
      parts: [],
    });
    const unfitted = { ...hook, fitted: false };
    expect(told(unfitted)).toEqual({
      aircraft: null,
      options: [{ before: hook, after: unfitted }],
      parts: [],
    });
    const renamed = { ...hook, name: 'Tail hook' };
    expect(told(renamed).options).toEqual([{ before: hook, after: renamed }]);
    expect(told(tank, hook).options).toEqual([{ before: null, after: tank }]);
    expect(told().options).toEqual([{ before: hook, after: null }]);
    expect(
      ownDifference({ ...BASE, options: [hook, tank] }, { ...BASE, options: [tank, hook] }),
    ).toEqual({ aircraft: null, options: [], parts: [] });
  });

  test('of steps in another order as few as will do are told as moved', () => {
    const own = versionWith([{ kind: 'move', id: 'pins', to: { part: 'ramp', index: 3 } }]);
    expect([...movedSteps(BASE, own)]).toEqual(['pins']);
  });
});

describe('following the original', () => {
  test('an original that did not change leaves the own version as it is', () => {
    fc.assert(
      fc.property(versions, (mine) => {
        const merged = mergeOwn({ base: BASE, theirs: BASE, mine });
        expect(merged.conflicts).toEqual([]);
        expect(merged.document).toEqual(mine);
      }),
      { numRuns: 300 },
    );
  });

  test('an own version without a change becomes the new original', () => {
    fc.assert(
      fc.property(versions, (theirs) => {
        const merged = mergeOwn({ base: BASE, theirs, mine: BASE });
        expect(merged.conflicts).toEqual([]);
        expect(merged.document).toEqual(theirs);
      }),
      { numRuns: 300 },
    );
  });

  test('the same changes on both sides are no conflict', () => {
    fc.assert(
      fc.property(versions, (both) => {
        const merged = mergeOwn({ base: BASE, theirs: both, mine: both });
        expect(merged.conflicts).toEqual([]);
        expect(merged.document).toEqual(both);
      }),
      { numRuns: 300 },
    );
  });

  /** The names of the steps, each given to one side or to none. */
  const shared = fc.tuple(
    ...partsOf(BASE)
      .flatMap(({ steps }) => steps)
      .map(({ id }) => fc.constantFrom('mine', 'theirs').map((side) => [id, side] as const)),
  );

  test('changes of different steps are never in conflict, and each is there', () => {
    const changes = fc.array(
      fc.record({
        step: fc.nat(100),
        what: fc.oneof(
          stepChange.map((to) => ({ kind: 'change' as const, to })),
          fc.constant({ kind: 'remove' as const }),
          fc.record({
            kind: fc.constant('move' as const),
            to: fc.record({
              part: fc.constantFrom(...partsOf(BASE).map(({ part }) => part)),
              index: fc.nat(4),
            }),
          }),
        ),
      }),
      { maxLength: 12 },
    );
    fc.assert(
      fc.property(shared, changes, changes, (sides, myChanges, theirChanges) => {
        const edits = (side: string, all: typeof myChanges): ProcedureEdit[] => {
          const ids = sides.filter(([, whose]) => whose === side).map(([id]) => id);
          return ids.length === 0
            ? []
            : all.map(({ step, what }) => ({ ...what, id: ids[step % ids.length] ?? '' }));
        };
        const mine = versionWith(edits('mine', myChanges));
        const theirs = versionWith(edits('theirs', theirChanges));
        const { document, conflicts } = mergeOwn({ base: BASE, theirs, mine });
        expect(conflicts).toEqual([]);
        for (const [id, whose] of sides) {
          const here = findStep(document, id);
          const there = findStep(whose === 'mine' ? mine : theirs, id);
          expect(here?.step).toEqual(there?.step);
          expect(here?.part).toEqual(there?.part);
        }
      }),
      { numRuns: 500 },
    );
  });

  test('no step is lost or doubled, whatever both did', () => {
    fc.assert(
      fc.property(versions, versions, fc.constantFrom('mine', 'theirs'), (mine, theirs, side) => {
        const { conflicts } = mergeOwn({ base: BASE, theirs, mine });
        const chosen = new Map(conflicts.map(({ id }) => [id, side] as const));
        const { document } = mergeOwn({ base: BASE, theirs, mine }, chosen);
        const ids = partsOf(document).flatMap(({ steps }) => steps.map(({ id }) => id));
        expect(new Set(ids).size).toBe(ids.length);
        for (const { id } of partsOf(mine).flatMap(({ steps }) => steps)) {
          const isDropped = findStep(theirs, id) === null && findStep(BASE, id) !== null;
          if (!isDropped) expect(ids).toContain(id);
        }
        for (const conflict of conflicts) {
          expect(findStep(document, conflict.id)?.step).toEqual(conflict[side]?.step);
          expect(findStep(document, conflict.id)?.part).toEqual(conflict[side]?.part);
        }
      }),
      { numRuns: 500 },
    );
  });

  test('a step that both reworded is a conflict, and is as the pilot says', () => {
    const reword = (response: string) =>
      versionWith([{ kind: 'change', id: 'flaps', to: { response } }]);
    const three = { base: BASE, mine: reword('15°'), theirs: reword('20°') };
    const { document, conflicts } = mergeOwn(three);
    expect(conflicts.map(({ id }) => id)).toEqual(['flaps']);
    expect(findStep(document, 'flaps')?.step.response).toBe('15°');
    const taken = mergeOwn(three, new Map([['flaps', 'theirs']]));
    expect(findStep(taken.document, 'flaps')?.step.response).toBe('20°');
  });

  test('a step that one reworded and the other removed is a conflict', () => {
    const mine = versionWith([{ kind: 'remove', id: 'flaps' }]);
    const theirs = versionWith([{ kind: 'change', id: 'flaps', to: { response: '20°' } }]);
    const three = { base: BASE, mine, theirs };
    expect(mergeOwn(three).conflicts.map(({ id }) => id)).toEqual(['flaps']);
    expect(findStep(mergeOwn(three).document, 'flaps')).toBeNull();
    const taken = mergeOwn(three, new Map([['flaps', 'theirs']]));
    expect(findStep(taken.document, 'flaps')?.step.response).toBe('20°');
  });

  describe('a list', () => {
    const goAround = ({ lists }: Procedure) => lists.find(({ id }) => id === 'go-around');

    test('that I titled and the original led elsewhere has both, without a conflict', () => {
      const mine = versionWith([listEdit('go-around', { title: 'Overshoot' })]);
      const theirs = versionWith([
        listEdit('go-around', leading('end')),
        listEdit('go-around', { phases: ['recovery'] }),
      ]);
      const { document, listConflicts } = mergeOwn({ base: BASE, mine, theirs });
      expect(listConflicts).toEqual([]);
      expect(goAround(document)).toMatchObject({
        title: 'Overshoot',
        phases: ['recovery'],
        ...leading('end'),
      });
    });

    test('that both led elsewhere is a conflict, and leads where the pilot says', () => {
      const mine = versionWith([
        listEdit('go-around', leading('return')),
        listEdit('go-around', { title: 'Overshoot' }),
      ]);
      const theirs = versionWith([listEdit('go-around', leading('end'))]);
      const three = { base: BASE, mine, theirs };
      const { document, listConflicts } = mergeOwn(three);
      expect(listConflicts.map(({ id }) => id)).toEqual(['go-around']);
      expect(goAround(document)).toMatchObject({ title: 'Overshoot', ...leading('return') });
      const taken = mergeOwn(three, new Map([['list/go-around', 'theirs']]));
      expect(goAround(taken.document)).toMatchObject({ title: 'Overshoot', ...leading('end') });
    });

    test('is never in conflict with what was changed alike, or by one side alone', () => {
      fc.assert(
        fc.property(listChange, listChange, fc.boolean(), (a, b, alike) => {
          const mine = versionWith([listEdit('go-around', a)]);
          const theirs = versionWith([
            listEdit(alike ? 'go-around' : 'gear-unsafe', alike ? a : b),
          ]);
          const merged = mergeOwn({ base: BASE, mine, theirs });
          expect(merged.listConflicts).toEqual([]);
          expect(goAround(merged.document)).toEqual(goAround(mine));
        }),
      );
    });
  });

  test('a step that the original added comes behind the one it was added behind', () => {
    const mine = versionWith([{ kind: 'move', id: 'oil', to: { part: 'taxi', index: 0 } }]);
    const theirs = versionWith([{ kind: 'duplicate', id: 'flaps', as: 'slats' }]);
    const { document } = mergeOwn({ base: BASE, mine, theirs });
    expect(idsIn(document, 'taxi')).toEqual(['oil', 'flaps', 'slats', 'stop-bar']);
  });
});

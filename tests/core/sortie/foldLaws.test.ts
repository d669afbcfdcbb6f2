import fc from 'fast-check';
import { expect, test } from 'vitest';
import { entriesThatCount } from '../../../src/core/sortie/counting';
import { compareEntries, type Entry } from '../../../src/core/sortie/entry';
import { foldSortie, NO_SORTIE, sortiesOf } from '../../../src/core/sortie/fold';
import { anyEvent, anyRecord, entry, fromLater } from './recorder';

const highest = (list: readonly Entry[]) => Math.max(0, ...list.map(({ seq }) => seq));

/** The list with one more undo at its end. */
const undoing = (list: readonly Entry[], target: string, id: string): Entry[] => [
  ...list,
  entry({ kind: 'undo', target }, highest(list) + 1, id),
];

test('entries say the same in whatever order they come, and given twice', () => {
  const shuffled = anyRecord.chain((list) =>
    fc
      .shuffledSubarray([...list, ...list], { minLength: 2 * list.length })
      .map((mixed) => ({ list, mixed })),
  );
  fc.assert(
    fc.property(shuffled, ({ list, mixed }) => {
      expect(foldSortie(mixed)).toEqual(foldSortie(list));
    }),
  );
});

test('two lists say the same, merged in either order', () => {
  const parted = anyRecord.chain((list) =>
    fc
      .array(fc.constantFrom('here', 'there', 'both'), {
        minLength: list.length,
        maxLength: list.length,
      })
      .map((sides) => ({
        list,
        here: list.filter((_, index) => sides[index] !== 'there'),
        there: list.filter((_, index) => sides[index] !== 'here'),
      })),
  );
  fc.assert(
    fc.property(parted, ({ list, here, there }) => {
      const whole = foldSortie(list);
      expect(foldSortie([...here, ...there])).toEqual(whole);
      expect(foldSortie([...there, ...here])).toEqual(whole);
    }),
  );
});

test('whatever is done last and taken back leaves what was before', () => {
  fc.assert(
    fc.property(anyRecord, anyEvent, (list, event) => {
      const last = entry(event, highest(list) + 1, 'last');
      // A tick that stands already is the same tick given twice: taken back once, both are gone.
      fc.pre(!entriesThatCount(list).some((before) => saysTheSame(before, last)));
      expect(foldSortie(undoing([...list, last], 'last', 'undo'))).toEqual(foldSortie(list));
    }),
    { numRuns: 500 },
  );
});

function saysTheSame(a: Entry, b: Entry): boolean {
  const said = ({ id: _, seq: _seq, at: _at, ...event }: Entry) => JSON.stringify(event);
  return 'saw' in a && said(a) === said(b);
}

test('an undo that is undone does nothing, whatever it had taken back', () => {
  const withTarget = anyRecord.chain((list) =>
    fc.constantFrom(...list).map((target) => ({ list, target: target.id })),
  );
  fc.assert(
    fc.property(withTarget, ({ list, target }) => {
      const undone = undoing(list, target, 'undo');
      expect(foldSortie(undoing(undone, 'undo', 'redo'))).toEqual(foldSortie(list));
    }),
  );
});

test('undone one after another to the first, nothing is left', () => {
  fc.assert(
    fc.property(anyRecord, (list) => {
      let all = list;
      for (const [index, { id }] of [...entriesThatCount(list)].reverse().entries()) {
        all = undoing(all, id, `undo ${index}`);
      }
      expect(foldSortie(all)).toEqual(NO_SORTIE);
    }),
  );
});

test('a kind that only a later version knows changes nothing', () => {
  fc.assert(
    fc.property(anyRecord, fc.nat({ max: 30 }), (list, seq) => {
      expect(foldSortie([fromLater(seq, 'another'), ...list])).toEqual(foldSortie(list));
    }),
  );
});

test('an entry of a known kind that carries something else is skipped, and never throws', () => {
  const kinds =
    'set wind clock done held cannot open close passed reopen stamp interrupted resumed undo sealed';
  const parts =
    'inputs text north sortieMs rate run pass passes step saw procedure list leadsTo what target documents figures';
  const damaged = fc
    .record({
      kind: fc.constantFrom(...kinds.split(' ')),
      carried: fc.dictionary(fc.constantFrom(...parts.split(' ')), fc.anything()),
      seq: fc.nat({ max: 30 }),
    })
    .map(
      ({ kind, carried, seq }) =>
        ({ ...carried, ...fromLater(seq, 'damaged'), kind }) as unknown as Entry,
    );
  fc.assert(
    fc.property(anyRecord, damaged, (list, one) => {
      expect(() => foldSortie([...list, one])).not.toThrow();
    }),
    { numRuns: 500 },
  );
});

test('the list is cut into sorties without losing or doubling an entry', () => {
  const several = anyRecord.chain((list) =>
    fc
      .array(fc.constantFrom('one', 'two', 'three'), {
        minLength: list.length,
        maxLength: list.length,
      })
      .map((names) => list.map((one, index) => ({ ...one, sortie: names[index] ?? '' }))),
  );
  fc.assert(
    fc.property(several, (list) => {
      const sorties = sortiesOf(list);
      expect([...sorties.values()].flat().sort(compareEntries)).toEqual(
        [...list].sort(compareEntries),
      );
      for (const [id, entries] of sorties) {
        expect(new Set(entries.map(({ sortie }) => sortie))).toEqual(new Set([id]));
      }
      const begins = [...sorties.values()].map(([first]) => first);
      expect(begins).toEqual([...begins].sort((a, b) => (a && b ? compareEntries(a, b) : 0)));
    }),
  );
});

test('the list above is the last of those open, and each is open once', () => {
  fc.assert(
    fc.property(anyRecord, (list) => {
      const sortie = foldSortie(list);
      expect(sortie.list).toBe(sortie.lists.at(-1) ?? null);
      expect(new Set(sortie.lists.map(({ list: id }) => id)).size).toBe(sortie.lists.length);
    }),
  );
});

test('a pass never goes back, whatever comes after', () => {
  fc.assert(
    fc.property(anyRecord, anyEvent, (list, event) => {
      const before = foldSortie(list);
      const after = foldSortie([...list, entry(event, highest(list) + 1, 'last')]);
      fc.pre(before.run?.id === after.run?.id);
      for (const [phase, pass] of Object.entries(before.run?.passes ?? {})) {
        expect(Object.entries(after.run?.passes ?? {})).toContainEqual([
          phase,
          expect.toSatisfy((now: number) => now >= pass),
        ]);
      }
    }),
  );
});

test('stopped between any two entries and taken up again, it says what it had said by then', () => {
  fc.assert(
    fc.property(anyRecord, fc.nat(), (list, at) => {
      const ordered = [...list].sort(compareEntries);
      const cut = at % (ordered.length + 1);
      const kept: readonly Entry[] = JSON.parse(JSON.stringify(ordered.slice(0, cut)));
      // What was written is all there is: read back, it says the same, and the rest adds to it.
      expect(foldSortie(kept)).toEqual(foldSortie(ordered.slice(0, cut)));
      expect(foldSortie([...kept, ...ordered.slice(cut)])).toEqual(foldSortie(list));
    }),
  );
});

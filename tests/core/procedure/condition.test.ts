import fc from 'fast-check';
import { expect, test } from 'vitest';
import { factsIn, holds } from '../../../src/core/procedure/condition';
import { CONDITION_FACTS } from '../../../src/core/procedure/conditionFacts';
import type { FactValues } from '../../../src/core/procedure/facts';
import type { Condition } from '../../../src/core/procedure/procedure.schema';
import { Pilot, procedureOf, step } from './invented';

const anyFact = fc.constantFrom(...CONDITION_FACTS);
const anyCondition: fc.Arbitrary<Condition> = fc.letrec<{ condition: Condition }>((tie) => ({
  condition: fc.oneof(
    { depthSize: 'small' },
    anyFact.map((fact) => ({ fact })),
    fc.array(tie('condition'), { maxLength: 3 }).map((all) => ({ all })),
    fc.array(tie('condition'), { maxLength: 3 }).map((any) => ({ any })),
    tie('condition').map((not) => ({ not })),
  ),
})).condition;
const anyFacts: fc.Arbitrary<FactValues> = fc.dictionary(
  anyFact,
  fc.constantFrom(true, false, null),
);

const BOTH = [true, false, null] as const;
const NIGHT: Condition = { fact: 'night' };
const WET: Condition = { fact: 'wet' };

test.each([
  // Kleene, Introduction to Metamathematics, 1952, § 64: the strong tables; value from memory.
  [true, true, true, true],
  [true, false, false, true],
  [true, null, null, true],
  [false, true, false, true],
  [false, false, false, false],
  [false, null, false, null],
  [null, true, null, true],
  [null, false, false, null],
  [null, null, null, null],
])('of %s and %s, both are %s and either is %s', (night, wet, both, either) => {
  expect(holds({ all: [NIGHT, WET] }, { night, wet })).toBe(both);
  expect(holds({ any: [NIGHT, WET] }, { night, wet })).toBe(either);
});

test.each([
  [true, false],
  [false, true],
  [null, null],
])('what is not %s is %s', (night, not) => {
  expect(holds({ not: NIGHT }, { night })).toBe(not);
});

test('of nothing, all hold and none does', () => {
  expect(holds({ all: [] }, {})).toBe(true);
  expect(holds({ any: [] }, {})).toBe(false);
});

test('what is denied twice is what it was', () => {
  fc.assert(
    fc.property(anyCondition, anyFacts, (condition, facts) => {
      expect(holds({ not: { not: condition } }, facts)).toBe(holds(condition, facts));
    }),
  );
});

test('De Morgan: not all is some not, not any is all not', () => {
  fc.assert(
    fc.property(fc.array(anyCondition, { maxLength: 4 }), anyFacts, (parts, facts) => {
      const denied = parts.map((not): Condition => ({ not }));
      expect(holds({ not: { all: parts } }, facts)).toBe(holds({ any: denied }, facts));
      expect(holds({ not: { any: parts } }, facts)).toBe(holds({ all: denied }, facts));
    }),
  );
});

test('a condition that is decided stays so, whatever the unknown facts turn out to be', () => {
  fc.assert(
    fc.property(anyCondition, anyFacts, anyFacts, (condition, facts, more) => {
      const before = holds(condition, facts);
      fc.pre(before !== null);
      const known = Object.fromEntries(
        Object.entries(facts).filter(([, value]) => typeof value === 'boolean'),
      );
      expect(holds(condition, { ...more, ...known })).toBe(before);
    }),
  );
});

test('with every fact known, every condition is decided', () => {
  const allKnown = fc.record(
    Object.fromEntries(CONDITION_FACTS.map((fact) => [fact, fc.boolean()])),
  );
  fc.assert(
    fc.property(anyCondition, allKnown, (condition, facts) => {
      expect(holds(condition, facts)).not.toBeNull();
    }),
  );
});

test('only the facts it asks for can change a condition, and each is named once', () => {
  fc.assert(
    fc.property(anyCondition, anyFacts, anyFact, (condition, facts, fact) => {
      const asked = factsIn(condition);
      expect(new Set(asked).size).toBe(asked.length);
      fc.pre(!asked.includes(fact));
      for (const value of BOTH) {
        expect(holds(condition, { ...facts, [fact]: value })).toBe(holds(condition, facts));
      }
    }),
  );
});

test('a condition names every fact in it', () => {
  const condition: Condition = {
    any: [{ not: { fact: 'night' } }, { all: [{ fact: 'wet' }, { fact: 'night' }] }],
  };
  expect([...factsIn(condition)].sort()).toEqual(['night', 'wet']);
});

test('a step is dropped only where its condition is known not to hold', () => {
  fc.assert(
    fc.property(anyCondition, anyFacts, (when, known) => {
      const pilot = new Pilot(procedureOf({ ramp: [step('lamps', { when })] }));
      const unknown = Object.fromEntries(CONDITION_FACTS.map((fact) => [fact, null]));
      pilot.now = { ...pilot.now, ...unknown, ...known };
      expect(pilot.stateOf('lamps')).toBe(holds(when, known) === false ? 'not-needed' : 'open');
    }),
  );
});

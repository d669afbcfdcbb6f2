/** Conditions as they are picked are the conditions that are kept. */

import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { holds } from '../../../src/core/procedure/condition';
import { CONDITION_FACTS } from '../../../src/core/procedure/conditionFacts';
import type { Condition } from '../../../src/core/procedure/procedure.schema';
import {
  type AskedPart,
  pickedCondition,
  type SimpleCondition,
  simpleCondition,
} from '../../../src/core/procedure/simpleCondition';

const part: fc.Arbitrary<AskedPart> = fc.record({
  asked: fc.oneof(
    fc.constantFrom(...CONDITION_FACTS).map((fact) => ({ fact })),
    fc.nat(60).map((windAboveKt) => ({ windAboveKt })),
    fc.constantFrom('hook', 'chute').map((option) => ({ option })),
  ),
  not: fc.boolean(),
});
const picked: fc.Arbitrary<SimpleCondition> = fc.record({
  join: fc.constantFrom('all', 'any'),
  parts: fc.array(part, { maxLength: 8 }),
});

test('what was picked is picked again when it is opened', () => {
  fc.assert(
    fc.property(picked, (condition) => {
      const again = simpleCondition(pickedCondition(condition));
      expect(again?.parts).toEqual(condition.parts);
      if (condition.parts.length > 1) expect(again?.join).toBe(condition.join);
    }),
  );
});

test('all and any mean what they say', () => {
  const parts: readonly AskedPart[] = [
    { asked: { fact: 'night' }, not: false },
    { asked: { windAboveKt: 20 }, not: true },
  ];
  const under = (join: 'all' | 'any', night: boolean, windKt: number) => {
    const condition = pickedCondition({ join, parts });
    return condition && holds(condition, { night, windKt });
  };
  expect(under('all', true, 15)).toBe(true);
  expect(under('all', true, 25)).toBe(false);
  expect(under('any', false, 15)).toBe(true);
  expect(under('any', false, 25)).toBe(false);
});

test('a condition that goes deeper is not shown as one that does not', () => {
  const deep: Condition = {
    any: [{ fact: 'wet' }, { all: [{ fact: 'night' }, { fact: 'lights' }] }],
  };
  expect(simpleCondition(deep)).toBeNull();
  expect(simpleCondition({ not: { not: { fact: 'wet' } } })).toBeNull();
  expect(simpleCondition({ all: [] })).toBeNull();
});

/** The shape of a condition: a leaf that asks for a fact, or all, any or none of several. */

import * as v from 'valibot';
import { described, knots } from '../document.schema';
import { CONDITION_FACTS } from './conditionFacts';

/** When a step applies: a fact, a wind, an option, or all, any or none of several. */
export type Condition =
  | { readonly fact: (typeof CONDITION_FACTS)[number] }
  | { readonly windAboveKt: number }
  | { readonly option: string }
  | { readonly all: readonly Condition[] }
  | { readonly any: readonly Condition[] }
  | { readonly not: Condition };

const MOST_CONDITIONS = 8;

/** Nobody thinks deeper than this, and endlessly nested text must not exhaust the reader. */
const DEEPEST = 6;

const leaves = {
  fact: v.strictObject({ fact: v.picklist(CONDITION_FACTS, 'fact-unknown') }),
  windAboveKt: v.strictObject({
    windAboveKt: described(knots, 'The gust, or the steady wind where there is none, is above it.'),
  }),
  option: v.strictObject({
    option: described(v.pipe(v.string(), v.maxLength(32)), 'One of the procedure’s options.'),
  }),
};

const branches = (part: v.GenericSchema<Condition>) => ({
  all: v.strictObject({ all: v.pipe(v.array(part), v.maxLength(MOST_CONDITIONS)) }),
  any: v.strictObject({ any: v.pipe(v.array(part), v.maxLength(MOST_CONDITIONS)) }),
  not: v.strictObject({ not: part }),
});

/**
 * A condition, dispatched on its own key, so that the issue of a wrong fact names the fact and not
 * the whole. `left` is how much deeper it may nest. Called without input to build its JSON Schema.
 */
function conditionWithin(left: number): v.GenericSchema<Condition> {
  return v.lazy((input): v.GenericSchema<Condition> => {
    if (input === undefined) return conditionSchema;
    if (left === 0) return v.never('condition-too-deep');
    const named = { ...leaves, ...branches(conditionWithin(left - 1)) };
    const isNamed = (name: string): name is keyof typeof named => Object.hasOwn(named, name);
    const name = Object.keys(Object(input)).find(isNamed);
    return name === undefined ? v.never('condition-unknown') : named[name];
  });
}

/** A condition, wherever one stands. */
export const conditionNamed = conditionWithin(DEEPEST);

/** The same as a union of shapes; exported so that its JSON Schema has a name. */
export const conditionSchema: v.GenericSchema<Condition> = v.union([
  ...Object.values(leaves),
  ...Object.values(branches(conditionWithin(DEEPEST))),
]);

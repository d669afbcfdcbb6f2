/** What a procedure document is. The JSON Schema in public/schemas is generated from this. */

import * as v from 'valibot';
import { described, document, holdsTogether, shortText, text } from '../document.schema';
import type { LiveName } from './facts';
import { procedureFaults } from './faults';
import { CONDITION_FACTS, PHASES } from './phases';

const phase = v.picklist(PHASES);

/** The live numbers that a gate can be passed by: speeds. */
const GATE_SPEEDS = [
  'rotateKt',
  'liftOffKt',
  'gearKt',
  'flapsKt',
  'reheatOffKt',
  'climbKt',
  'approachKt',
] as const satisfies readonly LiveName[];

const stepId = described(
  v.pipe(v.string(), v.regex(/^[a-z0-9-]{1,32}$/)),
  'Unique within the procedure; never reused for another step.',
);

/** When a step applies: a fact, or all, any or none of some. */
export type Condition =
  | { readonly fact: (typeof CONDITION_FACTS)[number] }
  | { readonly all: readonly Condition[] }
  | { readonly any: readonly Condition[] }
  | { readonly not: Condition };

const MOST_CONDITIONS = 8;

/** The shape of a condition; exported so that its JSON Schema has a name. */
export const conditionSchema: v.GenericSchema<Condition> = v.union([
  v.strictObject({ fact: v.picklist(CONDITION_FACTS) }),
  v.strictObject({
    all: v.pipe(v.array(v.lazy(() => conditionSchema)), v.maxLength(MOST_CONDITIONS)),
  }),
  v.strictObject({
    any: v.pipe(v.array(v.lazy(() => conditionSchema)), v.maxLength(MOST_CONDITIONS)),
  }),
  v.strictObject({ not: v.lazy(() => conditionSchema) }),
]);

const step = v.strictObject({
  id: stepId,
  kind: described(
    v.picklist(['do', 'check', 'wait', 'say', 'gate', 'barrier']),
    'do: set it. check: look at it. wait: for an indication. say: on the radio. gate: by a speed. barrier: nothing held back passes.',
  ),
  item: described(shortText, 'What, as on the panel. May hold live numbers such as {runway}.'),
  response: described(
    shortText,
    'The state it must be in, never "checked". May hold live numbers.',
  ),
  note: described(v.optional(text), 'Where to look or how, in a few words. May hold live numbers.'),
  critical: described(v.optional(v.boolean()), 'The key must be held to tick it.'),
  expectS: described(
    v.optional(v.pipe(v.number(), v.minValue(0), v.maxValue(3600))),
    'For wait: how long it usually takes, seconds.',
  ),
  gate: described(
    v.optional(v.picklist(GATE_SPEEDS)),
    'For gate: the live number of the speed it is passed by.',
  ),
  tiedTo: described(
    v.optional(v.picklist(['brakes released'])),
    'Ticked together with that moment, and shown beside its key.',
  ),
  when: v.optional(conditionSchema),
  until: described(
    v.optional(phase),
    'If a fact that the step depends on changes before this phase ends, it is due again. Its own phase where left out.',
  ),
});

const steps = v.pipe(v.array(step), v.maxLength(80));

const procedureShape = v.strictObject({
  ...document('procedure'),
  code: described(v.pipe(v.string(), v.regex(/^[a-z0-9-]{2,24}$/)), 'Short name of the procedure.'),
  name: shortText,
  aircraft: described(
    v.pipe(v.string(), v.regex(/^[a-z0-9-]{2,24}$/)),
    'The code of the aircraft it is for.',
  ),
  about: text,
  phases: described(
    v.pipe(v.array(v.strictObject({ phase, steps })), v.maxLength(PHASES.length)),
    'In the order of the phases; a phase without steps may be left out.',
  ),
  lists: described(
    v.pipe(
      v.array(
        v.strictObject({
          id: v.picklist(['rejected-takeoff']),
          title: shortText,
          steps,
          // biome-ignore lint/suspicious/noThenProperty: an object under this name never makes a promise; only a function would.
          then: described(
            v.strictObject({ phase, reopen: v.array(phase) }),
            'Which phase is taken up again at its end, and which phases are due again.',
          ),
        }),
      ),
      v.maxLength(20),
    ),
    'What to do when it goes wrong.',
  ),
});

/** One line of a procedure document. */
export type StepShape = v.InferOutput<typeof step>;

/** A procedure document of the right shape, whose steps may still clash. */
export type ProcedureShape = v.InferOutput<typeof procedureShape>;

/** A procedure: the steps of each phase, and the lists for when it goes wrong. */
export const procedureSchema = v.pipe(procedureShape, holdsTogether(procedureFaults));

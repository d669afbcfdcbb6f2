/** What a procedure document is. The JSON Schema in public/schemas is generated from this. */

import * as v from 'valibot';
import { described, document, holdsTogether, languages, shortText, text } from '../document.schema';
import { textFaults } from '../plainText';
import { conditionNamed } from './condition.schema';
import { procedureFaults } from './faults';
import { LIST_GROUPS } from './listGroup';
import { PHASES } from './phases';
import { GATE_SPEEDS, HIGHEST_GATE_FT, LONGEST_WAIT_S, MOST_LISTS, STEP_KINDS } from './stepKinds';

export { type Condition, conditionSchema } from './condition.schema';

const phase = v.picklist(PHASES);

const shortName = v.pipe(v.string(), v.regex(/^[a-z0-9-]{1,32}$/, 'form-name'));

const stepId = described(shortName, 'Unique within the procedure; never reused for another step.');

const step = v.strictObject({
  id: stepId,
  kind: described(
    v.picklist(STEP_KINDS),
    'do: set it. check: look at it. wait: for an indication. say: on the radio. gate: by a speed or a height. note: to be read. barrier: the runway check, which nothing outstanding passes.',
  ),
  item: described(shortText, 'What, as on the panel. May hold live numbers such as {runway}.'),
  response: described(
    shortText,
    'The state it must be in, never "checked". May hold live numbers.',
  ),
  note: described(v.optional(text), 'Where to look or how, in a few words. May hold live numbers.'),
  call: described(
    v.optional(text),
    'For say: the words of the call. Its live numbers are written as they are spoken.',
  ),
  critical: described(v.optional(v.boolean()), 'The key must be held to tick it.'),
  expectS: described(
    v.optional(v.pipe(v.number(), v.minValue(0), v.maxValue(LONGEST_WAIT_S))),
    'For wait: how long it usually takes, seconds.',
  ),
  gate: described(
    v.optional(v.picklist(GATE_SPEEDS)),
    'For gate: the live number of the speed it is passed by.',
  ),
  gateFt: described(
    v.optional(v.pipe(v.number(), v.minValue(0), v.maxValue(HIGHEST_GATE_FT))),
    'For gate: the height above the field it is passed at, feet.',
  ),
  tiedTo: described(
    v.optional(v.picklist(['brakes released'])),
    'Ticked together with that moment, and shown beside its key.',
  ),
  needs: described(
    v.optional(stepId),
    'In a list: the step of a phase that it builds on. Where that one cannot be done, this one is not there to be used. Done, a check makes that one true again; anything else uses it.',
  ),
  when: v.optional(conditionNamed),
  until: described(
    v.optional(phase),
    'If a fact that the step depends on changes before this phase ends, it is due again. Its own phase where left out.',
  ),
});

const steps = v.pipe(v.array(step), v.maxLength(80));

const toPhase = v.strictObject({ phase, reopen: v.array(phase) });
const toPlace = v.picklist(['return', 'end'], 'leads-nowhere');

/** Where a list leads. The issue of a wrong phase names the phase, not the whole. */
const leads: v.GenericSchema<v.InferOutput<typeof toPhase> | v.InferOutput<typeof toPlace>> =
  v.lazy((input) => {
    if (input === undefined) return v.union([toPlace, toPhase]);
    if (typeof input !== 'object' || input === null) return toPlace;
    return 'phase' in input || 'reopen' in input ? toPhase : v.never('leads-nowhere');
  });

const list = v.strictObject({
  id: described(
    shortName,
    'Unique within the procedure. The list `rejected-takeoff` opens with "Stopping", `go-around` with "Go around"; `another-try` is offered at the end of the first.',
  ),
  title: shortText,
  group: described(
    v.optional(v.picklist(LIST_GROUPS)),
    'Under which heading it is offered. Where left out: `go-around` by its own, every other with the emergencies.',
  ),
  phases: described(
    v.optional(v.pipe(v.array(phase), v.maxLength(PHASES.length))),
    'Where it is looked for first.',
  ),
  steps,
  // biome-ignore lint/suspicious/noThenProperty: an object under this name never makes a promise; only a function would.
  then: described(
    leads,
    'Where its end leads. return: to the place that was left. end: to the end of the sortie. Or to a phase, with the phases that are due again.',
  ),
});

const option = v.strictObject({
  id: described(shortName, 'The name that conditions ask for.'),
  name: shortText,
  fitted: described(v.boolean(), 'Whether it is, unless the pilot says otherwise.'),
});

const code = v.pipe(v.string(), v.regex(/^[a-z0-9-]{2,24}$/, 'form-name'));

const basedOn = v.strictObject({
  code: described(code, 'The code of the original.'),
  hash: described(
    v.pipe(v.string(), v.regex(/^[0-9a-f]{16}$/, 'form-hash')),
    'The content of the original.',
  ),
});

const edition = v.strictObject({
  number: described(v.pipe(v.number(), v.integer(), v.minValue(1)), 'Counts from 1.'),
  keptAt: described(v.pipe(v.string(), v.isoTimestamp('form-time')), 'When it was kept, UTC.'),
});

const procedureShape = v.strictObject({
  ...document('procedure'),
  code: described(
    code,
    'Short name of the procedure. A version of one’s own has that of its original.',
  ),
  name: shortText,
  language: languages.language,
  aircraft: described(
    v.pipe(v.string(), v.regex(/^[a-z0-9-]{2,24}$/, 'form-name')),
    'The code of the aircraft it is for.',
  ),
  about: text,
  basedOn: described(
    v.optional(basedOn),
    'For a version of one’s own: what it was made from, so that it can follow when that changes.',
  ),
  edition: described(v.optional(edition), 'For a version of one’s own: which one it is.'),
  options: described(
    v.optional(v.pipe(v.array(option), v.maxLength(12))),
    'What one aircraft of the type has and another has not. The pilot says which is fitted.',
  ),
  phases: described(
    v.pipe(v.array(v.strictObject({ phase, steps })), v.maxLength(PHASES.length)),
    'In the order of the phases; a phase without steps may be left out.',
  ),
  lists: described(
    v.pipe(v.array(list), v.maxLength(MOST_LISTS)),
    'What to do when it goes wrong, or when it goes on otherwise than planned.',
  ),
});

/** One line of a procedure document. */
export type StepShape = v.InferOutput<typeof step>;

/** A procedure document of the right shape, whose steps may still clash. */
export type ProcedureShape = v.InferOutput<typeof procedureShape>;

/** A procedure: the steps of each phase, and the lists for when something goes wrong. */
export const procedureSchema = v.pipe(
  procedureShape,
  holdsTogether<ProcedureShape>(textFaults),
  holdsTogether(procedureFaults),
);

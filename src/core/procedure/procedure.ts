/** A procedure, as its document gives it. */

import type { InferOutput } from 'valibot';
import type { PHASES } from './phases';
import type { procedureSchema } from './procedure.schema';

/** A procedure: the steps of each phase, and the lists for when something goes wrong. */
export type Procedure = InferOutput<typeof procedureSchema>;

/** A part of a sortie, from the ramp to after landing. */
export type Phase = (typeof PHASES)[number];

/** One line of a procedure: an item and the state it must be in. */
export type Step = Procedure['phases'][number]['steps'][number];

/** A list for when something goes wrong. */
export type AbnormalList = Procedure['lists'][number];

/** What one aircraft of the type has and another lacks. */
export type ProcedureOption = NonNullable<Procedure['options']>[number];

/** Names a step within its procedure. */
export type StepId = Step['id'];

/** Every step of the phases and lists. */
export const allStepsOf = ({ phases, lists }: Procedure): readonly Step[] =>
  [...phases, ...lists].flatMap(({ steps }) => steps);

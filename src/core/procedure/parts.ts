/** The parts of a procedure that contain steps: its phases and its lists. */

import type { ListId } from '../sortie/entry';
import { PHASES } from './phases';
import type { Phase, Procedure, Step, StepId } from './procedure';

export type PartId = Phase | `list/${ListId}`;

/** Where a step stands. */
export interface StepPlace {
  readonly part: PartId;
  /** How many steps of the part precede it. */
  readonly index: number;
}

export interface PlacedStep extends StepPlace {
  readonly step: Step;
}

/** The part a list is. */
export const listPart = (id: ListId): PartId => `list/${id}`;

/** The id of a part's list; null for a phase. */
export const listIn = (part: PartId): ListId | null =>
  part.startsWith('list/') ? part.slice('list/'.length) : null;

/** Every part with its steps, in document order: the phases, then the lists. */
export function partsOf({ phases, lists }: Pick<Procedure, 'phases' | 'lists'>): readonly {
  readonly part: PartId;
  readonly steps: readonly Step[];
}[] {
  return [
    ...phases.map(({ phase, steps }) => ({ part: phase, steps })),
    ...lists.map(({ id, steps }) => ({ part: listPart(id), steps })),
  ];
}

/** Every step with its place, by id. */
export function placesOf(procedure: Procedure): ReadonlyMap<StepId, PlacedStep> {
  return new Map(
    partsOf(procedure).flatMap(({ part, steps }) =>
      steps.map((step, index) => [step.id, { step, part, index }] as const),
    ),
  );
}

/** Where a step stands; null if nowhere. */
export function findStep(procedure: Procedure, id: StepId): PlacedStep | null {
  for (const { part, steps } of partsOf(procedure)) {
    const index = steps.findIndex((step) => step.id === id);
    const step = steps[index];
    if (step !== undefined) return { step, part, index };
  }
  return null;
}

/** The steps of a part; null if the procedure has no such part. */
export const stepsIn = (procedure: Procedure, part: PartId): readonly Step[] | null =>
  partsOf(procedure).find((one) => one.part === part)?.steps ?? null;

/** The procedure with other steps in one of its parts. Everything else stays the same object. */
export function withSteps(procedure: Procedure, part: PartId, steps: readonly Step[]): Procedure {
  const list = listIn(part);
  if (list === null) {
    const phases = procedure.phases.map((one) =>
      one.phase === part ? { ...one, steps: [...steps] } : one,
    );
    return { ...procedure, phases };
  }
  const lists = procedure.lists.map((one) =>
    one.id === list ? { ...one, steps: [...steps] } : one,
  );
  return { ...procedure, lists };
}

/** The procedure with all phases, even empty ones, so that a step can go to any. */
export function withAllPhases(procedure: Procedure): Procedure {
  const phases = PHASES.map(
    (phase) => procedure.phases.find((one) => one.phase === phase) ?? { phase, steps: [] },
  );
  return { ...procedure, phases };
}

/** The procedure without its empty phases. */
export const withoutEmptyPhases = (procedure: Procedure): Procedure => ({
  ...procedure,
  phases: procedure.phases.filter(({ steps }) => steps.length > 0),
});

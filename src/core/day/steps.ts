/** Last stage: where the pilot is in the steps, given the facts of the moment. */

import type { Aircraft } from '../aircraft/aircraft';
import { languageOf, textIn } from '../language';
import type { Facts } from '../procedure/facts';
import type { AbnormalList, Procedure, StepId } from '../procedure/procedure';
import { tied } from '../procedure/tied';
import { type StepRow, type Walk, walk } from '../procedure/walk';
import { notThere, walkList } from '../procedure/walkList';
import { type Inputs, tieKey } from '../sortie/entry';
import type { Run, Stamp } from '../sortie/fold';

export interface StepsBrief {
  /** With the pilot's ties: a step done earlier stands where it is done. */
  readonly procedure: Procedure;
  readonly facts: Facts;
  readonly walk: Walk;
  /** The open list, and the walk through it. */
  readonly abnormal: {
    readonly list: AbnormalList;
    readonly walk: Walk;
    /** Its steps that are unusable because what they build on is. */
    readonly notThere: readonly StepRow[];
  } | null;
}

/** Where the pilot is in the procedure; null without one. */
export function stepsStage(
  given: Procedure | null,
  { ties, notSimulated }: Pick<Inputs, 'ties' | 'notSimulated'>,
  run: Run | null,
  list: Run | null,
  stamps: readonly Stamp[],
  facts: Facts,
): StepsBrief | null {
  if (given === null) return null;
  const procedure = tied(given, ties);
  const flown = walk(procedure, run, stamps, facts, notSimulatedIn(procedure, notSimulated));
  const opened = procedure.lists.find(({ id }) => id === list?.list);
  return { procedure, facts, walk: flown, abnormal: openList(opened, list, facts, flown) };
}

/** Steps of the procedure that the simulation hasn't; none can be left out that others wait for. */
function notSimulatedIn(
  { code, phases }: Procedure,
  keys: Inputs['notSimulated'],
): ReadonlySet<StepId> {
  const steps = phases.flatMap((part) => part.steps);
  const left = steps.filter(
    ({ id, kind }) => kind !== 'barrier' && keys.includes(tieKey(code, id)),
  );
  return new Set(left.map(({ id }) => id));
}

function openList(
  list: AbnormalList | undefined,
  run: Run | null,
  facts: Facts,
  flown: Walk,
): StepsBrief['abnormal'] {
  if (list === undefined || run === null) return null;
  const through = walkList(list, run, facts, rowsOf(flown));
  return { list, walk: through, notThere: notThere(through, run) };
}

/** All phases' steps, in order. */
export const rowsOf = ({ phases }: Walk): readonly StepRow[] => phases.flatMap(({ rows }) => rows);

/** The steps of a list that would be unusable if it were opened now. */
export function notThereIn(
  { procedure, facts, walk: flown }: StepsBrief,
  listId: AbnormalList['id'],
): readonly StepRow[] {
  const list = procedure.lists.find(({ id }) => id === listId);
  return list === undefined ? [] : notThere(walkList(list, null, facts, rowsOf(flown)), null);
}

/** How the take-off is stopped now. */
export interface StopNow {
  /** The aircraft's own words, but for those that a step names which is not there to be used. */
  readonly items: readonly string[];
  /** Steps that one would reach for in vain, because what they build on could not be done. */
  readonly notThere: readonly StepRow[];
}

/** How to stop, from the aircraft's document; without a procedure, as it is written. */
export function stopNow(aircraft: Aircraft, brief: StepsBrief | null): StopNow {
  const rows = brief === null ? [] : notThereIn(brief, 'rejected-takeoff');
  const language = languageOf(brief?.procedure ?? {});
  const named = (item: string, { step }: StepRow) =>
    textIn(aircraft, item, language).text.toLowerCase() === step.item.toLowerCase();
  return {
    items: aircraft.stop.filter((item) => !rows.some((row) => named(item, row))),
    notThere: rows.filter(({ state }) => state.kind === 'cannot'),
  };
}

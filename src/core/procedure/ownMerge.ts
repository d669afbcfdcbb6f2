/**
 * The pilot's own version follows its original: the original's changes combined with the pilot's.
 */

import { sameDocument } from '../same';
import type { ListId } from '../sortie/entry';
import { LIST_NAMES, OPTIONAL_OF_LIST } from './edit';
import { movedSteps } from './ownDifference';
import { listPart, type PartId, type PlacedStep, partsOf, placesOf } from './parts';
import { PHASES } from './phases';
import type { AbnormalList, Procedure, Step, StepId } from './procedure';

/** Whose step is taken. */
export type Side = 'mine' | 'theirs';

/** A step both changed, differently; null on a side that no longer has it. */
export interface StepConflict {
  readonly id: StepId;
  readonly base: PlacedStep | null;
  readonly mine: PlacedStep | null;
  readonly theirs: PlacedStep | null;
}

/**
 * A list where both changed the same property, such as where it leads, differently; steps aside.
 */
export interface ListConflict {
  readonly id: ListId;
  readonly mine: AbnormalList;
  readonly theirs: AbnormalList;
}

/** The merged version, and what both changed. */
export interface MergedProcedure {
  readonly document: Procedure;
  readonly conflicts: readonly StepConflict[];
  readonly listConflicts: readonly ListConflict[];
}

/**
 * Whose version wins where both changed the same: of a step by its id, of a list by that of its
 * part.
 */
export type ChosenSides = ReadonlyMap<StepId | PartId, Side>;

interface Three {
  readonly base: Procedure;
  readonly theirs: Procedure;
  readonly mine: Procedure;
}

/**
 * Three-way merge by step ids. What only one side changed is as that side has it; where both
 * changed a step, or the same property of a list, differently, `chosen` decides, and without it the
 * pilot's own wins. The order of the steps in a part is never a conflict: the pilot's own counts.
 */
export function mergeOwn(three: Three, chosen: ChosenSides = new Map()): MergedProcedure {
  const { base, theirs, mine } = three;
  const places = { base: placesOf(base), theirs: placesOf(theirs), mine: placesOf(mine) };
  const moved = { theirs: movedSteps(base, theirs), mine: movedSteps(base, mine) };
  const ids = new Set([...places.mine.keys(), ...places.theirs.keys()]);
  const conflicts: StepConflict[] = [];
  const taken = new Map<StepId, { readonly step: Step; readonly placedBy: Side }>();
  for (const id of ids) {
    const conflict: StepConflict = {
      id,
      base: places.base.get(id) ?? null,
      mine: places.mine.get(id) ?? null,
      theirs: places.theirs.get(id) ?? null,
    };
    const isConflict = inConflict(conflict);
    if (isConflict) conflicts.push(conflict);
    const side = isConflict ? (chosen.get(id) ?? 'mine') : sideOf(conflict);
    const from = conflict[side];
    if (from === null) continue;
    const isFollowed = moved.theirs.has(id) && !moved.mine.has(id);
    const placedBy =
      isConflict || conflict.mine?.part !== conflict.theirs?.part
        ? side
        : isFollowed
          ? 'theirs'
          : 'mine';
    taken.set(id, { step: from.step, placedBy });
  }
  const order = (part: PartId) => merged(part, three, taken, moved.mine);
  return {
    document: documentOf(three, order, chosen),
    conflicts,
    listConflicts: listConflicts(three),
  };
}

/** Whether the step was changed, or moved to another part. */
const isChanged = (was: PlacedStep | null, is: PlacedStep | null): boolean =>
  was?.part !== is?.part || !sameDocument(was?.step, is?.step);

const inConflict = ({ base, mine, theirs }: StepConflict): boolean =>
  isChanged(base, mine) && isChanged(base, theirs) && isChanged(mine, theirs);

/** The changed value if only one side changed it; if both made the same change, either. */
const sideOf = ({ base, mine }: StepConflict): Side => (isChanged(base, mine) ? 'mine' : 'theirs');

/**
 * The steps of a part, in the pilot's order; what the original added follows the step the original
 * put it after.
 */
function merged(
  part: PartId,
  { theirs, mine }: Three,
  taken: ReadonlyMap<StepId, { readonly step: Step; readonly placedBy: Side }>,
  movedByMine: ReadonlySet<StepId>,
): Step[] {
  const idsIn = (procedure: Procedure) =>
    partsOf(procedure)
      .filter((one) => one.part === part)
      .flatMap(({ steps }) => steps.map(({ id }) => id));
  const ids = idsIn(mine).filter((id) => taken.get(id)?.placedBy === 'mine');
  let behind: StepId | null = null;
  for (const id of idsIn(theirs)) {
    if (taken.get(id)?.placedBy === 'theirs') {
      ids.splice(behind === null ? 0 : ids.indexOf(behind) + 1, 0, id);
      behind = id;
    } else if (ids.includes(id) && !movedByMine.has(id)) {
      behind = id;
    }
  }
  return ids.flatMap((id) => taken.get(id)?.step ?? []);
}

/** What the pilot left alone is as the original has it now. */
const pick = <T>(base: T, theirs: T, mine: T): T => (sameDocument(base, mine) ? theirs : mine);

function documentOf(
  { base, theirs, mine }: Three,
  order: (part: PartId) => Step[],
  chosen: ChosenSides,
): Procedure {
  const has = ({ phases }: Procedure, phase: string) => phases.some((one) => one.phase === phase);
  const phases = PHASES.map((phase) => ({ phase, steps: order(phase) })).filter(
    ({ phase, steps }) =>
      steps.length > 0 || pick(has(base, phase), has(theirs, phase), has(mine, phase)),
  );
  return {
    ...pick(base, theirs, mine),
    name: pick(base.name, theirs.name, mine.name),
    aircraft: pick(base.aircraft, theirs.aircraft, mine.aircraft),
    about: pick(base.about, theirs.about, mine.about),
    options: pick(base.options, theirs.options, mine.options),
    phases,
    lists: listsOf({ base, theirs, mine }, order, chosen),
  };
}

const findList = ({ lists }: Procedure, id: ListId) => lists.find((list) => list.id === id);

/**
 * The lists of both, in the pilot's order if it was changed. One the original dropped stays as long as
 * the pilot has steps in it.
 */
function listsOf(
  { base, theirs, mine }: Three,
  order: (part: PartId) => Step[],
  chosen: ChosenSides,
): AbnormalList[] {
  const head = (list: AbnormalList | undefined) => list && { ...list, steps: [] };
  const idsOf = ({ lists }: Procedure) => lists.map(({ id }) => id);
  const inOrder = pick(idsOf(base), idsOf(theirs), idsOf(mine));
  const ids = new Set([...inOrder, ...idsOf(theirs), ...idsOf(mine)]);
  return [...ids].flatMap((id) => {
    const steps = order(listPart(id));
    const heads = [base, theirs, mine].map((one) => head(findList(one, id)));
    const [was, fresh, own] = heads;
    const kept =
      was && fresh && own
        ? mergedHead(was, fresh, own, chosen.get(listPart(id)) ?? 'mine')
        : (pick(was, fresh, own) ?? (steps.length > 0 ? (own ?? fresh) : undefined));
    return kept === undefined ? [] : [{ ...kept, steps }];
  });
}

/** A list's own properties: each as the side that changed it has it, and if both did, as chosen. */
function mergedHead(
  was: AbnormalList,
  theirs: AbnormalList,
  mine: AbnormalList,
  side: Side,
): AbnormalList {
  const names = LIST_NAMES.filter((name) =>
    sameDocument(was[name], mine[name])
      ? true
      : side === 'theirs' && !sameDocument(was[name], theirs[name]),
  );
  const merged = { ...mine, ...Object.fromEntries(names.map((name) => [name, theirs[name]])) };
  for (const name of OPTIONAL_OF_LIST) if (merged[name] === undefined) delete merged[name];
  return merged;
}

function listConflicts({ base, theirs, mine }: Three): readonly ListConflict[] {
  return mine.lists.flatMap((own): ListConflict[] => {
    const [was, fresh] = [findList(base, own.id), findList(theirs, own.id)];
    if (was === undefined || fresh === undefined) return [];
    const both = LIST_NAMES.some(
      (name) =>
        !sameDocument(was[name], own[name]) &&
        !sameDocument(was[name], fresh[name]) &&
        !sameDocument(own[name], fresh[name]),
    );
    return both ? [{ id: own.id, mine: own, theirs: fresh }] : [];
  });
}

/** How a pilot's own version differs from what it is based on. */

import { sameDocument } from '../same';
import { LIST_NAMES } from './edit';
import { listIn, type PartId, type PlacedStep, partsOf, placesOf } from './parts';
import type { AbnormalList, Procedure, ProcedureOption, Step, StepId } from './procedure';

/** What differs in one part. A step both moved and reworded is listed as both. */
export interface PartDifference {
  readonly part: PartId;
  readonly added: readonly Step[];
  readonly removed: readonly Step[];
  /** Steps that moved here, and where they were. */
  readonly moved: readonly { readonly step: Step; readonly from: PartId }[];
  readonly reworded: readonly { readonly before: Step; readonly after: Step }[];
  /** A list whose title, first phases or end changed; null if none did. */
  readonly list: { readonly before: AbnormalList; readonly after: AbnormalList } | null;
}

/** An option added, dropped, renamed, or fitted differently; null on a side that lacks it. */
export interface OptionDifference {
  readonly before: ProcedureOption | null;
  readonly after: ProcedureOption | null;
}

/** What differs: the options that steps ask for, and part by part. */
export interface OwnDifference {
  /** The code of the aircraft it is for now; null if it is for the same. */
  readonly aircraft: string | null;
  readonly options: readonly OptionDifference[];
  /** The parts that differ, in the order of the own version. */
  readonly parts: readonly PartDifference[];
}

/** Everything that differs; nothing in any of them if nothing does. */
export const ownDifference = (base: Procedure, own: Procedure): OwnDifference => ({
  aircraft: base.aircraft === own.aircraft ? null : own.aircraft,
  options: optionDifferences(base.options, own.options),
  parts: partDifferences(base, own),
});

/** Matched by name; their order doesn't matter. */
function optionDifferences(
  base: readonly ProcedureOption[] = [],
  own: readonly ProcedureOption[] = [],
): readonly OptionDifference[] {
  const ids = new Set([...own, ...base].map(({ id }) => id));
  const named = (options: readonly ProcedureOption[], id: string) =>
    options.find((option) => option.id === id) ?? null;
  return [...ids]
    .map((id) => ({ before: named(base, id), after: named(own, id) }))
    .filter(({ before, after }) => !sameDocument(before, after));
}

function partDifferences(base: Procedure, own: Procedure): readonly PartDifference[] {
  const before = placesOf(base);
  const after = placesOf(own);
  const moved = movedSteps(base, own);
  const parts = new Set([...partsOf(own), ...partsOf(base)].map(({ part }) => part));
  return [...parts]
    .map((part): PartDifference => {
      const stood = [...before.values()].filter((one) => one.part === part);
      const stand = [...after.values()].filter((one) => one.part === part);
      return {
        part,
        added: stand.filter(({ step }) => !before.has(step.id)).map(({ step }) => step),
        removed: stood.filter(({ step }) => !after.has(step.id)).map(({ step }) => step),
        moved: stand
          .filter(({ step }) => moved.has(step.id))
          .map(({ step }) => ({ step, from: before.get(step.id)?.part ?? part })),
        reworded: stand.flatMap(({ step }) => {
          const was = before.get(step.id)?.step;
          return was === undefined || sameDocument(was, step) ? [] : [{ before: was, after: step }];
        }),
        list: listDifference(base, own, part),
      };
    })
    .filter(
      ({ added, removed, moved, reworded, list }) =>
        list !== null || added.length + removed.length + moved.length + reworded.length > 0,
    );
}

function listDifference(base: Procedure, own: Procedure, part: PartId): PartDifference['list'] {
  const [before, after] = [base, own].map(({ lists }) =>
    lists.find(({ id }) => id === listIn(part)),
  );
  if (before === undefined || after === undefined) return null;
  return LIST_NAMES.every((name) => sameDocument(before[name], after[name]))
    ? null
    : { before, after };
}

/**
 * The steps that moved: to another part, or within their part, where these are the fewest to take
 * out so that the others keep their old order.
 */
export function movedSteps(before: Procedure, after: Procedure): ReadonlySet<StepId> {
  const were = placesOf(before);
  const are = [...placesOf(after).values()].filter(({ step }) => were.has(step.id));
  const stayedIn = (one: PlacedStep) => were.get(one.step.id)?.part === one.part;
  const moved = new Set(are.filter((one) => !stayedIn(one)).map(({ step }) => step.id));
  for (const part of new Set(are.map((one) => one.part))) {
    const stayed = are.filter((one) => one.part === part && stayedIn(one));
    const inOrder = longestRise(stayed.map(({ step }) => were.get(step.id)?.index ?? 0));
    for (const [index, { step }] of stayed.entries()) if (!inOrder.has(index)) moved.add(step.id);
  }
  return moved;
}

/** The indexes of a longest increasing subsequence. */
function longestRise(numbers: readonly number[]): ReadonlySet<number> {
  /** For each length, the index of the smallest number such a subsequence can end in. */
  const ends: number[] = [];
  /** For each number, the index of its predecessor. */
  const before: (number | undefined)[] = [];
  for (const [place, number] of numbers.entries()) {
    const at = ends.findIndex((end) => (numbers[end] ?? 0) >= number);
    const length = at === -1 ? ends.length : at;
    before.push(ends[length - 1]);
    ends[length] = place;
  }
  const row = new Set<number>();
  for (let place = ends.at(-1); place !== undefined; place = before[place]) row.add(place);
  return row;
}

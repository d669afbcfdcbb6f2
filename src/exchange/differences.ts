/** How an incoming document differs from the one of the same code that is already here. */

import type { AbnormalList, Procedure, Step } from '../core';
import { canonicalJson } from './hash';

/** The steps that differ between two versions of a procedure. */
export interface StepDifferences {
  readonly added: readonly Step[];
  readonly removed: readonly Step[];
  /** The same step with other wording, or under another condition. */
  readonly changed: readonly { readonly before: Step; readonly after: Step }[];
  /** Unchanged steps that come elsewhere. */
  readonly moved: number;
  /**
   * Titles of lists that are new, or changed apart from their steps: title, where looked for first,
   * where they lead.
   */
  readonly lists: readonly string[];
}

/** Every step of a procedure, with its phase or list. */
function placed({
  phases,
  lists,
}: Procedure): readonly { readonly in: string; readonly step: Step }[] {
  return [
    ...phases.flatMap(({ phase, steps }) => steps.map((step) => ({ in: phase, step }))),
    ...lists.flatMap(({ id, steps }) => steps.map((step) => ({ in: `list ${id}`, step }))),
  ];
}

/** How many steps a procedure has, its lists included. */
export const countSteps = (procedure: Procedure): number => placed(procedure).length;

/** What differs step by step; steps are matched by id. */
export function stepDifferences(before: Procedure, after: Procedure): StepDifferences {
  const old = new Map(placed(before).map((one) => [one.step.id, one]));
  const fresh = new Map(placed(after).map((one) => [one.step.id, one]));
  const both = [...fresh.values()].flatMap((one) => {
    const was = old.get(one.step.id);
    return was === undefined ? [] : [{ was, one }];
  });
  // The fewest to take out so that the others keep their old order.
  const places = new Map([...old.keys()].map((id, index) => [id, index]));
  const stayed = both.filter(({ was, one }) => was.in === one.in);
  const inOrder = longestRise(stayed.map(({ one }) => places.get(one.step.id) ?? 0));
  return {
    added: [...fresh.values()].flatMap(({ step }) => (old.has(step.id) ? [] : [step])),
    removed: [...old.values()].flatMap(({ step }) => (fresh.has(step.id) ? [] : [step])),
    changed: both.flatMap(({ was, one }) =>
      canonicalJson(was.step) === canonicalJson(one.step)
        ? []
        : [{ before: was.step, after: one.step }],
    ),
    moved: both.length - inOrder,
    lists: after.lists
      .filter((list) => headText(list) !== headText(before.lists.find(({ id }) => id === list.id)))
      .map(({ title }) => title),
  };
}

const headText = (list: AbnormalList | undefined): string =>
  list === undefined ? '' : canonicalJson({ ...list, steps: [] });

/** What a step has apart from its item and response. */
export type StepAspect = Exclude<keyof Step, 'id' | 'item' | 'response'>;

const ASPECTS: readonly StepAspect[] = [
  'critical',
  'when',
  'kind',
  'until',
  'tiedTo',
  'needs',
  'gate',
  'gateFt',
  'expectS',
  'note',
  'call',
];

/**
 * What differs between two versions of a step; what decides whether and how it is ticked comes
 * first.
 */
export const aspectsThatDiffer = (before: Step, after: Step): readonly StepAspect[] =>
  ASPECTS.filter(
    (name) => canonicalJson(before[name] ?? null) !== canonicalJson(after[name] ?? null),
  );

/** The top-level parts that differ between two documents, such as `runways`, in document order. */
export function partsThatDiffer(before: object, after: object): readonly string[] {
  const old = new Map<string, unknown>(Object.entries(before));
  const fresh = new Map<string, unknown>(Object.entries(after));
  return [...new Set([...fresh.keys(), ...old.keys()])].filter(
    (name) =>
      name !== '$schema' &&
      canonicalJson(old.get(name) ?? null) !== canonicalJson(fresh.get(name) ?? null),
  );
}

/** The length of the longest increasing subsequence. */
function longestRise(numbers: readonly number[]): number {
  /** For each length, the smallest number such a subsequence can end in. */
  const ends: number[] = [];
  for (const number of numbers) {
    const place = ends.findIndex((end) => end >= number);
    ends[place === -1 ? ends.length : place] = number;
  }
  return ends.length;
}

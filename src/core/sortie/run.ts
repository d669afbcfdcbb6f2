/** A walk through the steps of a procedure or of one of its lists, as the record tells it. */

import type { FactValues } from '../procedure/facts';
import { PHASES } from '../procedure/phases';
import type { Phase, StepId } from '../procedure/procedure';
import type { Entry, Hash, Id, ListId, StepOutcome } from './entry';

/** When something was decided about a step, and under which facts. */
export interface Decided {
  readonly id: Id;
  /** The entry's number. */
  readonly seq: number;
  readonly saw: FactValues;
  readonly at: Entry['at'];
}

/** What happened to a step, and the facts it was done under. */
export interface Ticked extends Decided {
  readonly outcome: StepOutcome;
  readonly why: string | null;
}

/** A step of a list that was done, and the entry's number. */
export interface DoneInList {
  readonly list: ListId;
  readonly step: StepId;
  readonly seq: number;
}

/** A walk through the steps of a procedure, or of one of its lists. */
export interface Run {
  readonly id: Id;
  readonly procedure: Hash;
  /** Null for the procedure itself. */
  readonly list: ListId | null;
  /** The pass each phase is in, counting from 1. */
  readonly passes: Readonly<Record<Phase, number>>;
  /** What happened to each step, by {@link tickKey}. */
  readonly ticks: ReadonlyMap<string, Ticked>;
  /** What was done in the lists opened from it, in order, the closed ones too. */
  readonly doneInLists: readonly DoneInList[];
  /** The steps passed because they weren't needed, by {@link tickKey}. */
  readonly passed: ReadonlyMap<string, Decided>;
  /** The phases not flown because the pilot began at a later one, by {@link phaseKey}. */
  readonly notFlown: ReadonlySet<string>;
  /**
   * The last thing done in this run, which "Back" undoes; `step` is the last step, if there was
   * one.
   */
  readonly last: { readonly id: Id; readonly step: StepId | null; readonly at: Entry['at'] } | null;
  /** When the run was left and not yet resumed. */
  readonly interruptedAt: Entry['at'] | null;
  readonly openedAt: Entry['at'];
}

/** The key of a step's outcome in a run: the same step flown again is another. */
export function tickKey(pass: number, step: StepId): string {
  return `${pass}/${step}`;
}

/** The key of a phase in a pass. */
export function phaseKey(pass: number, phase: Phase): string {
  return `${pass}/${phase}`;
}

/** Whether the pilot began at a later phase, in the present pass of this one. */
export const isNotFlown = (run: Run | null, phase: Phase): boolean =>
  run?.notFlown.has(phaseKey(run.passes[phase], phase)) ?? false;

type Draft<T> = { -readonly [K in keyof T]: T[K] };

/** A run while it is being folded. */
export interface RunDraft
  extends Draft<Omit<Run, 'passes' | 'ticks' | 'passed' | 'doneInLists' | 'notFlown'>> {
  doneInLists: DoneInList[];
  passes: Record<Phase, number>;
  ticks: Map<string, Ticked>;
  passed: Map<string, Decided>;
  notFlown: Set<string>;
}

/** A run in which nothing was done yet. */
export function openedRun(
  id: Id,
  procedure: Hash,
  list: ListId | null,
  openedAt: Entry['at'],
): RunDraft {
  return {
    id,
    procedure,
    list,
    passes: Object.fromEntries(PHASES.map((phase) => [phase, 1])) as Record<Phase, number>,
    ticks: new Map(),
    passed: new Map(),
    doneInLists: [],
    notFlown: new Set(),
    last: null,
    interruptedAt: null,
    openedAt,
  };
}

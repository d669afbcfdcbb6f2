/**
 * Where the pilot is in the steps: which one is due, what is held back, what isn't needed, what
 * must be done again. All derived from the procedure, the record and the facts of the moment.
 */

import type { Moment } from '../sortie/entry';
import { isNotFlown, type Run, type Stamp, tickKey } from '../sortie/fold';
import type { Facts } from './facts';
import { PHASES } from './phases';
import type { Phase, Procedure, Step, StepId } from './procedure';
import { order, type Recorded, type StepState, stateOf } from './stepState';
import { undoneIn } from './undone';

/** A step and how it stands in the present pass. */
export interface StepRow {
  readonly step: Step;
  readonly phase: Phase;
  readonly pass: number;
  readonly state: StepState;
}

/** What the pilot has to do now. */
export type WalkPosition =
  /** A step; `barrier` is what this held-back step must come before, if anything. */
  | { readonly kind: 'step'; readonly row: StepRow; readonly barrier: Step | Moment | null }
  /** A moment to stamp, with the steps ticked together with it. */
  | { readonly kind: 'moment'; readonly moment: Moment; readonly tied: readonly StepRow[] }
  /** An abnormal list has reached its end. */
  | { readonly kind: 'list-end' }
  /** Everything is handled. */
  | { readonly kind: 'end' };

/** What comes after the due step: a step or a moment. */
export type Upcoming =
  | { readonly kind: 'step'; readonly row: StepRow }
  | { readonly kind: 'moment'; readonly moment: Moment };

/** A phase with its steps. */
export interface PhaseRows {
  readonly phase: Phase;
  readonly rows: readonly StepRow[];
  /** Steps that count: all but those not needed. */
  readonly total: number;
  /** Those of them that are done or can't be. */
  readonly handled: number;
}

/** The whole walk, as it stands now. */
export interface Walk {
  readonly phases: readonly PhaseRows[];
  readonly phase: Phase;
  readonly position: WalkPosition;
  /** What follows the due step, in order. */
  readonly next: readonly Upcoming[];
  /** What was put off and still can be done: what the flight has gone past stays undone. */
  readonly heldBack: readonly StepRow[];
  /** The step handled last, if the last thing done was a step. */
  readonly lastHandled: StepRow | null;
}

/** What the record says about a step in a pass. */
export const recordedOf = (
  run: Run | null,
  pass: number,
  step: Step,
  undone?: ReadonlyMap<StepId, number>,
): Recorded => {
  const key = tickKey(pass, step.id);
  const tick = run?.ticks.get(key);
  const undoneAt = undone?.get(step.id);
  return {
    tick,
    decided: run?.passed.get(key),
    isUndone: tick !== undefined && undoneAt !== undefined && undoneAt > tick.seq,
  };
};

/** Whether nothing more is to be done with a step. */
export const isHandled = (row: StepRow): boolean =>
  row.state.kind === 'done' || row.state.kind === 'cannot' || !isCounted(row);

/** Whether a step counts in its phase: it is needed, and its phase is flown. */
const isCounted = ({ state: { kind } }: StepRow): boolean =>
  kind !== 'not-needed' && kind !== 'not-flown';

/** Whether a step is waiting to be done. */
export const isWaiting = (row: StepRow): boolean =>
  row.state.kind === 'open' || row.state.kind === 'again';

/** The furthest phase in which anything was done, in the present pass of each. */
function furthestPhase(procedure: Procedure, run: Run | null, happened: ReadonlySet<Moment>) {
  const ticked = procedure.phases
    .filter(({ phase, steps }) =>
      steps.some((step) => run?.ticks.has(tickKey(run.passes[phase], step.id))),
    )
    .map(({ phase }) => order(phase));
  const stamped = [
    happened.has('brakes released') ? order('roll') : 0,
    happened.has('airborne') ? order('climb') : 0,
    happened.has('landed') ? order('after') : 0,
  ];
  const leftOut = PHASES.filter((phase) => isNotFlown(run, phase)).map((phase) => order(phase) + 1);
  return Math.max(0, ...ticked, ...stamped, ...leftOut);
}

/** The moments stamped in the present pass of the roll. */
function momentsOf(run: Run | null, stamps: readonly Stamp[]): ReadonlySet<Moment> {
  const pass = run?.passes.roll ?? 1;
  return new Set(stamps.filter((stamp) => stamp.pass === pass).map((stamp) => stamp.what));
}

const NOT_SIMULATED: StepState = {
  kind: 'not-needed',
  facts: [],
  passed: false,
  decided: null,
  notSimulated: true,
};

const LEFT_OUT: StepState = { kind: 'not-needed', facts: [], passed: true, decided: null };

const BEGUN_LATER: StepState = { kind: 'not-flown' };

/** Whether something was decided of a step that beginning at a later phase leaves as it is. */
const isDecided = (state: StepState): boolean =>
  state.kind === 'done' ||
  state.kind === 'cannot' ||
  (state.kind === 'again' && 'outcome' in state.tick);

/** Whether this take-off began rolling, as in a touch-and-go: no brakes were released for it. */
const hasRolledOn = (run: Run | null, happened: ReadonlySet<Moment>): boolean =>
  (run?.passes.roll ?? 1) > 1 && happened.has('airborne') && !happened.has('brakes released');

/** Stopped on the runway: what would have been flown after the roll is not. */
const hasStopped = (happened: ReadonlySet<Moment>): boolean =>
  happened.has('stopping') && !happened.has('airborne');

/** The phases that a take-off which was stopped never gets to. */
const NOT_FLOWN: readonly Phase[] = ['climb', 'recovery'];

/** Where the flight has gone past the steps of a phase, though they were put off. */
const LAPSES_AT: Partial<Record<Phase, Phase>> = {
  roll: 'recovery',
  climb: 'recovery',
  recovery: 'after',
};

/** Whether what was put off is left undone: nobody raises the flaps on final for the climb. */
function hasLapsed({ phase }: StepRow, reached: number): boolean {
  const at = LAPSES_AT[phase];
  return at !== undefined && reached >= order(at);
}

/** The moments that follow the steps of a phase. */
function momentsIn(phase: Phase): readonly Moment[] {
  if (phase === 'roll') return ['brakes released', 'airborne'];
  return phase === 'recovery' ? ['landed'] : [];
}

/** The walk through a procedure. */
export function walk(
  procedure: Procedure,
  run: Run | null,
  stamps: readonly Stamp[],
  facts: Facts,
  /** Steps that the simulation hasn't. */
  notSimulated: ReadonlySet<StepId> = new Set(),
): Walk {
  const happened = momentsOf(run, stamps);
  const reached = furthestPhase(procedure, run, happened);
  const rolledOn = hasRolledOn(run, happened);
  const undone = undoneIn(procedure, run);
  const stopped = hasStopped(happened);
  const phases = PHASES.map((phase): PhaseRows => {
    const pass = run?.passes[phase] ?? 1;
    const steps = procedure.phases.find((part) => part.phase === phase)?.steps ?? [];
    return phaseRows(
      phase,
      steps.map((step) => {
        const recorded = recordedOf(run, pass, step, undone);
        if (recorded.tick === undefined && notSimulated.has(step.id))
          return { step, phase, pass, state: NOT_SIMULATED };
        const isLeftOut =
          recorded.tick === undefined &&
          ((rolledOn && step.tiedTo !== undefined) || (stopped && NOT_FLOWN.includes(phase)));
        const stands = isLeftOut ? LEFT_OUT : stateOf(step, phase, recorded, facts, reached);
        const state = isNotFlown(run, phase) && !isDecided(stands) ? BEGUN_LATER : stands;
        return { step, phase, pass, state };
      }),
    );
  });
  const rows = phases.flatMap((part) => part.rows);
  const heldBack = rows.filter((row) => row.state.kind === 'held' && !hasLapsed(row, reached));
  const upcoming: Upcoming[] = phases.flatMap(({ phase, rows: inPhase }) => {
    const waiting = inPhase.filter(isWaiting).map((row) => ({ kind: 'step', row }) as const);
    const tiedTo = (entry: (typeof waiting)[number]) => entry.row.step.tiedTo;
    return [
      ...waiting.filter((entry) => tiedTo(entry) === undefined),
      ...momentsIn(phase)
        .filter((moment) => !isPast(moment, happened, reached))
        .map((moment) => ({ kind: 'moment', moment }) as const),
      // Normally ticked together with its moment; left over from a past one, it isn't lost.
      ...waiting.filter((entry) => {
        const moment = tiedTo(entry);
        return moment !== undefined && isPast(moment, happened, reached);
      }),
    ];
  });
  const position = positionAt(upcoming[0], rows, heldBack);
  return {
    phases,
    phase: phaseAt(position),
    position,
    next: upcoming[0] === undefined || isBlocked(position) ? upcoming : upcoming.slice(1),
    heldBack,
    lastHandled: lastHandled(rows, run),
  };
}

export function phaseRows(phase: Phase, rows: readonly StepRow[]): PhaseRows {
  const counting = rows.filter(isCounted);
  return { phase, rows, total: counting.length, handled: counting.filter(isHandled).length };
}

/** A moment is past once it was stamped, or a later phase was begun without it. */
function isPast(moment: Moment, happened: ReadonlySet<Moment>, reached: number): boolean {
  if (happened.has(moment) || hasStopped(happened)) return true;
  const laterPhase = moment === 'landed' ? 'after' : 'climb';
  return reached >= order(laterPhase);
}

/**
 * What is due, given the first thing that waits. Barriers, and the moments that act as one, let
 * nothing held back through.
 */
function positionAt(
  first: Upcoming | undefined,
  rows: readonly StepRow[],
  heldBack: readonly StepRow[],
): WalkPosition {
  const held = heldBack[0];
  if (first === undefined) {
    return held === undefined ? { kind: 'end' } : { kind: 'step', row: held, barrier: 'on chocks' };
  }
  if (first.kind === 'moment') {
    if (held !== undefined && first.moment === 'brakes released') {
      return { kind: 'step', row: held, barrier: first.moment };
    }
    const tied = rows.filter((row) => row.step.tiedTo === first.moment && !isHandled(row));
    return { kind: 'moment', moment: first.moment, tied };
  }
  const { row } = first;
  return row.step.kind === 'barrier' && held !== undefined
    ? { kind: 'step', row: held, barrier: row.step }
    : { kind: 'step', row, barrier: null };
}

const isBlocked = (position: WalkPosition) => position.kind === 'step' && position.barrier !== null;

function phaseAt(position: WalkPosition): Phase {
  switch (position.kind) {
    case 'step':
      if (position.barrier === 'brakes released') return 'line-up';
      return position.row.phase;
    case 'moment':
      return position.moment === 'landed' ? 'recovery' : 'roll';
    default:
      return 'after';
  }
}

/** What became of a handled step: whoever comes back must not take it for done if it isn't. */
export const handledAs = ({ state: { kind } }: StepRow): 'done' | 'held' | 'cannot' =>
  kind === 'held' || kind === 'cannot' ? kind : 'done';

/** The step handled last, if the last thing done was a step. */
export function lastHandled(rows: readonly StepRow[], run: Run | null): StepRow | null {
  const step = run?.last?.step ?? null;
  return step === null ? null : (rows.findLast((row) => row.step.id === step) ?? null);
}

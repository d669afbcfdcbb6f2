/**
 * Where the pilot is in the steps: which one is due, what is held back, what need not be done, what
 * must be done again. All of it derived from the procedure, the record and the facts of the moment.
 */

import type { Moment } from '../sortie/entry';
import { type Run, type Stamp, type Ticked, tickKey } from '../sortie/fold';
import { factsIn, holds } from './condition';
import { type FactName, type Facts, hasMoved, isLiveName, liveNamesIn } from './facts';
import { PHASES } from './phases';
import type { AbnormalList, Phase, Procedure, Step } from './procedure';

/** How a step stands. */
export type StepState =
  /** Not reached, or the one that is due. */
  | { readonly kind: 'open' }
  | { readonly kind: 'done' | 'held' | 'cannot'; readonly tick: Ticked }
  /** Its condition does not hold, or did not when it was `passed`; `facts` are those that decide it. */
  | { readonly kind: 'not-needed'; readonly facts: readonly FactName[]; readonly passed: boolean }
  /** It was done, and then facts it depends on moved. */
  | { readonly kind: 'again'; readonly tick: Ticked; readonly moved: readonly FactName[] };

/** A step and how it stands in the present pass. */
export interface StepRow {
  readonly step: Step;
  readonly phase: Phase;
  readonly pass: number;
  readonly state: StepState;
}

/** What the pilot is to do now. */
export type Position =
  /** A step; `barrier` is the one that this held-back step stands before. */
  | { readonly kind: 'step'; readonly row: StepRow; readonly barrier: Step | Moment | null }
  /** A moment to be stamped, with the steps that are ticked together with it. */
  | { readonly kind: 'moment'; readonly moment: Moment; readonly tied: readonly StepRow[] }
  /** An abnormal list is at its end. */
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
  /** Of these, done or cannot. */
  readonly handled: number;
}

/** The whole walk, as it stands now. */
export interface Walk {
  readonly phases: readonly PhaseRows[];
  readonly phase: Phase;
  readonly position: Position;
  /** What follows the due step, in order. */
  readonly next: readonly Upcoming[];
  readonly heldBack: readonly StepRow[];
  /** The step that was handled last, if the last thing done was a step. */
  readonly lastHandled: StepRow | null;
}

/** The facts a step depends on: those of its condition and the live numbers in its text. */
export function factsOf(step: Step): readonly FactName[] {
  const texts = [step.item, step.response, step.note ?? ''];
  return [
    ...new Set<FactName>([
      ...(step.when === undefined ? [] : factsIn(step.when)),
      ...texts.flatMap(liveNamesIn).filter(isLiveName),
    ]),
  ];
}

/** The facts a step depends on, with their values, for the record. */
export function sawOf(step: Step, facts: Facts): Partial<Facts> {
  return Object.fromEntries(factsOf(step).map((name) => [name, facts[name]]));
}

const order = (phase: Phase) => PHASES.indexOf(phase);

/** How a step stands. `reached` is the furthest phase the pilot has got to. */
function stateOf(
  step: Step,
  phase: Phase,
  tick: Ticked | undefined,
  facts: Facts,
  reached: number,
) {
  const past = order(step.until ?? phase) < reached;
  if (tick === undefined) {
    // Passed without a tick, it was not needed then: nobody is sent back when that changes later.
    const needed = step.when === undefined || (!past && holds(step.when, facts) !== false);
    return needed
      ? ({ kind: 'open' } as const)
      : ({ kind: 'not-needed', facts: factsIn(step.when ?? { all: [] }), passed: past } as const);
  }
  if (tick.outcome !== 'done' || past) {
    return { kind: tick.outcome, tick } as const;
  }
  const moved = factsOf(step).filter(
    (name) => name in tick.saw && hasMoved(name, tick.saw[name] ?? null, facts[name]),
  );
  // A step that was done and is no longer needed stays done: nothing is gained by asking again.
  const needed = step.when === undefined || holds(step.when, facts) !== false;
  return moved.length > 0 && needed
    ? ({ kind: 'again', tick, moved } as const)
    : ({ kind: 'done', tick } as const);
}

const isHandled = (row: StepRow) =>
  row.state.kind === 'done' || row.state.kind === 'cannot' || row.state.kind === 'not-needed';

const isWaiting = (row: StepRow) => row.state.kind === 'open' || row.state.kind === 'again';

/** The furthest phase that anything was done in, in the present pass of each. */
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
  return Math.max(0, ...ticked, ...stamped);
}

/** The moments of the present pass of the roll that were stamped. */
function momentsOf(run: Run | null, stamps: readonly Stamp[]): ReadonlySet<Moment> {
  const pass = run?.passes.roll ?? 1;
  return new Set(stamps.filter((stamp) => stamp.pass === pass).map((stamp) => stamp.what));
}

/** The moments that stand after the steps of a phase. */
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
): Walk {
  const happened = momentsOf(run, stamps);
  const reached = furthestPhase(procedure, run, happened);
  const phases = PHASES.map((phase): PhaseRows => {
    const pass = run?.passes[phase] ?? 1;
    const steps = procedure.phases.find((part) => part.phase === phase)?.steps ?? [];
    return phaseRows(
      phase,
      steps.map((step) => {
        const tick = run?.ticks.get(tickKey(pass, step.id));
        return { step, phase, pass, state: stateOf(step, phase, tick, facts, reached) };
      }),
    );
  });
  const rows = phases.flatMap((part) => part.rows);
  const heldBack = rows.filter((row) => row.state.kind === 'held');
  const upcoming: Upcoming[] = phases.flatMap(({ phase, rows: inPhase }) => {
    const waiting = inPhase.filter(isWaiting).map((row) => ({ kind: 'step', row }) as const);
    const tiedTo = (entry: (typeof waiting)[number]) => entry.row.step.tiedTo;
    return [
      ...waiting.filter((entry) => tiedTo(entry) === undefined),
      ...momentsIn(phase)
        .filter((moment) => !isPast(moment, happened, reached))
        .map((moment) => ({ kind: 'moment', moment }) as const),
      // Ticked together with its moment as a rule; left over from a moment that is past, it is not lost.
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

function phaseRows(phase: Phase, rows: readonly StepRow[]): PhaseRows {
  const counting = rows.filter((row) => row.state.kind !== 'not-needed');
  return { phase, rows, total: counting.length, handled: counting.filter(isHandled).length };
}

/** A moment is past when it was stamped, or when a later phase was begun without it. */
function isPast(moment: Moment, happened: ReadonlySet<Moment>, reached: number): boolean {
  if (happened.has(moment)) return true;
  const laterPhase = moment === 'landed' ? 'after' : 'climb';
  return reached >= order(laterPhase);
}

/** What is due, given the first thing that waits. Barriers, and the moments that act as one, let nothing held back through. */
function positionAt(
  first: Upcoming | undefined,
  rows: readonly StepRow[],
  heldBack: readonly StepRow[],
): Position {
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

const isBlocked = (position: Position) => position.kind === 'step' && position.barrier !== null;

function phaseAt(position: Position): Phase {
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

function lastHandled(rows: readonly StepRow[], run: Run | null): StepRow | null {
  const step = run?.last?.step ?? null;
  return step === null ? null : (rows.findLast((row) => row.step.id === step) ?? null);
}

/** The walk through an abnormal list: one stretch of steps, each done once. */
export function walkList(list: AbnormalList, run: Run, facts: Facts): Walk {
  const phase: Phase = 'roll';
  const rows = list.steps.map((step): StepRow => {
    const tick = run.ticks.get(tickKey(1, step.id));
    return { step, phase, pass: 1, state: stateOf(step, phase, tick, facts, order(phase)) };
  });
  const heldBack = rows.filter((row) => row.state.kind === 'held');
  // What is held back comes when the rest is done: before that it would be the due step still.
  const waiting = [...rows.filter(isWaiting), ...heldBack];
  const first = waiting[0];
  return {
    phases: [phaseRows(phase, rows)],
    phase,
    position:
      first === undefined ? { kind: 'list-end' } : { kind: 'step', row: first, barrier: null },
    next: waiting.slice(1).map((row) => ({ kind: 'step', row })),
    heldBack,
    lastHandled: lastHandled(rows, run),
  };
}

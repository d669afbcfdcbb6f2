/**
 * What may be done in the steps now: tick, put off, undo, open, skip. Decided here once; the Steps
 * view, the Big card, keys, pads and voice ask and never decide again.
 */

import type { FlownAgain } from '../procedure/again';
import type { Facts, LiveName } from '../procedure/facts';
import { PHASES } from '../procedure/phases';
import type { AbnormalList, Phase, Step } from '../procedure/procedure';
import { canMove } from '../procedure/tied';
import { type EnteredAt, enteredAt, unknownIn } from '../procedure/unknown';
import { isWaiting, type StepRow } from '../procedure/walk';
import type { Entry, Id, LeadsTo, Moment } from '../sortie/entry';
import type { Sortie } from '../sortie/fold';
import { interruptedAt, mayInterrupt } from '../sortie/interruption';
import { rowsOf, type StepsBrief } from './steps';
import type { Caution } from './verdict';

/** What the largest key does next. */
export type Main =
  /**
   * A step; `barrier` is what it was put off to, and must be done first. `without` is a live number
   * of it that isn't known and that the pilot can't supply: the key must be held.
   */
  | {
      readonly what: 'tick';
      readonly row: StepRow;
      readonly barrier: Step | Moment | null;
      readonly without: LiveName | null;
    }
  /**
   * A step that can't be ticked, because a live number of it isn't known: the key leads to where
   * that is entered.
   */
  | {
      readonly what: 'supply';
      readonly row: StepRow;
      readonly barrier: Step | Moment | null;
      readonly unknown: LiveName;
      readonly at: EnteredAt;
    }
  /** A moment to stamp, with the steps ticked along with it. */
  | { readonly what: 'stamp'; readonly moment: Moment; readonly tied: readonly StepRow[] }
  /** Outside limits: to be gone on with before brake release, and before the runway. */
  | { readonly what: 'go-outside'; readonly cautions: readonly Caution[] }
  /** `back`: the phase it leads to has been come to before. */
  | { readonly what: 'close-list'; readonly leadsTo: LeadsTo; readonly back: boolean }
  | { readonly what: 'end-sortie' }
  /** Interrupted at that time: resume before anything else. */
  | { readonly what: 'resume'; readonly left: Entry['at'] };

export interface Offers {
  readonly main: Main;
  /** Rolling, not yet airborne: the ladder shows, and no one is asked to resume. */
  readonly rolling: boolean;
  /** The step that may be put off; null if it has no later. */
  readonly putOff: StepRow | null;
  /** The step that may be marked as not possible. */
  readonly cannot: StepRow | null;
  /** The entry "Back" would undo; null before anything was done. */
  readonly undo: Id | null;
  /** The pilot may report an interruption. */
  readonly interrupt: boolean;
  /** The take-off may be rejected: rolling, not yet airborne. */
  readonly stop: boolean;
  readonly goAround: boolean;
  /** Phases that may be flown again. */
  readonly again: readonly FlownAgain[];
  /** Phases the sortie may be begun at, as in the air: something before them waits. */
  readonly begin: readonly Phase[];
  /** Names of lists that may be opened, while none is open. */
  readonly lists: readonly string[];
  /** The list to go on with at the end of the open one: after a rejected take-off, another try. */
  readonly nextList: AbnormalList | null;
}

/** What may be done at a position in the steps. */
export function offers(
  { walk: flown, abnormal, procedure, facts }: StepsBrief,
  sortie: Pick<Sortie, 'run' | 'list' | 'endedAt' | 'id'>,
  /** Cautions that stop and were not gone on with. */
  outside: readonly Caution[] = [],
): Offers {
  const walk = abnormal?.walk ?? flown;
  const { position } = walk;
  const rolling = position.kind === 'moment' && position.moment === 'airborne';
  const left = rolling ? null : interruptedAt(sortie);
  const isAway = left !== null;
  const row = position.kind === 'step' ? position.row : null;
  const moment = position.kind === 'moment' ? position.moment : null;
  const inPhases = abnormal === null && !isAway;
  const hasLanded = walk.phase === 'after' && walk.phases.at(-1)?.handled === 0;
  return {
    main:
      left !== null
        ? { what: 'resume', left }
        : abnormal === null && outside.length > 0 && isBeforeRunway(position)
          ? { what: 'go-outside', cautions: outside }
          : mainOf(position, facts, abnormal?.list.then ?? 'return', flown),
    rolling,
    putOff: isAway || !mayPutOff(position) ? null : row,
    cannot: isAway ? null : row,
    undo: sortie.list?.last?.id ?? sortie.run?.last?.id ?? null,
    // No interruptions on approach: that is what the go-around is for.
    interrupt: inPhases && row !== null && walk.phase !== 'recovery' && mayInterrupt(sortie),
    stop: rolling,
    goAround: inPhases && walk.phase === 'recovery' && (row !== null || moment === 'landed'),
    again: isAway
      ? []
      : moment === 'landed'
        ? ['touch-and-go']
        : position.kind === 'end' || (inPhases && row !== null && hasLanded)
          ? ['take-off']
          : [],
    begin: inPhases && !rolling ? PHASES.filter((phase) => isBegunBefore(flown, phase)) : [],
    lists: procedure.lists.map(({ id }) => id).filter((id) => id !== abnormal?.list.id),
    nextList:
      position.kind === 'list-end' && abnormal?.list.id === 'rejected-takeoff'
        ? (procedure.lists.find(({ id }) => id === 'another-try') ?? null)
        : null,
  };
}

/** At the runway check itself, and before brake release. */
function isBeforeRunway(position: StepsBrief['walk']['position']): boolean {
  return position.kind === 'moment'
    ? position.moment === 'brakes released'
    : position.kind === 'step' &&
        position.row.step.kind === 'barrier' &&
        PHASES.indexOf(position.row.phase) <= PHASES.indexOf('line-up');
}

/** Whether anything before a phase waits or was put off. */
const isBegunBefore = ({ phases }: StepsBrief['walk'], begun: Phase): boolean =>
  phases
    .slice(0, PHASES.indexOf(begun))
    .some(({ rows }) => rows.some((row) => isWaiting(row) || row.state.kind === 'held'));

function mainOf(
  position: StepsBrief['walk']['position'],
  facts: Facts,
  leadsTo: LeadsTo,
  flown: StepsBrief['walk'],
): Main {
  switch (position.kind) {
    case 'step': {
      const { row, barrier } = position;
      const missing = unknownIn(row.step, facts).map(
        (name) => [name, enteredAt(name, facts)] as const,
      );
      for (const [unknown, at] of missing) {
        if (at !== null) return { what: 'supply', row, barrier, unknown, at };
      }
      return { what: 'tick', row, barrier, without: missing[0]?.[0] ?? null };
    }
    case 'moment':
      return { what: 'stamp', moment: position.moment, tied: position.tied };
    case 'list-end':
      return { what: 'close-list', leadsTo, back: isBehind(leadsTo, flown) };
    case 'end':
      return { what: 'end-sortie' };
  }
}

/**
 * Whether a phase that a list leads to was come to before the list was opened. After a stop the
 * steps stand at the phase behind the landing, and nothing of it was done: that one lies ahead.
 */
function isBehind(leadsTo: LeadsTo, { phase, phases }: StepsBrief['walk']): boolean {
  if (typeof leadsTo !== 'object') return false;
  const led = PHASES.indexOf(leadsTo.phase);
  const here = PHASES.indexOf(phase);
  return led < here || (led === here && (phases[led]?.handled ?? 0) > 0);
}

/** No later before a barrier or for what was put off already; a note asks for nothing. */
function mayPutOff(position: StepsBrief['walk']['position']): boolean {
  if (position.kind !== 'step' || position.barrier !== null) return false;
  const { kind } = position.row.step;
  return kind !== 'barrier' && kind !== 'note';
}

/**
/**
 * Whether the key must be held: for a critical step, for one whose live number nobody knows, to go on
 * outside limits, and to end the sortie without looking, by keyboard, pad or the Big card.
 */
export const wantsHold = (main: Main, eyesUp: boolean): boolean =>
  main.what === 'tick'
    ? main.row.step.critical === true || main.without !== null
    : main.what === 'go-outside' || (eyesUp && endsSortie(main));

/** Whether doing it ends the sortie. */
export const endsSortie = (main: Main): boolean =>
  main.what === 'end-sortie' || (main.what === 'close-list' && main.leadsTo === 'end');

/** Whether to read out what falls due: not to someone away, nor on the roll, where gates speak. */
export const isReadAloud = ({ main, rolling }: Offers): boolean =>
  main.what !== 'resume' && !rolling;

/** Whether brake release is next. */
export const isReleasing = ({ main }: Offers): boolean =>
  main.what === 'stamp' && main.moment === 'brakes released';

/** Whether the pilot may go on from a step, putting off what waits before it. */
export const mayGoOnFrom = ({ step, state }: StepRow): boolean =>
  state.kind === 'open' && step.tiedTo === undefined;

/** Whether a step that was put off may be done in place: what it asks for is known. */
export const mayDoNow = ({ step, state }: StepRow, facts: Facts): boolean =>
  state.kind === 'held' && unknownIn(step, facts).length === 0;

/** What going on from a step puts off: all that waits before it and can wait. */
export function putOffBefore({ walk }: Pick<StepsBrief, 'walk'>, row: StepRow): readonly StepRow[] {
  const rows = rowsOf(walk);
  const at = rows.findIndex(({ step }) => step.id === row.step.id);
  return rows.slice(0, Math.max(0, at)).filter((one) => isWaiting(one) && canMove(one.step));
}

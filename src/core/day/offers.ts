/**
 * What may be done in the steps now: tick, put off, undo, open, skip. Decided here once; the Steps
 * view, the Big card, keys, pads and voice ask and never decide again.
 */

import type { FlownAgain } from '../procedure/again';
import { PHASES } from '../procedure/phases';
import type { Step } from '../procedure/procedure';
import { canMove } from '../procedure/tied';
import { isWaiting, type StepRow } from '../procedure/walk';
import type { Entry, Id, LeadsTo, Moment } from '../sortie/entry';
import type { Sortie } from '../sortie/fold';
import { interruptedAt, mayInterrupt } from '../sortie/interruption';
import { rowsOf, type StepsBrief } from './steps';
import type { Caution } from './verdict';

/** What the largest key does next. */
export type Main =
  /** A step; `barrier` is what it was put off to, and must be done first. */
  | { readonly what: 'tick'; readonly row: StepRow; readonly barrier: Step | Moment | null }
  /** A moment to stamp, with the steps ticked along with it. */
  | { readonly what: 'stamp'; readonly moment: Moment; readonly tied: readonly StepRow[] }
  /** Outside limits: to be gone on with before brake release, and before the runway. */
  | { readonly what: 'go-outside'; readonly cautions: readonly Caution[] }
  | { readonly what: 'close-list'; readonly leadsTo: LeadsTo }
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
  /** Names of lists that may be opened, while none is open. */
  readonly lists: readonly string[];
}

/** What may be done at a position in the steps. */
export function offers(
  { walk: flown, abnormal, procedure }: StepsBrief,
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
          : mainOf(position, abnormal?.list.then ?? 'return'),
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
    lists: procedure.lists.map(({ id }) => id).filter((id) => id !== abnormal?.list.id),
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

function mainOf(position: StepsBrief['walk']['position'], leadsTo: LeadsTo): Main {
  switch (position.kind) {
    case 'step':
      return { what: 'tick', row: position.row, barrier: position.barrier };
    case 'moment':
      return { what: 'stamp', moment: position.moment, tied: position.tied };
    case 'list-end':
      return { what: 'close-list', leadsTo };
    case 'end':
      return { what: 'end-sortie' };
  }
}

/** No later before a barrier or for what was put off already; a note asks for nothing. */
function mayPutOff(position: StepsBrief['walk']['position']): boolean {
  if (position.kind !== 'step' || position.barrier !== null) return false;
  const { kind } = position.row.step;
  return kind !== 'barrier' && kind !== 'note';
}

/**
 * Whether the key must be held: for a critical step, to go on outside limits, and to end the sortie
 * without looking, by keyboard, pad or the Big card.
 */
export const wantsHold = (main: Main, eyesUp: boolean): boolean =>
  main.what === 'tick'
    ? main.row.step.critical === true
    : main.what === 'go-outside' || (main.what === 'end-sortie' && eyesUp);

/** Whether to read out what falls due: not to someone away, nor on the roll, where gates speak. */
export const isReadAloud = ({ main, rolling }: Offers): boolean =>
  main.what !== 'resume' && !rolling;

/** Whether brake release is next. */
export const isReleasing = ({ main }: Offers): boolean =>
  main.what === 'stamp' && main.moment === 'brakes released';

/** Whether the pilot may go on from a step, putting off what waits before it. */
export const mayGoOnFrom = ({ step, state }: StepRow): boolean =>
  state.kind === 'open' && step.tiedTo === undefined;

/** Whether a step that was put off may be done in place. */
export const mayDoNow = ({ state }: StepRow): boolean => state.kind === 'held';

/** What going on from a step puts off: all that waits before it and can wait. */
export function putOffBefore({ walk }: Pick<StepsBrief, 'walk'>, row: StepRow): readonly StepRow[] {
  const rows = rowsOf(walk);
  const at = rows.findIndex(({ step }) => step.id === row.step.id);
  return rows.slice(0, Math.max(0, at)).filter((one) => isWaiting(one) && canMove(one.step));
}

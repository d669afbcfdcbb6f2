/** Folds the record into what it says: what is chosen and typed, and what was done. */

import type { North } from '../angle';
import { PHASES } from '../procedure/phases';
import type { Purpose } from '../runway/question';
import { entriesThatCount } from './counting';
import {
  compareEntries,
  type Entry,
  FRESH_INPUTS,
  type Hash,
  type Id,
  type Inputs,
  type Moment,
  type SealedFigure,
} from './entry';
import { openedRun, phaseKey, type Run, type RunDraft, tickKey } from './run';

export { type Decided, isNotFlown, type Run, type Ticked, tickKey } from './run';

export interface EnteredWind {
  readonly id: Id;
  readonly text: string;
  /** The north it was given to, unless the text itself says. */
  readonly north: North;
  /** The field it was entered at; null before any was chosen. */
  readonly field: Hash | null;
  /** If it was taken over from another field, when it was entered there. */
  readonly at: Entry['at'];
}

/**
 * The sortie's own clock: when the device's read `wallMs`, it read `sortieMs`, and it runs at
 * `rate`.
 */
export interface Clock {
  readonly wallMs: number;
  readonly sortieMs: number;
  /** 1 running, 0 paused. */
  readonly rate: number;
}

/** A stamped moment, and the pass of the roll it belongs to. */
export interface Stamp {
  readonly id: Id;
  readonly what: Moment;
  readonly pass: number;
  readonly at: Entry['at'];
}

/** A point of the taxi plan, and when it was passed or the aircraft placed on it. */
export interface TaxiedPoint {
  readonly id: Id;
  readonly point: string;
  readonly placed: boolean;
  readonly at: Entry['at'];
}

/** The figures shown at a moment that counts, with the documents they came from. */
export interface Seal {
  readonly documents: Readonly<Record<string, Hash>>;
  readonly figures: Readonly<Record<string, SealedFigure>>;
  readonly at: Entry['at'];
}

/** A caution the pilot went on in spite of, as it was. */
export interface Accepted {
  readonly code: string;
  readonly value: number | string | null;
  readonly limit: number | string | null;
  /** The runway it was for. */
  readonly end: string | null;
  readonly purpose: Purpose;
  readonly at: Entry['at'];
}

/** What decides which of the winds and reports entered before still count. */
const OUTDATING = ['ownQnhHpa', 'ownTemperatureC'] as const;

/** One sortie, as the record tells it. */
export interface Sortie {
  readonly id: Id | null;
  readonly inputs: Inputs;
  /** Oldest first. */
  readonly winds: readonly EnteredWind[];
  /** How many of them had been entered when each of these was set last. */
  readonly windsBefore: Readonly<Record<(typeof OUTDATING)[number], number>>;
  /** Null for the device's clock. */
  readonly clock: Clock | null;
  /** The procedure being flown; null before the first step. */
  readonly run: Run | null;
  /** The list opened because something went wrong; null most of the time. */
  readonly list: Run | null;
  /** All open lists, each opened from the one before; the last is on top. */
  readonly lists: readonly Run[];
  readonly stamps: readonly Stamp[];
  readonly seals: readonly Seal[];
  /** Oldest first. */
  readonly accepted: readonly Accepted[];
  /** Points passed since the aircraft was last placed, on a stand, a point or a runway. */
  readonly taxied: readonly TaxiedPoint[];
  readonly startedAt: Entry['at'] | null;
  readonly lastAt: Entry['at'] | null;
  /** When the sortie was ended; null while it goes on. */
  readonly endedAt: Entry['at'] | null;
}

/** A sortie with nothing recorded yet. */
export const NO_SORTIE: Sortie = {
  id: null,
  inputs: FRESH_INPUTS,
  winds: [],
  windsBefore: { ownQnhHpa: 0, ownTemperatureC: 0 },
  clock: null,
  run: null,
  list: null,
  lists: [],
  stamps: [],
  seals: [],
  accepted: [],
  taxied: [],
  startedAt: null,
  lastAt: null,
  endedAt: null,
};

/**
 * Returns to the place that was left for a list, as after any interruption: the last thing done
 * there is what it was before the list, so that "Back" takes back a step and opens no list again.
 */
function returnFrom(list: RunDraft, to: RunDraft | null, before: Run['last'], at: Entry['at']) {
  if (to === null) return;
  to.last = before === null ? null : { ...before, at };
  to.interruptedAt ??= list.openedAt;
}

/** What the entries of one sortie say; they may come in any order, with duplicates. */
export function foldSortie(entries: readonly Entry[]): Sortie {
  const runs = new Map<Id, RunDraft>();
  const closedRuns = new Set<RunDraft>();
  /** What had been done last where each list was opened. */
  const lastBefore = new Map<RunDraft, Run['last']>();
  let inputs = FRESH_INPUTS;
  let clock: Clock | null = null;
  let run: RunDraft | null = null;
  const lists: RunDraft[] = [];
  let endedAt: Entry['at'] | null = null;
  const winds: EnteredWind[] = [];
  const windsBefore = { ...NO_SORTIE.windsBefore };
  const stamps: Stamp[] = [];
  const seals: Seal[] = [];
  const accepted: Accepted[] = [];
  let taxied: TaxiedPoint[] = [];
  const counted = entriesThatCount(entries);

  for (const entry of counted) {
    const { at, id } = entry;
    switch (entry.kind) {
      case 'set':
        inputs = { ...inputs, ...entry.inputs };
        // After landing it names where to go, and the aircraft stays where it is.
        if ('stand' in entry.inputs && stamps.at(-1)?.what !== 'landed') taxied = [];
        for (const name of OUTDATING) if (name in entry.inputs) windsBefore[name] = winds.length;
        break;
      case 'wind': {
        const { text, north, takenFrom } = entry;
        const before = winds.find((one) => one.id === takenFrom);
        winds.push({ id, text, north, field: inputs.field, at: before?.at ?? at });
        break;
      }
      case 'clock':
        clock = { wallMs: at.wallMs, sortieMs: entry.sortieMs, rate: entry.rate };
        break;
      case 'open': {
        const standing = entry.list === null ? [run] : lists;
        const same = standing.find(
          (one) => one?.procedure === entry.procedure && one.list === entry.list,
        );
        if (same) {
          // Two windows began the same run: it is one run with two ids.
          runs.set(entry.run, same);
          break;
        }
        const opened = openedRun(entry.run, entry.procedure, entry.list, at);
        runs.set(entry.run, opened);
        if (entry.list === null) run = opened;
        else {
          // "Back" closes a list again if nothing in it was done.
          const left = lists.at(-1) ?? run;
          if (left !== null) {
            lastBefore.set(opened, left.last);
            left.last = { id, step: left.last?.step ?? null, at };
          }
          lists.push(opened);
        }
        break;
      }
      case 'close': {
        const closed = runs.get(entry.run);
        // Two windows may both close it; it counts once, so that its phases are reopened once.
        if (closed === undefined || closedRuns.has(closed)) break;
        closedRuns.add(closed);
        const { leadsTo } = entry;
        const place = lists.indexOf(closed);
        // A list opened from this one closes with it; one that leads elsewhere closes them all.
        if (place >= 0) lists.length = leadsTo === 'return' ? place : 0;
        if (leadsTo === 'end') endedAt = at;
        else if (leadsTo === 'return') {
          if (closed === run) {
            // Taking another aircraft closes the procedure itself this way: its steps start afresh.
            run = null;
            lists.length = 0;
          } else if (place >= 0) {
            returnFrom(closed, lists.at(-1) ?? run, lastBefore.get(closed) ?? null, at);
          }
        } else if (run !== null) {
          for (const phase of leadsTo.reopen) run.passes[phase] += 1;
          run.last = { id, step: null, at };
        }
        break;
      }
      case 'begun': {
        const begun = runs.get(entry.run);
        if (begun === undefined) break;
        for (const phase of PHASES.slice(0, PHASES.indexOf(entry.phase))) {
          begun.notFlown.add(phaseKey(begun.passes[phase], phase));
        }
        begun.last = { id, step: null, at };
        begun.interruptedAt = null;
        break;
      }
      case 'reopen': {
        const again = runs.get(entry.run);
        if (again === undefined) break;
        for (const phase of PHASES) {
          again.passes[phase] = Math.max(again.passes[phase], entry.passes[phase] ?? 1);
        }
        again.last = { id, step: null, at };
        again.interruptedAt = null;
        break;
      }
      case 'passed':
        runs
          .get(entry.run)
          ?.passed.set(tickKey(entry.pass, entry.step), { id, seq: entry.seq, saw: entry.saw, at });
        break;
      case 'done':
      case 'held':
      case 'cannot': {
        const ticked = runs.get(entry.run);
        if (ticked === undefined) break;
        ticked.ticks.set(tickKey(entry.pass, entry.step), {
          id,
          seq: entry.seq,
          outcome: entry.kind,
          saw: entry.saw,
          why: entry.why ?? null,
          at,
        });
        ticked.last = { id, step: entry.step, at };
        ticked.interruptedAt = null;
        if (ticked.list !== null && entry.kind === 'done')
          run?.doneInLists.push({ list: ticked.list, step: entry.step, seq: entry.seq });
        break;
      }
      case 'stamp':
        stamps.push({ id, what: entry.what, pass: run?.passes.roll ?? 1, at });
        // Points passed on the way out are behind the roll, and the stand will be left anew.
        if (entry.what !== 'off chocks') {
          taxied = [];
          // So is the route that was told.
          if (inputs.taxiTold !== null) inputs = { ...inputs, taxiTold: null };
        }
        if (run !== null) {
          run.last = { id, step: null, at };
          run.interruptedAt = null;
        }
        break;
      case 'taxied':
        if (entry.placed) taxied = [];
        taxied.push({ id, point: entry.point, placed: entry.placed, at });
        break;
      case 'interrupted':
      case 'resumed': {
        const paused = runs.get(entry.run);
        if (paused !== undefined) paused.interruptedAt = entry.kind === 'interrupted' ? at : null;
        break;
      }
      case 'accepted':
        for (const caution of entry.cautions)
          accepted.push({ ...caution, end: entry.end, purpose: entry.purpose, at });
        break;
      case 'taken up':
        endedAt = null;
        break;
      case 'sealed':
        seals.push({ documents: entry.documents, figures: entry.figures, at });
        break;
    }
  }
  // Notes and corrections in the log of an old sortie may be all we have of it; they begin none.
  const begun = counted.find(({ kind }) => kind !== 'noted' && kind !== 'corrected');
  return {
    id: begun?.sortie ?? null,
    inputs,
    winds,
    windsBefore,
    clock,
    run,
    list: lists.at(-1) ?? null,
    lists,
    stamps,
    seals,
    accepted,
    taxied,
    startedAt: begun?.at ?? null,
    lastAt: counted.at(-1)?.at ?? null,
    endedAt,
  };
}

/** Whether the aircraft has left the place it stood at. */
export const hasMoved = ({ stamps, taxied }: Pick<Sortie, 'stamps' | 'taxied'>): boolean =>
  stamps.length > 0 || taxied.some(({ placed }) => !placed);

/** Which end of the sortie may be stamped now: off chocks before it has moved, on chocks once it has come to rest. */
export function chocksNow(
  sortie: Pick<Sortie, 'stamps' | 'taxied'>,
): 'off chocks' | 'on chocks' | null {
  if (!hasMoved(sortie)) return 'off chocks';
  const last = sortie.stamps.at(-1)?.what;
  return last === 'landed' || last === 'stopping' ? 'on chocks' : null;
}

/**
 * When the brakes last stopped the aircraft, by the device's clock, ms since 1970 UTC; null if never.
 */
export function brakesUsedMs({ stamps, inputs }: Pick<Sortie, 'stamps' | 'inputs'>): number | null {
  const used = stamps.findLast(({ what }) => what === 'stopping' || what === 'landed');
  return used?.at.wallMs ?? inputs.brakesUsedMs;
}

/** The sortie's clock when the device's reads `wallMs`. */
export function sortieTimeMs(clock: Clock | null, wallMs: number): number {
  return clock === null ? wallMs : clock.sortieMs + (wallMs - clock.wallMs) * clock.rate;
}

/** The record split into sorties, in the order they began. */
export function sortiesOf(entries: readonly Entry[]): ReadonlyMap<Id, readonly Entry[]> {
  const sorties = new Map<Id, Entry[]>();
  for (const entry of [...entries].sort(compareEntries)) {
    const sortie = sorties.get(entry.sortie);
    if (sortie === undefined) sorties.set(entry.sortie, [entry]);
    else sortie.push(entry);
  }
  return sorties;
}

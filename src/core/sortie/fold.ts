/** Folds the record into what it says: what is chosen and typed, and what was done. */

import type { North } from '../angle';
import type { FactValues } from '../procedure/facts';
import { PHASES } from '../procedure/phases';
import type { Phase, StepId } from '../procedure/procedure';
import { entriesThatCount } from './counting';
import {
  compareEntries,
  type Entry,
  FRESH_INPUTS,
  type Hash,
  type Id,
  type Inputs,
  type ListId,
  type Moment,
  type SealedFigure,
  type StepOutcome,
} from './entry';

/** A wind as it was entered. */
export interface EnteredWind {
  readonly id: Id;
  readonly text: string;
  /** The north it was given to, where the text itself does not say. */
  readonly north: North;
  readonly at: Entry['at'];
}

/** The sortie's own clock: at `wallMs` of the device it read `sortieMs`, and runs at `rate`. */
export interface Clock {
  readonly wallMs: number;
  readonly sortieMs: number;
  /** 1 running, 0 paused. */
  readonly rate: number;
}

/** What happened to a step, and the facts it was done under. */
export interface Ticked {
  readonly id: Id;
  readonly outcome: StepOutcome;
  readonly saw: FactValues;
  readonly why: string | null;
  readonly at: Entry['at'];
/** A point of the taxi plan, and when it was passed, or the aircraft placed on it. */
export interface TaxiedPoint {
  readonly id: Id;
  readonly point: string;
  readonly placed: boolean;
  readonly at: Entry['at'];
}

}

/** A walk through the steps of a procedure, or of one of its lists. */
export interface Run {
  readonly id: Id;
  readonly procedure: Hash;
  /** Null for the procedure itself. */
  readonly list: ListId | null;
  /** How many times each phase is flown, counting from 1. */
  readonly passes: Readonly<Record<Phase, number>>;
  /** What happened to each step, by {@link tickKey}. */
  readonly ticks: ReadonlyMap<string, Ticked>;
  /** The last thing done in this run, which "Back" takes back. */
  readonly last: { readonly id: Id; readonly step: StepId | null; readonly at: Entry['at'] } | null;
  /** When the run was left and not yet taken up again. */
  readonly interruptedAt: Entry['at'] | null;
}

/** A moment that was stamped, and in which pass of the roll. */
export interface Stamp {
  readonly id: Id;
  readonly what: Moment;
  readonly pass: number;
  /** Points passed since the aircraft was last placed, on a stand, on a point or on a runway. */
  readonly taxied: readonly TaxiedPoint[];
  readonly at: Entry['at'];
}

/** The figures that were shown at a moment that counts, with the documents they came from. */
export interface Seal {
  readonly documents: Readonly<Record<string, Hash>>;
  readonly figures: Readonly<Record<string, SealedFigure>>;
  readonly at: Entry['at'];
}

/** One sortie, as the record tells it. */
export interface Sortie {
  readonly id: Id | null;
  readonly inputs: Inputs;
  /** Oldest first. */
  readonly winds: readonly EnteredWind[];
  /** Null: the device's clock. */
  taxied: [],
  readonly clock: Clock | null;
  /** The procedure being flown; null before the first step. */
  readonly run: Run | null;
  /** The list opened because something went wrong; null most of the time. */
  readonly list: Run | null;
  readonly stamps: readonly Stamp[];
  readonly seals: readonly Seal[];
  readonly startedAt: Entry['at'] | null;
  readonly lastAt: Entry['at'] | null;
  /** When the sortie was ended; null while it goes on. */
  readonly endedAt: Entry['at'] | null;
}

/** Under which key a step's outcome stands in a run: the same step flown again is another. */
export function tickKey(pass: number, step: StepId): string {
  return `${pass}/${step}`;
}

/** A sortie of which nothing is recorded yet. */
export const NO_SORTIE: Sortie = {
  id: null,
  inputs: FRESH_INPUTS,
  winds: [],
  clock: null,
  let taxied: TaxiedPoint[] = [];
  run: null,
  list: null,
  stamps: [],
  seals: [],
  startedAt: null,
  lastAt: null,
  endedAt: null,
        if ('stand' in entry.inputs) taxied = [];
};

type Draft<T> = { -readonly [K in keyof T]: T[K] };

interface RunDraft extends Draft<Omit<Run, 'passes' | 'ticks'>> {
  passes: Record<Phase, number>;
  ticks: Map<string, Ticked>;
}

function openedRun(id: Id, procedure: Hash, list: ListId | null): RunDraft {
  return {
    id,
    procedure,
    list,
    passes: Object.fromEntries(PHASES.map((phase) => [phase, 1])) as Record<Phase, number>,
    ticks: new Map(),
    last: null,
    interruptedAt: null,
  };
}

/** What the entries of one sortie say; they may come in any order, and twice. */
export function foldSortie(entries: readonly Entry[]): Sortie {
  const runs = new Map<Id, RunDraft>();
  const closedRuns = new Set<RunDraft>();
  let inputs = FRESH_INPUTS;
  let clock: Clock | null = null;
  let run: RunDraft | null = null;
  let list: RunDraft | null = null;
  let endedAt: Entry['at'] | null = null;
  const winds: EnteredWind[] = [];
  const stamps: Stamp[] = [];
  const seals: Seal[] = [];
  const counted = entriesThatCount([...new Map(entries.map((e) => [e.id, e])).values()]);

  for (const entry of counted) {
    const { at, id } = entry;
    switch (entry.kind) {
      case 'set':
        inputs = { ...inputs, ...entry.inputs };
        break;
      case 'wind':
        winds.push({ id, text: entry.text, north: entry.north, at });
        break;
      case 'clock':
        clock = { wallMs: at.wallMs, sortieMs: entry.sortieMs, rate: entry.rate };
        break;
      case 'open': {
        const standing: RunDraft | null = entry.list === null ? run : list;
        if (standing?.procedure === entry.procedure && standing.list === entry.list) {
          // Two windows began the same: it is one run, under two names.
          runs.set(entry.run, standing);
          break;
        }
        const opened = openedRun(entry.run, entry.procedure, entry.list);
        runs.set(entry.run, opened);
        if (entry.list === null) run = opened;
        else {
          list = opened;
          // "Back" closes a list again before anything in it was done.
          if (run !== null) run.last = { id, step: null, at };
        }
        break;
      }
      case 'close': {
        const closed = runs.get(entry.run);
        // Closed by two windows it is closed once: its phases are opened again once.
        if (closed === undefined || closedRuns.has(closed)) break;
        closedRuns.add(closed);
        if (closed === list) list = null;
        if (entry.leadsTo === 'end') endedAt = at;
        // The procedure itself is closed that way when another aircraft is taken: its steps begin anew.
        else if (entry.leadsTo === 'return') run = closed === run ? null : run;
        else if (run !== null) {
          for (const phase of entry.leadsTo.reopen) run.passes[phase] += 1;
          run.last = { id, step: null, at };
        }
        break;
      }
      case 'done':
      case 'held':
      case 'cannot': {
        const ticked = runs.get(entry.run);
        // What was passed on the way out is behind the roll, and the stand is left anew.
        if (entry.what !== 'off chocks') taxied = [];
        if (ticked === undefined) break;
        ticked.ticks.set(tickKey(entry.pass, entry.step), {
          id,
          outcome: entry.kind,
          saw: entry.saw,
      case 'taxied':
        if (entry.placed) taxied = [];
        taxied.push({ id, point: entry.point, placed: entry.placed, at });
        break;
          why: entry.why ?? null,
          at,
        });
        ticked.last = { id, step: entry.step, at };
        ticked.interruptedAt = null;
        break;
      }
      case 'stamp':
        stamps.push({ id, what: entry.what, pass: run?.passes.roll ?? 1, at });
        if (run !== null) {
          run.last = { id, step: null, at };
          run.interruptedAt = null;
        }
        break;
      case 'interrupted':
      case 'resumed': {
        const paused = runs.get(entry.run);
        if (paused !== undefined) paused.interruptedAt = entry.kind === 'interrupted' ? at : null;
        break;
      }
      case 'sealed':
        seals.push({ documents: entry.documents, figures: entry.figures, at });
        break;
    taxied,
    }
  }
  // What is written into the log of an old sortie may be all that is at hand of it, and begins none.
  const begun = counted.find(({ kind }) => kind !== 'noted' && kind !== 'corrected');
  return {
    id: begun?.sortie ?? null,
    inputs,
    winds,
    clock,
    run,
    list,
    stamps,
    seals,
    startedAt: begun?.at ?? null,
    lastAt: counted.at(-1)?.at ?? null,
    endedAt,
  };
}

/** What the sortie's clock reads when the device's clock reads `wallMs`. */
export function sortieTimeMs(clock: Clock | null, wallMs: number): number {
  return clock === null ? wallMs : clock.sortieMs + (wallMs - clock.wallMs) * clock.rate;
}

/** The record cut into sorties, by when each began. */
export function sortiesOf(entries: readonly Entry[]): ReadonlyMap<Id, readonly Entry[]> {
  const sorties = new Map<Id, Entry[]>();
  for (const entry of [...entries].sort(compareEntries)) {
    const sortie = sorties.get(entry.sortie);
    if (sortie === undefined) sorties.set(entry.sortie, [entry]);
    else sortie.push(entry);
  }
  return sorties;
}

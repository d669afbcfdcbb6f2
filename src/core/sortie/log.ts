/** A sortie as the log tells it, folded from its entries when it is opened. */

import { languageOf } from '../language';
import { PHASES } from '../procedure/phases';
import type { Phase, Procedure, StepId } from '../procedure/procedure';
import { entriesThatCount } from './counting';
import type { Entry, Hash, Id, ListId, StepOutcome } from './entry';
import { type Accepted, type EnteredWind, foldSortie, type Seal, type Stamp } from './fold';
import { LOG_MOMENTS, type LoggedTime, type LogMoment, type LogTimes } from './logTimes';

/** A note, as written. */
export interface Note {
  readonly id: Id;
  readonly text: string;
  readonly at: Entry['at'];
}

/** A step that wasn't done: its last outcome. */
export interface StepLeft {
  readonly step: StepId;
  /** The item as it stands in the procedure; null if that isn't available. */
  readonly item: string | null;
  readonly why: string | null;
}

/** How long a phase took, all its passes together. */
export interface PhaseTime {
  readonly phase: Phase;
  /** From its first step or moment to that of the next phase; for the last phase, to its last. */
  readonly ms: number;
}

/** A list that was gone through because something went wrong. */
export interface LoggedList {
  /** The run it was walked in. */
  readonly id: Id;
  readonly list: ListId;
  /** As it stands in the procedure; null if that isn't available. */
  readonly title: string | null;
  readonly openedAt: Entry['at'];
  /** When it was left; null if it still is open. */
  readonly closedAt: Entry['at'] | null;
}

/** A phase the sortie was begun at, as in the air: nothing before it was flown. */
export interface BegunAt {
  readonly phase: Phase;
  readonly at: Entry['at'];
}

/** A sortie in the log. */
export interface LoggedSortie {
  readonly id: Id;
  /** What it was last begun with: hashes of the documents, and the callsign. */
  readonly field: Hash | null;
  readonly aircraft: Hash | null;
  readonly procedure: Hash | null;
  /** The language of the procedure, as a BCP 47 tag; null if it isn't available. */
  readonly language: string | null;
  readonly callsign: string;
  readonly beganAt: Entry['at'];
  readonly endedAt: Entry['at'] | null;
  readonly times: LogTimes;
  readonly landings: number;
  readonly done: number;
  readonly heldBack: readonly StepLeft[];
  readonly cannot: readonly StepLeft[];
  /** In the order they were opened. */
  readonly lists: readonly LoggedList[];
  readonly begun: readonly BegunAt[];
  readonly phases: readonly PhaseTime[];
  readonly stamps: readonly Stamp[];
  readonly seals: readonly Seal[];
  readonly winds: readonly EnteredWind[];
  /** What the pilot went on in spite of, with its figures. */
  readonly accepted: readonly Accepted[];
  readonly notes: readonly Note[];
}

type Tick = Extract<Entry, { kind: StepOutcome }>;

const isTick = (entry: Entry): entry is Tick =>
  entry.kind === 'done' || entry.kind === 'held' || entry.kind === 'cannot';

/** A step's phase, or null for one of a list, and its item. */
type Known = ReadonlyMap<StepId, { readonly phase: Phase | null; readonly item: string }>;

function stepsOf(procedure: Procedure | null): Known {
  const steps = new Map<StepId, { phase: Phase | null; item: string }>();
  for (const list of procedure?.lists ?? []) {
    for (const { id, item } of list.steps) steps.set(id, { phase: null, item });
  }
  for (const { phase, steps: inPhase } of procedure?.phases ?? []) {
    for (const { id, item } of inPhase) steps.set(id, { phase, item });
  }
  return steps;
}

/**
 * What is set before anything is done, perhaps the evening before, and what is written afterwards.
 */
const BEFORE: ReadonlySet<Entry['kind']> = new Set(['set', 'clock', 'noted', 'corrected']);

/**
 * The sortie these entries tell of, in any order; null if they tell of none. `procedureOf` returns
 * the procedure flown, if available: without it the phases of the steps are unknown.
 */
export function logOf(
  entries: readonly Entry[],
  procedureOf: (hash: Hash) => Procedure | null,
): LoggedSortie | null {
  const counted = entriesThatCount(entries);
  const sortie = foldSortie(counted);
  if (sortie.id === null || sortie.startedAt === null) return null;
  const opened = counted.findLast((entry) => entry.kind === 'open' && entry.list === null);
  const procedure = opened?.kind === 'open' ? opened.procedure : textOf(sortie.inputs.procedure);
  const flown = procedure === null ? null : procedureOf(procedure);
  const steps = stepsOf(flown);
  const { stamps, winds, seals, endedAt } = sortie;
  const left = [...lastSaid(counted).values()];
  const leftAs = (outcome: StepOutcome): readonly StepLeft[] =>
    left
      .filter(({ kind }) => kind === outcome)
      .map(({ step, why }) => ({ step, item: steps.get(step)?.item ?? null, why: textOf(why) }));
  const times = timesIn(counted, stamps, steps);
  return {
    id: sortie.id,
    field: textOf(sortie.inputs.field),
    aircraft: textOf(sortie.inputs.aircraft),
    procedure,
    language: flown === null ? null : languageOf(flown),
    callsign: textOf(sortie.inputs.callsign) ?? '',
    beganAt: counted.find(({ kind }) => !BEFORE.has(kind))?.at ?? sortie.startedAt,
    endedAt,
    times,
    landings: landingsIn(stamps, times),
    done: leftAs('done').length,
    heldBack: leftAs('held'),
    cannot: leftAs('cannot'),
    lists: listsIn(counted, flown),
    begun: counted.flatMap((entry) =>
      entry.kind === 'begun' ? [{ phase: entry.phase, at: entry.at }] : [],
    ),
    phases: phaseTimes(counted, steps),
    stamps,
    seals: seals.map(soundSeal),
    winds,
    accepted: sortie.accepted,
    notes: counted.flatMap((entry) =>
      entry.kind === 'noted' ? [{ id: entry.id, text: entry.text, at: entry.at }] : [],
    ),
  };
}

/** The lists that were opened; one that two windows opened at once is one. */
function listsIn(counted: readonly Entry[], procedure: Procedure | null): readonly LoggedList[] {
  const lists: { -readonly [K in keyof LoggedList]: LoggedList[K] }[] = [];
  const runs = new Map<Id, (typeof lists)[number]>();
  for (const entry of counted) {
    if (entry.kind === 'open' && typeof entry.list === 'string') {
      const { run, list, at } = entry;
      const same = lists.find((one) => one.list === list && one.closedAt === null);
      const title = procedure?.lists.find(({ id }) => id === list)?.title ?? null;
      const logged = same ?? { id: run, list, title, openedAt: at, closedAt: null };
      if (same === undefined) lists.push(logged);
      runs.set(run, logged);
    } else if (entry.kind === 'close') {
      const closed = runs.get(entry.run);
      // What leads elsewhere, as to the end of the sortie, leaves whatever is open.
      const left = closed === undefined || entry.leadsTo !== 'return' ? lists : [closed];
      for (const one of left) one.closedAt ??= entry.at;
    }
  }
  return lists;
}

/** A record from elsewhere may contain values of any type. */
const textOf = (value: unknown): string | null => (typeof value === 'string' ? value : null);

/**
 * Of a seal, the figures that are a number or a text with its unit, and the documents that have a
 * hash.
 */
function soundSeal({ documents, figures, at }: Seal): Seal {
  const named = Object.entries(documents).filter(([, hash]) => textOf(hash) !== null);
  const told = Object.entries(figures).filter(
    ([, figure]) =>
      (typeof figure?.value === 'number' || textOf(figure?.value) !== null) &&
      textOf(figure?.unit) !== null,
  );
  return { documents: Object.fromEntries(named), figures: Object.fromEntries(told), at };
}

/** The last outcome of each step in each run and pass. */
function lastSaid(counted: readonly Entry[]): ReadonlyMap<string, Tick> {
  const said = new Map<string, Tick>();
  for (const entry of counted) {
    if (isTick(entry)) said.set([entry.run, entry.pass, entry.step].join('/'), entry);
  }
  return said;
}

function timesIn(counted: readonly Entry[], stamps: readonly Stamp[], steps: Known): LogTimes {
  const doneIn = (phase: Phase) => (entry: Entry) =>
    entry.kind === 'done' && steps.get(entry.step)?.phase === phase;
  // The times are the outer edges: the start of the first leg and the end of the last.
  const edges: Readonly<
    Record<LogMoment, readonly [Pick<Stamp, 'at'> | undefined, Entry | undefined]>
  > = {
    'off chocks': [
      stamps.find(({ what }) => what === 'off chocks') ?? leftStand(counted, stamps),
      counted.find(doneIn('taxi')),
    ],
    airborne: [stamps.find(({ what }) => what === 'airborne'), undefined],
    landed: [stamps.findLast(({ what }) => what === 'landed'), undefined],
    'on chocks': [
      stamps.findLast(({ what }) => what === 'on chocks'),
      counted.findLast(doneIn('after')),
    ],
  };
  const timeOf = (moment: LogMoment): LoggedTime => {
    const [stamped, step] = edges[moment];
    const at = stamped?.at ?? step?.at;
    const recorded =
      at === undefined
        ? null
        : ({ sortieMs: at.sortieMs, from: stamped === undefined ? 'steps' : 'stamp' } as const);
    const correction = counted.findLast(
      (entry) => entry.kind === 'corrected' && entry.what === moment,
    );
    return correction?.kind === 'corrected'
      ? { sortieMs: correction.sortieMs, recorded, correction: correction.id }
      : { sortieMs: recorded?.sortieMs ?? null, recorded, correction: null };
  };
  return Object.fromEntries(LOG_MOMENTS.map((moment) => [moment, timeOf(moment)])) as Record<
    LogMoment,
    LoggedTime
  >;
}

/** Leaving the stand as told on Taxi, before anything of the flight. */
function leftStand(counted: readonly Entry[], stamps: readonly Stamp[]): Entry | undefined {
  const flownMs = stamps.find(({ what }) => what !== 'off chocks')?.at.wallMs;
  return counted.find(
    (entry) =>
      entry.kind === 'taxied' &&
      !entry.placed &&
      entry.at.wallMs < (flownMs ?? Number.POSITIVE_INFINITY),
  );
}

/** Landings as stamped; one if it was only written in, none if it was struck out. */
function landingsIn(stamps: readonly Stamp[], { landed }: LogTimes): number {
  if (landed.sortieMs === null) return 0;
  return Math.max(1, stamps.filter(({ what }) => what === 'landed').length);
}

const PHASE_OF_MOMENT: Readonly<Record<string, Phase>> = {
  'off chocks': 'taxi',
  'brakes released': 'roll',
  airborne: 'climb',
  landed: 'after',
};

/**
 * How long each phase took. A late step of a past phase doesn't bring that phase back; flown again,
 * as after a rejected take-off, it counts again.
 */
function phaseTimes(counted: readonly Entry[], steps: Known): readonly PhaseTime[] {
  const took = new Map<Phase, number>();
  let current: { readonly phase: Phase; readonly pass: number } | null = null;
  let lastMs: number | null = null;
  for (const entry of counted) {
    const phase =
      entry.kind === 'stamp'
        ? (PHASE_OF_MOMENT[entry.what] ?? null)
        : entry.kind === 'done'
          ? (steps.get(entry.step)?.phase ?? null)
          : null;
    if (phase === null) continue;
    // By the device's clock: the sortie's may have been set in between.
    const { wallMs } = entry.at;
    if (current !== null && lastMs !== null) {
      took.set(current.phase, (took.get(current.phase) ?? 0) + Math.max(0, wallMs - lastMs));
    }
    lastMs = wallMs;
    const pass: number = entry.kind === 'done' ? entry.pass : (current?.pass ?? 1);
    const later: boolean =
      current === null || PHASES.indexOf(phase) > PHASES.indexOf(current.phase);
    if (current === null || later || pass > current.pass) current = { phase, pass };
  }
  if (current !== null && !took.has(current.phase)) took.set(current.phase, 0);
  return PHASES.flatMap((phase) => {
    const ms = took.get(phase);
    return ms === undefined ? [] : [{ phase, ms }];
  });
}

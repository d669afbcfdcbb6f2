/**
 * Reading an entry that was stored or came from elsewhere: its shape, by the version written in it.
 *
 * A shape never gets narrower: what one version wrote, every later one reads. An entry whose
 * meaning an older app must not guess at has a higher version; that app keeps it and doesn't use
 * it.
 */

import * as v from 'valibot';
import { PHASES } from '../procedure/phases';
import { COMPASS } from '../radio/call';
import {
  ENTRY_VERSION,
  type Entry,
  FIRST_MS,
  HIGHEST_RATE,
  HIGHEST_SEQ,
  HIGHEST_TYPED,
  type Id,
  LAST_MS,
  type SortieEvent,
} from './entry';

/** An entry that can be used, or why it can't. */
export type ReadEntry =
  | { readonly entry: Entry; readonly problem: null }
  /** `damaged`: not of its version's shape. `newer`: of a version this app doesn't know. */
  | { readonly entry: null; readonly problem: 'damaged' | 'newer' };

/** Where an entry departs from its shape, a path such as `inputs.load`, and what stands there. */
export interface Misfit {
  readonly at: string;
  readonly value: unknown;
}

const text = v.string();
const name = v.pipe(text, v.minLength(1), v.maxLength(64));
const names = v.array(text);
const texts = v.record(text, text);
const number = v.pipe(v.number(), v.minValue(-HIGHEST_TYPED), v.maxValue(HIGHEST_TYPED));
const moment = v.pipe(v.number(), v.minValue(FIRST_MS), v.maxValue(LAST_MS));
const pass = v.pipe(v.number(), v.safeInteger(), v.minValue(1), v.maxValue(1e6));
const north = v.picklist(['true', 'magnetic']);
const purpose = v.picklist(['take-off', 'landing']);
const phase = v.picklist(PHASES);

/** The value of a fact a step was ticked under; NaN too, because that is what was seen. */
const seen = v.union([
  text,
  v.boolean(),
  v.null(),
  v.custom<number>((value) => typeof value === 'number'),
]);

/** What a caution tells, or its limit. */
const told = v.nullable(v.union([text, v.number()]));

const stamped = v.looseObject({
  id: name,
  seq: v.pipe(v.number(), v.safeInteger(), v.minValue(0), v.maxValue(HIGHEST_SEQ)),
  sortie: name,
  kind: name,
  at: v.looseObject({ wallMs: moment, sortieMs: moment }),
});

/** Since version 2 an entry says which device made it. */
const madeAndStamped = v.looseObject({ ...stamped.entries, by: name });

/** Names this version doesn't know are dropped; version 1 had a wind's draft among them. */
const inputs = v.partial(
  v.object({
    field: v.nullable(text),
    aircraft: v.nullable(text),
    procedure: v.nullable(text),
    callsign: text,
    surface: v.picklist(['dry', 'wet', 'contaminated']),
    ownCrosswindKt: v.nullable(number),
    ownTailwindKt: v.nullable(number),
    ownWetCrosswindKt: v.nullable(number),
    ownGustSpreadKt: v.nullable(number),
    ownVisibilityM: v.nullable(number),
    ownCeilingFt: v.nullable(number),
    bingoKg: v.nullable(number),
    brakesUsedMs: v.nullable(moment),
    closedToday: names,
    preferred: v.boolean(),
    holdShortM: v.record(text, number),
    typedNorth: north,
    variationDeg: v.nullable(number),
    ownQnhHpa: v.nullable(number),
    ownTemperatureC: v.nullable(number),
    rollsFromM: number,
    checkMarkM: v.nullable(number),
    factors: v.picklist(['none', 'document', 'common']),
    noParachute: v.boolean(),
    chosen: v.nullable(v.object({ end: text, purpose })),
    purpose: v.nullable(purpose),
    load: v.nullable(v.object({ fuelKg: number, stations: v.record(text, number) })),
    stand: v.nullable(text),
    taxiClosed: names,
    taxiEntry: v.nullable(v.object({ end: text, hold: text, intersection: v.boolean() })),
    taxiVia: v.nullable(text),
    taxiTold: v.nullable(text),
    departTo: v.nullable(v.picklist(COMPASS)),
    ownCalls: texts,
    supersonic: v.boolean(),
    options: v.record(text, v.boolean()),
    notSimulated: names,
    ties: texts,
  }),
);

const tick = v.looseObject({
  run: name,
  pass,
  step: text,
  saw: v.record(text, seen),
  why: v.optional(text),
});
const ofRun = v.looseObject({ run: name });

/** What an entry of each kind carries; the same in versions 1 and 2. */
const CARRIES: Readonly<Record<Exclude<SortieEvent['kind'], 'set'>, v.GenericSchema>> = {
  wind: v.looseObject({ text, north, takenFrom: v.optional(name) }),
  clock: v.looseObject({
    sortieMs: moment,
    rate: v.pipe(v.number(), v.minValue(0), v.maxValue(HIGHEST_RATE)),
  }),
  done: tick,
  held: tick,
  cannot: tick,
  passed: tick,
  open: v.looseObject({ run: name, procedure: text, list: v.nullable(text) }),
  close: v.looseObject({
    run: name,
    leadsTo: v.union([
      v.picklist(['return', 'end']),
      v.looseObject({ phase, reopen: v.array(phase) }),
    ]),
  }),
  begun: v.looseObject({ run: name, phase }),
  reopen: v.looseObject({ run: name, passes: v.record(phase, pass) }),
  stamp: v.looseObject({ what: text }),
  taxied: v.looseObject({ point: text, placed: v.boolean() }),
  interrupted: ofRun,
  resumed: ofRun,
  'taken up': v.looseObject({}),
  undo: v.looseObject({ target: name }),
  accepted: v.looseObject({
    end: v.nullable(text),
    purpose,
    cautions: v.array(v.looseObject({ code: text, value: told, limit: told })),
  }),
  noted: v.looseObject({ text }),
  corrected: v.looseObject({ what: text, sortieMs: v.nullable(moment) }),
  sealed: v.looseObject({
    documents: texts,
    figures: v.record(text, v.looseObject({ value: v.union([text, v.number()]), unit: text })),
  }),
};

const versioned = v.looseObject({
  v: v.optional(v.pipe(v.number(), v.safeInteger(), v.minValue(1)), 1),
});
const setting = v.looseObject({ inputs });
const setOnly = v.looseObject({ kind: v.literal('set'), inputs });

const isKind = (kind: string): kind is keyof typeof CARRIES => Object.hasOwn(CARRIES, kind);

/** The first thing in a value that departs from a shape; null if nothing does. */
function misfitIn(shape: v.GenericSchema, value: unknown): Misfit | null {
  const [issue] = v.safeParse(shape, value, { abortEarly: true }).issues ?? [];
  return issue === undefined ? null : { at: v.getDotPath(issue) ?? '', value: issue.input };
}

/** The version an entry claims; null if it claims none. */
function versionOf(value: unknown): number | null {
  const version = v.safeParse(versioned, value);
  return version.success ? version.output.v : null;
}

/** What every entry has and, for a version this app knows, what its kind carries. */
function misfitOf(value: unknown, version: number): Misfit | null {
  const misfit = misfitIn(version > 1 ? madeAndStamped : stamped, value);
  if (misfit !== null || version > ENTRY_VERSION) return misfit;
  const { kind } = value as v.InferOutput<typeof stamped>;
  if (kind === 'set') return misfitIn(setting, value);
  return isKind(kind) ? misfitIn(CARRIES[kind], value) : null;
}

/**
 * What keeps an entry from elsewhere from being imported; null if nothing does. An entry of a newer
 * version must have what every entry has: it is kept, but not used. Never throws.
 */
export function entryMisfit(value: unknown): Misfit | null {
  const version = versionOf(value);
  return version === null ? misfitIn(versioned, value) : misfitOf(value, version);
}

/**
 * An entry as this version uses it, whichever version wrote it. Never throws, and doesn't modify
 * its argument. An entry of an unknown kind is still an entry: the fold skips it.
 */
export function readEntry(value: unknown): ReadEntry {
  const version = versionOf(value);
  if (version !== null && version > ENTRY_VERSION) return { entry: null, problem: 'newer' };
  if (version === null || misfitOf(value, version) !== null)
    return { entry: null, problem: 'damaged' };
  // Unknown names are left out.
  const set = v.safeParse(setOnly, value);
  const lifted = set.success ? set.output : value;
  return { entry: lifted as unknown as Entry, problem: null };
}

const drafted = v.looseObject({
  kind: v.literal('set'),
  seq: v.number(),
  inputs: v.looseObject({ draft: text }),
});

/** A wind typed but not set, which version 1 kept in the sortie; null if there was none. */
export function draftInVersion1(written: readonly unknown[], sortie: Id | null): string | null {
  const drafts = written.filter(
    (value) => v.is(v.looseObject({ sortie: text }), value) && value.sortie === sortie,
  );
  let last: v.InferOutput<typeof drafted> | null = null;
  for (const value of drafts) {
    if (v.is(drafted, value) && (last === null || value.seq > last.seq)) last = value;
  }
  return last?.inputs.draft ?? null;
}

/**
 * Reading an entry that was stored or came from elsewhere: its shape, by the version written in it.
 *
 * A shape never gets narrower: what one version wrote, every later one reads. An entry whose meaning
 * an older app must not guess at bears a higher version, and that app keeps it and does not use it.
 */

import * as v from 'valibot';
import { PHASES } from '../procedure/phases';
import { COMPASS } from '../radio/call';
import {
  ENTRY_VERSION,
  type Entry,
  type Event,
  FIRST_MS,
  HIGHEST_RATE,
  HIGHEST_SEQ,
  type Id,
  LAST_MS,
} from './entry';

/** An entry as it can be used, or why it cannot. */
export type ReadEntry =
  | { readonly entry: Entry; readonly problem: null }
  /** `damaged`: not of the shape of its version. `newer`: of a version that this app does not know. */
  | { readonly entry: null; readonly problem: 'damaged' | 'newer' };

const text = v.string();
const name = v.pipe(text, v.minLength(1), v.maxLength(64));
const names = v.array(text);
const texts = v.record(text, text);
const number = v.pipe(v.number(), v.minValue(-1e6), v.maxValue(1e6));
const moment = v.pipe(v.number(), v.minValue(FIRST_MS), v.maxValue(LAST_MS));
const pass = v.pipe(v.number(), v.safeInteger(), v.minValue(1), v.maxValue(1e6));
const north = v.picklist(['true', 'magnetic']);
const purpose = v.picklist(['take-off', 'landing']);
const phase = v.picklist(PHASES);

/** What a figure said of a step: also one that was no number, as that is what was seen. */
const seen = v.union([
  text,
  v.boolean(),
  v.null(),
  v.custom<number>((value) => typeof value === 'number'),
]);

const stamped = v.looseObject({
  id: name,
  seq: v.pipe(v.number(), v.safeInteger(), v.minValue(0), v.maxValue(HIGHEST_SEQ)),
  sortie: name,
  kind: name,
  at: v.looseObject({ wallMs: moment, sortieMs: moment }),
});

/** Since version 2 an entry says which device made it. */
const made = v.looseObject({ by: name });

/** Names that this version does not know are not taken over; version 1 had the draft of a wind among them. */
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
    closedToday: names,
    preferred: v.boolean(),
    holdShortM: v.record(text, number),
    typedNorth: north,
    variationDeg: v.nullable(number),
    ownQnhHpa: v.nullable(number),
    ownTemperatureC: v.nullable(number),
    rollsFromM: number,
    checkMarkM: v.nullable(number),
    noParachute: v.boolean(),
    chosen: v.nullable(v.object({ end: text, purpose })),
    purpose: v.nullable(purpose),
    load: v.nullable(v.object({ fuelKg: number, stations: v.record(text, number) })),
    stand: v.nullable(text),
    taxiClosed: names,
    taxiEntry: v.nullable(v.object({ end: text, hold: text, intersection: v.boolean() })),
    taxiVia: v.nullable(text),
    departTo: v.nullable(v.picklist(COMPASS)),
    ownCalls: texts,
    supersonic: v.boolean(),
    options: v.record(text, v.boolean()),
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
const CARRIES: Readonly<Record<Exclude<Event['kind'], 'set'>, v.GenericSchema>> = {
  wind: v.looseObject({ text, north }),
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
  reopen: v.looseObject({ run: name, passes: v.record(phase, pass) }),
  stamp: v.looseObject({ what: text }),
  taxied: v.looseObject({ point: text, placed: v.boolean() }),
  interrupted: ofRun,
  resumed: ofRun,
  'taken up': v.looseObject({}),
  undo: v.looseObject({ target: name }),
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

const refused = (problem: 'damaged' | 'newer'): ReadEntry => ({ entry: null, problem });

/**
 * An entry as this version uses it, whichever wrote it. Never throws, and changes nothing of what it is
 * given. An entry of a kind that is not known here is one still: the fold skips it.
 */
export function readEntry(value: unknown): ReadEntry {
  const version = v.safeParse(versioned, value);
  if (!version.success) return refused('damaged');
  if (version.output.v > ENTRY_VERSION) return refused('newer');
  if (!v.is(stamped, value) || (version.output.v > 1 && !v.is(made, value)))
    return refused('damaged');
  if (value.kind === 'set') {
    const set = v.safeParse(setting, value);
    return set.success
      ? { entry: { ...value, inputs: set.output.inputs } as unknown as Entry, problem: null }
      : refused('damaged');
  }
  if (isKind(value.kind) && !v.is(CARRIES[value.kind], value)) return refused('damaged');
  return { entry: value as unknown as Entry, problem: null };
}

const isKind = (kind: string): kind is keyof typeof CARRIES => Object.hasOwn(CARRIES, kind);

const drafted = v.looseObject({
  kind: v.literal('set'),
  seq: v.number(),
  inputs: v.looseObject({ draft: text }),
});

/** What was typed for a wind and not set, as version 1 kept it in the sortie; null where it was not. */
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

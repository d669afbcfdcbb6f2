/**
 * The board: the record, folded, and the first stages of the brief as signals: what Wind needs. The
 * other stages stand in flight.ts, which comes with the places that need them.
 */

import { computed, effect, type ReadonlySignal, signal } from '@preact/signals';
import {
  type Aircraft,
  answerWind,
  type Designator,
  type Documents,
  type Entry,
  type Field,
  factStage,
  type LowSun,
  loadSun,
  loadVariation,
  purposeOf,
  readWind,
  type Sortie,
  sortieFlown,
  sortiesOf,
  sortieTimeMs,
  type Tables,
  type VariationTable,
  type WindText,
} from '../core';
import { deviceId } from '../device/self';
import { type Keeping, newId, Record, type Unread } from '../record/record';
import { documentOf } from './documents';
import { watching } from './places';
import { wallMs } from './time';

const entries = signal<readonly Entry[]>([]);

/** Whether what is entered outlives this window. */
export const keeping = signal<Keeping>('opening');

/** What of the record this version does not use. */
export const unread = signal<Unread>({ damaged: 0, newer: 0 });

const recordChanged = () => {
  entries.value = record.entries;
  keeping.value = record.keeping;
  unread.value = record.unread;
};

/** The one list. */
export const record = new Record(recordChanged, deviceId(newId), watching);

/** Keeps a signal's last value for as long as the new one says the same. */
export function steady<T>(work: () => T): ReadonlySignal<T> {
  let last: T;
  let lastText = '';
  return computed(() => {
    const value = work();
    const text = JSON.stringify(value);
    if (text !== lastText) {
      lastText = text;
      last = value;
    }
    return last;
  });
}

/** All sorties, newest last, by their entries. */
export const sorties = computed(() => sortiesOf(entries.value));

/** The sortie that is being flown: the one begun or taken up last, unless that was undone. */
export const sortie: ReadonlySignal<Sortie> = computed(() =>
  sortieFlown(sorties.value, record.newerSorties),
);

export const inputs = steady(() => sortie.value.inputs);

/** The sortie's own time, UTC, moved on every minute. */
export const sortieMinute = computed(
  () => Math.floor(sortieTimeMs(sortie.value.clock, wallMs.value) / 60_000) * 60_000,
);

const field = computed(() => documentOf<Field>(record, inputs.value.field));
/** The first answer stands, or was waited for long enough: from now on everything may be loaded. */
const answerStands = signal(false);

// Without a field nothing is asked of an aircraft, and the pilot may yet take another one.
const aircraft = computed(() =>
  field.value === null && !answerStands.value
    ? null
    : documentOf<Aircraft>(record, inputs.value.aircraft),
);

/** The field and the aircraft in use, as far as they are in hand; the same while both are. */
export const documents: ReadonlySignal<Pick<Documents, 'field' | 'aircraft'>> = computed(() => ({
  field: field.value,
  aircraft: aircraft.value,
}));

const magnetic = signal<VariationTable | null>(null);
const sun = signal<Tables['sun']>(null);

/** Whether the weather lets a preferred-runway scheme count; not known before the report is read in whole. */
export const preferenceApplies = signal<boolean | undefined>(undefined);

/** The length that today needs on each end; not known before the physics is there. */
export const lengthNeededM = signal<Tables['lengthNeededM']>(undefined);

/** How far it is from the stand to an end; not known before there is a stand. */
export const taxiDistanceM = signal<Tables['taxiDistanceM']>(undefined);

/** For each end, a low sun ahead; empty until that is worked out. */
export const lowSunOn = signal<ReadonlyMap<Designator, LowSun>>(new Map());

const tables = computed((): Tables => {
  const applies = preferenceApplies.value;
  const needed = lengthNeededM.value;
  const taxiM = taxiDistanceM.value;
  return {
    magnetic: magnetic.value,
    sun: sun.value,
    ...(applies === undefined ? {} : { preferenceApplies: applies }),
    ...(needed === undefined ? {} : { lengthNeededM: needed }),
    ...(taxiM === undefined ? {} : { taxiDistanceM: taxiM }),
  };
});

/** Loads the magnetic model, once it is wanted, and whenever the sortie's date asks for another one. */
export function followDate(): void {
  effect(() => {
    if (!answerStands.value && inputs.value.typedNorth === 'true') return;
    const at = new Date(sortieMinute.value);
    const inHand = magnetic.peek();
    if (inHand !== null && at >= inHand.from && at <= inHand.until) return;
    loadVariation(at).then(
      (model) => {
        magnetic.value = model;
      },
      () => {
        // Outside the years of every model: the brief says so. A failed load is tried again next minute.
        magnetic.value = null;
      },
    );
  });
}

/** Loads what can wait until the first answer stands. */
export async function loadTheRest(): Promise<void> {
  answerStands.value = true;
  const loaded = await loadSun();
  sun.value = loaded;
}

const settledInputs = steady(() => {
  const { field: _f, aircraft: _a, procedure: _p, callsign: _c, ...rest } = inputs.value;
  const { typedNorth: _n, chosen: _e, purpose: _u, load: _l, ...others } = rest;
  const { stand: _s, taxiClosed: _x, taxiEntry: _t, taxiVia: _v, ...more } = others;
  const { departTo: _o, ownCalls: _w, ...settling } = more;
  return settling;
});

/** What field, date and choices settle before there is a wind. */
export const settled = computed(() =>
  factStage(settledInputs.value, new Date(sortieMinute.value), documents.value, tables.value),
);

/** What Wind judges for. */
export const purpose = computed(() => purposeOf(inputs.value, sortie.value.stamps));

/** The wind in use: the one entered last. */
export const enteredWind = computed(() => sortie.value.winds.at(-1) ?? null);

/** The same as text and north, for the stages. */
export const enteredText = steady((): WindText | null => {
  const entered = enteredWind.value;
  return entered === null ? null : { text: entered.text, north: entered.north };
});

/** What is typed and not set yet. */
export const draft = signal('');

const chosen = steady(() => inputs.value.chosen);

/** What a text says of the wind, and what that means: judged anew only where it says another wind. */
function windOf(text: () => WindText | null) {
  const read = computed(() => readWind(text()));
  const said = steady(() => ({ wind: read.value.report?.wind ?? null, north: read.value.north }));
  const answer = computed(() => {
    const at = new Date(sortieMinute.value);
    return answerWind(
      settled.value,
      said.value.wind,
      said.value.north,
      purpose.value,
      chosen.value,
      at,
    );
  });
  return { read, answer };
}

const inUse = windOf(() => enteredText.value);
const typed = windOf(() => ({ text: draft.value, north: inputs.value.typedNorth }));

const nothingTyped = computed(() => draft.value.trim() === '');

/** What the wind in use says. */
export const enteredRead = inUse.read;

/** When the report in use was issued, by the sortie's clock, ms; null where it is not known, or not a report. */
export const issuedMs = signal<number | null>(null);

/** What the wind in use means. */
export const wind = inUse.answer;

/** What the typed wind says, before it is set; the wind in use while nothing is typed. */
export const typedRead = computed(() => (nothingTyped.value ? inUse : typed).read.value);

/** What the typed wind would mean; the wind in use while nothing is typed. */
export const typedWind = computed(() => (nothingTyped.value ? inUse : typed).answer.value);

/** First stage: what the field, the date and the pilot's choices settle before there is a wind. */

import type { Aircraft } from '../aircraft/aircraft';
import type { Field, Surface } from '../airfield/field';
import type { SunFacts } from '../earth/sun';
import { type Figure, known, unknown } from '../figure';
import { PREFERRED_CROSSWIND_KT, PREFERRED_TAILWIND_KT } from '../runway/preference';
import type { EndsQuestion, LengthNeeded, Purpose, WindLimits } from '../runway/question';
import type { Inputs } from '../sortie/entry';
import type { Stamp } from '../sortie/fold';
import { M_PER_FT } from '../units';
import type { Documents, Tables } from './questions';

/** What is settled before there is a wind. */
export interface SettledFacts {
  readonly field: Field | null;
  readonly aircraft: Aircraft | null;
  readonly surface: Surface;
  /** Magnetic variation at the field, east positive. */
  readonly variation: Figure<'deg'>;
  /** The smaller of the aircraft's limit for the surface and the pilot's own. */
  readonly crosswindLimit: Figure<'kt'>;
  readonly tailwindLimit: Figure<'kt'>;
  /** What the pilot set besides: ends closed today, a preference, holding short, a limit to the gust. */
  readonly rules: Pick<EndsQuestion, 'closedToday' | 'preferred' | 'holdShortM'> &
    Pick<WindLimits, 'gustSpreadKt'>;
  /** The length needed on an end: today's, or the book's where that is not worked out; null without an aircraft. */
  readonly lengthNeededM: Readonly<Record<Purpose, LengthNeeded>> | null;
  /** How far it is to the beginning of an end's run; null while that is not known. */
  readonly taxiDistanceM: NonNullable<EndsQuestion['taxiDistanceM']> | null;
  /** Null while the tables are on their way, or without a field. */
  readonly sun: SunFacts | null;
  /** Whether someone controls the field; null without a field. */
  readonly controlled: boolean | null;
}

/** What of the inputs is settled before there is a wind. */
export type SettledInputs = Omit<
  Inputs,
  | 'field'
  | 'aircraft'
  | 'procedure'
  | 'callsign'
  | 'typedNorth'
  | 'chosen'
  | 'purpose'
  | 'load'
  | 'draft'
  | 'stand'
  | 'taxiClosed'
  | 'taxiEntry'
  | 'taxiVia'
  | 'departTo'
  | 'ownCalls'
>;

/** The facts of a field, a date, an aircraft and the pilot's choices. */
export function factStage(
  inputs: SettledInputs,
  at: Date,
  { field, aircraft }: Pick<Documents, 'field' | 'aircraft'>,
  tables: Tables,
): SettledFacts {
  const { surface } = inputs;
  return {
    field,
    aircraft,
    surface,
    variation: variationFigure(inputs.variationDeg, field, at, tables),
    crosswindLimit: limit(aircraft?.limits.crosswindKt[surface], ownCrosswindKt(inputs)),
    tailwindLimit: limit(aircraft?.limits.tailwindKt[surface], inputs.ownTailwindKt),
    rules: rulesOf(inputs, field, tables),
    lengthNeededM: tables.lengthNeededM ?? (aircraft && bookRuns(aircraft)),
    taxiDistanceM: tables.taxiDistanceM ?? null,
    sun: field === null || tables.sun === null ? null : tables.sun(field.place, at),
    controlled:
      field === null
        ? null
        : field.radio.some(({ service }) => service === 'tower' || service === 'ground'),
  };
}

/** On a surface that is not dry the pilot's own limit for it counts, where there is one. */
const ownCrosswindKt = ({ surface, ownCrosswindKt: dryKt, ownWetCrosswindKt }: SettledInputs) =>
  surface === 'dry' ? dryKt : (ownWetCrosswindKt ?? dryKt);

function rulesOf(
  { closedToday, preferred, holdShortM, ownGustSpreadKt, surface }: SettledInputs,
  field: Field | null,
  { preferenceApplies = surface === 'dry' }: Tables,
): SettledFacts['rules'] {
  const ends = preferred ? (field?.preferredEnds ?? []) : [];
  return {
    closedToday,
    holdShortM,
    ...(ownGustSpreadKt === null ? {} : { gustSpreadKt: ownGustSpreadKt }),
    ...(ends.length === 0
      ? {}
      : {
          preferred: {
            ends,
            maxCrosswindKt: PREFERRED_CROSSWIND_KT,
            maxTailwindKt: PREFERRED_TAILWIND_KT,
            applies: preferenceApplies,
          },
        }),
  };
}

const runsByAircraft = new WeakMap<Aircraft, Record<Purpose, LengthNeeded>>();

/**
 * The runs that the aircraft's document gives, on any end and in any wind: less than that no end may
 * offer. The same functions each time, so that what is kept for them stays.
 */
function bookRuns(aircraft: Aircraft): Record<Purpose, LengthNeeded> {
  const before = runsByAircraft.get(aircraft);
  if (before !== undefined) return before;
  const { takeoff, landing } = aircraft;
  const runs = { 'take-off': () => takeoff.runM, landing: () => landing.runM };
  runsByAircraft.set(aircraft, runs);
  return runs;
}

function variationFigure(
  own: number | null,
  field: Field | null,
  at: Date,
  { magnetic }: Tables,
): Figure<'deg'> {
  if (own !== null) {
    return known(own, 'deg', { formula: 'as-set', inputs: { set: own }, source: 'pilot' });
  }
  if (field === null) return unknown('no-field');
  if (magnetic === null || !(at >= magnetic.from && at <= magnetic.until)) {
    return unknown('no-magnetic-model');
  }
  // Taken at the beginning of the day, so that the date that is shown gives the figure that is shown.
  const date = at.toISOString().slice(0, 10);
  const { latDeg, lonDeg, elevationFt } = field.place;
  const elevationM = elevationFt * M_PER_FT;
  return known(magnetic.variationDeg({ latDeg, lonDeg, elevationM }, new Date(date)), 'deg', {
    formula: 'variation',
    inputs: { latDeg, lonDeg, elevationM, date },
    source: magnetic.name,
  });
}

function limit(aircraftKt: number | undefined, ownKt: number | null): Figure<'kt'> {
  if (aircraftKt === undefined && ownKt === null) return unknown('no-aircraft');
  const value = Math.min(aircraftKt ?? Number.POSITIVE_INFINITY, ownKt ?? Number.POSITIVE_INFINITY);
  return known(value, 'kt', {
    formula: 'smaller-limit',
    inputs: {
      ...(aircraftKt === undefined ? {} : { aircraftKt }),
      ...(ownKt === null ? {} : { ownKt }),
    },
    source: aircraftKt === value ? 'aircraft' : 'pilot',
  });
}

/**
 * What Wind judges for: what the pilot set, else landing once airborne, until the field is left
 * again, and take-off before.
 */
export function purposeOf(inputs: Pick<Inputs, 'purpose'>, stamps: readonly Stamp[]): Purpose {
  if (inputs.purpose !== null) return inputs.purpose;
  const last = stamps.findLast(
    ({ what }) => what === 'brakes released' || what === 'airborne' || what === 'landed',
  );
  return last === undefined || last.what === 'brakes released' ? 'take-off' : 'landing';
}

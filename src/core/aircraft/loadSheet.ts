/** The load sheet: masses, centre of gravity, and the limits they exceed. */

import { type Figure, type Known, known, unknown } from '../figure';
import type { Aircraft } from './aircraft';
import { carriedKg, type Load, type Loading, usualLoad } from './load';
import { armsAt, type Balance, isInEnvelope, type LoadEnvelope } from './loadEnvelope';

/** What a load exceeds, and by how much. */
export type Exceeded =
  | { readonly code: 'over-max-take-off' | 'over-max-landing' | 'fuel-over'; readonly byKg: number }
  | { readonly code: 'station-over'; readonly station: string; readonly byKg: number }
  /** Fuel, but less than it must land with. */
  | { readonly code: 'below-landing-fuel'; readonly byKg: number }
  | { readonly code: 'no-fuel' }
  | {
      readonly code: 'outside-envelope';
      readonly at: 'take-off' | 'landing' | 'between';
      /** The side it is outside on: `heavy` or `light` by mass, null in a notch. */
      readonly side: 'aft' | 'forward' | 'heavy' | 'light' | null;
    };

/** What an aircraft weighs today. */
export interface LoadFigures {
  /** Everything but fuel. */
  readonly zeroFuelKg: Figure<'kg'>;
  readonly takeoffMassKg: Figure<'kg'>;
  /** With fuel burnt down to what it must land with. */
  readonly landingMassKg: Figure<'kg'>;
  /** Metres aft of the datum; null if the document has no arms. */
  readonly takeoffArmM: Figure<'m'> | null;
  readonly landingArmM: Figure<'m'> | null;
  /** Path of the centre of gravity from take-off to landing; empty if unknown. */
  readonly burn: readonly Balance[];
  /** Empty if within the limits given. */
  readonly exceeded: readonly Exceeded[];
}

/** Reaching a limit doesn't exceed it, kg: sums of decimals err by less. */
const ROUNDING_KG = 1e-6;

/** Pieces of the burn to check: fuel has its own arm, so the centre of gravity moves on a curve. */
const PIECES = 40;

/** Everything aboard but fuel, kg and kg·m. */
interface Dry {
  readonly crewKg: number;
  readonly carriedKg: number;
  readonly massKg: number;
  /** Null if an arm is missing. */
  readonly momentKgM: number | null;
}

const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0);

/** Sum of mass times arm; null if an arm is missing. FAA-H-8083-25, ch. 10. */
function momentKgM(masses: readonly (readonly [kg: number, armM: number | undefined])[]) {
  const moments = masses.flatMap(([kg, armM]) => (armM === undefined ? [] : [kg * armM]));
  return moments.length === masses.length ? sum(moments) : null;
}

function dryOf(emptyKg: number, { emptyArmM, crew, stations }: Loading, load: Load): Dry {
  const crewKg = sum(crew.map(({ kg }) => kg));
  const carried = stations.map((station) => carriedKg(load, station));
  return {
    crewKg,
    carriedKg: sum(carried),
    massKg: emptyKg + crewKg + sum(carried),
    momentKgM: momentKgM([
      [emptyKg, emptyArmM],
      ...crew.map(({ kg, armM }) => [kg, armM] as const),
      ...stations.map(({ armM }, index) => [carried[index] ?? 0, armM] as const),
    ]),
  };
}

/**
 * The aircraft's masses with a load, or its usual one if null. A document without a load sheet
 * gives its usual masses. Without fuel there are none to take off or land at: nothing is computed
 * from a load that can't fly.
 */
export function loadSheet(aircraft: Aircraft, given: Load | null): LoadFigures {
  const { masses, load: loading } = aircraft;
  if (loading === undefined) {
    return {
      zeroFuelKg: unknown('not-in-aircraft'),
      takeoffMassKg: asGiven(masses.usualTakeoffKg),
      landingMassKg: asGiven(masses.usualLandingKg),
      takeoffArmM: null,
      landingArmM: null,
      burn: [],
      exceeded: [],
    };
  }
  const load = given ?? usualLoad(loading);
  const dry = dryOf(masses.emptyKg, loading, load);
  const landingFuelKg = Math.min(load.fuelKg, loading.fuel.landingKg);
  const zeroFuelKg = known(dry.massKg, 'kg', {
    formula: 'zero-fuel-mass',
    inputs: { emptyKg: masses.emptyKg, crewKg: dry.crewKg, carriedKg: dry.carriedKg },
    source: 'load',
  });
  const withFuel = (fuelKg: number): Known<'kg'> =>
    known(dry.massKg + fuelKg, 'kg', {
      formula: 'mass-with-fuel',
      inputs: { zeroFuelMass: zeroFuelKg, fuelKg },
      source: 'load',
    });
  const hasFuel = load.fuelKg > 0;
  const takeoff = hasFuel ? withFuel(load.fuelKg) : unknown('no-fuel');
  const landing = hasFuel ? withFuel(landingFuelKg) : unknown('no-fuel');
  const burn = hasFuel ? burnOf(dry, loading, load.fuelKg, landingFuelKg) : [];
  return {
    zeroFuelKg,
    takeoffMassKg: takeoff,
    landingMassKg: landing,
    takeoffArmM: armFigure(dry, loading, load.fuelKg, takeoff),
    landingArmM: armFigure(dry, loading, landingFuelKg, landing),
    burn,
    exceeded: [
      ...massesExceeded(masses, takeoff, landing),
      ...fuelAndStations(loading, load),
    ].concat(outside(loading, burn)),
  };
}

const asGiven = (kg: number) =>
  known(kg, 'kg', { formula: 'as-given', inputs: { given: kg }, source: 'aircraft' });

/** Moment with this much fuel, kg·m; null if an arm is missing. */
function momentWith(dry: Dry, { fuel }: Loading, fuelKg: number): number | null {
  return dry.momentKgM === null || fuel.armM === undefined
    ? null
    : dry.momentKgM + fuelKg * fuel.armM;
}

/** Centre of gravity: total moment over total mass. FAA-H-8083-25, ch. 10. */
function armFigure(
  dry: Dry,
  loading: Loading,
  fuelKg: number,
  mass: Figure<'kg'>,
): Figure<'m'> | null {
  const moment = momentWith(dry, loading, fuelKg);
  if (moment === null) return null;
  if (mass.value === null) return mass;
  return known(moment / mass.value, 'm', {
    formula: 'centre-of-gravity',
    inputs: { momentKgM: moment, mass },
    source: 'weight-and-balance',
  });
}

function burnOf(dry: Dry, loading: Loading, fromKg: number, toKg: number): Balance[] {
  return Array.from({ length: PIECES + 1 }, (_, piece) => {
    const fuelKg = fromKg + ((toKg - fromKg) * piece) / PIECES;
    const moment = momentWith(dry, loading, fuelKg);
    const massKg = dry.massKg + fuelKg;
    return moment === null ? [] : [[moment / massKg, massKg] as const];
  }).flat();
}

function massesExceeded(
  { maxTakeoffKg, maxLandingKg }: Aircraft['masses'],
  takeoff: Figure<'kg'>,
  landing: Figure<'kg'>,
): Exceeded[] {
  return [
    ...over('over-max-take-off', takeoff.value ?? 0, maxTakeoffKg),
    ...over('over-max-landing', landing.value ?? 0, maxLandingKg),
  ];
}

function over<C extends string>(code: C, kg: number, limitKg: number) {
  return kg > limitKg + ROUNDING_KG ? [{ code, byKg: kg - limitKg }] : [];
}

function fuelAndStations({ fuel, stations }: Loading, load: Load): Exceeded[] {
  const shortKg = fuel.landingKg - load.fuelKg;
  return [
    ...(load.fuelKg > 0 ? [] : [{ code: 'no-fuel' } as const]),
    ...(load.fuelKg > 0 && shortKg > ROUNDING_KG
      ? [{ code: 'below-landing-fuel', byKg: shortKg } as const]
      : []),
    ...over('fuel-over', load.fuelKg, fuel.maxKg),
    ...stations.flatMap((station) =>
      over('station-over', carriedKg(load, station), station.maxKg).map((exceeded) => ({
        ...exceeded,
        station: station.id,
      })),
    ),
  ];
}

/** Where the centre of gravity first leaves the envelope, and on which side. */
function outside({ envelope }: Loading, burn: readonly Balance[]): Exceeded[] {
  if (envelope === undefined) return [];
  const out = burn.findIndex((balance) => !isInEnvelope(envelope, balance));
  const balance = burn[out];
  if (balance === undefined) return [];
  const last = burn.at(-1) ?? balance;
  const at = out === 0 ? 'take-off' : isInEnvelope(envelope, last) ? 'between' : 'landing';
  return [{ code: 'outside-envelope', at, side: sideOf(envelope, balance) }];
}

type Side = Extract<Exceeded, { code: 'outside-envelope' }>['side'];

function sideOf(envelope: LoadEnvelope, [armM, massKg]: Balance): Side {
  const arms = armsAt(envelope, massKg);
  if (arms === null) return envelope.every(([, kg]) => kg < massKg) ? 'heavy' : 'light';
  return armM > arms[1] ? 'aft' : armM < arms[0] ? 'forward' : null;
}

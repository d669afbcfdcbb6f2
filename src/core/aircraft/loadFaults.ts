/** What keeps the load sheet of an aircraft document of the right shape from being used. */

import { type Fault, type FaultKey, repeats } from '../fault';
import { isReservedName } from '../reservedName';
import type { AircraftShape } from './aircraft.schema';
import { carriedKg, type Load, type Loading, type LoadStation, usualLoad } from './load';
import { isSimple } from './loadEnvelope';
import { loadSheet } from './loadSheet';

/** What can be wrong with a load sheet. */
export type LoadFault =
  /** Some masses have an arm and others have none. */
  | 'arm-missing'
  /** An envelope, but no arms to work a centre of gravity out from. */
  | 'envelope-without-arms'
  /** The envelope's edges cross, or hold nothing. */
  | 'envelope-not-simple'
  /** Two stations have one name. */
  | 'station-twice'
  /** A station bears a name that means something to the language it is kept in. */
  | 'name-reserved'
  /** A preset loads a station that there is not. */
  | 'station-unknown'
  /** Two choices of a station weigh the same, and so cannot be told apart. */
  | 'choice-twice'
  /** A choice or a person is more than the station carries. */
  | 'beyond-station'
  /** A preset has a mass that is none of the station's choices, or no whole number of people. */
  | 'not-a-choice'
  /** A preset is over a mass, a tank or a station, or outside the envelope. */
  | 'preset-not-within'
  /** The first preset does not add up to the usual masses. */
  | 'not-usual'
  /** It is to land with more fuel than the tanks hold. */
  | 'landing-fuel-over';

type Found = Generator<Fault<LoadFault>>;

/** The way to something in the load sheet. */
const at = (...path: FaultKey[]): Fault['path'] => ['load', ...path];

/** Masses that are written down one by one are the same within half a kilogram. */
const SAME_KG = 0.5;

function* faultsOfArms({ emptyArmM, fuel, crew, stations, envelope }: Loading): Found {
  const arms: readonly (readonly [Fault['path'], number | undefined])[] = [
    [at('emptyArmM'), emptyArmM],
    [at('fuel', 'armM'), fuel.armM],
    ...crew.map(({ armM }, i) => [at('crew', i, 'armM'), armM] as const),
    ...stations.map(({ armM }, i) => [at('stations', i, 'armM'), armM] as const),
  ];
  const missing = arms.filter(([, armM]) => armM === undefined);
  if (missing.length < arms.length)
    for (const [path] of missing) yield { path, code: 'arm-missing' };
  else if (envelope !== undefined) yield { path: at('envelope'), code: 'envelope-without-arms' };
  if (envelope !== undefined && !isSimple(envelope))
    yield { path: at('envelope'), code: 'envelope-not-simple' };
}

function* faultsOfStations({ stations, fuel }: Loading): Found {
  if (fuel.landingKg > fuel.maxKg)
    yield { path: at('fuel', 'landingKg'), code: 'landing-fuel-over' };
  for (const i of repeats(stations.map(({ id }) => id)))
    yield { path: at('stations', i, 'id'), code: 'station-twice' };
  for (const [i, station] of stations.entries()) {
    const path = at('stations', i);
    if (isReservedName(station.id)) yield { path: [...path, 'id'], code: 'name-reserved' };
    if (station.kind === 'people' && station.eachKg > station.maxKg)
      yield { path: [...path, 'eachKg'], code: 'beyond-station' };
    if (station.kind !== 'stores') continue;
    for (const j of repeats(station.choices.map(({ kg }) => String(kg))))
      yield { path: [...path, 'choices', j, 'kg'], code: 'choice-twice' };
    for (const [j, { kg }] of station.choices.entries())
      if (kg > station.maxKg) yield { path: [...path, 'choices', j, 'kg'], code: 'beyond-station' };
  }
}

/** Whether a station can carry just that much. */
function isChoice(station: LoadStation, kg: number): boolean {
  switch (station.kind) {
    case 'stores':
      return kg === 0 || station.choices.some((choice) => choice.kg === kg);
    case 'people':
      return Number.isInteger(kg / station.eachKg);
    case 'baggage':
      return true;
  }
}

function* faultsOfPreset(
  aircraft: AircraftShape,
  { stations }: Loading,
  load: Load,
  i: number,
): Found {
  const named = new Map(stations.map((station) => [station.id, station]));
  for (const id of Object.keys(load.stations)) {
    const station = named.get(id);
    const path = at('presets', i, 'stations', id);
    if (station === undefined) yield { path, code: 'station-unknown' };
    else if (!isChoice(station, carriedKg(load, station))) yield { path, code: 'not-a-choice' };
  }
  if (loadSheet(aircraft, load).exceeded.length > 0)
    yield { path: at('presets', i), code: 'preset-not-within' };
}

function* faultsOfUsual(aircraft: AircraftShape, loading: Loading): Found {
  const { usualTakeoffKg, usualLandingKg } = aircraft.masses;
  const { takeoffMassKg, landingMassKg } = loadSheet(aircraft, usualLoad(loading));
  const isApart = (kg: number | null, usualKg: number) => Math.abs((kg ?? 0) - usualKg) > SAME_KG;
  if (isApart(takeoffMassKg.value, usualTakeoffKg))
    yield { path: at('presets', 0), code: 'not-usual' };
  if (isApart(landingMassKg.value, usualLandingKg))
    yield { path: at('fuel', 'landingKg'), code: 'not-usual' };
}

/** Everything that keeps the load sheet from being used; empty when it holds together, or there is none. */
export function loadFaults(aircraft: AircraftShape): Fault<LoadFault>[] {
  const { load } = aircraft;
  if (load === undefined) return [];
  return [
    ...faultsOfArms(load),
    ...faultsOfStations(load),
    ...load.presets.flatMap((preset, i) => [...faultsOfPreset(aircraft, load, preset, i)]),
    ...faultsOfUsual(aircraft, load),
  ];
}

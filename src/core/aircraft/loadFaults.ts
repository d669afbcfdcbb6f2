/** What makes the load sheet of a well-formed aircraft document unusable. */

import { type Fault, type FaultKey, repeats } from '../fault';
import { isReservedName } from '../reservedName';
import type { AircraftShape } from './aircraft.schema';
import { carriedKg, type Load, type Loading, type LoadStation, usualLoad } from './load';
import { isSimple } from './loadEnvelope';
import { loadSheet } from './loadSheet';

export type LoadFault =
  /** Some masses have an arm and others have none. */
  | 'arm-missing'
  /** An envelope, but no arms to compute a centre of gravity from. */
  | 'envelope-without-arms'
  /** The envelope's edges cross, or enclose nothing. */
  | 'envelope-not-simple'
  /** Two stations share a name. */
  | 'station-twice'
  /** A station's name means something to JavaScript, which stores it as a key. */
  | 'name-reserved'
  /** A preset loads an unknown station. */
  | 'station-unknown'
  /** Two choices of a station weigh the same and can't be told apart. */
  | 'choice-twice'
  /** A choice or a person exceeds the station's limit. */
  | 'beyond-station'
  /** A preset's mass is none of the station's choices, or no whole number of people. */
  | 'not-a-choice'
  /** A preset exceeds a mass, tank or station, or leaves the envelope. */
  | 'preset-not-within'
  /** The first preset does not add up to the usual masses. */
  | 'not-usual'
  /** It must land with more fuel than the tanks hold. */
  | 'landing-fuel-over';

type Found = Generator<Fault<LoadFault>>;

/** Path in the load sheet. */
const at = (...path: FaultKey[]): Fault['path'] => ['load', ...path];

/** Masses written down separately are equal within half a kilogram. */
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
  if (fuel.landingKg > fuel.maxKg) {
    const values = [fuel.landingKg, fuel.maxKg];
    yield { path: at('fuel', 'landingKg'), code: 'landing-fuel-over', values };
  }
  for (const i of repeats(stations.map(({ id }) => id)))
    yield { path: at('stations', i, 'id'), code: 'station-twice' };
  for (const [i, station] of stations.entries()) {
    const path = at('stations', i);
    if (isReservedName(station.id)) yield { path: [...path, 'id'], code: 'name-reserved' };
    if (station.kind === 'people' && station.eachKg > station.maxKg) {
      const values = [station.eachKg, station.maxKg];
      yield { path: [...path, 'eachKg'], code: 'beyond-station', values };
    }
    if (station.kind !== 'stores') continue;
    for (const j of repeats(station.choices.map(({ kg }) => String(kg))))
      yield { path: [...path, 'choices', j, 'kg'], code: 'choice-twice' };
    for (const [j, { kg }] of station.choices.entries())
      if (kg > station.maxKg) {
        const values = [kg, station.maxKg];
        yield { path: [...path, 'choices', j, 'kg'], code: 'beyond-station', values };
      }
  }
}

/** Whether a station can carry exactly that much. */
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
  function* apart(path: Fault['path'], kg: number | null, usualKg: number): Found {
    const values = [kg ?? 0, usualKg];
    if (Math.abs((kg ?? 0) - usualKg) > SAME_KG) yield { path, code: 'not-usual', values };
  }
  yield* apart(at('presets', 0), takeoffMassKg.value, usualTakeoffKg);
  yield* apart(at('fuel', 'landingKg'), landingMassKg.value, usualLandingKg);
}

/** Everything that makes the load sheet unusable; empty if it holds together or is absent. */
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

/** The facts steps depend on: what conditions ask for, and live numbers in texts. */

import type { Aircraft } from '../aircraft/aircraft';
import { carriedKg, type Load, type LoadStation, usualLoad } from '../aircraft/load';
import type { LoadFigures } from '../aircraft/loadSheet';
import type { Field } from '../airfield/field';
import { findEnd } from '../airfield/findEnd';
import { degreesOf, toMagnetic } from '../angle';
import { densityAltitudeFt } from '../earth/atmosphere';
import { type Facts, OPTION_JOINT } from '../procedure/facts';
import type { Procedure } from '../procedure/procedure';
import { type CallFacts, fieldCalled, stationCalled } from '../radio/call';
import type { Inputs } from '../sortie/entry';
import type { AirBrief } from './air';
import type { NumbersBrief } from './numbers';
import type { SettledFacts } from './settled';
import type { WindText } from './sources';
import type { TodayBrief } from './today';
import type { WindAnswer } from './wind';

export interface FactSources {
  readonly settled: SettledFacts;
  readonly wind: Pick<WindAnswer, 'using' | 'ranked' | 'inUse' | 'wind'>;
  /** The wind in use as entered. */
  readonly entered: WindText | null;
  /** From the aircraft's document. */
  readonly numbers: NumbersBrief | null;
  /** Today's numbers, preferred to the document's; null if none. */
  readonly today: TodayBrief | null;
  /**
   * Today's numbers are loading. What they would change is unknown until then, so that no step
   * falls due again briefly after each start.
   */
  readonly awaited: boolean;
  readonly air: AirBrief | null;
  readonly load: LoadFigures | null;
  /** Whether the route to the runway crosses another; null if unknown. */
  readonly crossesRunway: boolean | null;
  /** The next runway to cross, or the last one crossed; null if the route crosses none. */
  readonly crossing: CallFacts['crossing'];
  readonly procedure: Pick<Procedure, 'options'> | null;
  readonly inputs: Pick<
    Inputs,
    'callsign' | 'supersonic' | 'options' | 'load' | 'checkMarkM' | 'ownQnhHpa'
  >;
}

/** The facts steps depend on; null if unknown. */
export function stepFacts(sources: FactSources): Facts {
  const { settled, wind, entered, inputs, procedure, crossesRunway, crossing } = sources;
  const { sun, surface, controlled, field, aircraft } = settled;
  return {
    night: sun?.night.holds ?? null,
    lights: sun?.lights.holds ?? null,
    wet: surface !== 'dry',
    controlled,
    lightWind: wind.ranked?.light ?? null,
    crossesRunway,
    supersonic: inputs.supersonic,
    stores: carries(aircraft, inputs.load, 'stores'),
    passengers: carries(aircraft, inputs.load, 'people'),
    cable: hasCable(field, wind.using),
    options:
      procedure === null ? null : fittedOptions(procedure, inputs.options).join(OPTION_JOINT),
    runway: wind.using,
    runwayMagnetic: magneticOf(settled, wind.using),
    wind: entered?.text ?? null,
    windKt: wind.wind?.gustKt ?? wind.wind?.speedKt ?? null,
    headwindKt: wind.inUse?.headwindKt ?? null,
    crosswindKt: wind.inUse?.crosswindWorstKt ?? null,
    field: field === null ? null : fieldCalled(field),
    ground: field === null ? null : stationCalled('taxi', field),
    tower: field === null ? null : stationCalled('line-up', field),
    crossing: crossing?.runway ?? null,
    crossingAt: crossing?.hold ?? crossing?.on ?? null,
    callsign: inputs.callsign === '' ? null : inputs.callsign,
    ...airFacts(sources),
    ...aircraftFacts(sources),
    ...takeoffFacts(sources),
    ...landingFacts(sources),
  };
}

/** Names of fitted options, by the pilot or else the procedure, in its order. */
export const fittedOptions = (
  { options = [] }: Pick<Procedure, 'options'>,
  chosen: Inputs['options'],
): readonly string[] =>
  options
    .filter(({ id, fitted }) => (Object.hasOwn(chosen, id) ? chosen[id] : fitted))
    .map(({ id }) => id);

/** Whether any station of a kind is loaded; null without a load sheet. */
function carries(
  aircraft: Aircraft | null,
  given: Load | null,
  kind: LoadStation['kind'],
): boolean | null {
  if (aircraft?.load === undefined) return null;
  const load = given ?? usualLoad(aircraft.load);
  return aircraft.load.stations.some(
    (station) => station.kind === kind && carriedKg(load, station) > 0,
  );
}

/** Whether a cable lies across a runway; null if none is in use, or its field doesn't say. */
function hasCable(field: Field | null, using: string | null): boolean | null {
  const end = field === null || using === null ? null : findEnd(field, using);
  return end?.given.cablesM === undefined ? null : end.given.cablesM.length > 0;
}

function magneticOf({ field, variation }: SettledFacts, using: string | null): number | null {
  const end = field === null || using === null ? null : findEnd(field, using);
  return end === null || variation.value === null
    ? null
    : degreesOf(toMagnetic(end.heading, variation.value));
}

/** QNH that someone gave, hPa; null if the standard one stands in for it. */
export function givenQnhHpa(air: AirBrief | null): number | null {
  const why = air?.pressureAltitude.value == null ? null : air.pressureAltitude.why.inputs;
  if (air === null || air.standard.includes('qnh')) return null;
  return typeof why?.qnhHpa === 'number' ? why.qnhHpa : null;
}

/** A standard value is not passed off as one someone gave. */
function airFacts({ air }: FactSources) {
  const isGiven = (what: AirBrief['standard'][number]) =>
    air !== null && !air.standard.includes(what);
  const qnh = givenQnhHpa(air);
  const temperatureC = isGiven('temperature') ? (air?.temperature.value ?? null) : null;
  const pressureFt = air?.pressureAltitude.value ?? null;
  return {
    qnh,
    temperatureC,
    densityAltitudeFt:
      qnh === null || temperatureC === null || pressureFt === null
        ? null
        : densityAltitudeFt(pressureFt, temperatureC),
  };
}

const range = (pair: readonly [number, number] | undefined) =>
  pair === undefined ? null : `${pair[0]}–${pair[1]}`;

function aircraftFacts({ settled: { aircraft }, numbers, load, inputs }: FactSources) {
  const given = inputs.load ?? (aircraft?.load === undefined ? null : usualLoad(aircraft.load));
  return {
    massKg: load?.takeoffMassKg.value ?? null,
    landingMassKg: load?.landingMassKg.value ?? null,
    fuelKg: given?.fuelKg ?? null,
    taxiKt: aircraft?.taxi.maxKt ?? null,
    turnKt: aircraft?.taxi.turnKt ?? null,
    breakaway: aircraft?.taxi.power?.breakaway ?? null,
    keepRolling: range(aircraft?.taxi.power?.keepRolling),
    gearKt: numbers?.climb.gearUpByKt.value ?? numbers?.limits.gearKt.value ?? null,
    flapsKt: numbers?.climb.flapsUpByKt.value ?? null,
    reheatOffKt: numbers?.climb.reheatOffKt.value ?? null,
  };
}

/** Speeds for the expected wind; lengths, and stopping speeds, as planned. */
function takeoffFacts({ settled: { aircraft }, numbers, today, awaited, inputs }: FactSources) {
  const expected = today?.takeoff.expected;
  const planned = today?.takeoff.planned;
  const hope = expected?.because === null ? expected.figures : null;
  const plan = planned?.because === null ? planned.figures : null;
  const book = awaited ? null : (numbers?.takeoff ?? null);
  return {
    markM: inputs.checkMarkM,
    markKt: hope?.atMarkKt.value ?? null,
    markLeastKt: plan?.atMarkLeastKt.value ?? null,
    lastStopKt: plan?.lastStopKt.value ?? null,
    goOnKt: plan?.lowestGoOnKt.value ?? null,
    rotateKt: hope?.rotateKt.value ?? book?.rotateKt.value ?? null,
    liftOffKt: hope?.liftOffKt.value ?? book?.liftOffKt.value ?? null,
    runM: plan?.runM.value ?? book?.runM.value ?? null,
    climbKt: hope?.climbKt.value ?? (awaited ? null : range(aircraft?.climb.speedKt)),
    climbPitch: hope?.climbPitch.value ?? (awaited ? null : range(aircraft?.climb.pitchDeg)),
  };
}

function landingFacts({ numbers, today, awaited }: FactSources) {
  const expected = today?.landing.expected;
  const planned = today?.landing.planned;
  const hope = expected?.because === null ? expected.figures : null;
  const book = awaited ? null : (numbers?.landing ?? null);
  return {
    referenceKt: hope?.referenceKt.value ?? null,
    approachKt: hope?.approachKt.value ?? book?.approachKt.value ?? null,
    landingM: (planned?.because === null ? planned.figures.plannedM.value : null) ?? null,
  };
}

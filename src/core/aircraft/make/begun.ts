/** The physics that a fit begins from: an aircraft's own, or what its class and its figures give. */

import { liftCoefficient } from '../aerodynamics';
import type { Aircraft } from '../aircraft';
import { BOOK_FIGURES } from '../bookFigures';
import type { AircraftClass } from '../classNames';
import type { Guess } from '../fit/fitAircraft';
import type { Flying } from '../fit/fitToBook';
import type { Performance } from '../performance';
import { CLASSES, type ClassSpec } from './classes';

/** What to fit, and what of its beginning is a guess. */
export interface FitQuestion {
  readonly aircraft: Flying;
  readonly guesses: readonly Guess[];
}

/** What to fit to an aircraft's table; null if there is none, and its book figures stay as they are. */
export function fitQuestion(aircraft: Aircraft): FitQuestion | null {
  const { handbook, madeFrom, performance } = aircraft;
  const rows = handbook?.rows ?? [];
  if (!rows.some((row) => BOOK_FIGURES.some((figure) => row[figure] !== undefined))) return null;
  if (madeFrom === undefined && performance !== undefined) {
    return { aircraft: { ...aircraft, performance }, guesses: [] };
  }
  const begun = begunFrom(CLASSES[madeFrom?.class ?? classOf(aircraft)], aircraft);
  return {
    aircraft: { ...aircraft, performance: begun },
    guesses: [...(isPowerSaid(aircraft) ? [] : (['thrust'] as const)), 'path'],
  };
}

/** The class of an aircraft that says only what engine it has. */
export function classOf({ engine }: Aircraft): AircraftClass {
  switch (engine) {
    case 'piston':
      return 'piston-single';
    case 'turboprop':
      return 'turboprop';
    case 'jet':
      return 'jet';
    case 'jet with reheat':
      return 'jet-with-reheat';
  }
}

const isPropeller = ({ engine }: Pick<Aircraft, 'engine'>) =>
  engine === 'piston' || engine === 'turboprop';

/** Whether the pilot has said how strong the engines are at take-off. */
function isPowerSaid(aircraft: Aircraft): boolean {
  const { powerKw, thrustKn, reheatKn } = aircraft.handbook ?? {};
  if (isPropeller(aircraft)) return powerKw !== undefined;
  return (aircraft.engine === 'jet with reheat' ? reheatKn : thrustKn) !== undefined;
}

/** The physics of a class with an aircraft's own masses, speeds and engines. */
export function begunFrom(spec: ClassSpec, aircraft: Aircraft): Performance {
  const { masses, takeoff, landing, limits, handbook } = aircraft;
  const areaM2 = handbook?.wingAreaM2 ?? rounded(masses.maxTakeoffKg / spec.wingLoadingKgM2, 1);
  const stallKt =
    handbook?.takeoffStallKt ?? Math.min(takeoff.rotateKt / 1.1, takeoff.liftOffKt / 1.15);
  const cl = (massKg: number, kt: number) =>
    Math.min(Math.max(rounded(liftCoefficient(massKg, areaM2, Math.max(kt, 1)), 3), 0.3), 5);
  const { minimumControlKt } = handbook ?? {};
  return {
    ...spec.physics,
    thrust: thrustOf(spec, aircraft),
    wing: {
      areaM2: Math.max(areaM2, 1),
      clMax: {
        takeoff: cl(masses.usualTakeoffKg, stallKt),
        landing: cl(masses.usualLandingKg, landing.approachKt / spec.physics.landing.reference),
      },
      ...spec.physics.wing,
      ...(limits.gearKt === undefined ? {} : { gearCd: GEAR_CD }),
    },
    ...(spec.engines === 2 && minimumControlKt !== undefined
      ? { oneEngineOut: { dragAreaM2: rounded(DEAD_SHARE * areaM2, 3), minimumControlKt } }
      : {}),
    gear: gearOf(masses.maxTakeoffKg),
  };
}

const GEAR_CD = 0.02;

/** Drag of a dead engine and the rudder against it, as a share of the wing. */
const DEAD_SHARE = 0.012;

const rounded = (value: number, places: number) => Number(value.toFixed(places));

/** Undercarriages grow with the cube root of mass; only taxi turns ask for theirs. */
function gearOf(massKg: number): Performance['gear'] {
  const times = Math.cbrt(massKg / 1100);
  return {
    trackM: rounded(Math.min(2.5 * times, 20), 1),
    wheelbaseM: rounded(Math.min(1.8 * times, 50), 1),
    cgHeightM: rounded(Math.min(1.1 * times, 10), 1),
    cgToMainM: rounded(Math.min(0.35 * times, 5), 2),
    tailWheel: false,
  };
}

type Curve = [number, number][];

/** Speeds of a thrust table, kt: from rest to well beyond the climb. */
function speedsOf({ climb, takeoff }: Aircraft): readonly number[] {
  const topKt = Math.max(1.3 * climb.speedKt[1], 1.6 * takeoff.liftOffKt, 60);
  return [0, 1, 2, 3, 4, 5, 6].map((part) => Math.round((part * topKt) / 6));
}

function thrustOf(spec: ClassSpec, aircraft: Aircraft): Performance['thrust'] {
  const { masses, handbook } = aircraft;
  const speeds = speedsOf(aircraft);
  const curve = (at: (kt: number) => number): Curve => speeds.map((kt) => [kt, Math.round(at(kt))]);
  if (isPropeller(aircraft)) {
    const powerW = 1000 * (handbook?.powerKw ?? (spec.perKg * masses.maxTakeoffKg) / 1000);
    const staticN = propellerStaticN(powerW / spec.engines) * spec.engines;
    const fullN = curve((kt) =>
      Math.min(staticN * (1 - kt / FADES_KT), kt === 0 ? staticN : (ETA * powerW) / (kt / KT)),
    );
    return { kind: 'propeller', fullN, idleN: Math.round(0.02 * staticN) };
  }
  const dryN = 1000 * (handbook?.thrustKn ?? dryKn(spec, aircraft));
  const dry = curve((kt) => dryN * (1 - Math.min(kt, 250) / 2500));
  const jet = { kind: 'jet', dryN: dry, at20Hotter: 0.88, idleN: Math.round(0.03 * dryN) } as const;
  if (aircraft.engine !== 'jet with reheat') return jet;
  const reheatN = 1000 * (handbook?.reheatKn ?? (REHEAT_TIMES * dryN) / 1000);
  return { ...jet, reheatN: curve((kt) => reheatN * (1 + kt / 4000)), lightUpS: 0 };
}

/** Thrust without reheat where only that with reheat is known, or nothing. */
function dryKn({ perKg }: ClassSpec, { masses, handbook }: Aircraft): number {
  const { reheatKn } = handbook ?? {};
  return reheatKn === undefined ? (perKg * masses.maxTakeoffKg) / 1000 : reheatKn / REHEAT_TIMES;
}

/** Reheat over dry thrust, at rest. */
const REHEAT_TIMES = 1.6;

const KT = 3600 / 1852;

/** Efficiency of a propeller in flight. Common practice, no published source. */
const ETA = 0.75;

/** A propeller's static thrust falls as if it were gone at this speed, kt. Likewise. */
const FADES_KT = 260;

/**
 * Static thrust of a propeller, N: it goes with the power, W, to the two thirds (momentum theory,
 * McCormick, Aerodynamics, Aeronautics and Flight Mechanics, ch. 6, value from memory); the factor is
 * that of light aircraft of 75 to 120 kW.
 */
const propellerStaticN = (powerW: number) => 1.11 * powerW ** (2 / 3);

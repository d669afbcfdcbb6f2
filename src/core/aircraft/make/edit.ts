/** The changes to an aircraft being made, and their effect. */

import type { Changes } from '../../writing/history';
import type { Aircraft } from '../aircraft';
import { AIRCRAFT_CLASSES, type AircraftClass } from '../classNames';
import type { Handbook, HandbookRow } from '../handbook';
import { carriedKg, type Loading, usualLoad } from '../load';
import { ASSUMED, CLASSES } from './classes';
import { FIGURE_NAMES, type FigureName, figureSpec } from './figures';

/** The texts of an aircraft that a pilot may leave empty. */
export type TextName = 'rotateTo' | 'afterBreakaway' | 'steering';

/** One change to an aircraft: plain data, so that a list of them can be stored and replayed. */
export type AircraftEdit =
  | {
      readonly kind: 'head';
      readonly set: Partial<Pick<Aircraft, 'code' | 'name' | 'about' | 'language'>>;
    }
  /** Null leaves a figure out; one that is needed takes the starting value of its class again. */
  | { readonly kind: 'figure'; readonly name: FigureName; readonly to: number | null }
  | { readonly kind: 'text'; readonly name: TextName; readonly to: string }
  /** Started from another class: what was typed stays. */
  | { readonly kind: 'class'; readonly to: AircraftClass }
  | { readonly kind: 'power-unit'; readonly unit: '%' | 'rpm' }
  /** What to do to stop, in order. */
  | { readonly kind: 'stop'; readonly to: readonly string[] }
  /** The load sheet; `part` names what is being typed, null for what stands alone. */
  | { readonly kind: 'load'; readonly part: string | null; readonly to: Loading | null }
  | {
      readonly kind: 'rows';
      readonly part: string | null;
      readonly to: readonly HandbookRow[];
    }
  /** Everything, as when starting afresh. */
  | { readonly kind: 'anew'; readonly aircraft: Aircraft };

/** The texts that a new aircraft begins with, in the pilot's language. */
export interface NewTexts {
  readonly language: string;
  readonly stop: readonly string[];
}

/** An aircraft of a class, with nothing but its starting values. */
export function newAircraft(of: AircraftClass, { language, stop }: NewTexts): Aircraft {
  const { engine, crosswindKt, tailwindKt } = CLASSES[of];
  return settled({
    lapstrip: 'aircraft',
    version: 1,
    code: '',
    name: '',
    language,
    about: '',
    madeFrom: { class: of, assumed: FIGURE_NAMES.filter((name) => name in ASSUMED) },
    engine,
    masses: {
      emptyKg: 1,
      usualTakeoffKg: 1,
      maxTakeoffKg: 1,
      usualLandingKg: 1,
      maxLandingKg: 1,
    },
    limits: { crosswindKt: { ...crosswindKt }, tailwindKt: { ...tailwindKt }, flapsKt: 0 },
    taxi: { maxKt: 0, turnKt: 0 },
    takeoff: { rotateKt: 0, liftOffKt: 0 },
    climb: { flapsUpByKt: 0, speedKt: [0, 0] },
    landing: { approachKt: 0 },
    stop: [...stop],
  });
}

/** Whether a figure is a starting value of its class still. */
export const isAssumed = ({ madeFrom }: Aircraft, name: FigureName): boolean =>
  madeFrom?.assumed.includes(name) ?? false;

/** The figures that are starting values still. */
export const assumedFigures = (aircraft: Aircraft): readonly FigureName[] =>
  FIGURE_NAMES.filter(
    (name) => isAssumed(aircraft, name) && figureSpec(name).read(aircraft) !== undefined,
  );

/** Whether a text names a class. */
export const isAircraftClass = (text: string): text is AircraftClass =>
  AIRCRAFT_CLASSES.some((one) => one === text);

/** The aircraft after a change; the same object if the change has no effect. */
export function editedAircraft(aircraft: Aircraft, edit: AircraftEdit): Aircraft {
  switch (edit.kind) {
    case 'head':
      return { ...aircraft, ...edit.set };
    case 'figure':
      return figureSet(aircraft, edit.name, edit.to);
    case 'text':
      return textSet(aircraft, edit.name, edit.to.trim() === '' ? undefined : edit.to);
    case 'class':
      return classSet(aircraft, edit.to);
    case 'power-unit':
      return aircraft.taxi.power === undefined
        ? aircraft
        : {
            ...aircraft,
            taxi: { ...aircraft.taxi, power: { ...aircraft.taxi.power, unit: edit.unit } },
          };
    case 'stop':
      return { ...aircraft, stop: [...edit.to] };
    case 'load': {
      const { load: _, ...rest } = aircraft;
      return settled(edit.to === null ? rest : { ...rest, load: edit.to });
    }
    case 'rows':
      return { ...aircraft, handbook: { ...aircraft.handbook, rows: [...edit.to] } };
    case 'anew':
      return edit.aircraft;
  }
}

function classSet(aircraft: Aircraft, to: AircraftClass): Aircraft {
  const { engine } = CLASSES[to];
  const { performance: _, ...rest } = aircraft;
  const isTyped = (name: FigureName) =>
    !isAssumed(aircraft, name) &&
    figureSpec(name).read(aircraft) !== undefined &&
    (name !== 'climb.reheatOffKt' || engine === 'jet with reheat');
  const assumed = FIGURE_NAMES.filter((name) => name in ASSUMED && !isTyped(name));
  return settled({ ...rest, engine, madeFrom: { class: to, assumed } });
}

function textSet(aircraft: Aircraft, name: TextName, text: string | undefined): Aircraft {
  if (name === 'rotateTo') return { ...aircraft, takeoff: { ...aircraft.takeoff, rotateTo: text } };
  return { ...aircraft, taxi: { ...aircraft.taxi, [name]: text } };
}

/** Whether an aircraft can't do without a figure: always, or for what else it has. */
export function isNeeded({ engine, limits }: Aircraft, name: FigureName): boolean {
  if (name === 'climb.reheatOffKt') return engine === 'jet with reheat';
  if (name === 'climb.gearUpByKt') return limits.gearKt !== undefined;
  return figureSpec(name).needed;
}

function figureSet(aircraft: Aircraft, name: FigureName, to: number | null): Aircraft {
  const { written } = figureSpec(name);
  const needed = isNeeded(aircraft, name);
  const { madeFrom } = aircraft;
  // Nothing is known to put in its place.
  if (to === null && needed && madeFrom === undefined) return aircraft;
  const assumed = new Set(madeFrom?.assumed ?? []);
  if (to === null && needed) assumed.add(name);
  else assumed.delete(name);
  const set = needed && to === null ? aircraft : written(aircraft, to ?? undefined);
  const made =
    madeFrom === undefined
      ? set
      : {
          ...set,
          madeFrom: { ...madeFrom, assumed: FIGURE_NAMES.filter((one) => assumed.has(one)) },
        };
  // A gear that stays down is not raised by any speed.
  const isFixed = name === 'limits.gearKt' && to === null;
  return settled(isFixed ? figureSpec('climb.gearUpByKt').written(made, undefined) : made);
}

/** What follows from the figures that were typed: starting values, and the fuel of the usual load. */
function settled(aircraft: Aircraft): Aircraft {
  const { madeFrom } = aircraft;
  const spec = madeFrom === undefined ? null : CLASSES[madeFrom.class];
  const assumed = FIGURE_NAMES.reduce((now, name) => {
    if (spec === null || !isAssumed(now, name)) return now;
    return figureSpec(name).written(now, ASSUMED[name]?.(spec, now));
  }, aircraft);
  return assumed.load === undefined ? assumed : usuallyFuelled(assumed, assumed.load);
}

/**
 * The load sheet whose first preset has the fuel that makes the usual take-off mass. The usual landing
 * mass follows from the fuel to land with, or the other way round once it was typed.
 */
function usuallyFuelled(aircraft: Aircraft, load: Loading): Aircraft {
  const { masses } = aircraft;
  const [usual, ...others] = load.presets;
  if (usual === undefined) return { ...aircraft, load };
  const dryKg =
    masses.emptyKg +
    [
      ...load.crew.map(({ kg }) => kg),
      ...load.stations.map((station) => carriedKg(usualLoad(load), station)),
    ].reduce((sum, kg) => sum + kg, 0);
  const tenth = (kg: number) => Math.round(10 * kg) / 10;
  const presets = [{ ...usual, fuelKg: tenth(masses.usualTakeoffKg - dryKg) }, ...others];
  if (isAssumed(aircraft, 'masses.usualLandingKg')) {
    const usualLandingKg = tenth(dryKg + load.fuel.landingKg);
    return { ...aircraft, masses: { ...masses, usualLandingKg }, load: { ...load, presets } };
  }
  const landingKg = tenth(masses.usualLandingKg - dryKg);
  return { ...aircraft, load: { ...load, fuel: { ...load.fuel, landingKg }, presets } };
}

/** What an aircraft's handbook says beside its table; nothing before anything was typed. */
export const handbookOf = ({ handbook }: Aircraft): Handbook => handbook ?? { rows: [] };

/** Names what a change sets, if doing it twice equals doing it once; null for all others. */
function sets(edit: AircraftEdit): string | null {
  switch (edit.kind) {
    case 'head':
      return JSON.stringify([edit.kind, Object.keys(edit.set)]);
    case 'figure':
    case 'text':
      return JSON.stringify([edit.kind, edit.name]);
    case 'power-unit':
    case 'stop':
      return edit.kind;
    case 'load':
    case 'rows':
      return edit.part === null ? null : JSON.stringify([edit.kind, edit.part]);
    default:
      return null;
  }
}

/** What a history of an aircraft needs to know about its changes. */
export const aircraftChanges: Changes<Aircraft, AircraftEdit> = { edited: editedAircraft, sets };

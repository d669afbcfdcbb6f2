/** Fifth stage: where the pilot is in the steps, under the facts of the moment. */

import { findEnd } from '../airfield/findEnd';
import { degreesOf, toMagnetic } from '../angle';
import type { Facts } from '../procedure/facts';
import type { AbnormalList, Procedure } from '../procedure/procedure';
import { type Walk, walk, walkList } from '../procedure/walk';
import type { Inputs } from '../sortie/entry';
import type { Run, Stamp } from '../sortie/fold';
import type { SettledFacts } from './facts';
import type { NumbersBrief } from './numbers';
import type { WindText } from './questions';
import type { WindBrief } from './wind';

/** The steps, as they stand now. */
export interface StepsBrief {
  readonly procedure: Procedure;
  readonly facts: Facts;
  readonly walk: Walk;
  /** The list that was opened because something went wrong, and the walk through it. */
  readonly abnormal: { readonly list: AbnormalList; readonly walk: Walk } | null;
}

/** Where the pilot is in the procedure; null without one. */
export function stepsStage(
  procedure: Procedure | null,
  run: Run | null,
  list: Run | null,
  stamps: readonly Stamp[],
  facts: Facts,
): StepsBrief | null {
  if (procedure === null) return null;
  const abnormal = procedure.lists.find(({ id }) => id === list?.list);
  return {
    procedure,
    facts,
    walk: walk(procedure, run, stamps, facts),
    abnormal:
      abnormal === undefined || list === null
        ? null
        : { list: abnormal, walk: walkList(abnormal, list, facts) },
  };
}

/** The facts that steps depend on. */
export function stepFacts(
  settled: SettledFacts,
  wind: Pick<WindBrief, 'using' | 'ranked'>,
  entered: WindText | null,
  numbers: NumbersBrief | null,
  inputs: Pick<Inputs, 'callsign'>,
): Facts {
  const { sun, surface, controlled, field, aircraft, variation } = settled;
  const end = field === null || wind.using === null ? null : findEnd(field, wind.using);
  const heading =
    end === null || variation.value === null
      ? null
      : degreesOf(toMagnetic(end.heading, variation.value));
  const range = (pair: readonly [number, number] | undefined) =>
    pair === undefined ? null : `${pair[0]}–${pair[1]}`;
  return {
    night: sun?.night.holds ?? null,
    lights: sun?.lights.holds ?? null,
    wet: surface !== 'dry',
    controlled,
    lightWind: wind.ranked?.light ?? null,
    runway: wind.using,
    runwayMagnetic: heading,
    wind: entered?.text ?? null,
    field: field?.name ?? null,
    callsign: inputs.callsign === '' ? null : inputs.callsign,
    taxiKt: aircraft?.taxi.maxKt ?? null,
    turnKt: aircraft?.taxi.turnKt ?? null,
    breakaway: aircraft?.taxi.power.breakaway ?? null,
    keepRolling: range(aircraft?.taxi.power.keepRolling),
    rotateKt: numbers?.takeoff.rotateKt.value ?? null,
    liftOffKt: numbers?.takeoff.liftOffKt.value ?? null,
    gearKt: numbers?.climb.gearUpByKt.value ?? numbers?.limits.gearKt.value ?? null,
    flapsKt: numbers?.climb.flapsUpByKt.value ?? null,
    reheatOffKt: numbers?.climb.reheatOffKt.value ?? null,
    climbKt: range(aircraft?.climb.speedKt),
    climbPitch: range(aircraft?.climb.pitchDeg),
    approachKt: numbers?.landing.approachKt.value ?? null,
  };
}

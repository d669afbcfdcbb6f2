/**
 * From lift-off to climb speed. Spare thrust splits in a fixed proportion between height and speed;
 * gear, flaps and reheat go as their gates come. The air is the field's, and compressibility
 * counts: the last gates are well above 250 kt.
 */

import { M_PER_FT } from '../units';
import { trueFromCalibratedMps } from './aerodynamics';
import type { Aircraft } from './aircraft';
import type { RollConditions } from './conditions';
import { climbOutMotion, type Power } from './forces';
import { endOf, type Roll, reaches, rollMomentAt, speedUp } from './roll';
import { climbSpeedKt } from './speeds';
import type { ClimbGate, Gate, LimitAhead, TakeoffLimits } from './takeoffAnswer';
import { gateAt } from './takeoffRoll';

export interface ClimbOut {
  readonly gates: readonly ClimbGate[];
  readonly limits: Pick<TakeoffLimits, 'gear' | 'flaps'>;
}

/** Continues a run from lift-off, with or without reheat. */
export function climbOutOf(
  conditions: RollConditions,
  aircraft: Aircraft,
  run: Roll,
  reheat: boolean,
): ClimbOut {
  const { climb, limits } = aircraft;
  const { densityRatio, temperatureK } = conditions;
  const trueMps = (kt: number) => trueFromCalibratedMps(kt, densityRatio, temperatureK);
  const liftOff = endOf(run);
  const aloft: Roll = { ...run, moments: [{ ...liftOff, gained: 0 }] };
  const { gearUpByKt } = climb;
  const reheatOffKt = reheat ? climb.reheatOffKt : undefined;
  const climbKt = climbSpeedKt(aircraft, conditions.massKg);

  /** Where the forces change, and the speeds asked for, in order. */
  const ends = [gearUpByKt, climb.flapsUpByKt, reheatOffKt, climbKt]
    .filter((kt) => kt !== undefined)
    .sort((a, b) => a - b);
  const before = (gate: number | undefined, kt: number) => gate !== undefined && kt <= gate;
  let way = aloft;
  for (const kt of ends) {
    const power: Power = {
      setting: before(reheatOffKt, kt) ? 'reheat' : 'full',
      share: 1,
      deadDragM2: 0,
    };
    const hanging = {
      gear: gearUpByKt === undefined || before(gearUpByKt, kt),
      flaps: before(climb.flapsUpByKt, kt),
    };
    const toMps = trueMps(kt);
    way = speedUp(way, climbOutMotion(conditions, power, hanging), toMps);
    if (!reaches(way, toMps)) break;
  }

  const gate = (what: ClimbGate['what'], kt: number | undefined): readonly ClimbGate[] => {
    if (kt === undefined) return [];
    const airMps = trueMps(kt);
    if (!reaches(way, airMps)) return [];
    const moment = rollMomentAt(way, airMps);
    return [
      {
        what,
        ...gateAt(moment, conditions),
        speedKt: kt,
        fromLiftOffS: moment.s - liftOff.s,
        heightFt: moment.gained / M_PER_FT,
      },
    ];
  };
  const ahead = (limitKt: number): LimitAhead => {
    const airMps = trueMps(limitKt);
    return {
      limitKt,
      fromLiftOffS: reaches(way, airMps) ? rollMomentAt(way, airMps).s - liftOff.s : null,
    };
  };
  return {
    gates: [
      ...gate('gear-up', gearUpByKt),
      ...gate('flaps-up', climb.flapsUpByKt),
      ...gate('reheat-off', reheatOffKt),
      ...gate('climb', climbKt),
    ].sort((a: Gate, b: Gate) => a.s - b.s),
    limits: {
      gear: limits.gearKt === undefined ? null : ahead(limits.gearKt),
      flaps: ahead(limits.flapsKt),
    },
  };
}

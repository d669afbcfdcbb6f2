/** The demo aircraft: what physics makes of them is what their own plain figures say. */

import { describe, expect, test } from 'vitest';
import { landing } from '../../../src/core/aircraft/landing';
import { takeoff } from '../../../src/core/aircraft/takeoff';
import { demoAircraft } from '../documents/demo';
import { flown, landed, landingQuestion, takeoffQuestion } from './invented';

const withPhysics = demoAircraft.filter(({ performance }) => performance !== undefined);

test('all demo aircraft have their physics', () => {
  expect(withPhysics).toEqual(demoAircraft);
});

describe.each(withPhysics.map((aircraft) => [aircraft.code, aircraft] as const))(
  '%s, as its book row has it',
  (_, aircraft) => {
    const up = flown(takeoff(takeoffQuestion(aircraft)));
    const down = landed(landing(landingQuestion(aircraft)));

    test('rotates and lifts off at the book’s speeds after the book’s run, within 3 %', () => {
      expect(up.speeds.rotateKt).toBeCloseTo(aircraft.takeoff.rotateKt, 6);
      expect(up.liftOff.speedKt).toBeCloseTo(aircraft.takeoff.liftOffKt, 6);
      expect(Math.abs(up.run.runM / (aircraft.takeoff.runM ?? 0) - 1)).toBeLessThan(0.03);
    });

    test('comes in at the book’s approach speed and rolls the book’s run, within 3 %', () => {
      const { approachKt, runM = 0 } = aircraft.landing;
      expect(Math.abs(down.speeds.approachKt / approachKt - 1)).toBeLessThan(0.01);
      // Common practice, no published source: a tourer's short run is read off to some 10 m.
      expect(Math.abs(down.runM - runM)).toBeLessThan(Math.max(0.03 * runM, 10));
    });

    test('climbs with the nose where the book has it', () => {
      const [least, most] = aircraft.climb.pitchDeg ?? [90, 90];
      expect(up.climb.pitchDeg).toBeGreaterThanOrEqual(least);
      expect(up.climb.pitchDeg).toBeLessThanOrEqual(most);
    });

    test('stays below what brakes, tyres and parachute take', () => {
      expect(down.brakes.within).toBe(true);
      expect(down.parachute?.within ?? true).toBe(true);
      expect(up.limits.tyre?.leftKt ?? 1).toBeGreaterThan(0);
    });

    test('keeps the order stall, lift-off, safety speed, first gate of the climb', () => {
      expect(up.speeds.stallKt).toBeLessThan(up.speeds.liftOffKt);
      expect(up.speeds.liftOffKt).toBeLessThanOrEqual(up.speeds.safetyKt);
      expect(up.speeds.safetyKt).toBeLessThan(up.climbOut[0]?.speedKt ?? 0);
    });

    test('reaches all its gates within two minutes of brake release', () => {
      const { climb } = aircraft;
      const gates = [climb.gearUpByKt, climb.flapsUpByKt, climb.reheatOffKt, climb.speedKt[0]];
      expect(up.climbOut).toHaveLength(gates.filter((kt) => kt !== undefined).length);
      // Common practice, no published source: jet and tourer are clean and at climb speed by then.
      expect(up.climbOut.at(-1)?.s).toBeLessThan(120);
    });
  },
);

/** The climb at a speed that is held by the airspeed indicator. */

import fc from 'fast-check';
import { expect, test } from 'vitest';
import { trueFromCalibratedMps } from '../../../src/core/aircraft/aerodynamics';
import { accelerationFactor } from '../../../src/core/aircraft/climb';
import { takeoff } from '../../../src/core/aircraft/takeoff';
import { demoAircraft } from '../documents/demo';
import { flown, takeoffQuestion } from './invented';

const MPS = 1852 / 3600;

/** Pressure and temperature of ICAO Doc 7488 at a height, m. */
const isa = (h: number) => {
  const kelvin = 288.15 - 0.0065 * h;
  return { kelvin, pascal: 101_325 * (kelvin / 288.15) ** 5.25588 };
};

/** True airspeed of a calibrated one, m/s, at a pressure and a temperature: the exact relation. */
function trueOf(casMps: number, { kelvin, pascal }: ReturnType<typeof isa>): number {
  const impact = 101_325 * ((1 + casMps ** 2 / (7 * 287.05287 * 288.15)) ** 3.5 - 1);
  return Math.sqrt(7 * 287.05287 * kelvin * ((impact / pascal + 1) ** (1 / 3.5) - 1));
}

test('the factor is 1 + (V / g) dV/dh along the standard atmosphere, the calibrated airspeed held', () => {
  const metres = fc.double({ min: 0, max: 10_000, noNaN: true });
  const knots = fc.double({ min: 60, max: 380, noNaN: true });
  fc.assert(
    fc.property(metres, knots, (h, kt) => {
      const v = trueOf(kt * MPS, isa(h));
      const slope = (trueOf(kt * MPS, isa(h + 1)) - trueOf(kt * MPS, isa(h - 1))) / 2;
      const factor = accelerationFactor(v, isa(h).kelvin);
      expect(Math.abs(factor - (1 + (v / 9.80665) * slope))).toBeLessThan(1e-4);
    }),
  );
});

test('at Mach 0.55 near sea level it takes about 15 % of the climb', () => {
  // BADA user manual, 3.1 (value from memory).
  expect(accelerationFactor(0.55 * 340.294, 288.15)).toBeCloseTo(1.157, 3);
});

test.each(demoAircraft.map((aircraft) => [aircraft.code, aircraft] as const))(
  '%s climbs by what is left once it has paid for its true airspeed',
  (_, aircraft) => {
    const { climb } = flown(takeoff(takeoffQuestion(aircraft)));
    const v = climb.speedKt * MPS;
    const still = (60 * v * (climb.thrustN - climb.dragN)) / climb.weightN / 0.3048;
    const mach = v / 340.294;
    expect(climb.rateFtMin).toBeCloseTo(still / accelerationFactor(v, 288.15), 6);
    expect(still / climb.rateFtMin).toBeGreaterThan(1 + 0.4 * mach ** 2);
  },
);

test('over the ground it is steeper into wind, and the same in a calm but for the way along the slope', () => {
  for (const aircraft of demoAircraft) {
    const at = (headwindKt: number) =>
      flown(takeoff(takeoffQuestion(aircraft, { headwindKt }))).climb;
    const calm = at(0);
    const angle = Math.asin(calm.gradientPercent / 100);
    expect(calm.groundGradientPercent).toBeCloseTo(100 * Math.tan(angle), 6);
    const groundKt = calm.speedKt * Math.cos(angle) - 20;
    const rateKt = (calm.speedKt * calm.gradientPercent) / 100;
    expect(at(20).groundGradientPercent).toBeCloseTo((100 * rateKt) / groundKt, 6);
  }
});

test('calibrated is true airspeed at sea level on a standard day, at any speed', () => {
  // By the definition of calibrated airspeed.
  for (const kt of [60, 250, 360, 500]) {
    expect(trueFromCalibratedMps(kt, 1, 288.15) * (3600 / 1852)).toBeCloseTo(kt, 3);
  }
});

test('the gates of the climb-out stand at true airspeeds of their calibrated ones', () => {
  // Subsonic, at a hot high field, where density alone is 1 % too fast at 350 kt.
  const sleet = demoAircraft.find(({ code }) => code === 'sleet');
  if (sleet === undefined) throw new Error('no jet');
  const pressureAltitudeFt = 6300;
  const pascal = isa(pressureAltitudeFt * 0.3048).pascal;
  for (const temperatureC of [-10, 30]) {
    const air = { pressureAltitudeFt, temperatureC };
    const { climbOut } = flown(takeoff(takeoffQuestion(sleet, { air })));
    expect(climbOut.map(({ what }) => what)).toContain('climb');
    for (const { speedKt, groundKt } of climbOut) {
      const trueMps = trueOf(speedKt * MPS, { kelvin: temperatureC + 273.15, pascal });
      expect(groundKt).toBeCloseTo(trueMps / MPS, 2);
    }
  }
});

test('higher up the air stopped at it has the pressure of the calibrated speed at sea level', () => {
  // q (1 + M²/4 + M⁴/40 + M⁶/1600): the pressure of stopped air as a series, as in Houghton and
  // Carpenter, Aerodynamics (from memory).
  const stoppedPa = (mps: number, kgM3: number, kelvin: number) => {
    const mach2 = mps ** 2 / (1.4 * 287.05287 * kelvin);
    return 0.5 * kgM3 * mps ** 2 * (1 + mach2 / 4 + mach2 ** 2 / 40 + mach2 ** 3 / 1600);
  };
  for (const kt of [250, 300, 360]) {
    // ICAO Doc 7488: 0.9091 kg/m³ and 268.65 K at 3 000 m.
    const trueMps = trueFromCalibratedMps(kt, 0.9091 / 1.225, 268.65);
    const atSea = stoppedPa((kt * 1852) / 3600, 1.225, 288.15);
    expect(Math.abs(stoppedPa(trueMps, 0.9091, 268.65) / atSea - 1)).toBeLessThan(1e-4);
    // By density alone it would come out higher.
    expect(trueMps).toBeLessThan((kt * 1852) / 3600 / Math.sqrt(0.9091 / 1.225));
  }
});

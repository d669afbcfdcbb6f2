/**
 * What handbooks and leaflets say a take-off gains by, against the piston profile, and how far
 * physics and rules of thumb lie apart.
 */

import { describe, expect, test } from 'vitest';
import type { Aircraft } from '../../../src/core/aircraft/aircraft';
import { landing } from '../../../src/core/aircraft/landing';
import type {
  GroundQuestion,
  LandingQuestion,
  TakeoffQuestion,
} from '../../../src/core/aircraft/performance';
import { takeoff } from '../../../src/core/aircraft/takeoff';
import { flown, landed, landingQuestion, takeoffQuestion } from '../../core/aircraft/invented';
import { demoAircraft } from '../../core/documents/demo';

function demo(code: string): Aircraft {
  const found = demoAircraft.find((one) => one.code === code);
  if (found === undefined) throw new Error(`there is no demo aircraft ${code}`);
  return found;
}

const tussock = demo('tussock');
const sleet = demo('sleet');

const runM = (aircraft: Aircraft, other: Partial<TakeoffQuestion> = {}) =>
  flown(takeoff(takeoffQuestion(aircraft, other))).run.runM;

const to50ftM = (aircraft: Aircraft, other: Partial<TakeoffQuestion> = {}) =>
  flown(takeoff(takeoffQuestion(aircraft, other))).to50ftM.value ?? Number.NaN;

const neededM = (aircraft: Aircraft, other: Partial<LandingQuestion> = {}) =>
  landed(landing(landingQuestion(aircraft, other))).neededM;

const tenth = (kg: number) => ({ massKg: 1.1 * kg });
const thousandFt = { air: { pressureAltitudeFt: 1000, temperatureC: 13 } };
const tenDegrees = { air: { pressureAltitudeFt: 0, temperatureC: 25 } };

describe('take-off factors of UK CAA Safety Sense Leaflet 7c, to 50 ft, by the piston profile', () => {
  // Its factors are to be on the safe side: physics may be milder, by no more than `below`.
  test.each<readonly [string, Partial<TakeoffQuestion>, number, number]>([
    ['1 000 ft', thousandFt, 1.1, 0.04],
    ['10 °C', tenDegrees, 1.1, 0.04],
    ['a tailwind of a tenth of the lift-off speed', { headwindKt: -5.8 }, 1.2, 0.06],
    ['2 % uphill', { slopePercent: 2 }, 1.1, 0.05],
    ['dry grass', { ground: 'grass' }, 1.2, 0.1],
    ['wet grass', { ground: 'grass', surface: 'wet' }, 1.3, 0.15],
  ])('%s', (_, other, factor, below) => {
    const found = to50ftM(tussock, other) / to50ftM(tussock);
    expect(found).toBeGreaterThan(factor - below);
    expect(found).toBeLessThan(factor + 0.03);
  });
});

test('a tenth more mass takes 21 to 30 % more to 50 ft', () => {
  // FAA-H-8083-25A, ch. 10: 21 to 22 % with much thrust for the weight, 25 to 30 % with little, which
  // a tourer lies nearer to; the leaflet's 20 % is less. The greatest mass is 6.7 % above the usual one.
  const found = to50ftM(tussock, { massKg: 1110 }) / to50ftM(tussock);
  const tenth = found ** (Math.log(1.1) / Math.log(1110 / 1040));
  expect(tenth).toBeGreaterThan(1.22);
  expect(tenth).toBeLessThan(1.3);
});

describe('landing factors of the same leaflet, from 50 ft, by the piston profile', () => {
  test.each<readonly [string, Partial<LandingQuestion>, number, number]>([
    ['a tenth more mass', tenth(1000), 1.1, 0.06],
    ['1 000 ft', thousandFt, 1.05, 0.04],
    ['10 °C', tenDegrees, 1.05, 0.04],
    ['a tailwind of a tenth of the speed', { headwindKt: -5.8 }, 1.2, 0.06],
    ['2 % downhill', { slopePercent: -2 }, 1.1, 0.08],
    ['dry grass', { ground: 'grass' }, 1.2, 0.05],
    ['wet grass', { ground: 'grass', surface: 'wet' }, 1.35, 0.05],
  ])('%s', (_, other, factor, below) => {
    const found = neededM(tussock, other) / neededM(tussock);
    expect(found).toBeGreaterThan(factor - below);
    expect(found).toBeLessThan(factor + 0.05);
  });
});

describe('signs of the same factors, by the jet', () => {
  test('mass lengthens take-off and landing', () => {
    expect(runM(sleet, tenth(9200))).toBeGreaterThan(1.1 * runM(sleet));
    expect(neededM(sleet, tenth(7300))).toBeGreaterThan(neededM(sleet));
  });

  test.each<readonly [string, Partial<GroundQuestion>]>([
    ['height', thousandFt],
    ['heat', tenDegrees],
    ['wind from behind', { headwindKt: -10 }],
    ['uphill', { slopePercent: 2 }],
    ['slush', { surface: 'contaminated' }],
  ])('%s lengthens take-off and landing, but for landing uphill', (what, other) => {
    expect(runM(sleet, other)).toBeGreaterThan(1.02 * runM(sleet));
    const needed = neededM(sleet, other);
    if (what === 'uphill') expect(needed).toBeLessThan(neededM(sleet));
    else expect(needed).toBeGreaterThan(neededM(sleet));
  });
});

describe('a two-seat trainer’s handbook table', () => {
  test('1 000 ft more lengthen the roll by 1.10', () => {
    // FAA-H-8083-25A, fig. 10-20, at 20 °C: 1 115 ft at 2 000 ft, 1 230 ft at 3 000 ft.
    const at = (pressureAltitudeFt: number) =>
      runM(tussock, { air: { pressureAltitudeFt, temperatureC: 20 } });
    expect(Math.abs(at(3000) / at(2000) - 1230 / 1115)).toBeLessThan(0.02);
  });

  test('half way between two rows it is half way between their runs', () => {
    // The same figure: 1 173 ft interpolated at 2 500 ft. Physics bends by less than 0.2 %.
    const at = (pressureAltitudeFt: number) =>
      runM(tussock, { air: { pressureAltitudeFt, temperatureC: 20 } });
    expect(Math.abs(at(2500) / ((at(2000) + at(3000)) / 2) - 1)).toBeLessThan(0.002);
  });

  test('10 °C lengthen the roll by 1.07 to 1.09', () => {
    // Cessna 150 handbook (values from memory): sea level 0, 10, 20 °C: 655, 705, 760 ft.
    const at = (temperatureC: number) =>
      runM(tussock, { air: { pressureAltitudeFt: 0, temperatureC } });
    expect(Math.abs(at(10) / at(0) - 705 / 655)).toBeLessThan(0.02);
    expect(Math.abs(at(20) / at(10) - 760 / 705)).toBeLessThan(0.02);
  });

  test('the way to 50 ft is 1.7 to 1.9 times the roll', () => {
    // The same handbook at 1 000 ft and 10 °C: 775 and 1 465 ft (humbleaviation.com takeoffcharts.php).
    const air = { pressureAltitudeFt: 1000, temperatureC: 10 };
    const found = to50ftM(tussock, { air }) / runM(tussock, { air });
    expect(found).toBeGreaterThan(1.6);
    expect(found).toBeLessThan(1465 / 775 + 0.1);
  });

  test('a headwind of 9 kt takes at least the 10 % that it allows, since it counts half', () => {
    expect(runM(tussock, { headwindKt: 9 }) / runM(tussock)).toBeLessThan(0.9);
    expect(runM(tussock, { headwindKt: 4.5 }) / runM(tussock)).toBeLessThan(0.9);
  });
});

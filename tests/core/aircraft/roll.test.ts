/** The integrator against what can be worked out by hand. */

import { describe, expect, test } from 'vitest';
import {
  atRest,
  endOf,
  momentAtM,
  reaches,
  rollMomentAt,
  speedUp,
  untilS,
} from '../../../src/core/aircraft/roll';

describe('a roll under a force that does not change', () => {
  const steady = speedUp(atRest(0), { mps2: () => 4, gainPerS: (v) => v }, 80);

  test('takes V² / 2 a and V / a', () => {
    expect(endOf(steady).m).toBeCloseTo((80 * 80) / 8, 9);
    expect(endOf(steady).s).toBeCloseTo(20, 9);
  });

  test('gains what is gained in a second over the way', () => {
    expect(endOf(steady).gained).toBeCloseTo(800, 9);
  });

  test('is at 31 m/s after 31² / 2 a', () => {
    expect(rollMomentAt(steady, 31).m).toBeCloseTo((31 * 31) / 8, 9);
    expect(rollMomentAt(steady, 31).s).toBeCloseTo(31 / 4, 9);
    expect(momentAtM(steady, 200).airMps).toBeCloseTo(40, 9);
  });

  test('is at 30 m/s when it is cut off after 7.5 s', () => {
    expect(endOf(untilS(steady, 7.5)).airMps).toBeCloseTo(30, 9);
    expect(endOf(untilS(steady, 7.5)).m).toBeCloseTo(112.5, 9);
    expect(untilS(steady, 30)).toBe(steady);
  });

  test('into a headwind takes (V − w)² / 2 a', () => {
    const into = speedUp(atRest(10), { mps2: () => 4 }, 80);
    expect(endOf(into).m).toBeCloseTo((70 * 70) / 8, 9);
  });

  test('stays within its ends when asked beyond them', () => {
    expect(rollMomentAt(steady, 99)).toEqual(endOf(steady));
    expect(momentAtM(steady, -5).airMps).toBe(0);
  });
});

describe('a roll against drag that grows with V²', () => {
  // s = −ln(1 − k V² / a) / 2 k for dV/dt = a − k V²; t = artanh(V √(k / a)) / √(a k).
  const [a, k] = [3, 0.0002];
  const roll = speedUp(atRest(0), { mps2: (v) => a - k * v * v }, 90);

  test('comes within a ten-thousandth of the closed form', () => {
    const m = -Math.log(1 - (k * 8100) / a) / (2 * k);
    const s = Math.atanh(90 * Math.sqrt(k / a)) / Math.sqrt(a * k);
    expect(Math.abs(endOf(roll).m / m - 1)).toBeLessThan(1e-4);
    expect(Math.abs(endOf(roll).s / s - 1)).toBeLessThan(1e-4);
  });

  test('never gets beyond √(a / k)', () => {
    const short = speedUp(atRest(0), { mps2: (v) => a - k * v * v }, 130);
    expect(reaches(short, 130)).toBe(false);
    expect(endOf(short).airMps).toBeLessThan(Math.sqrt(a / k));
    expect(endOf(short).airMps).toBeGreaterThan(0.9 * Math.sqrt(a / k));
  });

  test('is found at a distance where it is by speed', () => {
    for (const airMps of [1, 17, 42.3, 77]) {
      expect(momentAtM(roll, rollMomentAt(roll, airMps).m).airMps).toBeCloseTo(airMps, 6);
    }
  });
});

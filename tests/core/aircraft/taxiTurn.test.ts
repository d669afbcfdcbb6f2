/** Turning on the ground: comfort, and tipping by the geometry of the gear. */

import { describe, expect, test } from 'vitest';
import { taxiTurn } from '../../../src/core/aircraft/taxiTurn';
import { BARE, inventedAircraft } from './invented';

const MPS = 1852 / 3600;
const G = 9.80665;

describe('a tricycle', () => {
  test('tips where the sideways force times the height reaches the weight times the arm', () => {
    // About the line from nose wheel to main wheel, taken by coordinates instead of by angles: the
    // centre of gravity lies 4.5 m behind the nose wheel, the main wheel 5 m behind and 1.5 m aside.
    const line = Math.hypot(5, 1.5);
    const arm = (4.5 * 1.5) / line;
    const cos = 5 / line;
    const { tippingKt } = taxiTurn(inventedAircraft(), 20) ?? {};
    const v = (tippingKt ?? 0) * MPS;
    expect(((v * v) / 20) * 1.5 * cos).toBeCloseTo(G * arm, 6);
  });

  test('is held to comfort while it is far from tipping', () => {
    expect(taxiTurn(inventedAircraft(), 20)).toMatchObject({ boundBy: 'comfort' });
  });

  test('is held to its tipping speed less a margin where it is tall and narrow', () => {
    const tall = { ...BARE.gear, trackM: 0.6, cgHeightM: 3 };
    const turn = taxiTurn(inventedAircraft({ ...BARE, gear: tall }), 20);
    expect(turn?.boundBy).toBe('tipping');
    // At 0.7 of it acts half the sideways force that tips. Common practice, no published source.
    expect(turn?.maxKt).toBeCloseTo(0.7 * (turn?.tippingKt ?? 0), 9);
    expect(turn?.maxKt).toBeLessThan(turn?.comfortKt ?? 0);
  });

  test('goes round twice the radius at √2 the speed', () => {
    const [near, far] = [taxiTurn(inventedAircraft(), 15), taxiTurn(inventedAircraft(), 30)];
    expect((far?.maxKt ?? 0) / (near?.maxKt ?? 1)).toBeCloseTo(Math.SQRT2, 9);
    expect((far?.tippingKt ?? 0) / (near?.tippingKt ?? 1)).toBeCloseTo(Math.SQRT2, 9);
  });
});

test('a tail wheel has no tipping speed, as it ground-loops first', () => {
  const turn = taxiTurn(inventedAircraft({ ...BARE, gear: { ...BARE.gear, tailWheel: true } }), 20);
  expect(turn).toMatchObject({ tippingKt: null, boundBy: 'comfort' });
});

test('an aircraft whose gear is not known turns in comfort', () => {
  const { performance: _, ...plain } = inventedAircraft();
  expect(taxiTurn(plain, 20)).toMatchObject({ tippingKt: null, boundBy: 'comfort' });
});

test.each([0, -3, Number.NaN, Number.POSITIVE_INFINITY])('there is no turn of %f m', (radiusM) => {
  expect(taxiTurn(inventedAircraft(), radiusM)).toBeNull();
});

/** Where a tap on the plan is taken to be. Metres by hand: the runway lies along y = 0 from −500 to 500. */

import { expect, test } from 'vitest';
import { snap } from '../../../src/core/airfield/editSnap';
import { led, put, STRIP } from './drawing';

const LED = led(STRIP, 'A', [
  [-400, -150],
  [400, -150],
]);

test('within 15 m of a point it is that point, and beyond it is not', () => {
  const field = put(STRIP, 'stand', 100, -200);
  expect(snap(field, { xM: 109, yM: -212 })).toMatchObject({ on: 'node', xM: 100, yM: -200 });
  expect(snap(field, { xM: 109.1, yM: -212.1 })).toMatchObject({ on: 'ground' });
});

test('within 15 m of a centreline it lies on it', () => {
  const at = snap(STRIP, { xM: 200, yM: 14 });
  expect(at).toMatchObject({ on: 'centreline', runway: '09/27', xM: 200 });
  expect(Math.abs(at.yM)).toBeLessThan(0.15);
  expect(snap(STRIP, { xM: 200, yM: 16 }).on).toBe('ground');
});

test('before the beginning of the pavement it is drawn to where that begins', () => {
  expect(snap(STRIP, { xM: -510, yM: 3 })).toMatchObject({ on: 'centreline', xM: -500 });
  expect(snap(STRIP, { xM: -520, yM: 3 }).on).toBe('ground');
});

test('beside a taxiway it lies on the taxiway', () => {
  expect(snap(LED, { xM: 37, yM: -141 })).toMatchObject({ on: 'stretch', xM: 37, yM: -150 });
});

test('led on from a point it keeps to multiples of 15° to the runway, when it is near one', () => {
  const from = LED.taxi.nodes[0]?.id ?? '';
  // 100 m out at 32° from the runway: 30° is two degrees off, and the foot lies 100 cos 2° out.
  const out = (deg: number) => ({
    xM: -400 + 100 * Math.cos((deg * Math.PI) / 180),
    yM: -150 - 100 * Math.sin((deg * Math.PI) / 180),
  });
  const near = snap(LED, out(32), { from });
  expect(near.on).toBe('direction');
  const deg = (Math.atan2(-150 - near.yM, near.xM + 400) * 180) / Math.PI;
  expect(deg).toBeCloseTo(30, 1);
  // The plan is drawn to a tenth of a metre each way, which is up to 0.07 m.
  expect(Math.abs(Math.hypot(near.xM + 400, near.yM + 150) - 99.94)).toBeLessThan(0.071);
  // Half-way between two multiples is near neither.
  expect(snap(LED, out(37), { from }).on).toBe('ground');
});

test('what is moved is not drawn to itself', () => {
  const id = LED.taxi.nodes[0]?.id ?? '';
  expect(snap(LED, { xM: -395, yM: -155 }, { except: id }).on).toBe('ground');
});

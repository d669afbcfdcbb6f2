/** What wheels roll on and brake on. */

import { expect, test } from 'vitest';
import { rollingFriction } from '../../../src/core/aircraft/friction';
import { BARE } from './invented';

test('on soft and on wet ground wheels roll as hard as Raymer’s table has it', () => {
  // Raymer, Aircraft Design, table 17.1 (values from memory), with 0.03 for dry concrete: firm dirt
  // 0.04, soft turf 0.07, wet grass 0.08.
  const rolling = { dry: 0.03, wet: 0.03, contaminated: 0.03 };
  const on = (ground: 'concrete' | 'gravel' | 'grass', surface: 'dry' | 'wet') =>
    rollingFriction({ ...BARE, rolling }, surface, ground);
  expect(on('concrete', 'dry')).toBeCloseTo(0.03, 9);
  expect(on('gravel', 'dry')).toBeCloseTo(0.04, 9);
  expect(on('grass', 'dry')).toBeCloseTo(0.07, 9);
  expect(on('grass', 'wet')).toBeCloseTo(0.08, 9);
});

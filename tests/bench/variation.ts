/** Magnetic variation against the npm package geomagnetism: one date, many places, alternating. */

import geomagnetism from 'geomagnetism';
import { fieldModelFor, variationDeg } from '../../src/core';
import { type Rows, ratio } from './row';

const AT = new Date('2026-06-01T12:00:00Z');

/** A place every 7° of latitude and 11° of longitude, in a scattered order. */
const PLACES = Array.from({ length: 400 }, (_, i) => ({
  latDeg: ((i * 7) % 170) - 85,
  lonDeg: ((i * 11) % 360) - 180,
}));

export const rows: Rows = async () => {
  const ours = await fieldModelFor(AT);
  const theirs = geomagnetism.model(AT);
  // Summed and shown, so that no work is optimised away and both do the same.
  let difference = 0;
  const measured = ratio(
    () => {
      for (const place of PLACES) difference += variationDeg(place, AT, ours);
    },
    () => {
      for (const { latDeg, lonDeg } of PLACES) difference -= theirs.point([latDeg, lonDeg]).decl;
    },
  );
  return [
    {
      what: 'variation, against geomagnetism in the same run',
      measured,
      unit: 'times as many a second',
      budget: { atLeast: 2 },
      ...(Number.isNaN(difference) ? { note: 'not a number' } : {}),
    },
  ];
};

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  clockwiseDeg,
  envelopeOf,
  isInSwing,
  type WindEnvelope,
} from '../../../src/core/weather/envelope';
import type { Wind } from '../../../src/core/weather/report';

const wind = (fields: Partial<Wind>): Wind => ({
  fromDeg: 240,
  speedKt: 12,
  gustKt: null,
  sectorDeg: null,
  variable: false,
  speedIsMinimum: false,
  gustIsMinimum: false,
  ...fields,
});

describe('the envelope of a wind', () => {
  test.each<[string, Partial<Wind>, WindEnvelope]>([
    ['a steady wind comes from one direction', {}, { kind: 'sector', fromDeg: 240, widthDeg: 0 }],
    [
      'a swing is its sector, clockwise from the first to the second',
      { sectorDeg: [200, 280] },
      { kind: 'sector', fromDeg: 200, widthDeg: 80 },
    ],
    [
      'a swing may pass north: 280V010 is 90° wide',
      { fromDeg: 320, sectorDeg: [280, 10] },
      { kind: 'sector', fromDeg: 280, widthDeg: 90 },
    ],
    [
      'a swing to north itself ends at 360',
      { fromDeg: 340, sectorDeg: [310, 360] },
      { kind: 'sector', fromDeg: 310, widthDeg: 50 },
    ],
    [
      'a mean 20° beyond the second end widens the sector there',
      { fromDeg: 300, sectorDeg: [200, 280] },
      { kind: 'sector', fromDeg: 200, widthDeg: 100 },
    ],
    [
      'a mean 20° short of the first end widens it there, past north as well',
      { fromDeg: 350, sectorDeg: [10, 60] },
      { kind: 'sector', fromDeg: 350, widthDeg: 70 },
    ],
    ['a variable wind comes from anywhere', { fromDeg: null, variable: true }, { kind: 'any' }],
    ['a wind without direction comes from anywhere', { fromDeg: null }, { kind: 'any' }],
    [
      'a swing does not narrow a variable wind',
      { fromDeg: null, variable: true, sectorDeg: [200, 280] },
      { kind: 'any' },
    ],
    ['a calm has no direction', { fromDeg: 0, speedKt: 0 }, { kind: 'calm' }],
    ['no speed is no wind to judge by', { speedKt: null }, { kind: 'speed-unknown' }],
    [
      'a gust out of a calm comes from anywhere',
      { fromDeg: 0, speedKt: 0, gustKt: 15 },
      { kind: 'any' },
    ],
    [
      'a speed only known to be above nothing is no calm',
      { fromDeg: 240, speedKt: 0, speedIsMinimum: true },
      { kind: 'sector', fromDeg: 240, widthDeg: 0 },
    ],
  ])('%s', (_, fields, envelope) => {
    expect(envelopeOf(wind(fields))).toEqual(envelope);
  });

  const direction = fc.integer({ min: 1, max: 360 });

  test('holds the swing and the mean, and no smaller clockwise sector does', () => {
    fc.assert(
      fc.property(direction, direction, direction, (fromDeg, first, second) => {
        const sectorDeg = [first, second] as const;
        const envelope = envelopeOf(wind({ fromDeg, sectorDeg }));
        if (envelope.kind !== 'sector') throw new Error(envelope.kind);
        const holds = (deg: number) => clockwiseDeg(envelope.fromDeg, deg) <= envelope.widthDeg;
        for (let deg = 1; deg <= 360; deg++) {
          if (isInSwing(deg, sectorDeg)) expect(holds(deg)).toBe(true);
        }
        expect(holds(fromDeg)).toBe(true);
        // Worked out apart: a sector from either direction, clockwise as far as it must.
        const swingWide = (second - first + 720) % 360;
        const widths = [first, fromDeg].map((start) => {
          const toSwing = (first - start + 720) % 360;
          return Math.max(toSwing + swingWide, (fromDeg - start + 720) % 360);
        });
        expect(envelope.widthDeg).toBe(Math.min(...widths));
      }),
    );
  });

  test('turns with the wind', () => {
    fc.assert(
      fc.property(direction, direction, direction, direction, (fromDeg, first, second, turn) => {
        const turned = (deg: number) => ((deg + turn - 1) % 360) + 1;
        const before = envelopeOf(wind({ fromDeg, sectorDeg: [first, second] }));
        const after = envelopeOf(
          wind({ fromDeg: turned(fromDeg), sectorDeg: [turned(first), turned(second)] }),
        );
        if (before.kind !== 'sector' || after.kind !== 'sector') throw new Error('not a sector');
        expect(after.widthDeg).toBe(before.widthDeg);
        expect(after.fromDeg).toBe(turned(before.fromDeg) % 360);
      }),
    );
  });
});

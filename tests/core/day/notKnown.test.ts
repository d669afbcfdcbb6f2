/**
 * A field that doesn't say everything: what can't be judged is said in a word, and neither guessed nor
 * held against the runway.
 */

import { describe, expect, test } from 'vitest';
import type { Runway } from '../../../src/core/airfield/field';
import { brief, documentsAt, moment, TABLES } from './moments';

const HARROW = documentsAt('XHAR');
const AT = new Date('1987-04-05T19:00Z');

describe('what nobody knows of a runway is said in a word, and never judged', () => {
  const { field } = HARROW;
  if (field === null) throw new Error('no field');
  const is28 = ({ ends }: Runway) => ends.some(({ designator }) => designator === '28');
  const main = field.runways.find(is28);
  const others = field.runways.filter((one) => !is28(one));
  if (main === undefined) throw new Error('no runway');
  const { widthM: _, edgeLights: __, ...bare } = main;
  const [near, far] = main.ends;
  const { elevationFt: ___, ...level } = near;
  /** The codes of the cautions on 28 at night, the runway as given. */
  const codes = (runway: Runway, at = AT) =>
    brief(
      moment('27012KT', { chosen: { end: '28', purpose: 'take-off' } }, { at }),
      { ...HARROW, field: { ...field, version: 2, runways: [runway, ...others] } },
      TABLES,
    ).verdict.cautions.map(({ code }) => code);
  const MIDNIGHT = new Date('1987-04-05T23:30Z');

  test('lights by night, and by night alone', () => {
    const dark = { ...main, edgeLights: false };
    expect(codes(dark, MIDNIGHT)).toContain('no-lights');
    expect(codes({ ...bare, widthM: 30 }, MIDNIGHT)).toContain('lights-unknown');
    expect(codes({ ...bare, widthM: 30 }, MIDNIGHT)).not.toContain('no-lights');
    expect(codes({ ...bare, widthM: 30 })).not.toContain('lights-unknown');
  });

  test('surface, slope, declared lengths, and what the source contradicts', () => {
    expect(codes(main).filter((code) => /unknown|doubtful/.test(code))).toEqual([]);
    const unsaid: Runway = {
      ...main,
      surface: 'unknown',
      declared: false,
      doubts: ['swapped', 'length'],
      ends: [level, far],
    };
    expect(codes(unsaid).filter((code) => /unknown|doubtful/.test(code))).toEqual([
      'surface-unknown',
      'slope-unknown',
      'lengths-unknown',
      'doubtful',
    ]);
  });

  test('the width, where the aircraft asks for one; and it is not called narrow', () => {
    const { aircraft } = HARROW;
    if (aircraft === null) return expect.unreachable('no aircraft');
    const limits = { ...aircraft.limits, leastWidthM: 45 };
    const said = (runway: Runway) =>
      brief(
        moment('27012KT', { chosen: { end: '28', purpose: 'take-off' } }),
        {
          ...HARROW,
          aircraft: { ...aircraft, limits },
          field: { ...field, version: 2, runways: [runway, ...others] },
        },
        TABLES,
      ).verdict.cautions.map(({ code }) => code);
    expect(said({ ...main, widthM: 30 })).toContain('narrow');
    expect(said(bare)).toContain('width-unknown');
    expect(said(bare)).not.toContain('narrow');
  });

  test('the numbers count as on a level, paved runway', () => {
    const stops = (runway: Runway) =>
      brief(
        moment('27012KT', { chosen: { end: '28', purpose: 'take-off' } }),
        { ...HARROW, field: { ...field, version: 2, runways: [runway, ...others] } },
        TABLES,
      ).today?.takeoff.planned;
    const height = near.elevationFt ?? 0;
    const levelled: Runway = {
      ...main,
      surface: 'asphalt',
      ends: [near, { ...far, elevationFt: height }],
    };
    const nobody: Runway = { ...main, surface: 'unknown', ends: [level, far] };
    expect(stops(nobody)?.because).toBeNull();
    const runM = (one: ReturnType<typeof stops>) =>
      one?.because === null ? one.figures.runM.value : null;
    expect(runM(stops(nobody))).toBe(runM(stops(levelled)));
  });
});

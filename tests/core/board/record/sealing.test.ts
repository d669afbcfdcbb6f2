/** What the pilot was told stands in the record as it was shown, whatever changes afterwards. */

import { expect, test } from 'vitest';
import { openPage } from '../page';

const { add, beginAt, begin, hashOf, load, loadParts, sortie } = await openPage();
await load('XCAI', 'tussock', 'tussock-usual');
await loadParts('reports', 'physics');
const { stamp } = await import('../../../../src/board/steps/stepping');
const { seal } = await import('../../../../src/board/record/sealing');

const set = (inputs: object) => ({ kind: 'set', inputs }) as const;
const figuresNow = () => {
  const sealed = seal();
  if (sealed.kind !== 'sealed') throw new Error('nothing was sealed');
  return sealed.figures;
};

/** Both ends of runway 09/27 of the demo's Cairn Ice, as its document has them. */
const ENDS = { r09: [83.900185, -9.550524], r27: [83.89981, -9.449479] } as const;

/** The true heading of runway 27, degrees. On a sphere: tan = east / north, east shrunk by cos φ. */
function heading27(): number {
  const north = ENDS.r09[0] - ENDS.r27[0];
  const east = (ENDS.r09[1] - ENDS.r27[1]) * Math.cos((83.9 * Math.PI) / 180);
  return ((Math.atan2(east, north) * 180) / Math.PI + 360) % 360;
}

test('brakes released seal wind, runway and masses shown then, by the documents in use', () => {
  beginAt('XCAI', 'tussock', set({ chosen: { end: '27', purpose: 'take-off' } }), {
    kind: 'wind',
    text: '24020KT',
    north: 'true',
  });
  stamp('brakes released');
  const [sealed] = sortie.value.seals;
  expect(sealed?.documents).toEqual({
    field: hashOf('XCAI'),
    aircraft: hashOf('tussock'),
    procedure: hashOf('tussock-usual'),
  });
  expect(sealed?.figures).toMatchObject({
    runway: { value: '27', unit: '' },
    wind: { value: '24020KT', unit: '' },
    // The demo's document: 690 empty, pilot 85, fuel 80, front 80, rear 80, bags 25.
    massKg: { value: 690 + 85 + 80 + 80 + 80 + 25, unit: 'kg' },
    tailwindWorstKt: { value: 0, unit: 'kt' },
  });
  // FAA-H-8083-25, ch. 11: along the runway the cosine of the angle, across it the sine.
  const angle = ((240 - heading27()) * Math.PI) / 180;
  expect(sealed?.figures.headwindKt?.value).toBeCloseTo(20 * Math.cos(angle), 1);
  expect(sealed?.figures.crosswindWorstKt?.value).toBeCloseTo(20 * Math.abs(Math.sin(angle)), 1);

  add({ kind: 'wind', text: '09005KT', north: 'true' });
  add(set({ chosen: { end: '09', purpose: 'take-off' } }));
  expect(sortie.value.seals).toEqual([sealed]);
  expect(figuresNow()).toMatchObject({ runway: { value: '09' }, wind: { value: '09005KT' } });
});

test('pressure and temperature are sealed if a report or the pilot gave them, a standard day’s are not', () => {
  const wind = (text: string) => ({ kind: 'wind', text, north: 'true' }) as const;
  beginAt('XCAI', 'tussock', wind('24010KT'));
  expect(figuresNow()).not.toHaveProperty('qnhHpa');
  expect(figuresNow()).not.toHaveProperty('temperatureC');
  add(wind('METAR XCAI 200850Z 24010KT CAVOK 04/M01 Q1003'));
  expect(figuresNow()).toMatchObject({
    qnhHpa: { value: 1003, unit: 'hPa' },
    temperatureC: { value: 4, unit: 'degC' },
  });
  add(set({ ownQnhHpa: 998 }));
  expect(figuresNow().qnhHpa?.value).toBe(998);
});

test('without field, aircraft and wind nothing is made up', () => {
  begin();
  expect(seal()).toEqual({ kind: 'sealed', documents: {}, figures: {} });
});

test('off chocks and airborne seal nothing, landing does', () => {
  beginAt('XCAI', 'tussock');
  stamp('off chocks');
  stamp('airborne');
  expect(sortie.value.seals).toEqual([]);
  stamp('landed');
  expect(sortie.value.seals).toHaveLength(1);
});

/** A small invented world, and the bytes of a set. */

import type { WorldEnd, WorldField, WorldRunway } from '../../../src/core/world/worldField';
import { encodedWorld } from '../../../tools/world/encoded';

export const end = (
  designator: string,
  latDeg: number,
  lonDeg: number,
  other: Partial<WorldEnd> = {},
): WorldEnd => ({ designator, at: { latDeg, lonDeg }, elevationFt: 100, displacedFt: 0, ...other });

/** A runway to the north from a place, about a thousand metres long. */
export const runway = (
  { latDeg, lonDeg }: { latDeg: number; lonDeg: number },
  other: Partial<WorldRunway> = {},
): WorldRunway => ({
  ends: [end('36', latDeg, lonDeg), end('18', latDeg + 0.009, lonDeg)],
  lengthFt: 3281,
  widthFt: 98,
  surface: 'asphalt',
  isLit: true,
  doubts: [],
  ...other,
});

type Given = Partial<WorldField> & Pick<WorldField, 'code' | 'name'>;

export function field(given: Given): WorldField {
  const place = { latDeg: 50, lonDeg: 10, elevationFt: 120, ...given.place };
  return {
    otherCodes: '',
    town: '',
    country: 'XX',
    kind: 'aerodrome',
    size: 'small',
    isNumberedTrue: false,
    radio: { tower: null, ground: null, traffic: null },
    runways: [runway(place)],
    ...given,
    place,
  };
}

export const WORLD: readonly WorldField[] = [
  field({
    code: 'RU-10046',
    name: 'Nordwick',
    place: { latDeg: 65.123456, lonDeg: -179.987654, elevationFt: -40 },
  }),
  field({
    code: 'XAAB',
    otherCodes: 'XA7 A12',
    name: 'Marlow Bay Airport',
    town: 'Port Marlow',
    size: 'large',
    place: { latDeg: -33.5, lonDeg: 179.999999, elevationFt: 13_355 },
    isNumberedTrue: true,
    radio: { tower: '118.8', ground: '121.905', traffic: null },
    runways: [
      runway(
        { latDeg: -33.5, lonDeg: 179.9 },
        { doubts: ['swapped', 'displaced'], surface: 'gravel', isLit: false, widthFt: null },
      ),
      {
        ...runway({ latDeg: -33.51, lonDeg: 179.95 }),
        ends: [
          end('09L', -33.51, 179.95, { elevationFt: null, displacedFt: 560 }),
          end('27R', -33.51, 179.97, { elevationFt: 13_300 }),
        ],
        lengthFt: 15_748,
        doubts: ['length'],
      },
    ],
  }),
  field({ code: 'XBBC', name: 'Żółwin Łąki', town: 'São Bräun', size: 'medium' }),
  field({
    code: 'XCCD',
    name: 'Marlow Hospital Heliport',
    kind: 'heliport',
    place: { latDeg: -33.49, lonDeg: 179.99, elevationFt: 0 },
  }),
  field({
    code: 'XDDE',
    name: 'Marlowe Field',
    radio: { tower: null, ground: null, traffic: '123.0' },
  }),
];

export const bytesOf = (fields: readonly WorldField[]): Uint8Array =>
  encodedWorld(
    {
      lapstrip: 'world',
      version: 1,
      date: '2026-01-02',
      source: 'invented',
      licence: 'none',
      fields: fields.length,
      runways: fields.reduce((sum, { runways }) => sum + runways.length, 0),
    },
    fields,
  );

export const textOf = (bytes: Uint8Array): string => new TextDecoder().decode(bytes);

/** What work done in steps comes to. */
export function finished<T>(steps: Generator<void, T>): T {
  for (;;) {
    const step = steps.next();
    if (step.done === true) return step.value;
  }
}

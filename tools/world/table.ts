/** The README's table of the world's fields. */

import type { WorldDoubt } from '../../src/core/world/worldField';
import type { WorldFile } from './file';
import { LEFT_OUT, type LeftOut } from './made';

const count = (value: number): string => String(value).replace(/\B(?=(\d{3})+$)/g, ' ');
const share = (part: number, whole: number): string => `${((100 * part) / whole).toFixed(1)} %`;

const DOUBTS: Readonly<Record<WorldDoubt, string>> = {
  swapped: 'numbers that fit the other ends: swapped',
  number: 'a number more than 25° off, or none: as it stands, or from the magnetic direction',
  length: 'length more than 15 % off its coordinates: the shorter counts',
  heading: 'stated direction more than 3° off its coordinates: the coordinates count',
  'one-end': 'one end only: the other from direction and length',
  elevation: 'an end’s elevation more than 500 ft off the field’s: unknown',
  displaced: 'threshold displaced by more than half of the runway: as it stands',
};

/** As Markdown. */
export function worldTable({ table, header, packed }: WorldFile): string {
  const { fields, kinds, runways, ends, numbered, agreeing, unknown, runwaysOut } = table;
  const doubts = Object.entries(DOUBTS) as [WorldDoubt, string][];
  const out = Object.entries(LEFT_OUT) as [LeftOut, string][];
  const rows: readonly (readonly [string, string])[] = [
    ['day of the set', header.date],
    ['size of the file', `${Math.round(packed.length / 1024)} KB`],
    [
      'fields',
      `${count(fields)}: ${count(kinds.aerodrome)} aerodromes, ${kinds.heliport} heliports, ${kinds['seaplane base']} seaplane bases`,
    ],
    ['runways, ends', `${count(runways)}, ${count(ends)}`],
    [
      'ends whose number is within 10° of the magnetic heading',
      `${count(agreeing)} of ${count(numbered)} that have one: ${share(agreeing, numbered)}`,
    ],
    ['fields numbered to true north', count(table.numberedTrue)],
    ['unknown: surface of a runway', count(unknown.surface)],
    ['unknown: lights (the set never says that there are none)', count(unknown.lights)],
    ['unknown: width', count(unknown.width)],
    ['unknown: elevation of an end', count(unknown.endElevation)],
    ...doubts.map(([doubt, said]) => [`doubtful: ${said}`, count(table.doubts[doubt])] as const),
    ['left out: closed fields', count(table.closed)],
    ...out.map(([why, said]) => [`left out: runways ${said}`, count(runwaysOut[why])] as const),
    ['left out: fields without a runway then', count(table.withoutRunway)],
  ];
  return ['| what | how many |', '| --- | --- |', ...rows.map(([a, b]) => `| ${a} | ${b} |`)].join(
    '\n',
  );
}

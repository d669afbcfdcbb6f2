/** A field from a saved piece of a map: shown, kept, flown from; and whatever else is brought. */

import { readFile } from 'node:fs/promises';
import type { Page } from 'playwright-core';
import { words as documentWords } from '../../src/views/library/documentWords.en';
import { notes, problems } from '../../src/views/map/noteWords.en';
import { refusals, words } from '../../src/views/map/words.en';
import { words as taxiWords } from '../../src/views/taxi/words.en';
import { objections } from './accessible';
import { ENLARGED_SIZES, misfits, resize } from './fitting';
import { describe, expect, test } from './harness';
import {
  beginSortie,
  closeSheet,
  EVENING,
  key,
  openLibrary,
  openPlace,
  read,
  setWind,
} from './pilot';

/** Luxembourg, © OpenStreetMap contributors, ODbL 1.0: see tests/maps. */
const ELLX = await readFile(new URL('../maps/ellx.json', import.meta.url));

const sheet = (page: Page) => page.getByRole('dialog').last();

/** Brings a file by the Library's key. */
async function bring(page: Page, buffer: Buffer, name = 'map.json'): Promise<void> {
  const mimeType = 'application/octet-stream';
  await page.getByLabel(documentWords.choose).setInputFiles({ name, mimeType, buffer });
}

const plan = (page: Page) => sheet(page).getByRole('region', { name: /^Plan of/ });

test('from a saved map file to a taxi route in less than a minute', async ({ open }) => {
  const page = await open('tablet', { at: EVENING });
  await beginSortie(page);
  const begun = Date.now();
  await openLibrary(page);
  await bring(page, ELLX);
  await plan(page).waitFor();
  // 121 stands and one runway are mapped; three of its taxiway lines aren't in use.
  await expect.poll(() => read(sheet(page))).toContain('1 runway · 106 taxiway lines');
  await expect.poll(() => read(sheet(page))).toContain('121 stands');
  await key(page, words.keep).click();
  await key(page, words.use('ELLX')).click();
  await setWind(page, '24012KT');
  await key(page, 'Use 24').first().click();
  await openPlace(page, 'Taxi');
  await key(page, taxiWords.route).click();
  await key(page, 'Stand A2').first().click();
  await closeSheet(page);
  await expect
    .poll(() =>
      page.getByRole('region', { name: /^Plan of Luxembourg/ }).getAttribute('aria-label'),
    )
    .toMatch(/hold short runway two four/);
  expect(Date.now() - begun).toBeLessThan(60_000);
});

test('the plan alone is added to a field that is there, which keeps its runways', async ({
  open,
}) => {
  const page = await open('tablet', { at: EVENING });
  await beginSortie(page);
  await openLibrary(page);
  await bring(page, ELLX);
  await key(page, words.keep).click();
  await expect.poll(() => read(sheet(page))).toContain(words.kept('ELLX'));
  await closeSheet(page);
  await bring(page, ELLX);
  await key(page, words.add('ELLX', 'Luxembourg Airport')).click();
  await expect.poll(() => read(sheet(page))).toContain(words.kept('ELLX'));
});

/** Two aerodromes with a runway of 1 100 m each, as GeoJSON: invented. */
const TWO = JSON.stringify({
  type: 'FeatureCollection',
  features: [
    ['XONE', 6],
    ['XTWO', 7],
  ].flatMap(([icao, lon]) => [
    {
      type: 'Feature',
      properties: { aeroway: 'aerodrome', icao, name: `Field ${icao}` },
      geometry: { type: 'Point', coordinates: [lon, 50] },
    },
    {
      type: 'Feature',
      properties: { aeroway: 'runway', ref: '18/36', width: '30', surface: 'asphalt' },
      geometry: {
        type: 'LineString',
        coordinates: [
          [lon, 50.005],
          [lon, 49.995],
        ],
      },
    },
    {
      type: 'Feature',
      properties: { aeroway: 'taxiway', ref: 'A' },
      geometry: {
        type: 'LineString',
        coordinates: [
          [lon, 50.004],
          [Number(lon) + 0.004, 50.004],
        ],
      },
    },
  ]),
});

test('several aerodromes are chosen from, and what was assumed leads to its place', async ({
  open,
}) => {
  const page = await open('tablet', { at: EVENING });
  await beginSortie(page);
  await openLibrary(page);
  await bring(page, Buffer.from(TWO), 'two.geojson');
  await sheet(page).getByText(words.which).waitFor();
  expect(await plan(page).count()).toBe(0);
  await key(page, words.aerodrome('XTWO', 'Field XTWO')).click();
  await plan(page).waitFor();
  // No holding point is mapped on A: one is put there, and said.
  await sheet(page).getByText(notes['hold-assumed'](1, '')).waitFor();
  await sheet(page).getByRole('listitem').getByRole('button', { name: /^A/ }).click();
  await key(page, words.planWords.whole).waitFor();
  const [box, ring] = [
    await plan(page).boundingBox(),
    await plan(page).locator('circle[r="16"]').boundingBox(),
  ];
  if (box === null || ring === null) throw new Error('no place is shown');
  expect(ring.x + ring.width / 2).toBeCloseTo(box.x + box.width / 2, -1);
  expect(ring.y + ring.height / 2).toBeCloseTo(box.y + box.height / 2, -1);
});

describe('a file that holds no field', () => {
  const whole = ELLX.toString('utf8');
  const osm = (inside: string) => `<?xml version='1.0'?><osm version='0.6'>${inside}</osm>`;
  test.for([
    ['a picture', Buffer.from([0x89, 0x50, 0x4e, 0x47, 13, 10, 26, 10]), refusals.picture],
    ['a PDF', Buffer.from('%PDF-1.7'), refusals.pdf],
    ['an archive', Buffer.from([0x50, 0x4b, 3, 4, 20, 0]), refusals.packed],
    ['a web page', Buffer.from('<!doctype html><title>x</title>'), refusals['web-page']],
    ['nothing', Buffer.alloc(0), refusals.empty],
    ['JSON that breaks off', Buffer.from(whole.slice(0, 60_000)), problems['cut-short']],
    ['XML that breaks off', Buffer.from("<osm><node id='1'"), problems['cut-short']],
    ['a map without an aerodrome', Buffer.from(osm('')), problems['no-runway']],
    [
      'lines without their points',
      Buffer.from(osm("<way id='1'><nd ref='2'/><tag k='aeroway' v='runway'/></way>")),
      problems['lines-without-points'],
    ],
  ] as const)(
    '%s: a sentence that says what to do, and nothing is kept',
    async ([, file, sentence], { open }) => {
      const page = await open('tablet', { at: EVENING });
      await beginSortie(page);
      await openLibrary(page);
      await bring(page, file);
      await expect.poll(() => read(sheet(page))).toContain(sentence);
      await expect.poll(() => read(sheet(page))).toContain(words.nothingKept);
      expect(await key(page, words.keep).count()).toBe(0);
    },
  );
});

test('the preview reads well, in every theme, on tablets and phones, with large letters too', async ({
  open,
}) => {
  const page = await open('tablet', { at: EVENING });
  await beginSortie(page);
  await openLibrary(page);
  await bring(page, ELLX);
  await plan(page).waitFor();
  expect(await objections(page)).toEqual([]);
  for (const [width, height] of ENLARGED_SIZES) {
    await resize(page, { width, height });
    expect(await misfits(page), `${width} by ${height}`).toEqual([]);
  }
});

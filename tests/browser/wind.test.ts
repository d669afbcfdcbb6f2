/**
 * A wind in, the best end out.
 *
 * Runway 28 of Harrow Sound lies 266° true and 01 lies 356° true, by the places of their ends
 * (geodesic, see tests/reference/runway/geodesic.test.ts). Components after FAA-H-8083-25, ch. 11:
 *
 * - headwind 12 kt × cos (270° − 266°) = 11.97 kt
 * - crosswind at worst 20 kt × sin (300° − 266°) = 11.2 kt of the aircraft's 24
 * - two ends at right angles have as much headwind as each other half-way: 266° ± 45° = 221°, 311°
 */

import type { Page } from 'playwright-core';
import { resize } from './fitting';
import { describe, expect, test } from './harness';
import { beginSortie, EVENING, entry, key, read, setWind, typeAnything } from './pilot';

const WIND = '27012G20KT 240V300';

/** The rows of the answer, by their names. */
async function reasons(page: Page): Promise<Record<string, string>> {
  const rows = await page
    .locator('main dl > div')
    .evaluateAll((all) =>
      all.map((row) => [...row.children].map((cell) => (cell.textContent ?? '').trim())),
    );
  return Object.fromEntries(rows);
}

/** What is said of the text in the entry. */
const said = (page: Page): Promise<string> => read(page.locator('main [aria-live]').first());

async function expectAnswer(page: Page): Promise<void> {
  await expect.poll(() => key(page, 'Use 28').first().isVisible()).toBe(true);
  await expect
    .poll(() => said(page))
    .toContain('From 270° true (284° magnetic) at 12, gusting 20 kt, swinging 240° to 300°');
  expect(await reasons(page)).toMatchObject({
    Headwind: '12 kt',
    'Crosswind from right, gust': '11 of 24 kt',
    'Best with wind 221° to 311°': '41° to spare',
  });
}

describe('a wind', () => {
  test('tapped on the keypad is answered after no more taps than it has characters and two', async ({
    open,
  }) => {
    const page = await open('phone', { at: EVENING });
    await beginSortie(page);
    await key(page, 'Close').tap();
    let taps = 0;
    const tap = async (name: string | RegExp) => {
      await key(page, name).tap();
      taps += 1;
    };
    await tap(/^Wind none yet/);
    for (const pad of '27012') await tap(pad);
    await tap('G, gust');
    for (const pad of '20') await tap(pad);
    await tap(/^unit: KT/);
    for (const pad of '240') await tap(pad);
    await tap('V, swing to');
    for (const pad of '300') await tap(pad);
    await tap('Set wind');
    await expectAnswer(page);
    expect(await entry(page).inputValue()).toBe(WIND);
    expect(taps).toBeLessThanOrEqual(WIND.length + 2);
  });

  test('is answered at each key, before it is set', async ({ open }) => {
    const page = await open('tablet', { at: EVENING });
    await beginSortie(page);
    await typeAnything(page, '270');
    await expect.poll(() => said(page)).toContain('Go on typing');
    await page.keyboard.type('12');
    await expect.poll(() => key(page, 'Use 28').first().isVisible()).toBe(true);
  });

  test('moves no key of the keypad, whatever is said above it', async ({ open }) => {
    const page = await open('small phone', { at: EVENING });
    await beginSortie(page);
    const texts = [
      'VRB0',
      '99015KT',
      '30015G28KT',
      '31025G38KT 280V340',
      'Q0998 TEMPO 30025G40KT foo',
    ];
    for (const [width, height] of [
      [360, 640],
      [390, 844],
      [1180, 820],
    ] as const) {
      await resize(page, { width, height });
      const places = new Set<number>();
      for (const text of texts) {
        await entry(page).fill(text);
        await page.waitForTimeout(300);
        const box = await page.getByRole('button', { name: 'Calm' }).boundingBox();
        places.add(Math.round(box?.y ?? Number.NaN));
        const set = await key(page, /^(Set wind|Close)$/).boundingBox();
        expect((set?.y ?? 0) + (set?.height ?? 0), text).toBeLessThanOrEqual(height);
      }
      expect([...places], `${width} x ${height}`).toHaveLength(1);
    }
  });

  test('is pasted by the key for it', async ({ open }) => {
    const page = await open('tablet', {
      at: EVENING,
      context: { permissions: ['clipboard-read', 'clipboard-write'] },
    });
    await beginSortie(page);
    await page.evaluate((text) => navigator.clipboard.writeText(text), WIND);
    await key(page, 'Paste').click();
    await expectAnswer(page);
  });

  test('is pasted into the entry where the browser keeps the clipboard from the page', async ({
    open,
  }) => {
    const page = await open('tablet', { at: EVENING });
    await beginSortie(page);
    await key(page, 'Paste').click();
    await expect.poll(() => said(page)).toContain('Hold the box above');
    // The page itself may copy what is marked in it, and the keyboard may paste.
    await typeAnything(page, WIND);
    await page.keyboard.press('ControlOrMeta+a');
    await page.keyboard.press('ControlOrMeta+x');
    await page.keyboard.press('ControlOrMeta+v');
    await expectAnswer(page);
  });

  test('from a whole report is true, also while typed winds are magnetic', async ({ open }) => {
    const page = await open('tablet', { at: EVENING });
    await beginSortie(page);
    await setWind(page, '27012KT');
    await key(page, /^True north/).click();
    await expect.poll(() => key(page, /^Magnetic north/).isVisible()).toBe(true);
    await setWind(page, 'METAR XHAR 051850Z 27012KT 9999 FEW020 08/04 Q1011');
    await expect.poll(() => said(page)).toContain('From 270° true (284° magnetic)');
    expect(await key(page, /^True north/).isDisabled()).toBe(true);
    await setWind(page, '27012KT');
    // 270° magnetic less 14° W is 256° true.
    await expect.poll(() => said(page)).toContain('From 256° true (270° magnetic)');
  });

  test('stands in the history with the time it was entered', async ({ open }) => {
    const page = await open('tablet', { at: EVENING });
    await beginSortie(page);
    await setWind(page, '27012KT');
    await page.clock.runFor(7 * 60_000);
    await setWind(page, '01015KT');
    const history = page.getByRole('region', { name: 'Winds entered' });
    await expect
      .poll(() => history.getByRole('listitem').allTextContents())
      .toEqual(['1857Z 01015KT', '1850Z 27012KT']);
    await page.clock.runFor(7 * 60_000);
    await expect.poll(() => key(page, /^Wind, 7 min old/).textContent()).toContain('010° 15');
  });
});

describe('what cannot be used as a wind', () => {
  test('stays typed, and the last answer stands, marked as old', async ({ open }) => {
    const page = await open('phone', { at: EVENING });
    await beginSortie(page);
    await setWind(page, WIND);
    await typeAnything(page, 'hello there');
    expect(await entry(page).inputValue()).toBe('hello there');
    await expect.poll(() => said(page)).toContain('No wind could be read in this.');
    await expect.poll(() => page.getByText('For the previous wind').isVisible()).toBe(true);
    await expect.poll(() => page.getByText('28', { exact: true }).first().isVisible()).toBe(true);
    // Closing the keypad, or coming back later, changes nothing about that.
    await key(page, 'Close').click();
    await page.reload();
    await expect.poll(() => entry(page).inputValue()).toBe('hello there');
    await expect.poll(() => page.getByText('For the previous wind').isVisible()).toBe(true);

    await key(page, 'Undo typing').click();
    await expect.poll(() => entry(page).inputValue()).toBe(WIND);
    expect(await page.getByText('For the previous wind').count()).toBe(0);
    await expectAnswer(page);
  });

  test('is told in a sentence: a gust below the wind, a direction that does not exist', async ({
    open,
  }) => {
    const page = await open('tablet', { at: EVENING });
    await beginSortie(page);
    await setWind(page, WIND);
    await typeAnything(page, '27020G12KT');
    await expect.poll(() => said(page)).toContain('The gust is below the steady wind');
    await typeAnything(page, '37012KT');
    await expect.poll(() => said(page)).toContain('Direction 370 does not exist');
    await expect.poll(() => page.getByText('For the previous wind').isVisible()).toBe(true);
    await typeAnything(page, '/////KT');
    await expect.poll(() => said(page)).toContain('did not report the wind');
  });
});

describe('the dial', () => {
  test('says in words what it shows', async ({ open }) => {
    const page = await open('tablet', { at: EVENING });
    await beginSortie(page);
    await setWind(page, WIND);
    const dial = page.getByRole('img', { name: /^Dial/ });
    await expect.poll(() => dial.getAttribute('aria-label')).toMatch(/28 best from 221° to 311°/);
    const label = (await dial.getAttribute('aria-label')) ?? '';
    expect(label).toContain('Dial. From 270° true');
    for (const end of ['01', '10', '19']) expect(label).toContain(`${end} best from`);
  });
});

test('the word for no end fits beside its reasons, on the smallest phone too', async ({ open }) => {
  const page = await open('small phone', { at: EVENING });
  await page.getByRole('button', { name: 'Understood' }).click();
  await page.getByRole('button', { name: 'Pask Tussock' }).click();
  await page.getByRole('button', { name: /^XHAR/ }).click();
  // Across every runway there is more than the 16 kt that the Tussock stands.
  await setWind(page, '22140G60KT');
  const word = page.getByText('None', { exact: true });
  await word.waitFor();
  const [room, taken] = await word.evaluate((one) => {
    const range = document.createRange();
    range.selectNodeContents(one);
    return [one.getBoundingClientRect().right, range.getBoundingClientRect().right] as const;
  });
  expect(taken).toBeLessThanOrEqual(room);
});

test('the reason of a heading has the heading for its title', async ({ open }) => {
  const page = await open('phone', { at: EVENING });
  await beginSortie(page);
  await setWind(page, WIND);
  await page.getByRole('button', { name: /mag$/ }).click();
  await page.getByRole('dialog', { name: 'Runway heading, magnetic' }).waitFor();
});

test('every end stands with its crosswind against the limit, and its limit in words when it fails', async ({
  open,
}) => {
  const page = await open('tablet', { at: EVENING });
  await beginSortie(page);
  // Across 01/19 the gust of 30 kt is 30 kt × sin (270° − 176°) = 29.9 kt; along 28 it is 2 kt.
  await setWind(page, '27020G30KT');
  const end = (name: string) =>
    page
      .getByRole('list', { name: 'Every runway, best first' })
      .getByRole('listitem')
      .filter({ has: page.getByRole('button', { name: `Use ${name}` }) });
  await end('19').waitFor();
  expect(await read(end('19'))).toContain('Crosswind gust 30, limit 24');
  expect(await read(end('28'))).toContain('crosswind 1/2 of 24');
  expect(await read(end('28'))).not.toContain(', limit');
  // From behind on 10: a tailwind of 30 kt × cos 4°; the steady wind alone is above the limit of 10.
  await expect.poll(() => read(end('10'))).toContain('Tailwind 30, limit 10');
});

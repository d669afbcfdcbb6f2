/**
 * The Big card: the whole screen is the key, and nothing a hand does by accident ticks a step.
 *
 * Swipes of at least 80 px within 0.6 s, holds of 0.7 s: common practice, no published source.
 */

import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import type { Phase } from '../../src/core';
import { phaseWords as phaseWordsDe } from '../../src/parts/procedure.de';
import { phaseWords } from '../../src/parts/procedure.en';
import { words as shellDe } from '../../src/shell/words.de';
import { words as shell } from '../../src/shell/words.en';
import { words as stepsDe } from '../../src/views/steps/words.de';
import { words as steps } from '../../src/views/steps/words.en';
import { words as windDe } from '../../src/views/wind/words.de';
import { words as wind } from '../../src/views/wind/words.en';
import { objections } from './accessible';
import {
  cardKey,
  cardText,
  doOnCard,
  fitOf,
  onCardKey,
  openCard,
  toCard,
  wantsHold,
} from './cards';
import { misfits, resize } from './fitting';
import { describe, expect, test } from './harness';
import {
  clockOf,
  closeSheet,
  due,
  EVENING,
  goOnFrom,
  key,
  openDevice,
  openPlace,
  pressDeliberately,
  read,
  SETTLED_MS,
  setWind,
  standStill,
  tickAll,
  toSteps,
  type Wait,
} from './pilot';
import { SCREENS } from './screens';
import { wear } from './themes';
import { pinch, touch, touchWithPalm } from './touch';

const FIRST = 'Seat pins three out, in the rack';
const SECOND = 'Brake lever parked, needle white';
/** The first step that is not critical. */
const PLAIN = 'Gear lever down, three green';
const AFTER_PLAIN = 'Oxygen flowing, hose clipped';

const SEEN_MS = 150;

/**
 * Goes to the first step that a tap ticks, with the card over it. Those before it are held back.
 */
async function toPlainCard(page: Page): Promise<Wait> {
  await toSteps(page);
  await goOnFrom(page, 'Ramp', 'Gear lever');
  await openCard(page);
  await expect.poll(() => cardText(page)).toBe(PLAIN);
  const wait = await standStill(page);
  await wait(SETTLED_MS);
  return wait;
}

describe('a step that a tap ticks', () => {
  test('is not ticked by a brush, a slip, a resting hand, two fingers or a palm', async ({
    open,
  }) => {
    const page = await open('phone', { at: EVENING });
    const wait = await toPlainCard(page);
    for (const clumsy of [
      { ms: 70 },
      { slidePx: 14 },
      { slidePx: 70, ms: 300 },
      { ms: 2600 },
      { fingers: 2 },
      { fingers: 3 },
    ]) {
      await touch(page, cardKey(page), { ...clumsy, wait });
      await wait(2000);
      expect(await cardText(page), JSON.stringify(clumsy)).toBe(PLAIN);
      expect(await page.getByText(/6 outstanding/).count()).toBe(0);
    }
    await touchWithPalm(page, cardKey(page), key(page, 'Close'), wait);
    await wait(2000);
    expect(await cardText(page)).toBe(PLAIN);
    await touch(page, cardKey(page), { wait });
    await expect.poll(() => cardText(page)).toBe(AFTER_PLAIN);
  });

  test('is ticked once by two taps 80 ms apart, and by a key held down until it repeats', async ({
    open,
  }) => {
    const page = await open('phone', { at: EVENING });
    const wait = await toPlainCard(page);
    await touch(page, cardKey(page), { ms: 85, wait });
    await wait(80);
    await touch(page, cardKey(page), { ms: 85, wait });
    await wait(SEEN_MS);
    expect(await cardText(page)).toBe(AFTER_PLAIN);
    await touch(page, cardKey(page), { slidePx: 120, ms: 200, wait });
    await wait(SETTLED_MS);
    await touch(page, cardKey(page), { slidePx: -120, ms: 200, wait });
    await expect.poll(() => cardText(page)).toBe(PLAIN);
    await wait(SETTLED_MS);
    await cardKey(page).focus();
    for (let i = 0; i < 30; i++) {
      await page.keyboard.down('Enter');
      await wait(33);
    }
    await page.keyboard.up('Enter');
    await expect.poll(() => cardText(page)).toBe(AFTER_PLAIN);
  });

  test('is held back by a hold, and taken back by a swipe', async ({ open }) => {
    const page = await open('phone', { at: EVENING });
    const wait = await toPlainCard(page);
    const before = Number(/(\d+) outstanding/.exec(await onCardKey(page))?.[1]);
    await touch(page, cardKey(page), { ms: 800, wait });
    await expect.poll(() => cardText(page)).toBe(AFTER_PLAIN);
    await expect.poll(() => onCardKey(page)).toContain(`${before + 1} outstanding`);
    await wait(SETTLED_MS);
    await touch(page, cardKey(page), { slidePx: 120, ms: 200, wait });
    await expect.poll(() => cardText(page)).toBe(PLAIN);
    await expect.poll(() => onCardKey(page)).toContain(`${before} outstanding`);
  });
});

describe('a critical step', () => {
  test('wants a hold to be done, and a swipe down to be held back', async ({ open }) => {
    const page = await open('phone', { at: EVENING });
    await toCard(page);
    const wait = await standStill(page);
    await wait(SETTLED_MS);
    await expect.poll(() => onCardKey(page)).toContain('Hold: done. Swipe down: later.');
    await touch(page, cardKey(page), { wait });
    await wait(2000);
    expect(await cardText(page)).toBe(FIRST);
    await touch(page, cardKey(page), { ms: 710, wait });
    await expect.poll(() => cardText(page)).toBe(SECOND);
    await wait(SETTLED_MS);
    await touch(page, cardKey(page), { downPx: 120, ms: 300, wait });
    await expect.poll(() => onCardKey(page)).toContain('1 outstanding');
  });
});

describe('the way out', () => {
  test('a pinch, Escape or the corner’s key; nothing is ticked, and the keyboard comes back', async ({
    open,
  }) => {
    const page = await open('phone', { at: EVENING });
    const wait = await toPlainCard(page);
    await pinch(page, cardKey(page), wait);
    await expect.poll(() => due(page)).toBe(PLAIN);
    await openCard(page);
    await page.keyboard.press('Escape');
    await expect.poll(() => due(page)).toBe(PLAIN);
    expect(await page.evaluate(() => document.activeElement?.getAttribute('aria-label'))).toBe(
      'Big card',
    );
    await openCard(page);
    await key(page, 'Close').tap();
    await expect.poll(() => due(page)).toBe(PLAIN);
  });
});

test('it comes by itself at line-up where the pilot wants it, and not otherwise', async ({
  open,
}) => {
  const page = await open('phone', { at: EVENING });
  await toSteps(page);
  await openDevice(page);
  await key(page, 'Big card at line-up').click();
  await closeSheet(page);
  await goOnFrom(page, 'Line-up', 'Nozzle light');
  // What is held back comes first, before the barrier; the card comes behind it.
  await tickAll(page);
  await key(page, 'Close').waitFor();
  await expect.poll(() => read(page.getByRole('main'))).toContain('Line-up');
});

describe('other faces', () => {
  test('in Wind the best end, and a tap uses it', async ({ open }) => {
    const page = await open('phone', { at: EVENING });
    await toSteps(page);
    await openPlace(page, 'Wind');
    await setWind(page, '01015KT');
    await openCard(page);
    await expect.poll(() => cardText(page)).toMatch(/^01/);
    await expect.poll(() => read(page.getByRole('main'))).toContain('28, best 01');
    await page.clock.runFor(SETTLED_MS);
    await touch(page, cardKey(page), { wait: clockOf(page) });
    await expect.poll(() => read(page.getByRole('main'))).toContain('Runway 01, selected');
  });

  test('in Taxi the pace, and a tap passes the next point', async ({ open }) => {
    const page = await open('phone', { at: EVENING });
    await toSteps(page);
    await openPlace(page, 'Taxi');
    await key(page, 'Route').click();
    await key(page, 'Stand 3').click();
    await page.keyboard.press('Escape');
    const leaving = await read(key(page, /^Leaving/));
    await openCard(page);
    await expect.poll(() => onCardKey(page)).toContain(leaving);
    await expect.poll(() => cardText(page)).toMatch(/kt turning onto|kt in the next turn/);
    await page.clock.runFor(SETTLED_MS);
    await touch(page, cardKey(page), { wait: clockOf(page) });
    await expect.poll(() => onCardKey(page)).toMatch(/Passing/);
    await expect.poll(() => cardText(page)).toMatch(/gone, .* expected/);
  });

  test('on the roll the ladder, and its two keys as halves', async ({ open }) => {
    const page = await open('phone', { at: EVENING });
    await toSteps(page);
    await goOnFrom(page, 'Line-up', 'Nozzle light');
    await tickAll(page);
    await key(page, 'Brakes released').waitFor();
    await pressDeliberately(page, key(page, 'Brakes released'), clockOf(page));
    await key(page, 'Airborne').waitFor();
    await openCard(page);
    // Figures of the aircraft's document, airfields-demo/aircraft/sleet.json.
    await expect.poll(() => cardText(page)).toMatch(/165 ?Lift-off.*138 ?Rotate/);
    const [stop, go] = await Promise.all(
      ['Stopping', 'Airborne'].map((name) => key(page, name).boundingBox()),
    );
    for (const half of [stop, go]) expect(half?.width).toBeGreaterThan(170);
    await pressDeliberately(page, key(page, 'Airborne'), clockOf(page));
    await expect.poll(() => cardText(page)).toMatch(/^Gear up/);
  });
});

const SIZES = [
  [360, 640],
  [390, 844],
  [820, 1180],
  [1180, 820],
  [1366, 1024],
] as const;

interface Step {
  readonly item: string;
  readonly response: string;
  readonly call?: string;
  readonly when?: unknown;
}

/** The ramp and taxi steps of a demo procedure, with their phases, longest text first. */
function longestOf(file: string): readonly (Step & { readonly phase: Phase })[] {
  const { phases } = JSON.parse(readFileSync(`airfields-demo/procedures/${file}`, 'utf8')) as {
    phases: readonly { readonly phase: Phase; readonly steps: readonly Step[] }[];
  };
  const lengthOf = ({ item, response, call = '' }: Step) => `${item}${response}${call}`.length;
  return phases
    .slice(0, 2)
    .flatMap(({ phase, steps }) => steps.map((step) => ({ ...step, phase })))
    .sort((a, b) => lengthOf(b) - lengthOf(a));
}

/** What is wrong with the text on the card: it is cut, or could be larger. */
async function wrongOn(page: Page, where: string): Promise<string[]> {
  const text = await cardText(page);
  const wrong = (await fitOf(page)).flatMap(({ over, couldBeLarger, px }) => [
    ...(over > 0 ? [`over by ${over} px`] : []),
    ...(couldBeLarger ? [`${px} px could be larger`] : []),
  ]);
  return [...wrong, ...(await misfits(page))].map((one) => `${where}: ${text}: ${one}`);
}

/** The same on every size of screen. */
async function wrongOnAny(page: Page, what: string): Promise<string[]> {
  const found: string[] = [];
  for (const [width, height] of SIZES) {
    await resize(page, { width, height });
    found.push(...(await wrongOn(page, `${what} at ${width} x ${height}`)));
  }
  await resize(page, SCREENS['small phone'].viewport);
  return found;
}

describe('the steps, by night, where letters are widest', () => {
  test.for(['Ondrell Sleet 3', 'Hask Turnstone 2', 'Pask Tussock'])(
    'of %s are as large as they fit and never cut, from the first to the roll',
    { timeout: 240_000 },
    async (aircraft, { open }) => {
      const page = await open('small phone', { at: EVENING });
      await wear(page, 'night');
      await toSteps(page, '27012G20KT', aircraft);
      await openCard(page);
      const wait = await standStill(page);
      const found: string[] = [];
      let seen = 0;
      while (!(await key(page, 'Airborne').isVisible())) {
        const text = await cardText(page);
        found.push(...(await wrongOn(page, '360 x 640')));
        await doOnCard(page, wait);
        await expect.poll(async () => (await cardText(page)) !== text).toBe(true);
        seen += 1;
      }
      expect(seen).toBeGreaterThan(15);
      found.push(...(await wrongOnAny(page, 'the roll')));
      expect(found).toEqual([]);
    },
  );

  const ENGLISH = { tag: 'en', shell, wind, steps, phaseWords, openCard: 'Big card' };
  const GERMAN = {
    ...{ tag: 'de', shell: shellDe, wind: windDe, steps: stepsDe, phaseWords: phaseWordsDe },
    openCard: stepsDe.bigCard,
  };

  test.for([
    ['Ondrell Sleet 3', 'sleet-usual.json', ENGLISH],
    ['Hask Turnstone 2', 'turnstone-usual.json', ENGLISH],
    ['Pask Tussock', 'tussock-usual.json', ENGLISH],
    ['Ondrell Sleet 3', 'sleet-usual-de.json', GERMAN],
    ['Hask Turnstone 2', 'turnstone-usual-de.json', GERMAN],
    ['Pask Tussock', 'tussock-usual-de.json', GERMAN],
  ] as const)(
    'the longest of %s, %s, on every size of screen',
    async ([aircraft, file, words], { open }) => {
      const page = await open('small phone', { at: EVENING, context: { locale: words.tag } });
      await wear(page, 'night');
      await key(page, words.shell.caution.understood).click();
      await key(page, aircraft).click();
      await page.getByRole('button', { name: /^XHAR/ }).click();
      await page.getByRole('textbox', { name: words.wind.entry }).click();
      await page.keyboard.type('27012G20KT');
      await page.keyboard.press('Enter');
      await key(page, words.wind.use('28')).first().click();
      await key(page, words.shell.places.steps).click();
      const all = longestOf(file);
      const found: string[] = [];
      // A call is longest, and English in both; of what is not called, what applies on any day.
      for (const longest of [all[0], all.find(({ call, when }) => !call && !when)]) {
        if (longest === undefined) throw new Error('no steps');
        await page
          .getByRole('button', { name: new RegExp(`^${words.phaseWords[longest.phase]}, \\d`) })
          .click();
        await page
          .getByRole('dialog')
          .getByRole('listitem')
          .filter({ hasText: longest.item })
          .getByRole('button', { name: words.steps.goOnFrom })
          .first()
          .click();
        await page.getByRole('main').getByRole('button', { name: words.openCard }).click();
        await expect.poll(() => cardText(page)).toContain(longest.item);
        found.push(...(await wrongOnAny(page, file)));
        await page.keyboard.press('Escape');
      }
      expect(found).toEqual([]);
    },
  );
});

test('axe has nothing to say about the card', async ({ open }) => {
  const page = await open('phone', { at: EVENING });
  await toCard(page);
  const found = await objections(page);
  expect(await wantsHold(page)).toBe(true);
  await page.keyboard.press('Escape');
  await openPlace(page, 'Wind');
  await openCard(page);
  found.push(...(await objections(page)));
  expect(found).toEqual([]);
});

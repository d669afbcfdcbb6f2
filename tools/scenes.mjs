/**
 * The scenes that tools/pictures.mjs takes: a fighter leaving Harrow Sound on an April evening.
 *
 * `play` brings the page to the scene as a pilot would; the clock stands at `at` when it begins.
 */

const EVENING = new Date('1987-04-05T18:50:00Z');
const WIND = '27012G20KT 240V300';

/** From the first start to a sortie: an aircraft, a field. */
async function begin(page) {
  await page.getByRole('button', { name: 'Ondrell Sleet 3' }).click();
  await page.getByRole('button', { name: /^XHAR/ }).click();
}

async function typeWind(page) {
  await begin(page);
  await page.getByRole('textbox', { name: 'Wind or report' }).click();
  await page.keyboard.type(WIND);
  await page.keyboard.press('Enter');
  await page
    .getByRole('button', { name: /^Use \d\d/ })
    .first()
    .waitFor();
}

/** Takes the best end and goes to the steps. */
async function useBest(page) {
  await typeWind(page);
  await page
    .getByRole('button', { name: /^Use \d\d/ })
    .first()
    .click();
  await page.getByRole('button', { name: 'Steps', exact: true }).click();
}

/** Longer than a critical step's key must be held, and than a tap after it is ignored, ms. */
const HELD_MS = 1000;
const SETTLED_MS = 620;

/** Ticks step after step, holding one back, until `there` can be seen. */
async function tickUntil(page, there, heldBack) {
  for (let steps = 0; steps < 50; steps += 1) {
    if (await there().count()) return;
    const isHeld = heldBack !== undefined && (await due(page, heldBack).count()) > 0;
    // The last key of the place ticks, whatever stands on it just now.
    const done = page.locator('main button').last();
    const key = isHeld ? page.getByRole('button', { name: 'Hold back' }) : done;
    const isCritical = !isHeld && (await done.getAttribute('aria-description')) !== null;
    await key.click({ delay: isCritical ? HELD_MS : 150 });
    await page.waitForTimeout(SETTLED_MS);
  }
  throw new Error('the steps do not lead there');
}

const due = (page, item) => page.locator('strong', { hasText: item });

/** Taxiing, with one thing held back and the barrier ahead. */
async function midTaxi(page) {
  await useBest(page);
  await tickUntil(page, () => due(page, 'Flaps'), 'Oxygen');
}

/** Eleven seconds down the runway. */
async function rolling(page) {
  await useBest(page);
  await tickUntil(page, () => page.getByRole('button', { name: 'Brakes released' }));
  await page.getByRole('button', { name: 'Brakes released' }).click({ delay: 150 });
  await page.clock.runFor(11_000);
}

/** Today's numbers, a report having given the air. */
async function numbers(page) {
  await begin(page);
  await page.getByRole('textbox', { name: 'Wind or report' }).click();
  await page.keyboard.type('METAR XHAR 051850Z 27012G20KT 9999 FEW030 14/06 Q1009');
  await page.keyboard.press('Enter');
  await page
    .getByRole('button', { name: /^Use \d\d/ })
    .first()
    .click();
  await page.getByRole('button', { name: 'Numbers', exact: true }).click();
  await page.getByRole('heading', { name: 'Take-off on 28' }).waitFor();
}

/** The way from Stand 6 to the end in use. */
async function taxiing(page) {
  await useBest(page);
  await page.getByRole('button', { name: 'Taxi', exact: true }).click();
  await page.getByRole('button', { name: 'Route', exact: true }).click();
  await page.getByRole('button', { name: 'Stand 6', exact: true }).click();
  await page.keyboard.press('Escape');
}

const wind = { scene: 'wind', at: EVENING, place: '#/wind', play: typeWind };
const steps = { scene: 'steps', at: EVENING, place: '#/wind', play: midTaxi };
const roll = { scene: 'roll', at: EVENING, place: '#/wind', play: rolling };
const taxi = { scene: 'taxi', at: EVENING, place: '#/wind', play: taxiing };
const worked = { scene: 'numbers', at: EVENING, place: '#/wind', play: numbers };

/** Every picture that is taken: `wind-phone-day`, and so on. */
export const SCENES = [
  { ...wind, screen: 'phone', theme: 'day' },
  { ...wind, screen: 'tablet', theme: 'day' },
  { ...wind, screen: 'tablet', theme: 'night' },
  { ...wind, screen: 'wide', theme: 'dusk' },
  { ...steps, screen: 'phone', theme: 'day' },
  { ...steps, screen: 'tablet', theme: 'day' },
  { ...roll, screen: 'tablet', theme: 'day' },
  { ...taxi, screen: 'tablet', theme: 'day' },
  { ...worked, screen: 'tablet', theme: 'day' },
];

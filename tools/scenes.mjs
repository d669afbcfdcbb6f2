/**
 * The scenes for tools/pictures.mjs and tools/looks.mjs: a fighter leaving Harrow Sound on an April
 * evening.
 *
 * `play` brings the page to the scene as a pilot would, from `at` on the clock. It returns the page
 * to look at, if that isn't the one it played on.
 */

const EVENING = new Date('1987-04-05T18:50:00Z');
const minutesAfter = (date, minutes) => new Date(date.getTime() + minutes * 60_000);

const WIND = '27012G20KT 240V300';

/** From a fresh start to a sortie: an aircraft, a field. */
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

/** The best end and all that follows the first answer: dial, variation, sun. */
async function answered(page) {
  await typeWind(page);
  await page.locator('main svg[role="img"]').first().waitFor();
  await page.getByText('magnetic').first().waitFor();
  await page.getByText('Low sun').first().waitFor();
}

async function useBest(page) {
  await typeWind(page);
  await page
    .getByRole('button', { name: /^Use \d\d/ })
    .first()
    .click();
  await openSteps(page);
}

async function openSteps(page) {
  await page.getByRole('button', { name: 'Steps', exact: true }).click();
  await page.getByRole('button', { name: 'Later' }).waitFor();
}

/** Longer than a critical step's key must be held, and than taps are then ignored, ms. */
const HELD_MS = 1000;
const TAP_MS = 150;
const SETTLED_MS = 620;

/** Presses a key by the page's clock, once what was drawn has settled, and lets the result settle. */
async function press(page, key, ms) {
  await page.clock.runFor(SETTLED_MS);
  await key.hover({ force: true });
  await page.mouse.down();
  await page.clock.runFor(ms);
  await page.mouse.up();
  await page.clock.runFor(SETTLED_MS);
}

/** When the steps begin: later than it takes to get there. */
const STEPS_BEGIN = minutesAfter(EVENING, 1);

/** Stops the clock: from here only {@link press} moves it, equally in every run. */
async function toSteps(page) {
  await useBest(page);
  await page.clock.pauseAt(STEPS_BEGIN);
}

/** Ticks what is due: always with the last key on screen, whatever its label. */
async function tick(page) {
  const done = page.locator('main button').last();
  const isCritical = (await done.getAttribute('aria-description')) !== null;
  await press(page, done, isCritical ? HELD_MS : TAP_MS);
}

/** Ticks step after step, holding one back, until `there` shows. */
async function tickUntil(page, there, heldBack) {
  for (let steps = 0; steps < 100; steps += 1) {
    if (await there().count()) return;
    const isHeld = heldBack !== undefined && (await due(page, heldBack).count()) > 0;
    if (isHeld) await press(page, page.getByRole('button', { name: 'Later' }), TAP_MS);
    else await tick(page);
  }
  throw new Error('the steps do not lead there');
}

const due = (page, item) => page.locator('strong', { hasText: item });

/** Taxiing, one step held back and the barrier ahead. */
async function midTaxi(page) {
  await toSteps(page);
  await tickUntil(page, () => due(page, 'Flaps'), 'Oxygen');
}

/** Eleven seconds down the runway. */
async function rolling(page) {
  await toSteps(page);
  await tickUntil(page, () => page.getByRole('button', { name: 'Brakes released' }));
  await press(page, page.getByRole('button', { name: 'Brakes released' }), TAP_MS);
  await page.clock.runFor(11_000);
}

/** Today's numbers, with the air from a report. */
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

/** The route from Stand 6 to the end in use. */
async function taxiing(page) {
  await useBest(page);
  await page.getByRole('button', { name: 'Taxi', exact: true }).click();
  await page.getByRole('button', { name: 'Route', exact: true }).click();
  await page.getByRole('button', { name: 'Stand 6', exact: true }).click();
  await page.keyboard.press('Escape');
}

/** One step filling the screen, with two done before it. */
async function bigCard(page) {
  await toSteps(page);
  await tickUntil(page, () => due(page, 'Oxygen'));
  await page.getByRole('main').getByRole('button', { name: 'Big card' }).click();
  await page.getByRole('button', { name: 'Close', exact: true }).waitFor();
}

/** What an instructor sees of it in his own window. */
async function watched(page) {
  await toSteps(page);
  await tickUntil(page, () => due(page, 'Oxygen'));
  // The app won't start while the clock stands.
  await page.clock.resume();
  const audience = await page.context().newPage();
  await audience.goto(`${page.url().split('#')[0]}#/watch`);
  await audience.getByText('Oxygen').first().waitFor();
  return audience;
}

async function sortieSheet(page) {
  await useBest(page);
  await page
    .getByRole('banner')
    .getByRole('button', { name: /^Field/ })
    .click();
  await page.getByRole('dialog').waitFor();
}

/** Earlier sorties: times entered, and a note here and there. */
const FLOWN = [
  { times: ['1852', '1901', '1948', '1956'], note: 'Gusts over the trees at 28' },
  { times: ['1905', '1914', '2036', '2043'], note: null },
  { times: ['2310', '2319', '0027', '0035'], note: 'Two go-arounds, fuel as planned' },
];
const MOMENTS = ['Off chocks', 'Airborne', 'Landed', 'On chocks'];

const tickFirst = (page) => tickUntil(page, () => due(page, 'Brake lever'));

/** The log, with sorties of three days before today's. */
async function logged(page) {
  await useBest(page);
  for (const { times, note } of FLOWN) {
    await tickFirst(page);
    await page.getByRole('button', { name: 'Log', exact: true }).click();
    await page.getByRole('main').getByRole('listitem').first().getByRole('button').click();
    const dialog = page.getByRole('dialog');
    for (const [index, moment] of MOMENTS.entries()) {
      const entry = dialog.getByLabel(moment, { exact: true });
      await entry.fill(times[index]);
      await entry.press('Enter');
    }
    if (note !== null) {
      await dialog.getByRole('textbox', { name: 'A note' }).fill(note);
      await dialog.getByRole('button', { name: 'Add the note' }).click();
    }
    await dialog.getByRole('button', { name: 'Close' }).click();
    await page
      .getByRole('banner')
      .getByRole('button', { name: /^Field/ })
      .click();
    // Ending one sortie begins the next.
    await page.clock.fastForward('24:00:00');
    await page.getByRole('button', { name: 'End the sortie' }).click();
    await openSteps(page);
  }
  await tickFirst(page);
  await page.getByRole('button', { name: 'Log', exact: true }).click();
  await page.getByText('in the air').nth(2).waitFor();
}

const wind = { scene: 'wind', at: EVENING, place: '#/wind', play: answered };
const steps = { scene: 'steps', at: EVENING, place: '#/wind', play: midTaxi };
const roll = { scene: 'roll', at: EVENING, place: '#/wind', play: rolling };
const taxi = { scene: 'taxi', at: EVENING, place: '#/wind', play: taxiing };
const worked = { scene: 'numbers', at: EVENING, place: '#/wind', play: numbers };

/** All pictures: `wind-phone-day`, and so on. */
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

/**
 * When the clock stops for a look: later than any scene takes to play, and mid-minute, so that
 * nothing told in minutes depends on how fast it played.
 */
const STILL = minutesAfter(EVENING, 3.5);
const DAYS_OF_THE_LOG = FLOWN.length * 24 * 60;

/** Scenes for tools/looks.mjs, in all sizes and themes; `still` is when time stops. */
export const LOOKS = [
  { ...wind, still: STILL },
  { ...taxi, still: STILL },
  { ...steps, still: STILL },
  { ...worked, still: STILL },
  { ...wind, scene: 'log', play: logged, still: minutesAfter(STILL, DAYS_OF_THE_LOG) },
  { ...wind, scene: 'sortie', play: sortieSheet, still: STILL },
  { ...wind, scene: 'card', play: bigCard, still: STILL },
  { ...wind, scene: 'watch', play: watched, still: STILL },
];

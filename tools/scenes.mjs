/**
 * The scenes that tools/pictures.mjs and tools/looks.mjs take: a fighter leaving Harrow Sound on an
 * April evening.
 *
 * `play` brings the page to the scene as a pilot would; the clock stands at `at` when it begins. It
 * gives the page that is looked at, where that is another than the one it was played on.
 */

const EVENING = new Date('1987-04-05T18:50:00Z');
const minutesAfter = (date, minutes) => new Date(date.getTime() + minutes * 60_000);

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

/** The best end, with all that comes after the first answer: the dial, the variation, the sun. */
async function answered(page) {
  await typeWind(page);
  await page.locator('main svg[role="img"]').first().waitFor();
  await page.getByText('magnetic').first().waitFor();
  await page.getByText('Low sun').first().waitFor();
}

/** Takes the best end and goes to the steps. */
async function useBest(page) {
  await typeWind(page);
  await page
    .getByRole('button', { name: /^Use \d\d/ })
    .first()
    .click();
  await openSteps(page);
}

/** Goes to the steps, and waits until they are there. */
async function openSteps(page) {
  await page.getByRole('button', { name: 'Steps', exact: true }).click();
  await page.getByRole('button', { name: 'Hold back' }).waitFor();
}

/** Longer than a critical step's key must be held, and than a tap after it is ignored, ms. */
const HELD_MS = 1000;
const TAP_MS = 150;
const SETTLED_MS = 620;

/** Presses a key for a while of the page's clock, which is moved on, and lets what comes of it settle. */
async function press(page, key, ms) {
  await key.hover();
  await page.mouse.down();
  await page.clock.runFor(ms);
  await page.mouse.up();
  await page.clock.runFor(SETTLED_MS);
}

/** When the steps begin: later than it takes to come there. */
const STEPS_BEGIN = minutesAfter(EVENING, 1);

/** Stops the clock, so that from here on time passes only by {@link press}, by the same in every run. */
async function toSteps(page) {
  await useBest(page);
  await page.clock.pauseAt(STEPS_BEGIN);
}

/** Ticks what is due. The last key of the place ticks, whatever stands on it just now. */
async function tick(page) {
  const done = page.locator('main button').last();
  const isCritical = (await done.getAttribute('aria-description')) !== null;
  await press(page, done, isCritical ? HELD_MS : TAP_MS);
}

/** Ticks step after step, holding one back, until `there` can be seen. */
async function tickUntil(page, there, heldBack) {
  for (let steps = 0; steps < 50; steps += 1) {
    if (await there().count()) return;
    const isHeld = heldBack !== undefined && (await due(page, heldBack).count()) > 0;
    if (isHeld) await press(page, page.getByRole('button', { name: 'Hold back' }), TAP_MS);
    else await tick(page);
  }
  throw new Error('the steps do not lead there');
}

const due = (page, item) => page.locator('strong', { hasText: item });

/** Taxiing, with one thing held back and the barrier ahead. */
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

/** One step over the whole screen, two others done before it. */
async function bigCard(page) {
  await toSteps(page);
  await tickUntil(page, () => due(page, 'Oxygen'));
  await page.getByRole('main').getByRole('button', { name: 'Big card' }).click();
  await page.getByRole('button', { name: 'Close', exact: true }).waitFor();
}

/** What an instructor sees of the same in a window of his own. */
async function watched(page) {
  await toSteps(page);
  await tickUntil(page, () => due(page, 'Oxygen'));
  // The app does not begin while the clock stands.
  await page.clock.resume();
  const audience = await page.context().newPage();
  await audience.goto(`${page.url().split('#')[0]}#/watch`);
  await audience.getByText('Oxygen').first().waitFor();
  return audience;
}

/** The sheet with the field, the aircraft and all that is set beside them. */
async function sortieSheet(page) {
  await useBest(page);
  await page.getByRole('banner').getByRole('button', { name: /Z$/ }).click();
  await page.getByRole('dialog').waitFor();
}

/** Flown before the sortie of the evening: times written in, and now and then a note. */
const FLOWN = [
  { times: ['1852', '1901', '1948', '1956'], note: 'Gusts over the trees at 28' },
  { times: ['1905', '1914', '2036', '2043'], note: null },
  { times: ['2310', '2319', '0027', '0035'], note: 'Two go-arounds, fuel as planned' },
];
const MOMENTS = ['Off chocks', 'Airborne', 'Landed', 'On chocks'];

const tickFirst = (page) => tickUntil(page, () => due(page, 'Brake lever'));

/** The log with sorties of three days before that of today. */
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
    await page.getByRole('banner').getByRole('button', { name: /Z$/ }).click();
    // The next one is begun as this one is ended.
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

/**
 * Where the clock is stopped for a look: later than any of the scenes takes to play, and in the
 * middle of a minute, so that nothing told in minutes depends on how quickly it was played.
 */
const STILL = minutesAfter(EVENING, 3.5);
const DAYS_OF_THE_LOG = FLOWN.length * 24 * 60;

/** Every scene that tools/looks.mjs looks at, in all sizes and themes; `still` is where time stops. */
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

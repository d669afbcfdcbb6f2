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

const wind = { scene: 'wind', at: EVENING, place: '#/wind', play: typeWind };
const steps = { scene: 'steps', at: EVENING, place: '#/wind', play: useBest };

/** Every picture that is taken: `wind-phone-day`, and so on. */
export const SCENES = [
  { ...wind, screen: 'phone', theme: 'day' },
  { ...wind, screen: 'tablet', theme: 'day' },
  { ...wind, screen: 'tablet', theme: 'night' },
  { ...wind, screen: 'wide', theme: 'dusk' },
  { ...steps, screen: 'phone', theme: 'day' },
  { ...steps, screen: 'tablet', theme: 'day' },
];

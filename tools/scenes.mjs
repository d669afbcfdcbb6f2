/**
 * The scenes that tools/pictures.mjs takes: a fighter leaving Harrow Sound on an April evening.
 *
 * `play` brings the page to the scene as a pilot would; the clock stands at `at` when it begins.
 */

const EVENING = new Date('1987-04-05T18:50:00Z');
const WIND = '27012G20KT 240V300';

/** Chooses the field and the aircraft, as far as they are not chosen already. */
async function prepare(_page) {}

async function typeWind(page) {
  await prepare(page);
  const entry = page.getByRole('textbox', { name: /wind/i }).first();
  await entry.click();
  await page.keyboard.type(WIND);
  await page.getByRole('button', { name: /^Use \d\d/ }).waitFor();
}

const nothing = async (page) => {
  await page.locator('main').waitFor();
};

const wind = { scene: 'wind', at: EVENING, place: '#/wind', play: typeWind };
const steps = { scene: 'steps', at: EVENING, place: '#/steps', play: nothing };

/** Every picture that is taken: `wind-phone-day`, and so on. */
export const SCENES = [
  { ...wind, screen: 'phone', theme: 'day' },
  { ...wind, screen: 'tablet', theme: 'day' },
  { ...wind, screen: 'tablet', theme: 'night' },
  { ...wind, screen: 'wide', theme: 'dusk' },
  { ...steps, screen: 'phone', theme: 'day' },
  { ...steps, screen: 'tablet', theme: 'day' },
];

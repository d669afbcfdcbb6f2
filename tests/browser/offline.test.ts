/** The whole job without a network: nothing answers, the browser was closed, a new window is opened. */

import { expect, test } from './harness';
import {
  beginSortie,
  clockOf,
  due,
  EVENING,
  goOnFrom,
  key,
  openPlace,
  pressDeliberately,
  read,
  setWind,
  sortieKey,
  tick,
  tickAll,
  typeWind,
  waitUntilStored,
} from './pilot';

test('a sortie is flown to the end of the take-off after a cold start without a network', async ({
  device,
  host,
}) => {
  const first = await device.start('phone', { at: EVENING });
  await beginSortie(first);
  await setWind(first, '01012KT');
  await waitUntilStored(first);
  await device.shut();
  await host.stop();
  const asked = host.asked.length;

  const page = await device.start('phone', { at: EVENING });
  const press = (name: string) => pressDeliberately(page, key(page, name), clockOf(page));
  await typeWind(page, '27012G20KT 240V300');
  await page.keyboard.press('Enter');
  await key(page, 'Use 28').first().tap();
  // Variation needs its tables, the dial and the other places their code: all of it was stored.
  await expect.poll(() => read(page.getByRole('main'))).toContain('From 270° true (284° magnetic)');
  await expect.poll(() => page.getByRole('img', { name: /^Dial/ }).isVisible()).toBe(true);
  await openPlace(page, 'Steps');
  expect(await tick(page)).toBe('Seat pins three out, in the rack');
  await goOnFrom(page, 'Line-up', 'Heading');
  const ticked = await tickAll(page);
  expect(ticked).toContain('Heading 280°, both compasses');
  await press('Brakes released');
  await press('Airborne');
  await expect.poll(() => due(page)).toBe('Gear up, three lights out');
  expect((await tickAll(page)).slice(0, 4)).toContain('Reheat out, nozzle light out');

  for (const place of ['Taxi', 'Numbers', 'Log']) {
    await openPlace(page, place);
    await expect.poll(() => page.getByText('could not be loaded').count()).toBe(0);
    await expect.poll(() => read(page.getByRole('main'))).not.toBe('Loading');
  }
  await sortieKey(page).tap();
  await page.getByRole('dialog').getByText('Your own limits').waitFor();
  expect(host.asked.length).toBe(asked);
});

/** Writing one's own version of a procedure: changed, taken back, kept, flown, followed. */

import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { objections } from './accessible';
import { controls, misfits, resize, SIZES } from './fitting';
import { describe, expect, test } from './harness';
import {
  beginSortie,
  closeSheet,
  due,
  EVENING,
  key,
  openPlace,
  openSortie,
  read,
  setWind,
  tick,
  tickAll,
  toSteps,
} from './pilot';
import { THEMES, wear } from './themes';
import {
  openStep,
  openWriting,
  responseEntry,
  rowsIn,
  saidIn,
  scrollBack,
  sheet,
  writeToday,
} from './writing';

/** From the first start to the sheet. */
async function beginWriting(page: Page): Promise<void> {
  await beginSortie(page);
  await setWind(page, '27012G20KT');
  await openWriting(page);
}

/** A row of the list, by the beginning of what stands in it. */
const row = (page: Page, item: string) =>
  sheet(page)
    .getByRole('listitem')
    .filter({ has: page.getByRole('button', { name: new RegExp(`^${item}:`) }) })
    .first();

const ORIGINAL = ['Brakes, rolling', 'Flaps', 'Trim', 'Air brakes', 'Taxi speed'];
const someOf = async (page: Page) => {
  const rows = await rowsIn(page, 'Taxi');
  const from = rows.indexOf('Brakes, rolling');
  return rows.slice(from === -1 ? 0 : from, from + ORIGINAL.length);
};

describe('a version of one’s own', () => {
  test('is written, taken back to the start and made again, kept and flown; the original stays', async ({
    open,
  }) => {
    const page = await open('tablet', { at: EVENING });
    await beginWriting(page);
    const before = await rowsIn(page, 'Taxi');
    expect(await someOf(page)).toEqual(ORIGINAL);

    await openStep(page, 'Trim');
    await responseEntry(page).fill('three units');
    await key(page, 'Move up').click();
    await openStep(page, 'Taxi speed');
    await key(page, 'Duplicate').click();
    await openStep(page, 'Air brakes');
    await key(page, 'Remove').click();
    const written = await someOf(page);
    expect(written).toEqual(['Brakes, rolling', 'Trim', 'Flaps', 'Taxi speed', 'Taxi speed']);

    while (await key(page, 'Undo').isEnabled()) await key(page, 'Undo').click();
    expect(await rowsIn(page, 'Taxi')).toEqual(before);
    expect(await read(row(page, 'Trim'))).toContain('two units nose up');
    expect(await key(page, 'Save').isEnabled()).toBe(false);
    while (await key(page, 'Redo').isEnabled()) await key(page, 'Redo').click();
    expect(await someOf(page)).toEqual(written);

    await key(page, 'What is mine').click();
    const mine = await read(sheet(page));
    expect(mine).toContain('RemovedAir brakes: in, light out');
    expect(mine).toContain('AddedTaxi speed');
    expect(mine).toContain('MovedTrim, within its part');
    expect(mine).toContain('Original: Trim: two units nose up');
    expect(mine).toContain('Mine: Trim: three units');

    await key(page, 'Save').click();
    await expect.poll(() => read(saidIn(page))).toContain('Saved as version 1. Steps follow it');
    await closeSheet(page);
    await key(page, 'Sortie').click();
    const chosen = page.getByRole('group', { name: 'Procedure' }).getByRole('button');
    await expect
      .poll(() => chosen.allTextContents())
      .toEqual([
        'Sleet, usual sortie',
        'Sleet, üblicher Flug (German)',
        'Sleet, usual sortie, mine',
      ]);
    await expect.poll(() => chosen.last().getAttribute('aria-pressed')).toBe('true');
    await chosen.first().click();
    await closeSheet(page);
    await openPlace(page, 'Steps');
    await page.getByRole('button', { name: /^Taxi, \d/ }).click();
    await expect.poll(() => read(page.getByRole('dialog'))).toContain('two units nose up');
  });

  test('an edit that is not kept outlives the end of the browser, with its undo', async ({
    device,
  }) => {
    let page = await device.start('phone', { at: EVENING });
    await beginWriting(page);
    await openStep(page, 'Trim');
    await responseEntry(page).fill('three units');
    await responseEntry(page).blur();
    await responseEntry(page).press('End');
    await responseEntry(page).pressSequentially(' up');
    await page.waitForTimeout(300);
    await device.shut();

    page = await device.start('phone', { at: EVENING });
    await openWriting(page);
    await expect.poll(() => read(row(page, 'Trim'))).toContain('three units up');
    await expect.poll(() => read(saidIn(page))).toContain('Not saved yet');
    await page.keyboard.press('ControlOrMeta+z');
    await expect.poll(() => read(row(page, 'Trim'))).toMatch(/three units(?! up)/);
    await page.keyboard.press('ControlOrMeta+z');
    await expect.poll(() => read(row(page, 'Trim'))).toContain('two units nose up');
    await page.keyboard.press('ControlOrMeta+Shift+z');
    await expect.poll(() => read(row(page, 'Trim'))).toMatch(/three units(?! up)/);
  });

  test('an earlier version is taken up again, and is the next one', async ({ open }) => {
    const page = await open('tablet', { at: EVENING });
    await beginWriting(page);
    for (const [version, response] of ['three units', 'four units'].entries()) {
      await openStep(page, 'Trim');
      await responseEntry(page).fill(response);
      await key(page, 'Save').click();
      await expect.poll(() => read(saidIn(page))).toContain(`Saved as version ${version + 1}.`);
    }
    await key(page, 'Versions').click();
    await key(page, 'Restore: Version 1').click();
    await key(page, 'Save').click();
    await expect.poll(() => read(saidIn(page))).toContain('Saved as version 3.');
    await key(page, 'Steps').last().click();
    await expect.poll(() => read(row(page, 'Trim'))).toContain('three units');
  });

  test('a sortie that is begun keeps its steps; the next one follows the version', async ({
    open,
  }) => {
    const page = await open('tablet', { at: EVENING });
    await toSteps(page);
    await tick(page);
    const second = await due(page);
    await page.getByRole('button', { name: /^Ramp, \d/ }).click();
    await key(page, 'Write my own').click();
    await key(page, 'Undo').waitFor();
    await openStep(page, second.split(' ').slice(0, 2).join(' '));
    await sheet(page).getByRole('textbox', { name: 'Item, as on the panel' }).fill('Anchor');
    await key(page, 'Save').click();
    await expect
      .poll(() => read(saidIn(page)))
      .toContain('The sortie that is begun keeps its steps');
    await closeSheet(page);
    await expect.poll(() => due(page)).toBe(second);
    // What was ticked stays ticked when it goes on.
    await tick(page);
    await expect.poll(() => due(page)).toBe('Stick and pedals full travel, free');
    await openSortie(page);
    await key(page, 'End the sortie').click();
    await tick(page);
    await expect.poll(() => due(page)).toContain('Anchor');
  });
});

describe('a list for when something is wrong', () => {
  const TITLE = 'Rejected take-off';
  const head = (page: Page, title: string) =>
    key(page, new RegExp(`^Change the title of “${title}”, and where it leads`));
  const group = (page: Page, name: string) => sheet(page).getByRole('group', { name });
  const pressed = async (page: Page, name: string) => {
    const keys = group(page, name).locator('[aria-pressed=true]');
    return (await keys.allTextContents()).join(', ');
  };

  test('has another title and leads elsewhere, is taken back and made again, kept and flown', async ({
    open,
  }) => {
    const page = await open('tablet', { at: EVENING });
    await beginWriting(page);
    expect(await read(head(page, TITLE))).toContain(
      'Offered under: Emergencies. Looked for first in: Roll. Leads to After; nothing is due again.',
    );
    await head(page, TITLE).click();
    const title = sheet(page).getByRole('textbox', { name: 'Title' });
    await title.fill('');
    await expect.poll(() => read(saidIn(page))).toContain('One thing is wrong');
    expect(await key(page, 'Save').isEnabled()).toBe(false);
    await title.fill('Rejected');
    await group(page, 'Looked for first in').getByRole('button', { name: 'Ramp' }).click();
    expect(await pressed(page, 'Looked for first in')).toBe('Ramp, Roll');
    await sheet(page).getByRole('combobox', { name: 'Phase' }).selectOption('line-up');
    // What would come before the phase it leads to is not due again.
    expect(await pressed(page, 'Due again from there')).toBe('');
    await group(page, 'Offered under').getByRole('button', { name: 'Malfunctions' }).click();
    await group(page, 'Due again from there').getByRole('button', { name: 'Line-up' }).click();
    const leads = 'Leads to Line-up; due again: Line-up.';
    await expect.poll(() => read(head(page, 'Rejected'))).toContain(`Ramp, Roll. ${leads}`);

    while (await key(page, 'Undo').isEnabled()) await key(page, 'Undo').click();
    await expect.poll(() => title.inputValue()).toBe(TITLE);
    expect(await read(saidIn(page))).toMatch(/^Undone: .+ changed\.$/);
    expect(await pressed(page, 'Due again from there')).toBe('');
    expect(await pressed(page, 'Offered under')).toBe('Emergencies');
    while (await key(page, 'Redo').isEnabled()) await key(page, 'Redo').click();
    await expect.poll(() => title.inputValue()).toBe('Rejected');

    await key(page, 'What is mine').click();
    const mine = await read(sheet(page));
    expect(mine).toContain(
      `Original: ${TITLE}: Offered under: Emergencies. Looked for first in: Roll. Leads to After;`,
    );
    expect(mine).toContain(
      `Mine: Rejected: Offered under: Malfunctions. Looked for first in: Ramp, Roll. ${leads}`,
    );
    await key(page, 'Save').click();
    await expect.poll(() => read(saidIn(page))).toContain('Saved as version 1.');
    await closeSheet(page);
    await closeSheet(page);
    await openPlace(page, 'Steps');
    await key(page, 'Emergencies').click();
    const malfunctions = page.getByRole('dialog').getByRole('region', { name: 'Malfunctions' });
    const lists = malfunctions.getByRole('listitem');
    // On the ramp, where it is looked for first from now on, it stands above the others.
    await expect.poll(() => read(lists.first())).toContain('Rejected');
    await lists.first().getByRole('button').click();
    // A step of it names the runway, and none is chosen yet.
    await tickAll(page);
    await key(page, 'On to Line-up').waitFor();
  });

  test('is added, taken away, brought back, and offered under its heading', async ({ open }) => {
    const page = await open('tablet', { at: EVENING });
    await beginWriting(page);
    await key(page, 'Add a list').click();
    await sheet(page).getByRole('textbox', { name: 'Title' }).fill('Bird strike');
    await group(page, 'Offered under').getByRole('button', { name: 'Malfunctions' }).click();
    await key(page, 'Remove this list').click();
    await expect.poll(() => read(saidIn(page))).toContain('Bird strike was removed.');
    expect(await head(page, 'Bird strike').count()).toBe(0);
    await key(page, 'Undo').click();
    await expect.poll(() => read(saidIn(page))).toBe('Undone: Bird strike removed.');
    await expect.poll(() => head(page, 'Bird strike').isVisible()).toBe(true);
    await key(page, 'Save').click();
    await expect.poll(() => read(saidIn(page))).toContain('Saved as version 1.');
    await closeSheet(page);
    await closeSheet(page);
    await openPlace(page, 'Steps');
    await key(page, 'Emergencies').click();
    const malfunctions = page.getByRole('dialog').getByRole('region', { name: 'Malfunctions' });
    await malfunctions.getByRole('button', { name: /^Bird strike/ }).click();
    expect(await tickAll(page)).toHaveLength(1);
  });

  test('leads to the end, or to a phase, which is first one in which it is looked for', async ({
    open,
  }) => {
    const page = await open('phone', { at: EVENING });
    await beginWriting(page);
    await head(page, 'Gear not locked').click();
    expect(await pressed(page, 'Where it leads when it is complete')).toBe(
      'Back to where you were',
    );
    await key(page, 'To the end').click();
    await expect.poll(() => read(sheet(page))).toContain('Leads to the end of the sortie.');
    await key(page, 'To a phase').click();
    expect(await pressed(page, 'Due again from there')).toBe('Climb');
    for (const name of ['Climb', 'Recovery'])
      await group(page, 'Looked for first in').getByRole('button', { name }).click();
    await key(page, 'All steps').click();
    const row = head(page, 'Gear not locked');
    expect(await read(row)).toMatch(
      /leads ?Offered under: Malfunctions\. Leads to Climb; due again: Climb\.$/,
    );
    // The keyboard is where it was.
    await expect.poll(() => row.evaluate((one) => one === document.activeElement)).toBe(true);
  });
});

describe('moving a step', () => {
  test('by its handle, with a pointer, into another phase', async ({ open }) => {
    const page = await open('tablet', { at: EVENING });
    await beginWriting(page);
    const handle = key(page, /^Move Air brakes/).first();
    await handle.scrollIntoViewIfNeeded();
    const target = row(page, 'Brakes, rolling');
    const [from, to] = [await handle.boundingBox(), await target.boundingBox()];
    if (from === null || to === null) throw new Error('the rows are not there');
    await page.mouse.move(from.x + from.width / 2, from.y + from.height / 2);
    await page.mouse.down();
    await page.mouse.move(from.x + 20, to.y + to.height, { steps: 5 });
    await page.mouse.move(from.x + 20, to.y + 4, { steps: 5 });
    await page.mouse.up();
    expect((await someOf(page)).slice(0, 3)).toEqual(['Brakes, rolling', 'Flaps', 'Trim']);
    const rows = await rowsIn(page, 'Taxi');
    expect(rows.indexOf('Air brakes')).toBe(rows.indexOf('Brakes, rolling') - 1);
    await expect.poll(() => read(saidIn(page))).toMatch(/^Air brakes is now \d+ of 20 in Taxi\.$/);
  });

  test('Escape leaves it where it stood, and the sheet open', async ({ open }) => {
    const page = await open('tablet', { at: EVENING });
    await beginWriting(page);
    const before = await rowsIn(page, 'Taxi');
    const box = await key(page, /^Move Air brakes/)
      .first()
      .boundingBox();
    if (box === null) throw new Error('the row is not there');
    await key(page, /^Move Air brakes/)
      .first()
      .scrollIntoViewIfNeeded();
    const seen = await key(page, /^Move Air brakes/)
      .first()
      .boundingBox();
    if (seen === null) throw new Error('the row is not there');
    await page.mouse.move(seen.x + 10, seen.y + 10);
    await page.mouse.down();
    await page.mouse.move(seen.x + 10, seen.y - 200, { steps: 5 });
    await page.keyboard.press('Escape');
    await page.mouse.up();
    expect(await rowsIn(page, 'Taxi')).toEqual(before);
    await expect.poll(() => sheet(page).isVisible()).toBe(true);
  });

  test('by the keyboard, over the edge of its phase, and the keyboard stays on it', async ({
    open,
  }) => {
    const page = await open('tablet', { at: EVENING });
    await beginWriting(page);
    const last = (await rowsIn(page, 'Ramp')).at(-1) ?? '';
    await key(page, new RegExp(`^${last}:`))
      .first()
      .focus();
    await page.keyboard.press('Alt+ArrowDown');
    await expect.poll(async () => (await rowsIn(page, 'Taxi'))[0]).toBe(last);
    await page.keyboard.press('Alt+ArrowDown');
    await expect.poll(async () => (await rowsIn(page, 'Taxi'))[1]).toBe(last);
    await page.keyboard.press('Alt+ArrowUp');
    await page.keyboard.press('Alt+ArrowUp');
    await expect.poll(async () => (await rowsIn(page, 'Ramp')).at(-1)).toBe(last);
  });
});

describe('pickers', () => {
  test('put a live number where the caret is, and show it is today', async ({ open }) => {
    const page = await open('tablet', { at: EVENING });
    await beginWriting(page);
    await openStep(page, 'Trim');
    await responseEntry(page).fill('by ');
    await sheet(page).getByRole('combobox', { name: 'Live number' }).selectOption('gearKt');
    await key(page, 'Insert').click();
    await expect.poll(() => responseEntry(page).inputValue()).toBe('by {gearKt}');
    expect(await read(sheet(page).getByRole('region', { name: 'Under today’s facts' }))).toMatch(
      /Trim by \d{3}/,
    );
    await page.keyboard.type(' kt');
    await expect.poll(() => responseEntry(page).inputValue()).toBe('by {gearKt} kt');
  });

  test('a condition says whether the step applies today', async ({ open }) => {
    const page = await open('tablet', { at: EVENING });
    await beginWriting(page);
    await openStep(page, 'Trim');
    const preview = sheet(page).getByRole('region', { name: 'Under today’s facts' });
    await expect.poll(() => read(preview)).toContain('It applies today.');
    await sheet(page)
      .getByRole('combobox', { name: 'Condition' })
      .selectOption({ label: 'the wind is above' });
    await key(page, 'Add').click();
    // 12 knots, gusting 20, is above 15.
    await expect
      .poll(() => read(preview))
      .toContain('It applies today. (if the wind is above 15 kt)');
    await key(page, /^Reverse/).click();
    await expect.poll(() => read(preview)).toContain('It does not apply today.');
    await sheet(page)
      .getByRole('combobox', { name: 'Condition' })
      .selectOption({ label: 'the surface is not dry' });
    await key(page, 'Add').click();
    await key(page, /^Reverse: the surface/).click();
    await key(page, 'If any holds').click();
    expect(await read(preview)).toContain(
      'It applies today. (if the wind is not above 15 kt or the surface is dry)',
    );
  });

  test('what is wrong is said where it stands, and is not kept', async ({ open }) => {
    const page = await open('tablet', { at: EVENING });
    await beginWriting(page);
    await openStep(page, 'Trim');
    await responseEntry(page).fill('by {gearKts}');
    await expect.poll(() => read(sheet(page))).toContain('There is no live number of that name');
    expect(await key(page, 'Save').isEnabled()).toBe(false);
    await responseEntry(page).fill('by {gearKt}');
    await expect.poll(() => key(page, 'Save').isEnabled()).toBe(true);
  });
});

describe('an original that changed', () => {
  /** The demo's procedure as a later one might be: a step reworded, one more, and one reworded that is one's own too. */
  function laterOriginal(): string {
    const path = new URL('../../airfields-demo/procedures/sleet-usual.json', import.meta.url);
    const document = JSON.parse(readFileSync(path, 'utf8'));
    const taxi = document.phases.find(({ phase }: { phase: string }) => phase === 'taxi');
    const place = (item: string) =>
      taxi.steps.findIndex((step: { item: string }) => step.item === item);
    taxi.steps[place('Trim')].response = 'one unit nose up';
    taxi.steps[place('Air brakes')].response = 'in, both lights out';
    taxi.steps.splice(place('Flaps'), 0, {
      id: 'slats-out',
      kind: 'check',
      item: 'Slats',
      response: 'out',
    });
    return JSON.stringify(document);
  }

  test('is followed: what is one’s own stays, and where both changed the pilot says which', async ({
    open,
  }) => {
    const page = await open('tablet', { at: EVENING });
    await beginWriting(page);
    await openStep(page, 'Trim');
    await responseEntry(page).fill('three units');
    await openStep(page, 'Flaps');
    await responseEntry(page).fill('half');
    await key(page, 'Save').click();
    await expect.poll(() => read(saidIn(page))).toContain('Saved as version 1.');
    await closeSheet(page);

    await page
      .getByRole('dialog')
      .locator('input[type=file]')
      .setInputFiles({
        name: 'later.json',
        mimeType: 'application/json',
        buffer: Buffer.from(laterOriginal()),
      });
    await key(page, 'Keep both').click();
    await page.getByText('was added').waitFor();
    await closeSheet(page);
    await writeToday(page);
    await key(page, 'See what changed').click();
    await expect.poll(() => read(sheet(page))).toContain('One step was changed by both.');
    await sheet(page)
      .getByRole('region', { name: 'Trim' })
      .getByRole('button', { name: 'Original' })
      .click();
    await key(page, 'Follow the original').click();
    await expect.poll(() => read(row(page, 'Trim'))).toContain('one unit nose up');
    await expect.poll(() => read(row(page, 'Flaps'))).toContain('half');
    await expect.poll(() => read(row(page, 'Air brakes'))).toContain('in, both lights out');
    expect(await rowsIn(page, 'Taxi')).toContain('Slats');
    expect(await key(page, 'See what changed').count()).toBe(0);
    await key(page, 'Undo').click();
    await expect.poll(() => read(row(page, 'Trim'))).toContain('three units');
    await expect.poll(() => key(page, 'See what changed').count()).toBe(1);
    await key(page, 'Redo').click();
    await key(page, 'Save').click();
    await expect.poll(() => read(saidIn(page))).toContain('Saved as version 2.');
  });
});

test('every text fits, every key is large enough, and axe has nothing to say', {
  timeout: 240_000,
}, async ({ open }) => {
  const page = await open('tablet', { at: EVENING });
  await beginWriting(page);
  const found: string[] = [];
  const look = async (scene: string) => {
    for (const [width, height] of SIZES) {
      await resize(page, { width, height });
      const where = `${scene} at ${width} x ${height}`;
      for (const theme of THEMES) {
        await wear(page, theme);
        found.push(...(await misfits(page)).map((misfit) => `${where} by ${theme}: ${misfit}`));
        // The narrowest is where keys are smallest.
        if (width !== 360) continue;
        for (const { name, width: wide, height: high } of await controls(page))
          if (Math.min(wide, high) + 1 < 44) found.push(`${where}: ${name} ${wide} x ${high}`);
      }
    }
    await scrollBack(page);
    found.push(...(await objections(page)).map((objection) => `${scene}, ${objection}`));
  };
  await look('the list');
  await key(page, /^Change the title of “Going around”/).click();
  await sheet(page).getByRole('textbox', { name: 'Title' }).fill('');
  await expect.poll(() => key(page, 'Undo').isEnabled()).toBe(true);
  await look('an abnormal list');
  await key(page, 'Undo').click();
  await openStep(page, 'Trim');
  await sheet(page)
    .getByRole('combobox', { name: 'Condition' })
    .selectOption({ label: 'the wind is above' });
  await key(page, 'Add').click();
  await key(page, 'Gate').click();
  await look('a step');
  await sheet(page).getByRole('combobox', { name: 'Passed by the speed' }).selectOption('gearKt');
  await key(page, 'What is mine').click();
  await look('what is mine');
  await key(page, 'Save').click();
  await key(page, 'Versions').click();
  await look('the versions');
  expect(found).toEqual([]);
});

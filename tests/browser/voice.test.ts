/**
 * What is due is read aloud, in the words of the radio, and stops as the pilot goes on. Speech is
 * faked at the browser's edge: the tests check what it is asked to say, and when.
 */

import type { Page } from 'playwright-core';
import { saidDigits } from '../../src/parts/spoken.en';
import { objections } from './accessible';
import { said, syntheticSpeech } from './hands';
import { describe, expect, test } from './harness';
import {
  clockOf,
  closeSheet,
  EVENING,
  goOnFrom,
  key,
  openDevice,
  pressDeliberately,
  sortieKey,
  tick,
  toSteps,
} from './pilot';

/** Turns reading aloud on, as if chosen before, and waits until it speaks. */
async function readAloud(page: Page, voicing: Record<string, unknown> = {}): Promise<void> {
  await page.evaluate((chosen) => localStorage.setItem('lapstrip.voice', JSON.stringify(chosen)), {
    on: true,
    gates: true,
    ...voicing,
  });
  await page.reload();
  await expect.poll(() => said(page)).not.toEqual([]);
}

/** Goes to the key that releases the brakes, and waits for the ladder. */
async function toRelease(page: Page): Promise<void> {
  // With its parachute the Sleet can stop up to rotation here, and the ladder has no rung for it.
  await sortieKey(page).click();
  await key(page, 'Wet').click();
  await page.getByRole('dialog').getByRole('button', { name: 'Brake chute packed' }).click();
  await closeSheet(page);
  await goOnFrom(page, 'Line-up', 'Nozzle light');
  for (let i = 0; i < 60 && !(await key(page, 'Brakes released').isVisible()); i++) {
    await tick(page);
  }
  await page.getByText('Stop up to').waitFor();
}

async function openSettings(page: Page): Promise<void> {
  await openDevice(page);
  await page.getByRole('heading', { name: 'Voice and sounds' }).waitFor();
}

describe('what is due', () => {
  test('is said as it becomes due, by a voice that needs no network', async ({ open }) => {
    const page = await open('phone', { at: EVENING, before: syntheticSpeech });
    await toSteps(page);
    await readAloud(page, { rate: 1.25 });
    await expect.poll(() => said(page)).toEqual(['Seat pins: three out, in the rack.']);
    expect(await page.evaluate(() => window.said[0])).toMatchObject({
      voice: 'Close by',
      rate: 1.25,
    });
    const silenced = await page.evaluate(() => window.silenced);
    await tick(page);
    await expect.poll(() => said(page)).toContain('Brake lever: parked, needle white.');
    // What was being said was cut short first.
    expect(await page.evaluate(() => window.silenced)).toBeGreaterThan(silenced);
  });

  test('is said with its numbers digit by digit', async ({ open }) => {
    const page = await open('phone', { at: EVENING, before: syntheticSpeech });
    await toSteps(page);
    await readAloud(page);
    await goOnFrom(page, 'Ramp', 'Brief');
    // Runways are said digit by digit: ICAO Annex 10, vol. II, 5.2.1.4.1.
    await expect.poll(async () => (await said(page)).at(-1)).toMatch(/^Brief.*two eight/);
  });

  test('is not said while nothing is to be read aloud, nor while another place is open', async ({
    open,
  }) => {
    const page = await open('phone', { at: EVENING, before: syntheticSpeech });
    await toSteps(page);
    await clockOf(page)(3000);
    await tick(page);
    await expect.poll(() => said(page)).toEqual([]);
  });

  test('is said again by a key, also where nothing is read aloud by itself', async ({ open }) => {
    const page = await open('phone', { at: EVENING, before: syntheticSpeech });
    await toSteps(page);
    await page.evaluate(() =>
      localStorage.setItem(
        'lapstrip.keys',
        JSON.stringify([{ control: 'key:KeyQ', manner: 'press', action: 'repeat' }]),
      ),
    );
    await page.reload();
    await expect
      .poll(async () => {
        await page.keyboard.press('q');
        await clockOf(page)(300);
        return (await said(page))[0];
      })
      .toBe('Seat pins: three out, in the rack.');
  });
});

describe('the gates of the roll', () => {
  test('are said at their times after brake release, with one warning that they are times', {
    timeout: 240_000,
  }, async ({ open }) => {
    const page = await open('tablet', { at: EVENING, before: syntheticSpeech });
    await toSteps(page);
    await readAloud(page);
    await toRelease(page);
    const warning = /times, not airspeed/;
    await expect
      .poll(async () => (await said(page)).filter((text) => warning.test(text)).length)
      .toBe(1);
    await expect
      .poll(() => page.getByText('Spoken gates are times, not airspeed.').count())
      .toBe(1);
    await page.evaluate(() => {
      window.said = [];
    });
    const releasedAt = await page.evaluate(() => Date.now());
    await pressDeliberately(page, key(page, 'Brakes released'), clockOf(page));
    await key(page, 'Airborne').waitFor();
    const shown = await page.getByRole('list').first().getByRole('listitem').allInnerTexts();
    await clockOf(page)(45_000);
    const gates = await page.evaluate(() => window.said);
    // What is said after it belongs to the climb.
    const roll = gates.slice(0, 4);
    expect(roll.map(({ text }) => text.replace(/expect [a-z ]+/, 'expect #'))).toEqual([
      'Mark, expect #.',
      'Max abort, expect #.',
      'Rotate, expect #.',
      'Lift-off, expect #.',
    ]);
    // The ladder is read from the bottom up; each rung shows its seconds.
    const seconds = shown
      .map((rung) => Number(/(\d+)\s*s(?![a-z])/.exec(rung.replace(/\u00a0/g, ' '))?.[1]))
      .reverse();
    roll.forEach(({ atMs }, index) => {
      const sinceS = (atMs - releasedAt) / 1000;
      // The key takes 0.6 s to be believed and 0.1 to be pressed; a rung is shown in whole seconds.
      expect(Math.abs(sinceS - 0.7 - (seconds[index] ?? Number.NaN))).toBeLessThan(1.2);
    });
  });

  test('go on in the climb, once each, and a step that one cuts short is said again after it', {
    timeout: 240_000,
  }, async ({ open }) => {
    const page = await open('tablet', { at: EVENING, before: syntheticSpeech });
    await toSteps(page);
    await readAloud(page);
    await toRelease(page);
    await pressDeliberately(page, key(page, 'Brakes released'), clockOf(page));
    // It lifted off long ago, and the pilot says so a second before the gear is expected up.
    await clockOf(page)(29_500);
    await pressDeliberately(page, key(page, 'Airborne'), clockOf(page));
    const rungs = page.getByRole('list', { name: 'Clean-up' }).getByRole('listitem');
    await rungs.first().waitFor();
    const shown = (await rungs.allInnerTexts()).map((rung) => rung.replace(/\u00a0/g, ' '));
    await clockOf(page)(60_000);
    const all = await page.evaluate(() => window.said);
    const gates = all.filter(({ text }) => text.includes(', expect '));
    const names = gates.map(({ text }) => text.slice(0, text.indexOf(',')));
    expect(names).toEqual([
      ...['Mark', 'Max abort', 'Rotate', 'Lift-off'],
      ...['Gear up', 'Flaps up', 'Reheat off', 'Climb'],
    ]);
    const climb = gates.slice(4);
    // The speeds are those that are shown: 360 kt is said as three six zero.
    expect(climb.map(({ text }) => text.replace(/^.*expect /, ''))).toEqual(
      shown.map((rung) => `${saidDigits(Number(/(\d+)\s*kt/.exec(rung)?.[1]))}.`),
    );
    // Reheat and climb are shown with the seconds from lift-off, which was spoken when it was expected.
    const liftOffMs = gates[3]?.atMs ?? Number.NaN;
    for (const at of [2, 3]) {
      const shownS = Number(/in about (\d+) s/.exec(shown[at] ?? '')?.[1]);
      const spokenS = ((climb[at]?.atMs ?? Number.NaN) - liftOffMs) / 1000;
      expect(Math.abs(spokenS - shownS)).toBeLessThan(1.2);
    }
    // The first cuts the step short that is due since Airborne; after it that is said again.
    const after = all
      .slice(all.findIndex(({ text }) => text.startsWith('Gear up')))
      .map(({ text }) => text.replace(/, expect .*/, ''));
    expect(after.slice(0, 2)).toEqual(['Gear up', 'Gear: up, three lights out.']);
    expect(after.at(-1)).toBe('Climb');
  });

  test('fall silent when the roll is stopped', { timeout: 240_000 }, async ({ open }) => {
    const page = await open('tablet', { at: EVENING, before: syntheticSpeech });
    await toSteps(page);
    await readAloud(page);
    await toRelease(page);
    await pressDeliberately(page, key(page, 'Brakes released'), clockOf(page));
    await pressDeliberately(page, key(page, 'Stopping'), clockOf(page));
    await page.evaluate(() => {
      window.said = [];
    });
    await clockOf(page)(45_000);
    expect((await said(page)).filter((text) => text.includes('expect'))).toEqual([]);
  });
});

describe('voice and sounds in Device', () => {
  test('offer voices and flag those that need a network', async ({ open }) => {
    const page = await open('tablet', { at: EVENING, before: syntheticSpeech });
    await toSteps(page);
    await clockOf(page)(2000);
    await openSettings(page);
    const voice = page.getByRole('combobox', { name: 'Voice' });
    await expect
      .poll(() => voice.getByRole('option').allTextContents())
      .toEqual(['Close by, en-GB', 'Far away, en-GB, needs a network']);
    await voice.selectOption('Far away');
    await expect.poll(() => page.getByText('This voice needs a network.').count()).toBe(1);
    expect(await objections(page)).toEqual([]);
    await key(page, 'Hear it').click();
    expect(await page.evaluate(() => window.said.at(-1)?.voice)).toBe('Far away');
  });

  test('say once, in its place, what the device has not', async ({ open }) => {
    const page = await open('tablet', {
      at: EVENING,
      before: () => {
        Reflect.deleteProperty(window, 'speechSynthesis');
        Object.defineProperty(window, 'speechSynthesis', { value: undefined });
        Object.defineProperty(navigator, 'vibrate', { value: undefined });
        Object.defineProperty(window, 'AudioContext', { value: undefined });
      },
    });
    await toSteps(page);
    await clockOf(page)(2000);
    await tick(page);
    await openSettings(page);
    for (const absent of [
      'This browser cannot read aloud.',
      'This browser makes no sounds.',
      'This device does not vibrate.',
    ]) {
      expect(await page.getByText(absent).count(), absent).toBe(1);
    }
  });

  test('tell done, held back and barrier apart, and are off with one tap', async ({ open }) => {
    const page = await open('tablet', {
      at: EVENING,
      before: () => {
        const felt: number[][] = [];
        Object.assign(window, { felt });
        Object.defineProperty(navigator, 'vibrate', {
          value: (pattern: number[]) => felt.push(pattern),
        });
      },
    });
    const felt = () =>
      page.evaluate(() => (window as unknown as { felt: number[][] }).felt.splice(0));
    /** Waits until the last that was felt has so many pulses and pauses. */
    const feels = async (length: number) => {
      let last: number[] | undefined;
      await expect
        .poll(async () => {
          last = (await felt()).at(-1) ?? last;
          return last?.length;
        })
        .toBe(length);
      return last;
    };
    await toSteps(page);
    await clockOf(page)(3000);
    await page.waitForFunction(() =>
      navigator.locks.query().then(({ held }) => (held?.length ?? 0) > 1),
    );
    await tick(page);
    const done = await feels(1);
    await pressDeliberately(page, key(page, 'Later'), clockOf(page));
    const held = await feels(3);
    await goOnFrom(page, 'Taxi', 'Take-off brief');
    await felt();
    await tick(page);
    await tick(page);
    await clockOf(page)(500);
    const barrier = await feels(5);
    expect(new Set([done, held, barrier].map((pattern) => JSON.stringify(pattern))).size).toBe(3);
    await openSettings(page);
    await key(page, 'Sounds').click();
    await closeSheet(page);
    await tick(page);
    expect(await felt()).toEqual([]);
  });
});

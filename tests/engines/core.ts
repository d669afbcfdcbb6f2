/** The core set: what must hold in every engine, driven as a pilot would. */

import { test as base, describe, expect } from 'vitest';
import harrow from '../../airfields-demo/fields/XHAR.json';
import { linksTo } from '../../src/exchange/link';
import { words as notices } from '../../src/shell/noticeWords.en';
import { words as rooms } from '../../src/shell/roomWords.en';
import { words as german } from '../../src/shell/words.de';
import { words as frame } from '../../src/shell/words.en';
import { words as voice } from '../../src/views/device/voiceWords.en';
import { words as device } from '../../src/views/device/words.en';
import { words as incoming } from '../../src/views/library/incomingWords.en';
import { words as library } from '../../src/views/library/words.en';
import { words as log } from '../../src/views/log/words.en';
import { words as sortie } from '../../src/views/sortie/words.en';
import { words as steps } from '../../src/views/steps/words.en';
import { words as taxi } from '../../src/views/taxi/words.en';
import { words as meaning } from '../../src/views/wind/report/meaningWords.en';
import { words as detail } from '../../src/views/wind/runways/words.en';
import { words as germanWind } from '../../src/views/wind/words.de';
import { words as wind } from '../../src/views/wind/words.en';
import { ENGINES, type EngineName } from './found';
import { Tablet } from './harness';
import {
  AIRCRAFT,
  beginning,
  DONE,
  ending,
  FIELD,
  HELD_MS,
  type Label,
  PHONE,
  type Pilot,
  TABLET,
  TAP_MS,
} from './pilot';

/** The procedure that AIRCRAFT is flown with. */
const USUAL = 'Sleet, usual sortie';

/** The row of what is flown today in the Library. */
const today = (name: string) => new RegExp(`^${name} .*${library.today}`);

/** The bounds of a deliberate tap, as the app promises them: ms and CSS px. */
const LEAST_MS = 80;
const MOST_MS = 800;
const MOST_PX = 12;

const METAR = 'METAR XHAR 051850Z 27012G20KT 9999 FEW020 08/04 Q1011';

const PLACES = [
  'wind',
  'taxi',
  'steps',
  'numbers',
  'log',
] as const satisfies readonly (keyof typeof frame.places)[];

/** A field of one's own, invented: the demo's under another name. */
const OWN = { ...harrow, code: 'XTSL', name: 'Teasel Flat' };
const HASH = '0'.repeat(64);

/** Tests of one engine. Without it they are skipped, and their name says why. */
export function coreSet(name: EngineName): void {
  const engine = ENGINES[name]();
  if (engine === null) {
    base.skip(
      `${name} is not installed here and may not be: nothing was tested in it`,
      () => undefined,
    );
    return;
  }
  const test = base
    // A browser takes longer to start than most tests: they share one, and begin with nothing stored.
    .extend('shared', { scope: 'file' }, async ({}, { onCleanup }) => {
      const tablet = new Tablet(engine);
      onCleanup(async () => {
        await tablet.discard();
      });
      return tablet;
    })
    .extend('tablet', async ({ shared }, { onCleanup }) => {
      onCleanup(async () => {
        expect(await shared.renew()).toEqual([]);
      });
      return shared;
    });

  describe(name, () => {
    test('starts with the caution, then asks for aircraft and field', async ({ tablet }) => {
      const pilot = await tablet.start();
      await pilot.sees(frame.caution.what);
      await pilot.beginSortie();
      await pilot.sees(`${FIELD} ${harrow.name}`);
    });

    test('a wind typed on the keypad is answered, and its runway taken into use', async ({
      tablet,
    }) => {
      const pilot = await tablet.start();
      await pilot.beginSortie();
      await pilot.keyInWind('27012G20');
      await pilot.sees(wind.forPurpose('take-off'));
      await pilot.tap(wind.use('28'));
      await pilot.sees(wind.inUse('28'));
    });

    test('a report that is pasted is answered', async ({ tablet }) => {
      const pilot = await tablet.start();
      await pilot.beginSortie();
      await pilot.openKeypad();
      await pilot.window.type(METAR);
      await pilot.window.control('a');
      await pilot.window.control('x');
      await pilot.until(
        'an empty entry',
        () => document.querySelector('textarea')?.value === '' || null,
      );
      await pilot.window.control('v');
      await pilot.until(
        'the report',
        (report) => document.querySelector('textarea')?.value === report || null,
        METAR,
      );
      await pilot.find(wind.use('28'));
    });

    test('only a deliberate tap ticks a step', { timeout: 180_000 }, async ({ tablet }) => {
      const pilot = await tablet.start();
      await pilot.toSteps();
      while ((await pilot.find(DONE)).text.includes(steps.holdTheKey)) await pilot.tick();
      await pilot.measureFingers();
      for (const how of [
        { ms: 0 },
        { ms: MOST_MS + 100 },
        { ms: TAP_MS, slidePx: 24 },
        { ms: TAP_MS },
      ]) {
        const before = await pilot.due();
        await pilot.touchDone(how);
        // A slow machine may make another tap of it: the rule is about the tap that was made.
        const { lastedMs, movedPx } = await pilot.felt();
        const refusal =
          movedPx >= MOST_PX
            ? 'moved'
            : lastedMs < LEAST_MS
              ? 'too-short'
              : lastedMs > MOST_MS
                ? 'too-long'
                : null;
        if (refusal === null) {
          expect(await pilot.dueAfter(before), JSON.stringify(how)).not.toBe(before);
          continue;
        }
        await pilot.find(steps.refused[refusal]);
        expect(await pilot.due(), JSON.stringify(how)).toBe(before);
      }
    });

    test('a critical step wants the key held', async ({ tablet }) => {
      const pilot = await tablet.start(PHONE);
      await pilot.toSteps();
      const before = await pilot.due();
      await pilot.touchDone({ ms: TAP_MS });
      await pilot.find(steps.refused.hold);
      expect(await pilot.due()).toBe(before);
      await pilot.touchDone({ ms: HELD_MS });
      await pilot.dueAfter(before);
    });

    test('no place scrolls the page, with a wind answered and a step due', async ({ tablet }) => {
      const pilot = await tablet.start(PHONE);
      await pilot.toSteps();
      for (const size of [PHONE, TABLET]) {
        await pilot.window.resize(size);
        for (const place of PLACES) {
          await pilot.openPlace(place);
          const at = `${place}, ${size.width} x ${size.height}`;
          expect(await pilot.settlesOn(overflow), at).toEqual({ downPx: 0, acrossPx: 0 });
        }
      }
    });

    test('every sheet shows its content, within the page', async ({ tablet }) => {
      const pilot = await tablet.start(PHONE);
      const found: string[] = [];
      const look = async (name: string, sizes = [PHONE, TABLET]) => {
        for (const size of sizes) {
          await pilot.window.resize(size);
          for (const fault of await pilot.settlesOn(faultsOfSheet)) {
            found.push(`${name}, ${size.width} x ${size.height}: ${fault}`);
          }
        }
      };
      const lookAt = async (name: string, ...labels: readonly Label[]) => {
        for (const label of labels) await pilot.tap(label);
        await look(name);
        await pilot.closeSheets();
      };
      await pilot.seesSheet();
      await look('caution');
      expect(found).toEqual([]);
      await pilot.toSteps(METAR);
      await pilot.openPlace('wind');
      await lookAt('group by group', meaning.groupByGroup);
      await lookAt('why', { says: wind.ask });
      await lookAt('a runway', { says: detail.openEnd('28') });
      await lookAt('wrong', { says: notices.openLists });
      for (const [name, ...labels] of [
        ['load', sortie.openLoad],
        ['library', rooms.tabs.library],
        ['share', rooms.tabs.library, today(AIRCRAFT), ending(library.doesTo.share(AIRCRAFT))],
        ['print', rooms.tabs.library, today(USUAL), ending(library.doesTo.print(USUAL))],
        ['own procedure', rooms.tabs.library, today(USUAL), ending(library.doesTo.edit(USUAL))],
        ['a field drawn', rooms.tabs.library, library.drawField],
        ['device', rooms.tabs.device],
        ['keys', rooms.tabs.device, voice.openKeys],
        ['about', rooms.tabs.about],
        ['sortie'],
      ] as const) {
        await lookAt(name, { says: frame.strip.open.sortie }, ...labels);
      }
      await lookAt('clock', { says: frame.strip.open.clock });
      await pilot.openPlace('taxi');
      await lookAt('route', taxi.route);
      await lookAt('calls', new RegExp(taxi.allCalls));
      await pilot.openPlace('steps');
      await lookAt('cannot', steps.cannot);
      await lookAt('all steps', beginning(`${steps.phase.taxi}, `));
      await pilot.tick();
      await pilot.openPlace('log');
      await lookAt('a logged sortie', new RegExp(`${harrow.name}.*${log.now}`));
      const { link } = await linksTo('', OWN, HASH);
      await tablet.open(link);
      await pilot.find(incoming.add);
      await look('what came');
      expect(found).toEqual([]);
    });

    test('opens without a network after a cold start, and goes on', async ({ tablet }) => {
      const first = await tablet.start();
      await first.beginSortie();
      await first.until('a worker that has stored the app', () =>
        navigator.serviceWorker.ready.then(
          () => navigator.serviceWorker.controller !== null || null,
        ),
      );
      await tablet.close();
      await tablet.host.stop();
      const pilot = await tablet.start();
      await pilot.sees(`${FIELD} ${harrow.name}`);
      await pilot.setWind('27012G20');
      await pilot.tap(wind.use('28'));
      await pilot.openPlace('steps');
      await pilot.tick();
    });

    test('killed, it comes back to the step that was due', async ({ tablet }) => {
      const pilot = await tablet.start(PHONE);
      await pilot.toSteps();
      await pilot.tick();
      const { due } = await pilot.tick();
      // What a kill does before a tick is on the disk is for `npm run bench kills` to find.
      await pilot.until('both ticks in the store', ticksStored, 2);
      await tablet.kill();
      const again = await tablet.start(PHONE, '#/steps');
      // What is kept beside the record, as the caution is, may be written many seconds late.
      const { understood } = frame.caution;
      const { text } = await again.find(new RegExp(`^(${understood}|${steps.goOn})$`));
      if (text === understood) await again.tap(understood);
      await again.tap(steps.goOn);
      expect(await again.due()).toBe(due);
      await again.sees('28');
    });

    test('a field of one’s own is there after a restart', async ({ tablet }) => {
      const { link } = await linksTo('', OWN, HASH);
      const pilot = await tablet.start();
      await pilot.tap(frame.caution.understood);
      await pilot.seesNoSheet();
      await tablet.open(link);
      await pilot.tap(incoming.add);
      await pilot.tap(incoming.close);
      await pilot.seesNoSheet();
      await pilot.tap(AIRCRAFT);
      await pilot.tap(beginning(OWN.code));
      await pilot.sees(`${OWN.code} ${OWN.name}`);
      await tablet.close();
      const again = await tablet.start();
      await again.sees(`${OWN.code} ${OWN.name}`);
      await again.setWind('27012G20');
      await again.tap(wind.use('28'));
      await again.sees(wind.inUse('28'));
    });

    test('speaks German when it is asked to, and after a restart', async ({ tablet }) => {
      const pilot = await tablet.start();
      await pilot.beginSortie();
      await pilot.openDevice();
      await pilot.tap(device.languages.de);
      // The page is loaded anew in that language.
      await pilot.find(german.places.steps);
      await tablet.close();
      const again = await tablet.start();
      await again.find(german.places.steps);
      await again.sees(germanWind.noRanking['no-wind']);
      expect(await again.window.run(() => document.documentElement.lang)).toBe('de');
    });

    test('is dark at night, and after a restart', async ({ tablet }) => {
      const pilot = await tablet.start();
      await pilot.beginSortie();
      expect(await brightness(pilot)).toBeGreaterThan(200);
      await pilot.openDevice();
      await pilot.tap(device.themes.night);
      await pilot.until('night', () => document.documentElement.dataset.theme === 'night' || null);
      expect(await brightness(pilot)).toBeLessThan(20);
      await tablet.close();
      const again = await tablet.start();
      await again.find(frame.places.wind);
      expect(await brightness(again)).toBeLessThan(20);
    });
  });
}

/** Whether so many ticks stand in the store, as another window would read it; null where not. */
async function ticksStored(wanted: number): Promise<true | null> {
  const db = await new Promise<IDBDatabase>((done, failed) => {
    const opening = indexedDB.open('lapstrip');
    opening.onsuccess = () => done(opening.result);
    opening.onerror = () => failed(opening.error);
  });
  const kinds = await new Promise<string[]>((done, failed) => {
    const asked = db.transaction('entries').objectStore('entries').getAll();
    asked.onsuccess = () => done(asked.result.map(({ kind }) => kind));
    asked.onerror = () => failed(asked.error);
  });
  db.close();
  return kinds.filter((kind) => kind === 'done').length >= wanted || null;
}

/** How far the page itself can be scrolled, CSS px. */
function overflow(): { downPx: number; acrossPx: number } {
  const { scrollHeight, scrollWidth } = document.documentElement;
  return {
    downPx: Math.max(0, scrollHeight - innerHeight),
    acrossPx: Math.max(0, scrollWidth - innerWidth),
  };
}

/** What is wrong with how the sheet on top is shown. */
function faultsOfSheet(): string[] {
  const LEAST_PX = 60;
  const SLACK_PX = 1;
  const at = document.elementFromPoint(innerWidth / 2, innerHeight / 2);
  const sheet = at?.closest('dialog');
  if (sheet == null) return ['it does not reach the middle of the page'];
  const faults: string[] = [];
  const { top, right, bottom, left } = sheet.getBoundingClientRect();
  const outside = Math.min(top, left, innerHeight - bottom, innerWidth - right);
  if (outside < -SLACK_PX) faults.push(`it reaches ${-outside} px out of the page`);
  for (const part of [sheet, ...sheet.querySelectorAll('[tabindex="0"]')]) {
    if (part.scrollWidth > part.clientWidth + SLACK_PX) faults.push('it scrolls sideways');
    if (part.clientHeight < Math.min(part.scrollHeight, LEAST_PX)) {
      faults.push(`${part.clientHeight} px are shown of ${part.scrollHeight}`);
    }
  }
  return faults;
}

/** How bright the page's paper is, from 0 to 255. */
const brightness = (pilot: Pilot): Promise<number> =>
  pilot.window.run(() => {
    const colour = getComputedStyle(document.documentElement).backgroundColor;
    const channels =
      colour
        .match(/[\d.]+/g)
        ?.slice(0, 3)
        .map(Number) ?? [];
    return Math.max(...channels);
  });

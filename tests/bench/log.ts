/** The log: folding a long record, and opening one of five thousand sorties. */

import type { Page } from 'playwright-core';
import { type Entry, foldSortie } from '../../src/core';
import { logOf } from '../../src/core/sortie/log';
import { beginSortie, setWind } from '../browser/pilot';
import { withFreshApp } from './firstAnswer';
import { firstLineOf, quantile, type Row, type Rows } from './row';

const ENTRIES = 10_000;
const SORTIES = 5000;
const ENTRIES_OF_ONE = 24;
const BEGAN_MS = Date.UTC(1987, 3, 5, 18, 50);

/** A sortie of ten thousand entries: ticks, undone ticks, winds, and the odd note. */
function longSortie(): readonly Entry[] {
  const at = (seq: number) => ({ wallMs: BEGAN_MS + seq * 1000, sortieMs: BEGAN_MS + seq * 1000 });
  const stamped = (seq: number) => ({ id: `id-${seq}`, seq, sortie: 'sortie', at: at(seq) });
  const open: Entry = { ...stamped(0), kind: 'open', run: 'run', procedure: 'p', list: null };
  return [
    open,
    ...Array.from({ length: ENTRIES - 1 }, (_, index): Entry => {
      const seq = index + 1;
      if (seq % 10 === 0) return { ...stamped(seq), kind: 'undo', target: `id-${seq - 1}` };
      if (seq % 33 === 0) return { ...stamped(seq), kind: 'wind', text: '27012KT', north: 'true' };
      if (seq % 97 === 0) return { ...stamped(seq), kind: 'noted', text: 'gusts' };
      return {
        ...stamped(seq),
        kind: 'done',
        run: 'run',
        pass: 1,
        step: `step-${seq % 80}`,
        saw: { runway: '28' },
      };
    }),
  ];
}

function folding(): readonly Row[] {
  const entries = longSortie();
  const timed = (work: () => unknown) => {
    const start = performance.now();
    work();
    return performance.now() - start;
  };
  const folds = Array.from({ length: 40 }, () => timed(() => foldSortie(entries)));
  const logs = Array.from({ length: 20 }, () => timed(() => logOf(entries, () => null)));
  return [
    {
      what: 'folding a sortie of 10 000 entries, median',
      measured: quantile(folds, 0.5),
      unit: 'ms',
      budget: { atMost: 50 },
      note: `95th percentile ${quantile(folds, 0.95)?.toFixed(1)} ms`,
    },
    {
      what: 'the same for the log, median',
      measured: quantile(logs, 0.5),
      unit: 'ms',
      budget: { atMost: 120 },
    },
  ];
}

/** Fills the store with sorties as if flown on this device, one a day. */
const fill = (page: Page) =>
  page.evaluate(
    async ([sorties, each]) => {
      const asked = <T>(request: IDBRequest<T>) =>
        new Promise<T>((resolve, reject) => {
          request.onsuccess = () => resolve(request.result);
          request.onerror = () => reject(request.error);
        });
      const db = await asked(indexedDB.open('lapstrip'));
      // Number this window's entries after the others, so that its sortie stays current.
      const own = db.transaction('entries', 'readwrite').objectStore('entries');
      for (const entry of await asked(own.getAll()))
        await asked(own.put({ ...entry, seq: entry.seq + sorties * each }));
      const first = Date.UTC(1970, 0, 1);
      for (let from = 0; from < sorties; from += 500) {
        const write = db.transaction('entries', 'readwrite', { durability: 'relaxed' });
        for (let sortie = from; sortie < from + 500; sortie++) {
          const name = `sortie-${String(sortie).padStart(5, '0')}`;
          for (let entry = 0; entry < each; entry++) {
            const ms = first + sortie * 86_400_000 + entry * 60_000;
            const happened =
              entry === 0
                ? { kind: 'open', run: name, procedure: 'p', list: null }
                : entry === 8
                  ? { kind: 'stamp', what: 'airborne' }
                  : entry === 20
                    ? { kind: 'stamp', what: 'landed' }
                    : { kind: 'done', run: name, pass: 1, step: `step-${entry}`, saw: {} };
            write.objectStore('entries').put({
              ...happened,
              id: `${name}-${entry}`,
              seq: sortie * each + entry,
              sortie: name,
              at: { wallMs: ms, sortieMs: ms },
            });
          }
        }
        await new Promise((resolve) => {
          write.oncomplete = resolve;
        });
      }
      db.close();
    },
    [SORTIES, ENTRIES_OF_ONE] as const,
  );

/** From tapping Log to its first line on screen, ms. */
async function openLog(page: Page): Promise<number> {
  return page.evaluate(async () => {
    const log = [...document.querySelectorAll('nav button')].find(
      ({ textContent }) => textContent === 'Log',
    );
    const start = performance.now();
    (log as HTMLElement).click();
    while (document.querySelector('[aria-label="All sorties together"] ~ ol button') === null) {
      await new Promise((resolve) => requestAnimationFrame(resolve));
    }
    return performance.now() - start;
  });
}

const totalsSay = (page: Page, sorties: string) =>
  page
    .getByLabel('All sorties together')
    .filter({ hasText: sorties })
    .waitFor({ timeout: 120_000 });

async function opening(): Promise<readonly Row[]> {
  const about = {
    first: {
      what: `opening a log of ${SORTIES} sorties, to its first line`,
      unit: 'ms',
      budget: { atMost: 500 },
    },
    start: {
      what: 'the same: what it adds to a start of the app',
      unit: 'ms',
      budget: { atMost: 250 },
    },
  };
  try {
    return await withFreshApp(async (page) => {
      const started = () =>
        page.evaluate(
          () =>
            new Promise<number>((resolve) => {
              new PerformanceObserver((list) => {
                const [paint] = list.getEntriesByName('first-contentful-paint');
                if (paint !== undefined) resolve(paint.startTime);
              }).observe({ type: 'paint', buffered: true });
            }),
        );
      await beginSortie(page);
      await setWind(page, '27012KT');
      await page.reload();
      await page.getByRole('navigation', { name: 'Places' }).waitFor();
      const alone = await started();
      await fill(page);
      // Once to derive the lines; after that they are stored.
      await page.reload();
      await page.waitForTimeout(3000);
      const began = performance.now();
      await openLog(page);
      await totalsSay(page, '5 000');
      const worked = performance.now() - began;
      const samples: number[] = [];
      const starts: number[] = [];
      for (let round = 0; round < 5; round++) {
        await page.goto(`${page.url().split('#')[0]}#/wind`);
        await page.reload();
        await page.getByRole('navigation', { name: 'Places' }).waitFor();
        starts.push(await started());
        await page.waitForTimeout(3000);
        samples.push(await openLog(page));
        await totalsSay(page, '5 000');
      }
      return [
        {
          ...about.first,
          measured: quantile(samples, 0.5),
          note: `${SORTIES * ENTRIES_OF_ONE} entries; the very first time all lines take ${(worked / 1000).toFixed(1)} s, and the newest stand there at once`,
        },
        { ...about.start, measured: (quantile(starts, 0.5) ?? Number.NaN) - alone },
      ];
    });
  } catch (error) {
    const note = firstLineOf(error);
    return Object.values(about).map((row) => ({ ...row, measured: null, note }));
  }
}

export const rows: Rows = async () => [...folding(), ...(await opening())];

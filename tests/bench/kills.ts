/**
 * What a flat battery costs: kills browsers within 400 ms of painting a tick, then restarts them on
 * the same profile. It takes over half an hour, so it runs only on request: `npm run bench kills`.
 * LAPSTRIP_KILLS sets the kills per engine (default 100), LAPSTRIP_ENGINES the engines (default
 * all).
 */

import { words as frame } from '../../src/shell/words.en';
import { words as steps } from '../../src/views/steps/words.en';
import type { Host } from '../browser/server';
import { ENGINES, type EngineName } from '../engines/found';
import { Tablet } from '../engines/harness';
import { DONE, HELD_MS, PHONE, type Pilot, TAP_MS } from '../engines/pilot';
import type { Row, Rows } from './row';

const KILLS = Number(process.env.LAPSTRIP_KILLS ?? 100);
const WANTED = process.env.LAPSTRIP_ENGINES?.split(',');

/** The longest time from the painted tick to the kill, ms. */
const LATEST_MS = 400;

/** Kills per sortie, which has few more steps before the runway. */
const KILLS_OF_ONE = 20;

/** The page requests this path, plus the time in ms since 1970, once a tick is painted. */
const PAINTED = 'painted-';

/** Longer than a tap and its painting take, ms. */
const PAINT_MS = 8000;

/** Repeatable pseudo-random numbers, 0 to 1. Numerical Recipes' quick generator. */
function* chance(seed: number): Generator<number, never> {
  for (let state = seed; ; ) {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    yield state / 2 ** 32;
  }
}

/** Has the page tell its host once a frame with another step due is painted. */
function tellWhenPainted(before: string, path: string): void {
  const { port1, port2 } = new MessageChannel();
  // A message sent in a frame's callback arrives after that frame is painted.
  port1.onmessage = () => void fetch(path + (performance.timeOrigin + performance.now()));
  const look = () => {
    const due = document.querySelector('strong')?.parentElement?.textContent;
    const read = due?.replace(/\s+/g, ' ').trim();
    if (read !== undefined && read !== before) port2.postMessage(null);
    else requestAnimationFrame(look);
  };
  requestAnimationFrame(look);
}

/** Stored ticks in order, whatever stores there are: run, pass and step of each. */
async function storedTicks(): Promise<string[]> {
  const db = await new Promise<IDBDatabase>((resolve, reject) => {
    const opening = indexedDB.open('lapstrip');
    opening.onsuccess = () => resolve(opening.result);
    opening.onerror = () => reject(opening.error);
  });
  const ticks: { seq: number; tick: string }[] = [];
  const walk = (value: unknown, depth: number) => {
    if (typeof value !== 'object' || value === null || depth > 2) return;
    const { kind, seq, run, pass, step } = value as Record<string, unknown>;
    if (kind === 'done' && typeof seq === 'number')
      ticks.push({ seq, tick: `${run} ${pass} ${step}` });
    else for (const inner of Object.values(value)) walk(inner, depth + 1);
  };
  for (const name of db.objectStoreNames) {
    const all = await new Promise<unknown[]>((resolve, reject) => {
      const reading = db.transaction(name).objectStore(name).getAll();
      reading.onsuccess = () => resolve(reading.result);
      reading.onerror = () => reject(reading.error);
    });
    for (const value of all) walk(value, 0);
  }
  db.close();
  return ticks.sort((a, b) => a.seq - b.seq).map(({ tick }) => tick);
}

interface Count {
  kills: number;
  lost: number;
  doubled: number;
  reordered: number;
  /** Times of all kills, and of those that lost something, ms after the painted tick. */
  readonly killedAtMs: number[];
  readonly lostAtMs: number[];
}

const sleep = (ms: number) => new Promise<void>((resolve) => setTimeout(resolve, ms));

/** When the tick was painted, ms since 1970; null if the host wasn't told in time. */
function paintedOf(host: Host): Promise<number | null> {
  return new Promise((resolve) => {
    const late = setTimeout(() => resolve(null), PAINT_MS);
    host.onAsked = (path) => {
      if (!path.startsWith(PAINTED)) return;
      clearTimeout(late);
      resolve(Number(path.slice(PAINTED.length)));
    };
  });
}

/**
 * Ticks, then kills the browser `afterMs` after the paint, or once told of it; returns the delay,
 * ms.
 */
async function tickAndKill(tablet: Tablet, pilot: Pilot, afterMs: number): Promise<number> {
  const before = await pilot.due();
  for (let attempt = 0; attempt < 5; attempt++) {
    await pilot.window.run(tellWhenPainted, before, PAINTED);
    const hold = (await pilot.find(DONE)).text.includes(steps.holdTheKey);
    const painted = paintedOf(tablet.host);
    // Don't wait for the browser to report the finger lifted.
    const touched = pilot.touchDone({ ms: hold ? HELD_MS : TAP_MS }).catch(() => undefined);
    const paintedAtMs = await painted;
    if (paintedAtMs === null) {
      await touched;
      continue;
    }
    // Hearing of it took some of the time.
    const restMs = paintedAtMs + afterMs - Date.now();
    if (restMs >= 1) await sleep(restMs);
    const killedAtMs = Date.now();
    await tablet.kill();
    await touched;
    return killedAtMs - paintedAtMs;
  }
  throw new Error(`${before} could not be ticked`);
}

/** Whether another step can be ticked, with no moment of the flight due. */
const canTick = (pilot: Pilot): Promise<boolean> =>
  pilot.window.run(
    (pattern) =>
      [...document.querySelectorAll('button')].some(({ textContent }) =>
        new RegExp(pattern).test((textContent ?? '').replace(/\s+/g, ' ').trim()),
      ),
    DONE.source,
  );

/** Returns to the steps after a kill. */
async function comeBack(tablet: Tablet): Promise<Pilot> {
  const pilot = await tablet.start(PHONE, '#/steps');
  // The read caution may not have reached the disk; if so, it shows again.
  const reads = new RegExp(`^${frame.caution.understood}$|^${steps.goOn}$|${DONE.source}`);
  let { text } = await pilot.find(reads);
  if (text === frame.caution.understood) {
    await pilot.tap(text);
    await pilot.seesNoSheet();
    ({ text } = await pilot.find(reads));
  }
  if (text === steps.goOn) await pilot.tap(steps.goOn);
  return pilot;
}

async function flyOne(name: EngineName, count: Count, random: Generator<number, never>) {
  const engine = ENGINES[name]();
  if (engine === null) throw new Error(`${name} is not installed`);
  const tablet = new Tablet(engine);
  try {
    let pilot = await tablet.start(PHONE);
    await pilot.toSteps();
    let known = await pilot.window.run(storedTicks);
    for (let kill = 0; kill < KILLS_OF_ONE && count.kills < KILLS; kill++) {
      if (kill > 0 && !(await canTick(pilot))) return;
      const killedAtMs = await tickAndKill(tablet, pilot, random.next().value * LATEST_MS);
      pilot = await comeBack(tablet);
      const ticks = await pilot.window.run(storedTicks);
      count.kills += 1;
      count.killedAtMs.push(killedAtMs);
      if (ticks.length <= known.length) {
        count.lost += 1;
        count.lostAtMs.push(Math.round(killedAtMs));
      }
      if (ticks.length > known.length + 1 || new Set(ticks).size < ticks.length) count.doubled += 1;
      if (known.some((tick, at) => ticks[at] !== tick)) count.reordered += 1;
      known = ticks;
      const { kills, lost, doubled, reordered } = count;
      const so = `${lost} lost, ${doubled} doubled, ${reordered} reordered`;
      process.stderr.write(`${name}, kill ${kills} after ${Math.round(killedAtMs)} ms: ${so}\n`);
    }
  } finally {
    await tablet.discard();
  }
}

/** Earliest, median and latest kill. */
function spread(killedAtMs: readonly number[]): string {
  const sorted = killedAtMs.map(Math.round).sort((a, b) => a - b);
  const [first, middle, last] = [sorted[0], sorted[sorted.length >> 1], sorted.at(-1)];
  return first === undefined ? '' : ` ${first} to ${last} ms after the paint, half by ${middle} ms`;
}

async function rowsOf(name: EngineName): Promise<readonly Row[]> {
  const count: Count = {
    kills: 0,
    lost: 0,
    doubled: 0,
    reordered: 0,
    killedAtMs: [],
    lostAtMs: [],
  };
  let trouble = '';
  try {
    const random = chance(28);
    while (count.kills < KILLS) await flyOne(name, count, random);
  } catch (error) {
    trouble = error instanceof Error ? (error.message.split('\n')[0] ?? '') : String(error);
  }
  const told = [
    `${count.kills} kills${spread(count.killedAtMs)}`,
    count.lostAtMs.length > 0 ? `lost by kills after ${count.lostAtMs.join(', ')} ms` : '',
    trouble,
  ].filter(Boolean);
  return (['lost', 'doubled', 'reordered'] as const).map((what) => ({
    what: `${name}, killed within ${LATEST_MS} ms of a painted tick: ticks ${what}`,
    measured: count.kills < KILLS ? null : count[what],
    unit: '',
    budget: { atMost: 0 },
    note: what === 'lost' || trouble ? told.join('; ') : (told[0] ?? ''),
  }));
}

export const rows: Rows = async () => {
  const names = Object.keys(ENGINES) as EngineName[];
  const unknown = WANTED?.find((wanted) => !names.some((name) => name === wanted));
  if (unknown !== undefined) throw new Error(`no engine is called ${unknown}: ${names.join(', ')}`);
  const all: Row[] = [];
  for (const name of names) {
    if (WANTED === undefined || WANTED.includes(name)) all.push(...(await rowsOf(name)));
  }
  return all;
};

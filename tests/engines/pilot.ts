/** What a pilot does in any engine, found by what stands on the screen and never by how it is drawn. */

import { words as rooms } from '../../src/shell/roomWords.en';
import { words as frame } from '../../src/shell/words.en';
import { words as steps } from '../../src/views/steps/words.en';
import { words as wind } from '../../src/views/wind/words.en';
import type { Plain, Point, Running, Size, Touch } from './engine';

/** Longer than anything takes on a machine with much else to do; what fails is waited for in vain. */
const PATIENCE_MS = 20_000;

/**
 * The time a finger stays on a key, on the key that ticks, and on one that is to be held, ms. A busy
 * machine makes any of them longer, and a long touch is another gesture than a tap.
 */
const TOUCH_MS = 30;
export const TAP_MS = 120;
export const HELD_MS = 900;

/** After a step has changed it takes no tap for half a second. */
const SETTLED_MS = 600;

/** The aircraft and the field that are flown with; both invented. */
export const AIRCRAFT = 'Ondrell Sleet 3';
export const FIELD = 'XHAR';

/** The sizes the core set looks at: a phone, and a tablet on its side. */
export const PHONE: Size = { width: 390, height: 844 };
export const TABLET: Size = { width: 1180, height: 820 };

/** What names a control: its words, or what is said of it to a reader. */
export type Label = string | RegExp | { readonly says: string };

/** What a page says so many times, so long apart, stands. */
const SAME_TIMES = 3;
const SAME_MS = 50;

/** Of a page where something was waited for in vain, so many characters are told. */
const MOST_TOLD = 600;

const sleep = (ms: number) => new Promise<void>((resolve) => setTimeout(resolve, ms));

const spelt = (text: string) => text.replace(/[.*+?^${}()|[\]\\]/g, '\\$&');

/** Words that stand at the end of a label. */
export const ending = (words: string) => new RegExp(`${spelt(words)}$`);

/** Words that stand at the beginning of a label. */
export const beginning = (words: string) => new RegExp(`^${spelt(words)}`);

/** The key that ticks the due step, whatever kind of step it is. */
const ticking = ({
  done,
  said,
  seen,
  holdTheKey,
}: Pick<typeof steps, 'done' | 'said' | 'seen' | 'holdTheKey'>) =>
  new RegExp(`^(${[done, said, seen].map(spelt).join('|')}) ?(${spelt(holdTheKey)})?$`);

/** The key that ticks the due step. */
export const DONE = ticking(steps);

/** Middle, size and words of a control that a finger reaches now; null where there is none. */
async function findControl(
  by: 'words' | 'pattern' | 'says',
  wanted: string,
): Promise<{ x: number; y: number; text: string } | null> {
  const plain = (text: string | null) => (text ?? '').replace(/\s+/g, ' ').trim();
  const controls = document.querySelectorAll('button, a[href], input, textarea, summary');
  for (const control of controls) {
    const name = plain(control.getAttribute('aria-label') ?? control.textContent);
    const fits =
      by === 'says'
        ? control.getAttribute('aria-description') === wanted
        : by === 'pattern'
          ? new RegExp(wanted).test(name)
          : name === wanted;
    if (!fits || !control.checkVisibility({ visibilityProperty: true })) continue;
    control.scrollIntoView({ block: 'nearest', inline: 'nearest', behavior: 'instant' });
    const seen = control.getBoundingClientRect();
    await new Promise((next) => setTimeout(next, 20));
    const { x, y, width, height } = control.getBoundingClientRect();
    // What is still moving would be missed.
    if (x !== seen.x || y !== seen.y) return null;
    const middle = { x: x + width / 2, y: y + height / 2 };
    const hit = document.elementFromPoint(middle.x, middle.y);
    if (hit !== null && control.contains(hit))
      return { ...middle, text: plain(control.textContent) };
  }
  return null;
}

/** What a page knows of a finger that is on its way; nothing of one that may press anything. */
interface Aimed {
  lapstripAim?: { readonly label: string; met: boolean | null } | null;
}

/**
 * Sees to it that the next press is a press on a control with this label, or on nothing: what a busy
 * machine has moved under the finger in the meantime does not hear of it.
 */
function aim(label: string): void {
  const page = window as Aimed;
  const first = page.lapstripAim === undefined;
  page.lapstripAim = { label, met: null };
  if (!first) return;
  const plain = (text: string | null) => (text ?? '').replace(/\s+/g, ' ').trim();
  const judge = (event: Event) => {
    const aimed = page.lapstripAim;
    if (!aimed || !(event.target instanceof Element)) return;
    const control = event.target.closest('button, a[href], input, textarea, summary');
    aimed.met ??= control !== null && plain(control.textContent) === aimed.label;
    if (aimed.met) return;
    event.preventDefault();
    event.stopImmediatePropagation();
  };
  for (const type of ['pointerdown', 'mousedown', 'touchstart', 'pointerup', 'mouseup', 'click'])
    addEventListener(type, judge, { capture: true, passive: false });
}

/** Whether the finger met something else, or nothing. From here on the next may press anything. */
function missed(): boolean {
  const page = window as Aimed;
  // A page loaded anew by the press knows of no finger: it was met.
  const { met } = page.lapstripAim ?? { met: true };
  if (page.lapstripAim) page.lapstripAim = null;
  return met !== true;
}

/** What stands in the due step: its item and its response. */
const findDue = () =>
  document.querySelector('strong')?.parentElement?.textContent?.replace(/\s+/g, ' ').trim() ?? null;

/** How the page saw the last finger. */
export interface Felt {
  readonly lastedMs: number;
  readonly movedPx: number;
}

/** A hand on one window of one browser. */
export class Pilot {
  readonly window: Running;

  constructor(window: Running) {
    this.window = window;
  }

  /** Waits until what is asked of the page gives something else than null, and gives that. */
  async until<Args extends readonly Plain[], Result>(
    meaning: string,
    ask: (...args: Args) => Result | null,
    ...args: Args
  ): Promise<NonNullable<Awaited<Result>>> {
    const end = performance.now() + PATIENCE_MS;
    for (;;) {
      let trouble: unknown;
      try {
        const found = await this.window.run(ask, ...args);
        if (found !== null && found !== undefined) return found as NonNullable<Awaited<Result>>;
      } catch (error) {
        // A page that is just being loaded anew answers nothing.
        trouble = error;
      }
      if (performance.now() > end) {
        const page = await this.window
          .run(() => (document.body.textContent ?? '').replace(/\s+/g, ' '))
          .catch(() => 'no page');
        throw new Error(`waited in vain for ${meaning}; there is: ${page.slice(0, MOST_TOLD)}`, {
          cause: trouble,
        });
      }
      await sleep(40);
    }
  }

  /** Waits for a control and gives where it is and what stands on it. */
  find(label: Label): Promise<Point & { readonly text: string }> {
    const [by, wanted] =
      typeof label === 'string'
        ? (['words', label] as const)
        : label instanceof RegExp
          ? (['pattern', label.source] as const)
          : (['says', label.says] as const);
    return this.until(`a control: ${wanted}`, findControl, by, wanted);
  }

  /** Touches a control as soon as a finger reaches it, and again where it was missed. */
  async tap(label: Label, how: Touch = { ms: TOUCH_MS }): Promise<void> {
    const end = performance.now() + PATIENCE_MS;
    for (;;) {
      const control = await this.find(label);
      await this.window.run(aim, control.text);
      await this.window.touch(control, how);
      // A page that is gone by now was met.
      if (!(await this.window.run(missed).catch(() => false))) return;
      if (performance.now() > end) throw new Error(`missed again and again: ${control.text}`);
    }
  }

  /** Waits until a text stands on the page. */
  async sees(text: string): Promise<void> {
    await this.until(
      `"${text}"`,
      (wanted) => (document.body.textContent ?? '').replace(/\s+/g, ' ').includes(wanted) || null,
      text.replace(/\s+/g, ' '),
    );
  }

  /** Waits until a sheet is open. */
  async seesSheet(): Promise<void> {
    await this.until('a sheet', () => document.querySelector('dialog[open]') !== null || null);
  }

  /** Closes the sheets that are open, one after the other. */
  async closeSheets(): Promise<void> {
    await this.window.run(async () => {
      for (let sheet = document.querySelector('dialog[open]'); sheet !== null; ) {
        sheet = [...document.querySelectorAll('dialog[open]')].at(-1) ?? null;
        sheet?.dispatchEvent(new Event('cancel', { cancelable: true }));
        await new Promise((next) => setTimeout(next, 20));
      }
    });
  }

  /** Asks the page until it says the same for a while, and gives that: what it shows may still be coming. */
  async settlesOn<Args extends readonly Plain[], Result>(
    ask: (...args: Args) => Result,
    ...args: Args
  ): Promise<Awaited<Result>> {
    const end = performance.now() + PATIENCE_MS;
    let [said, times] = ['', 0];
    for (;;) {
      const now = await this.window.run(ask, ...args);
      const text = JSON.stringify(now);
      times = text === said ? times + 1 : 1;
      said = text;
      if (times === SAME_TIMES || performance.now() > end) return now;
      await sleep(SAME_MS);
    }
  }

  /** Waits until keys stay where they are: a press on one that moves meets it and is no click. */
  async keysRest(keys: string): Promise<void> {
    await this.settlesOn(
      (wanted) =>
        [...document.querySelectorAll(wanted)].map((key) => {
          const { x, y } = key.getBoundingClientRect();
          return [x, y];
        }),
      keys,
    );
  }

  /** Waits until no sheet is open. */
  async seesNoSheet(): Promise<void> {
    await this.until('no sheet', () => document.querySelector('dialog[open]') === null || null);
  }

  /** Opens one of the five places. */
  async openPlace(place: keyof typeof frame.places): Promise<void> {
    await this.tap(frame.places[place]);
    await this.until(`the place ${place}`, (name) => location.hash === `#/${name}` || null, place);
  }

  /** Opens Device by the strip, and waits until nothing that comes later moves its keys any more. */
  async openDevice(): Promise<void> {
    await this.tap({ says: frame.strip.open.sortie });
    await this.seesSheet();
    await this.tap(rooms.tabs.device);
    await this.keysRest('dialog[open] button');
  }

  /** From the first start to the entry of a wind. */
  async beginSortie(field = FIELD): Promise<void> {
    await this.tap(frame.caution.understood);
    await this.seesNoSheet();
    await this.tap(AIRCRAFT);
    await this.tap(beginning(field));
    await this.sees(wind.noRanking['no-wind']);
  }

  /** Enters a wind on the keypad, key by key, and sets it. */
  async keyInWind(text: string): Promise<void> {
    await this.openKeypad();
    for (const letter of text) await this.tap(wind.pad.spoken[letter as 'G'] ?? letter);
    await this.#takesEntry(text);
  }

  /** Enters a wind or a report at the keyboard and sets it. */
  async setWind(text: string): Promise<void> {
    await this.openKeypad();
    await this.window.type(text);
    await this.#takesEntry(text);
  }

  async #takesEntry(text: string): Promise<void> {
    await this.until(
      'the wind that was typed',
      (typed) => document.querySelector('textarea')?.value === typed || null,
      text,
    );
    await this.tap(wind.set);
    // The keypad closes, and the answer takes its place; what comes after it moves its keys.
    await this.until(
      'the keypad to close',
      (clear) =>
        [...document.querySelectorAll('button')].every((key) => key.textContent !== clear) || null,
      wind.pad.clear,
    );
    await this.keysRest('main button');
  }

  /** Opens the keypad by a touch on the entry of the wind, which then has the keyboard. */
  async openKeypad(): Promise<void> {
    await this.tap(wind.entry);
    await this.find(wind.pad.clear);
  }

  /** From the first start to the first step, with runway 28 in use in a wind that is good for it. */
  async toSteps(report = '27012G20'): Promise<void> {
    await this.beginSortie();
    await this.setWind(report);
    await this.tap(wind.use('28'));
    await this.sees(wind.inUse('28'));
    await this.openPlace('steps');
    await this.find(DONE);
  }

  /** The step that is due. */
  due(): Promise<string> {
    return this.until('a step that is due', findDue);
  }

  /** Waits until another step is due, and says which. */
  dueAfter(before: string): Promise<string> {
    return this.until(
      `another step than ${before}`,
      (known) => {
        const due = document.querySelector('strong')?.parentElement?.textContent;
        const read = due?.replace(/\s+/g, ' ').trim();
        return read === undefined || read === known ? null : read;
      },
      before,
    );
  }

  /** Touches the key that ticks, once it takes taps. */
  async touchDone(how: Touch): Promise<void> {
    await this.find(DONE);
    await sleep(SETTLED_MS);
    await this.window.touch(await this.find(DONE), how);
  }

  /** Ticks the due step, held where it asks for it; again where a slow machine made a poor tap of it. */
  async tick(): Promise<{ readonly ticked: string; readonly due: string }> {
    const ticked = await this.due();
    for (let attempt = 0; attempt < 3; attempt++) {
      const { text } = await this.find(DONE);
      await this.touchDone({ ms: text.includes(steps.holdTheKey) ? HELD_MS : TAP_MS });
      const due = await this.dueAfter(ticked).catch(() => null);
      if (due !== null) return { ticked, due };
    }
    throw new Error(`${ticked} could not be ticked`);
  }

  /** Lets the page measure every finger, by the clock that it judges taps with. */
  async measureFingers(): Promise<void> {
    await this.window.run(() => {
      let down = { ms: 0, x: 0 };
      addEventListener(
        'pointerdown',
        ({ clientX }) => {
          down = { ms: performance.now(), x: clientX };
          delete document.documentElement.dataset.felt;
        },
        true,
      );
      addEventListener(
        'pointerup',
        ({ clientX }) => {
          const felt = { lastedMs: performance.now() - down.ms, movedPx: clientX - down.x };
          document.documentElement.dataset.felt = JSON.stringify(felt);
        },
        true,
      );
    });
  }

  /** The last finger, once it has left. */
  async felt(): Promise<Felt> {
    const felt = await this.until(
      'a finger that left',
      () => document.documentElement.dataset.felt ?? null,
    );
    return JSON.parse(felt) as Felt;
  }
}

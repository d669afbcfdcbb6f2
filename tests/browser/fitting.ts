/** Whether what a page shows can be read and touched on the screen it is on. */

import type { Page } from 'playwright-core';
import { drawn } from './frames';

/** A control of a page: its name, and how large a target it is for a finger, CSS px. */
export interface Control {
  readonly name: string;
  /** Where it is: in a dialog, beside the open place, or in the page. */
  readonly on: 'dialog' | 'beside' | 'page';
  readonly width: number;
  readonly height: number;
}

/**
 * The screens to check a part of the app on, from the smallest phone up, upright and on its side,
 * CSS px.
 */
export const SIZES = [
  [360, 640],
  [390, 844],
  [640, 360],
  [820, 1180],
  [1180, 820],
] as const;

/** The screens to check with letters twice as large, CSS px: tablets both ways, and a phone. */
export const ENLARGED_SIZES = [
  [820, 1180],
  [1180, 820],
  [390, 844],
] as const;

/** The browser's default text size, px, and twice that. */
const USUAL_PX = 16;
const FIXED_SHARE = 13 / 16;

/** Sets the browser's text size, as its settings do: 1 is normal, 2 twice as large. */
export async function enlargeText(page: Page, times: number): Promise<void> {
  const session = await page.context().newCDPSession(page);
  const standard = USUAL_PX * times;
  const fontSizes = { standard, fixed: standard * FIXED_SHARE };
  // It lasts as long as the session.
  await session.send('Page.setFontSizes', { fontSizes });
}

/**
 * Layout passes after a resize: for the size, for what it changes, and for letters that are
 * measured.
 */
const LAID_OUT_FRAMES = 3;

/** Resizes the screen, CSS px. */
export async function resize(
  page: Page,
  size: { readonly width: number; readonly height: number },
): Promise<void> {
  await page.setViewportSize(size);
  await drawn(page, LAID_OUT_FRAMES);
}

/**
 * Texts that don't fit: wider than the page, clipped by an ancestor, or overflowing their control.
 * Vertical scrolling is fine; nothing may scroll sideways.
 */
export function misfits(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    const found: string[] = [];
    const SLACK_PX = 1;
    const isClip = (value: string) => value !== 'visible';
    if (document.documentElement.scrollWidth > innerWidth) found.push('the page is wider');
    const modal = [...document.querySelectorAll('dialog[open]')].at(-1);
    const texts = document.createTreeWalker(modal ?? document.body, NodeFilter.SHOW_TEXT);
    for (let node = texts.nextNode(); node !== null; node = texts.nextNode()) {
      const words = (node.textContent ?? '').trim();
      const parent = node.parentElement;
      if (words === '' || parent === null || parent.closest('.spoken, script, noscript')) continue;
      if (!parent.checkVisibility({ visibilityProperty: true })) continue;
      // The mirror behind the entry only lends it its height.
      if (getComputedStyle(parent).color === 'rgba(0, 0, 0, 0)') continue;
      const range = document.createRange();
      range.selectNodeContents(node);
      const boxes = [...range.getClientRects()].filter(({ width }) => width > 0);
      const left = Math.min(...boxes.map((box) => box.left));
      const right = Math.max(...boxes.map((box) => box.right));
      const top = Math.min(...boxes.map((box) => box.top));
      const bottom = Math.max(...boxes.map((box) => box.bottom));
      if (boxes.length === 0) continue;
      for (let holder: Element | null = parent; holder !== null; holder = holder.parentElement) {
        const style = getComputedStyle(holder);
        const box = holder.getBoundingClientRect();
        const control = holder.matches('button, summary');
        if (control || isClip(style.overflowX) || holder === document.body) {
          if (left < box.left - SLACK_PX || right > box.right + SLACK_PX) {
            found.push(`cut or spilt sideways: "${words.slice(0, 40)}"`);
            break;
          }
        }
        if (control || style.overflowY === 'hidden' || style.overflowY === 'clip') {
          // A line's box is taller than its letters by about a quarter.
          const line = (bottom - top) / 6;
          if (top < box.top - line || bottom > box.bottom + line) {
            found.push(`cut up or down: "${words.slice(0, 40)}"`);
            break;
          }
        }
        // A scrolling ancestor doesn't clip it, and nothing clips a dialog.
        if (/auto|scroll/.test(style.overflowY) || holder.matches('dialog')) break;
      }
    }
    return found;
  });
}

/**
 * Texts that reach sideways out of the block they stand in: the nearest box that is filled or framed
 * all round.
 */
export function spilt(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    const SLACK_PX = 1;
    const isBlock = (part: Element) => {
      const style = getComputedStyle(part);
      const { borderTopWidth, borderRightWidth, borderBottomWidth, borderLeftWidth } = style;
      return (
        !['rgba(0, 0, 0, 0)', 'transparent'].includes(style.backgroundColor) ||
        [borderTopWidth, borderRightWidth, borderBottomWidth, borderLeftWidth].every(
          (width) => width !== '0px',
        )
      );
    };
    const found: string[] = [];
    for (const main of document.querySelectorAll('main')) {
      const texts = document.createTreeWalker(main, NodeFilter.SHOW_TEXT);
      for (let node = texts.nextNode(); node !== null; node = texts.nextNode()) {
        const parent = node.parentElement;
        if ((node.textContent ?? '').trim() === '' || parent?.closest('svg, .spoken')) continue;
        let block = parent;
        while (block !== null && block !== main && !isBlock(block)) block = block.parentElement;
        if (block === null || block === main) continue;
        const box = block.getBoundingClientRect();
        const range = document.createRange();
        range.selectNodeContents(node);
        for (const { left, right, width } of range.getClientRects()) {
          if (width === 0) continue;
          if (left < box.left - SLACK_PX || right > box.right + SLACK_PX) {
            found.push(`out of its block: "${(node.textContent ?? '').trim().slice(0, 40)}"`);
            break;
          }
        }
      }
    }
    return found;
  });
}

/** Which of these texts a place doesn't show, or shows only when it is scrolled. */
export async function unseen(page: Page, texts: readonly (string | RegExp)[]): Promise<string[]> {
  const main = page.getByRole('main');
  const bounds = await main.boundingBox();
  const missing: string[] = [];
  for (const text of texts) {
    const box = await main
      .getByText(text)
      .filter({ visible: true })
      .first()
      .boundingBox({ timeout: 1000 })
      .catch(() => null);
    const isSeen =
      box !== null &&
      bounds !== null &&
      box.y >= bounds.y - 1 &&
      box.y + box.height <= bounds.y + bounds.height + 1;
    if (!isSeen) missing.push(`not seen: ${text}`);
  }
  return missing;
}

/** Every visible control, with the size of its hit area, whatever is drawn of it. */
export function controls(page: Page): Promise<Control[]> {
  return page.evaluate(() => {
    const SELECTOR = 'button, a[href], input, textarea, select, summary';
    const modal = [...document.querySelectorAll('dialog[open]')].at(-1);
    const REACH_PX = 40;
    // No control is thinner than this, so none is stepped over.
    const STRIDE_PX = 20;
    return [...(modal ?? document).querySelectorAll(SELECTOR)]
      .filter((control) => control.checkVisibility({ visibilityProperty: true }))
      .map((control) => {
        control.scrollIntoView({ block: 'center', inline: 'center', behavior: 'instant' });
        const box = control.getBoundingClientRect();
        const x = box.left + box.width / 2;
        const y = box.top + box.height / 2;
        const hits = (atX: number, atY: number) => {
          const target = document.elementFromPoint(atX, atY);
          // A label belongs to its input.
          return (
            target?.closest(SELECTOR) === control || target?.closest('label')?.contains(control)
          );
        };
        const reach = (stepX: number, stepY: number) => {
          const isIn = (far: number) => far <= REACH_PX && hits(x + stepX * far, y + stepY * far);
          let far = 0;
          while (isIn(far + STRIDE_PX)) far += STRIDE_PX;
          let out = far + STRIDE_PX;
          while (out - far > 1) {
            const middle = (far + out) >> 1;
            if (isIn(middle)) far = middle;
            else out = middle;
          }
          return far;
        };
        const name = control.getAttribute('aria-label') ?? control.textContent ?? '';
        const on: 'dialog' | 'beside' | 'page' = control.closest('dialog')
          ? 'dialog'
          : control.closest('aside')
            ? 'beside'
            : 'page';
        return {
          on,
          name: name.replace(/\s+/g, ' ').trim().slice(0, 40),
          width: reach(-1, 0) + reach(1, 0) + 1,
          height: reach(0, -1) + reach(0, 1) + 1,
        };
      });
  });
}

/** Whether any of a part of the page must be scrolled into view. */
export function scrolls(page: Page, within: string): Promise<boolean> {
  return page.evaluate(
    (selector) =>
      [...document.querySelectorAll(`:is(${selector}), :is(${selector}) *`)].some((part) => {
        const { overflowY } = getComputedStyle(part);
        const scrollable = overflowY === 'auto' || overflowY === 'scroll';
        return scrollable && part.scrollHeight > part.clientHeight + 1;
      }),
    within,
  );
}

/**
 * Ways in which the page itself is larger than the window, or moves when one tries to scroll it.
 */
export function pageScroll(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    const root = document.scrollingElement ?? document.documentElement;
    const found: string[] = [];
    if (root.scrollHeight > innerHeight)
      found.push(`page ${root.scrollHeight - innerHeight} px too tall`);
    if (root.scrollWidth > innerWidth)
      found.push(`page ${root.scrollWidth - innerWidth} px too wide`);
    for (const part of [
      root,
      document.body,
      ...document.querySelectorAll('#app, #app > *, main, aside'),
    ]) {
      part.scrollTo({ left: 500, top: 500, behavior: 'instant' });
      const { scrollLeft, scrollTop } = part;
      if (scrollLeft !== 0 || scrollTop !== 0) {
        found.push(`${part.localName} moves by ${scrollLeft}, ${scrollTop} px`);
      }
      part.scrollTo({ left: 0, top: 0, behavior: 'instant' });
    }
    return found;
  });
}

/** What a device covers at each edge of its screen, CSS px. */
export interface Covered {
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
  readonly left: number;
}

/**
 * Covers the edges of the page as a device with rounded corners does, by setting the tokens for it.
 */
export function cover(page: Page, covered: Covered): Promise<void> {
  return page.evaluate((at) => {
    for (const [edge, px] of Object.entries(at)) {
      document.documentElement.style.setProperty(`--safe-${edge}`, `${px}px`);
    }
  }, covered);
}

/** Controls, and the top sheet, that reach under what the device covers. */
export function underCover(page: Page, covered: Covered): Promise<string[]> {
  return page.evaluate(({ top, right, bottom, left }) => {
    const SLACK_PX = 0.5;
    const modal = [...document.querySelectorAll('dialog[open]')].at(-1);
    const parts = [...(modal ?? document).querySelectorAll('button, a[href], input, textarea')];
    // What is scrolled out of its container isn't visible there.
    const scrolled = (part: Element) =>
      part !== modal && modal !== undefined && part.closest('header') === null;
    return [...parts.filter((part) => !scrolled(part)), ...(modal ? [modal] : [])]
      .filter((part) => part.checkVisibility({ visibilityProperty: true }))
      .flatMap((part) => {
        const box = part.getBoundingClientRect();
        const under = [
          box.top < top - SLACK_PX && 'top',
          box.right > innerWidth - right + SLACK_PX && 'right',
          box.bottom > innerHeight - bottom + SLACK_PX && 'bottom',
          box.left < left - SLACK_PX && 'left',
        ].filter(Boolean);
        const name = (part.textContent ?? '').replace(/\s+/g, ' ').trim().slice(0, 30);
        return under.length > 0 ? [`${part.localName} "${name}" is under the ${under}`] : [];
      });
  }, covered);
}

/** What is wrong with the top sheet: without a height of its own, beyond the window, or clipped. */
export function sheetFaults(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    const sheet = [...document.querySelectorAll('dialog[open]')].at(-1);
    const [head, content] = sheet?.firstElementChild?.children ?? [];
    if (sheet === undefined || head === undefined || content === undefined) return ['no sheet'];
    const found: string[] = [];
    const box = sheet.getBoundingClientRect();
    const inner = content.getBoundingClientRect();
    const { scrollWidth, scrollHeight, clientWidth, clientHeight } = content;
    // At least one line of text, in whatever room the padding leaves.
    if (clientHeight < Math.min(scrollHeight, 60))
      found.push(`shows ${clientHeight} px of its text`);
    if (inner.height + head.getBoundingClientRect().height > box.height)
      found.push('cut off below');
    if (box.top < 0 || box.bottom > innerHeight) found.push('higher than the window');
    if (box.left < 0 || box.right > innerWidth) found.push('wider than the window');
    if (scrollWidth > clientWidth)
      found.push(`scrolls sideways by ${scrollWidth - clientWidth} px`);
    if (sheet.scrollHeight > sheet.clientHeight) found.push('its frame scrolls');
    return found;
  });
}

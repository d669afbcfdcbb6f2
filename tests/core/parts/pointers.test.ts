/**
 * What made a click. Safari before 18.2 and Firefox before 129 give clicks as a MouseEvent, which has
 * no `pointerType`: browser-compat-data, api.Element.click_event.type_PointerEvent, from memory.
 */

import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { followsPointer, isByPointer, watchPointers } from '../../../src/parts/key/pointers';

const handlers = new Map<string, (event: object) => void>();
/** Far beyond what other tests' events left behind. */
let nowMs = 1e9;

beforeEach(() => {
  nowMs += 1e6;
  handlers.clear();
  const listen = (name: string, handler: (event: object) => void) => handlers.set(name, handler);
  vi.stubGlobal('addEventListener', listen);
  vi.stubGlobal('document', { addEventListener: listen, visibilityState: 'visible' });
  watchPointers();
});
afterEach(() => vi.unstubAllGlobals());

const pointer = (name: 'pointerdown' | 'pointerup' | 'pointercancel', pointerType = 'touch') =>
  handlers.get(name)?.({ pointerId: 7, isPrimary: true, pointerType, timeStamp: nowMs });

/** A click as browsers give it: with `pointerType`, or without where it is undefined. */
const click = (pointerType?: string, detail = 0) =>
  ({
    timeStamp: nowMs,
    detail,
    ...(pointerType === undefined ? {} : { pointerType }),
  }) as unknown as MouseEvent;

test('a click of a finger, a mouse or a pen is a pointer’s, however late it comes', () => {
  for (const type of ['touch', 'mouse', 'pen']) expect(isByPointer(click(type)), type).toBe(true);
});

test('a click that says it has no pointer is a screen reader’s', () => {
  expect(isByPointer(click(''))).toBe(false);
});

test('a click that says nothing is a screen reader’s where no pointer was seen', () => {
  expect(isByPointer(click(undefined))).toBe(false);
  // Firefox counts what a screen reader presses as one click.
  expect(isByPointer(click(undefined, 1))).toBe(false);
});

test('a click that says nothing is a finger’s just after one was seen, and a reader’s later', () => {
  pointer('pointerdown');
  nowMs += 3000;
  pointer('pointerup');
  // Where the browser waits for a second tap the click is 350 ms late.
  nowMs += 350;
  expect(isByPointer(click(undefined, 1))).toBe(true);
  expect(isByPointer(click(''))).toBe(true);
  nowMs += 1000;
  expect(isByPointer(click(undefined, 1))).toBe(false);
});

test('a cancelled touch counts too: a click may still come of it', () => {
  pointer('pointerdown');
  nowMs += 3000;
  pointer('pointercancel');
  expect(isByPointer(click())).toBe(true);
});

test('a pointer without a type, as a screen reader’s press is given, is none', () => {
  pointer('pointerdown', '');
  pointer('pointerup', '');
  expect(isByPointer(click(undefined, 1))).toBe(false);
  expect(followsPointer(click())).toBe(false);
});

/** Moving a step by its handle: with a finger, a pen or a mouse. */

import { signal } from '@preact/signals';
import { written } from '../../board/writing/procedure';
import { partsOf, type StepId, type StepPlace } from '../../core';
import { moveTo } from './state';

/** The step being dragged, and where it would be dropped; null while none is. */
export const dragged = signal<{ readonly id: StepId; readonly to: StepPlace | null } | null>(null);

/** Within this distance of a scroller's edge, px, it scrolls, by this much a frame. */
const EDGE_PX = 64;
const SCROLL_PX = 10;

/**
 * Where a step would be dropped at a height on the screen: the index counts the other steps only.
 */
function placeAt(root: ParentNode, y: number, id: StepId): StepPlace | null {
  let nearest: HTMLElement | null = null;
  let least = Number.POSITIVE_INFINITY;
  for (const part of root.querySelectorAll<HTMLElement>('[data-part]')) {
    const { top, bottom } = part.getBoundingClientRect();
    const away = Math.max(top - y, y - bottom, 0);
    if (away < least) [nearest, least] = [part, away];
  }
  const document = written.value;
  const part =
    document && partsOf(document).find((one) => one.part === nearest?.dataset.part)?.part;
  if (!part || nearest === null) return null;
  const others = [...nearest.querySelectorAll<HTMLElement>('[data-step]')].filter(
    (row) => row.dataset.step !== id,
  );
  const index = others.filter((row) => {
    const { top, height } = row.getBoundingClientRect();
    return top + height / 2 < y;
  }).length;
  return { part, index };
}

const isSamePlace = (a: StepPlace | null, b: StepPlace | null) =>
  a?.part === b?.part && a?.index === b?.index;

/** The nearest vertically scrolling ancestor. */
function scrolling(from: Element): Element | null {
  for (let at = from.parentElement; at !== null; at = at.parentElement) {
    if (/auto|scroll/.test(getComputedStyle(at).overflowY)) return at;
  }
  return null;
}

/**
 * Starts dragging a step by its handle, until the pointer is released. Escape leaves it where it
 * was.
 */
export function beginDrag(event: PointerEvent, id: StepId): void {
  const handle = event.currentTarget;
  if (!(handle instanceof HTMLElement) || event.button !== 0 || !event.isPrimary) return;
  const page = scrolling(handle);
  const root = page ?? document;
  let y = event.clientY;
  let frame = 0;
  handle.setPointerCapture(event.pointerId);
  dragged.value = { id, to: null };

  const look = () => {
    const to = placeAt(root, y, id);
    if (!isSamePlace(to, dragged.value?.to ?? null)) dragged.value = { id, to };
  };
  const scroll = () => {
    frame = requestAnimationFrame(scroll);
    if (page === null) return;
    const { top, bottom } = page.getBoundingClientRect();
    const by = y < top + EDGE_PX ? -SCROLL_PX : y > bottom - EDGE_PX ? SCROLL_PX : 0;
    if (by === 0) return;
    page.scrollTop += by;
    look();
  };
  const move = (moved: PointerEvent) => {
    y = moved.clientY;
    look();
  };
  const end = (ended: Event) => {
    cancelAnimationFrame(frame);
    handle.removeEventListener('pointermove', move);
    for (const name of ['pointerup', 'pointercancel'] as const)
      handle.removeEventListener(name, end);
    removeEventListener('keydown', cancel, true);
    const to = dragged.value?.to ?? null;
    dragged.value = null;
    if (ended.type === 'pointerup' && to !== null) moveTo(id, to);
  };
  const cancel = (pressed: KeyboardEvent) => {
    if (pressed.key !== 'Escape') return;
    // The sheet stays open.
    pressed.preventDefault();
    pressed.stopPropagation();
    end(pressed);
  };
  handle.addEventListener('pointermove', move);
  for (const name of ['pointerup', 'pointercancel'] as const) handle.addEventListener(name, end);
  addEventListener('keydown', cancel, true);
  frame = requestAnimationFrame(scroll);
}

/**
 * Keyboard keys, including pedals and presenters that pose as keyboards; and media keys, by either
 * route.
 */

import type { Control } from './bindings';

/** Receives what a key did. Returns true if it took the key, which then does nothing else. */
export type TakeKey = (control: Control, kind: 'down' | 'up', ms: number) => boolean;

/** Keys others need: to move through the page, to close what lies over it, and modifiers. */
const NEVER = /^(Tab|Escape|(Shift|Control|Alt|Meta|OS)(Left|Right)?|CapsLock|NumLock|Fn|Dead)$/;

/** Keys that press the focused control. */
const PRESSES = /^(Enter|NumpadEnter|Space)$/;

/** Watches keys until the returned function is called. */
export function watchKeys(take: TakeKey, nowMs: () => number): () => void {
  // Whether the keyboard moves the focus: then Enter and Space belong to the focused control.
  let isWalking = false;
  const taken = new Set<Control>();
  /** Keys that went down outside a text, and so may act when they come up. */
  const offered = new Set<Control>();
  const down = (event: KeyboardEvent) => {
    if (event.key === 'Tab') isWalking = true;
    // Checked first: most keys are letters, and need no name.
    if (taken.size === 0 && isTyping(event)) return;
    const control = controlOf(event);
    if (control === null) return;
    if (event.repeat) {
      // Autorepeat presses nothing again: neither here nor on the focused control.
      if (taken.has(control)) stop(event);
      return;
    }
    taken.delete(control);
    if (isTyping(event) || (isWalking && isPressing(event))) return;
    offered.add(control);
    if (!take(control, 'down', nowMs())) return;
    taken.add(control);
    stop(event);
  };
  const up = (event: KeyboardEvent) => {
    if (offered.size === 0) return;
    const control = controlOf(event);
    if (control === null) return;
    // Typing isn't ours, but a key that went down elsewhere must not stay down.
    if (!offered.delete(control)) return;
    take(control, 'up', nowMs());
    if (taken.delete(control)) stop(event);
  };
  const point = () => {
    isWalking = false;
  };
  addEventListener('keydown', down, true);
  addEventListener('keyup', up, true);
  addEventListener('pointerdown', point, true);
  return () => {
    removeEventListener('keydown', down, true);
    removeEventListener('keyup', up, true);
    removeEventListener('pointerdown', point, true);
  };
}

function stop(event: KeyboardEvent): void {
  event.preventDefault();
  event.stopPropagation();
}

/** The control a key is; null if it can't be one. Some remotes send no code. */
function controlOf({ code, key, ctrlKey, metaKey, altKey }: KeyboardEvent): Control | null {
  const name = code === '' || code === 'Unidentified' ? key : code;
  if (name === '' || name === undefined || name === 'Unidentified') return null;
  return NEVER.test(name) || ctrlKey || metaKey || altKey ? null : `key:${name.slice(0, 40)}`;
}

const NO_TEXT = new Set(['button', 'checkbox', 'file', 'radio', 'range', 'reset', 'submit']);

/** Whether the key goes into a text. */
function isTyping({ target, isComposing }: KeyboardEvent): boolean {
  if (isComposing || target instanceof HTMLTextAreaElement) return true;
  if (target instanceof HTMLInputElement) return !NO_TEXT.has(target.type);
  if (target instanceof HTMLSelectElement) return true;
  return target instanceof HTMLElement && target.isContentEditable;
}

function isPressing({ code, key }: KeyboardEvent): boolean {
  const { activeElement } = document;
  return PRESSES.test(code || key) && activeElement !== null && activeElement !== document.body;
}

const MEDIA = ['play', 'pause', 'nexttrack', 'previoustrack', 'stop'] as const;

/**
 * Watches media keys that the browser intercepts and passes on as Media Session actions, as it does
 * for a page that plays sound. They have no duration: each is one brief press. Returns false where
 * there is no Media Session.
 */
export function watchMedia(take: (control: Control) => void): boolean {
  const { mediaSession } = navigator;
  if (mediaSession === undefined) return false;
  for (const action of MEDIA) {
    try {
      // Whether it is "play" or "pause" is the browser's guess; the key is the same.
      const name = action === 'pause' ? 'play' : action;
      mediaSession.setActionHandler(action, () => take(`media:${name}`));
    } catch {
      // An action this browser doesn't know.
    }
  }
  return true;
}

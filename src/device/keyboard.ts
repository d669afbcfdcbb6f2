/** Keys of a keyboard, and of pedals and presenters, which pass for one; media keys by either way. */

import type { Control } from './bindings';

/** What a key did. True: it was taken, and does nothing else. */
export type TakeKey = (control: Control, kind: 'down' | 'up', ms: number) => boolean;

/** Keys that others need: to walk the page, to leave what lies over it, and to press with another. */
const NEVER = /^(Tab|Escape|(Shift|Control|Alt|Meta|OS)(Left|Right)?|CapsLock|NumLock|Fn|Dead)$/;

/** With these the focused control is pressed. */
const PRESSES = /^(Enter|NumpadEnter|Space)$/;

/** Watches keys until it is told to stop. */
export function watchKeys(take: TakeKey, nowMs: () => number): () => void {
  // Whether the keyboard is what walks the page: then Enter and Space are for what it stands on.
  let isWalking = false;
  const taken = new Set<Control>();
  /** Keys that went down outside a text, and so may act when they come up. */
  const offered = new Set<Control>();
  const down = (event: KeyboardEvent) => {
    if (event.key === 'Tab') isWalking = true;
    // Asked first, since most keys are letters: they need no name.
    if (taken.size === 0 && isTyping(event)) return;
    const control = controlOf(event);
    if (control === null) return;
    if (event.repeat) {
      // Held down, it presses nothing anew: not here, and not what has the focus either.
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
    // What was typed is none of ours; a key that went down elsewhere must not stay down.
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

/** The control that a key is; null for keys that cannot be one. Some remotes send no code. */
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
 * Watches media keys that the browser keeps for itself and hands on as wishes: it does so for a page
 * that plays sound. They come without a length, as one brief press. False where there is no such thing.
 */
export function watchMedia(take: (control: Control) => void): boolean {
  const { mediaSession } = navigator;
  if (mediaSession === undefined) return false;
  for (const action of MEDIA) {
    try {
      // Whether it plays or pauses is the browser's guess, and the same key.
      const name = action === 'pause' ? 'play' : action;
      mediaSession.setActionHandler(action, () => take(`media:${name}`));
    } catch {
      // A wish that this browser does not know.
    }
  }
  return true;
}

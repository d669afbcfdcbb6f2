/**
 * Gamepads, sticks and throttles. Browsers send no events for their buttons, so they are polled
 * once a frame, only while the window is visible and a pad is plugged in.
 */

import { type Signal, signal } from '@preact/signals';
import type { Control } from './bindings';
import { outBy, type PadPart, readPart, UNSEEN } from './padParts';

/** A pad's present state. */
export interface PadNow {
  readonly name: string;
  /** Which one, of several of one model. */
  readonly copy: number;
  readonly buttons: readonly number[];
  readonly axes: readonly number[];
}

/**
 * Why there are no pads. `missing`: the browser doesn't support them. `refused`: it blocks them on
 * this page.
 */
export type PadAccess = 'there' | 'missing' | 'refused';

/** Whether pads can be read here. */
export const padAccess = signal<PadAccess>('getGamepads' in navigator ? 'there' : 'missing');

/** The pads that are plugged in and have been pressed once, in their present state. */
export const pads: Signal<readonly PadNow[]> = signal([]);

/** What a control did. `lost`: the pad is gone. */
export type Change = (control: Control, kind: 'down' | 'up' | 'lost', ms: number) => void;

/** Watches pads until the returned function is called; reports every change of a button or axis. */
export function watchPads(change: Change, nowMs: () => number): () => void {
  const parts = new Map<Control, PadPart>();
  let frame = 0;
  let shown = '';

  const lose = (isLost: (control: Control) => boolean) => {
    for (const control of [...parts.keys()].filter(isLost)) {
      parts.delete(control);
      change(control, 'lost', nowMs());
    }
  };
  const read = (control: Control, value: number) => {
    const before = parts.get(control) ?? UNSEEN;
    const now = readPart(before, value, nowMs());
    parts.set(control, now);
    if (now.down !== before.down) change(control, now.down ? 'down' : 'up', nowMs());
  };
  const poll = () => {
    const found = padsNow();
    const isThere = new Set(found.map(suffix));
    lose((control) => !isThere.has(control.slice(control.indexOf(':', 4))));
    for (const pad of found) {
      pad.buttons.forEach((value, index) => {
        read(`pad:b${index}${suffix(pad)}`, value);
      });
      pad.axes.forEach((value, index) => {
        read(`pad:a${index}+${suffix(pad)}`, outBy(value, '+'));
        read(`pad:a${index}-${suffix(pad)}`, outBy(value, '-'));
      });
    }
    const text = JSON.stringify(found);
    if (text !== shown) pads.value = found;
    shown = text;
    frame = found.length > 0 ? requestAnimationFrame(poll) : 0;
  };
  const follow = () => {
    cancelAnimationFrame(frame);
    frame = 0;
    if (document.visibilityState === 'visible') poll();
    // Nobody knows what was pressed and released while no one was polling.
    else lose(() => true);
  };

  addEventListener('gamepadconnected', follow);
  addEventListener('gamepaddisconnected', follow);
  document.addEventListener('visibilitychange', follow);
  follow();
  return () => {
    cancelAnimationFrame(frame);
    removeEventListener('gamepadconnected', follow);
    removeEventListener('gamepaddisconnected', follow);
    document.removeEventListener('visibilitychange', follow);
  };
}

const suffix = ({ name, copy }: PadNow) => `:${copy}:${name}`;

/** The pads; empty if the browser refuses, which it may do at any time. */
function padsNow(): PadNow[] {
  if (padAccess.value === 'missing') return [];
  try {
    const found: PadNow[] = [];
    for (const pad of navigator.getGamepads()) {
      if (!pad?.connected) continue;
      const name = pad.id.slice(0, 200);
      found.push({
        name,
        copy: found.filter((other) => other.name === name).length,
        // Two decimals: a live view needs no more, and a stick at rest is never quite still.
        buttons: pad.buttons.map(({ pressed, value }) =>
          // Some report only `pressed`; the others disagree on when a button is pressed.
          pressed && value === 0 ? 1 : rounded(value),
        ),
        axes: pad.axes.map(rounded),
      });
    }
    padAccess.value = 'there';
    return found;
  } catch {
    padAccess.value = 'refused';
    return [];
  }
}

const rounded = (value: number) => Math.round(value * 100) / 100;

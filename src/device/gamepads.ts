/**
 * Gamepads, sticks and throttles. The browser tells of none of their buttons: they are asked once a
 * frame, only while the window is shown and one is plugged in.
 */

import { type Signal, signal } from '@preact/signals';
import type { Control } from './bindings';
import { outBy, type PadPart, readPart, UNSEEN } from './padParts';

/** A pad as it is now. */
export interface PadNow {
  readonly name: string;
  /** Of several of one make, which. */
  readonly copy: number;
  readonly buttons: readonly number[];
  readonly axes: readonly number[];
}

/** Why there are no pads. `missing`: the browser knows none. `refused`: it does not let this page ask. */
export type PadAccess = 'there' | 'missing' | 'refused';

/** Whether pads can be read here. */
export const padAccess = signal<PadAccess>('getGamepads' in navigator ? 'there' : 'missing');

/** The pads that are plugged in and have been pressed once, as they are now. */
export const pads: Signal<readonly PadNow[]> = signal([]);

/** What a control did. `lost`: the pad is gone. */
export type Change = (control: Control, kind: 'down' | 'up' | 'lost', ms: number) => void;

/** Watches pads until it is told to stop; calls back at every change of a button or axis. */
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
    // What is pressed and let go while nobody looks is not known.
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

/** The pads there are; none where the browser refuses, which it may do at any time. */
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
          // Some say only that a button is pressed; of the others each has its own idea of when it is.
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

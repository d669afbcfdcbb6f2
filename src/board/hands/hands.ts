/** From the controls of every device to what is done: they are recognised, looked up, and acted on. */

import { signal } from '@preact/signals';
import {
  type Action,
  actionOf,
  type Binding,
  bind,
  bindings,
  type Control,
  wantedOf,
} from '../../device/bindings';
import { isForemost } from '../../device/foremost';
import { watchPads } from '../../device/gamepads';
import { watchKeys, watchMedia } from '../../device/keyboard';
import {
  AT_REST,
  dueAt,
  type Happening,
  MANNERS,
  type Manner,
  type Pressed,
  recognise,
  type Told,
} from '../../device/presses';
import { elapsedNowMs } from '../flight/time';
import { followDue } from '../steps/due';
import { act, type Outcome } from './actions';

/** The action that is being learned: the next press is for it, and does nothing else. */
export const learning = signal<Action | null>(null);

/** A control that the page of keys has just seen, and how it was pressed. */
export interface Seen {
  readonly control: Control;
  /** Null while it is down and might become anything. */
  readonly manner: Manner | null;
}

/** Whether a page is open that shows what devices send. */
export const showing = signal(false);

/** The controls seen last on that page, newest first. */
export const seen = signal<readonly Seen[]>([]);

/** Whether media keys can come as wishes of the browser. */
export const mediaKeys = signal(false);

const ALL: ReadonlySet<Manner> = new Set(MANNERS);
const SEEN_SHOWN = 4;

interface Watched {
  pressed: Pressed;
  timer: ReturnType<typeof setTimeout> | undefined;
  /** What came of the press that began then: held on, it is not a second one. */
  last: { readonly downMs: number; readonly outcome: Outcome } | null;
}

const watched = new Map<Control, Watched>();

/** Begins to listen; call once, when the steps are there. */
export function startHands(): void {
  followDue();
  watchKeys((control, kind, ms) => {
    if (!isMeant(control, kind)) return false;
    happen(control, { kind, ms });
    return true;
  }, elapsedNowMs);
  watchPads((control, kind, ms) => {
    // Two windows that are shown both hear a pad; only one of them listens.
    if (kind === 'down' && !isForemost.value && !showing.value) return;
    if (kind !== 'down' || isMeant(control, kind)) happen(control, { kind, ms });
  }, elapsedNowMs);
  mediaKeys.value = watchMedia((control) => {
    const ms = elapsedNowMs();
    if (!isMeant(control, 'down')) return;
    happen(control, { kind: 'down', ms });
    happen(control, { kind: 'up', ms });
  });
  addEventListener('blur', loseKeys);
  document.addEventListener('visibilitychange', loseKeys);
}

/** A key that is let go while another window has the keyboard is never heard of again: it is not held. */
function loseKeys(): void {
  for (const control of watched.keys()) {
    if (control.startsWith('key:')) happen(control, { kind: 'lost', ms: elapsedNowMs() });
  }
}

/** Whether a change of a control is anything to us. What lies over the screen keeps everything from it. */
function isMeant(control: Control, kind: 'down' | 'up'): boolean {
  if (kind === 'up') return watched.get(control)?.pressed.pressing != null;
  if (learning.value !== null) return true;
  if (showing.value) {
    // Shown, and left to what it is for on the page.
    show({ control, manner: null });
    return false;
  }
  return wantedOf(control, bindings.value).size > 0 && !isCovered();
}

/** A sheet, or a question, lies over the place. */
const isCovered = (): boolean => document.querySelector('dialog[open]') !== null;

function happen(control: Control, happening: Happening): void {
  const one = watched.get(control) ?? { pressed: AT_REST, timer: undefined, last: null };
  watched.set(control, one);
  const wanted = learning.value === null ? wantedOf(control, bindings.value) : ALL;
  const { pressed, told } = recognise(one.pressed, happening, wanted);
  one.pressed = pressed;
  clearTimeout(one.timer);
  const due = dueAt(pressed, wanted);
  if (due !== null) {
    one.timer = setTimeout(
      () => happen(control, { kind: 'time', ms: Math.max(due, elapsedNowMs()) }),
      Math.max(0, due - elapsedNowMs()),
    );
  }
  for (const press of told) {
    if (learning.value !== null) learn(control, press, learning.value);
    else perform(control, one, press);
  }
}

function learn(control: Control, { manner }: Told, action: Action): void {
  learning.value = null;
  // What is still down was for learning: it does not act when it is held on.
  watched.delete(control);
  show({ control, manner });
  bind({ control, manner, action });
}

function perform(control: Control, one: Watched, { manner, downMs, held, brief }: Told): void {
  const action = actionOf(control, manner, bindings.value);
  if (action === null || isCovered()) return;
  const isHeldOn = one.last?.downMs === downMs;
  if (isHeldOn && one.last?.outcome !== 'hold' && one.last?.outcome !== 'again') return;
  const outcome = act(action, { downMs, held, brief: brief || control.startsWith('media:') });
  one.last = { downMs, outcome };
}

function show(one: Seen): void {
  const others = seen.value.filter(({ control }) => control !== one.control);
  seen.value = [one, ...others].slice(0, SEEN_SHOWN);
}

export type { Action, Binding };

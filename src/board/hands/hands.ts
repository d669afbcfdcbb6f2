/** From the controls of every device to actions: recognise, look up, act. */

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
  type ControlState,
  dueAt,
  type Happening,
  MANNERS,
  type PressManner,
  type RecognisedPress,
  recognise,
} from '../../device/presses';
import { elapsedNowMs } from '../flight/time';
import { followDue } from '../steps/due';
import { act, type Outcome } from './actions';

/** The action being learned: the next press is bound to it, and does nothing else. */
export const learning = signal<Action | null>(null);

/** A control just seen on the Keys page, and how it was pressed. */
export interface Seen {
  readonly control: Control;
  /** Null while it is down and might become anything. */
  readonly manner: PressManner | null;
}

/** Whether a page that shows device input is open. */
export const showing = signal(false);

/** The controls last seen on that page, newest first. */
export const seen = signal<readonly Seen[]>([]);

/** Whether media keys can arrive as Media Session actions. */
export const mediaKeys = signal(false);

const ALL: ReadonlySet<PressManner> = new Set(MANNERS);
const SEEN_SHOWN = 4;

interface Watched {
  pressed: ControlState;
  timer: ReturnType<typeof setTimeout> | undefined;
  /** The outcome of the press that started then: holding on doesn't make it a second one. */
  last: { readonly downMs: number; readonly outcome: Outcome } | null;
}

const watched = new Map<Control, Watched>();

/** Starts listening; call once, when the steps are loaded. */
export function startHands(): void {
  followDue();
  watchKeys((control, kind, ms) => {
    if (!isMeant(control, kind)) return false;
    happen(control, { kind, ms });
    return true;
  }, elapsedNowMs);
  watchPads((control, kind, ms) => {
    // Two visible windows both see a pad; only one of them may act.
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

/** We never hear of a key released while another window has the focus: it counts as not held. */
function loseKeys(): void {
  for (const control of watched.keys()) {
    if (control.startsWith('key:')) happen(control, { kind: 'lost', ms: elapsedNowMs() });
  }
}

/** Whether a change of a control concerns us. A dialog over the screen blocks everything. */
function isMeant(control: Control, kind: 'down' | 'up'): boolean {
  if (kind === 'up') return watched.get(control)?.pressed.pressing != null;
  if (learning.value !== null) return true;
  if (showing.value) {
    // Shown, and left to its usual job on the page.
    show({ control, manner: null });
    return false;
  }
  return wantedOf(control, bindings.value).size > 0 && !isCovered();
}

/** Whether a sheet or a dialog lies over the place. */
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

function learn(control: Control, { manner }: RecognisedPress, action: Action): void {
  learning.value = null;
  // What is still down was pressed for learning: holding it on does nothing.
  watched.delete(control);
  show({ control, manner });
  bind({ control, manner, action });
}

function perform(
  control: Control,
  one: Watched,
  { manner, downMs, held, brief }: RecognisedPress,
): void {
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

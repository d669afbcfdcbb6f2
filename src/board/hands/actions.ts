/**
 * What can be done without touching the screen: only what could be done on the screen now, and with
 * the same care. A false tick is the worst failure.
 */

import { signal } from '@preact/signals';
import { type Offers, wantsHold } from '../../core';
import type { Action } from '../../device/bindings';
import { passNext, progress } from '../flight/taxi';
import { bigCard, onRoll, openPlace, PLACES, place } from '../places';
import { closeCard, openCard } from '../steps/card';
import { dueName, dueSinceMs } from '../steps/due';
import { resume } from '../steps/interruption';
import { stepsShown } from '../steps/leavingSteps';
import { doIt, goBack, offered, stopRoll, tick } from '../steps/stepping';

/** How a control was pressed for an action. */
export interface Pressed {
  /** When it went down, by the time since the app started, ms. */
  readonly downMs: number;
  /** It has been held. */
  readonly held: boolean;
  /** What pressed it cannot hold: its presses are too brief for a finger, or have no length. */
  readonly brief: boolean;
}

/**
 * What came of it. `not-here`: what it acts on is not on the screen. `not-now`: it is, and there is
 * nothing to do. `too-soon`: what is due has only just changed. `hold`, `again`: a critical step wants
 * the control held, or, where it cannot be, pressed once more.
 */
export type Outcome = 'done' | 'not-here' | 'not-now' | 'too-soon' | 'hold' | 'again';

/** After what is due has changed, what was meant for before is ignored this long, ms. */
export const SETTLE_MS = 500;

/** A second press that stands for a hold comes no later than this after the first, ms. */
const AGAIN_MS = 4000;

/** What was done last, or was not, and how often there was anything. */
export const lastAct = signal<{
  readonly action: Action;
  readonly outcome: Outcome;
  readonly count: number;
} | null>(null);

/** How often the pilot asked to hear it again. */
export const asksToRepeat = signal(0);

const isShown = stepsShown;

/** Which press of a critical step is to be confirmed by another. */
let asked: { readonly due: string; readonly ms: number } | null = null;

/** Does it, or says why not. */
export function act(action: Action, pressed: Pressed): Outcome {
  const outcome = outcomeOf(action, pressed);
  if (outcome === 'done') asked = null;
  lastAct.value = { action, outcome, count: (lastAct.peek()?.count ?? 0) + 1 };
  return outcome;
}

function outcomeOf(action: Action, pressed: Pressed): Outcome {
  switch (action) {
    case 'repeat':
      asksToRepeat.value += 1;
      return 'done';
    case 'next-place':
      // The roll hides the places' keys.
      if (onRoll.value) return 'not-now';
      openPlace(PLACES[(PLACES.indexOf(place.value) + 1) % PLACES.length] ?? 'wind');
      return 'done';
    case 'big-card':
      if (bigCard.value) closeCard();
      else openCard();
      return 'done';
    case 'stopwatch':
      if (place.value !== 'taxi' && !bigCard.value) return 'not-here';
      if (!progress.value?.next) return 'not-now';
      passNext();
      return 'done';
    default:
      return inSteps(action, pressed);
  }
}

type StepAction = Exclude<Action, 'repeat' | 'next-place' | 'big-card' | 'stopwatch'>;

function inSteps(action: StepAction, pressed: Pressed): Outcome {
  const now = offered.value;
  if (!isShown.value || now === null) return 'not-here';
  if (pressed.downMs < dueSinceMs() + SETTLE_MS) return 'too-soon';
  switch (action) {
    case 'done':
      return doMain(now, pressed);
    case 'back':
      return takeBack(now);
    case 'hold-back':
      if (now.putOff === null) return 'not-now';
      tick(now.putOff, 'held');
      return 'done';
    case 'stopping':
      if (!now.stop) return 'not-now';
      stopRoll();
      return 'done';
    default:
      return atMoment(action === 'airborne' ? 'airborne' : 'brakes released', now);
  }
}

/** Called away, the pilot goes on, and then one back. */
function takeBack({ main, undo }: Offers): Outcome {
  if (main.what === 'resume') resume();
  else if (undo === null) return 'not-now';
  goBack();
  return 'done';
}

/** What the largest key does. Releasing the brakes and being airborne are said by their own names. */
function doMain({ main }: Offers, pressed: Pressed): Outcome {
  if (main.what === 'stamp' && main.moment !== 'landed') return 'not-now';
  if (main.what === 'resume') {
    resume();
    return 'done';
  }
  return withCare(wantsHold(main, true), pressed, () => doIt(main));
}

/** What matters much wants to be held. What cannot hold asks to be pressed once more, and not at once. */
function withCare(matters: boolean, { downMs, held, brief }: Pressed, go: () => void): Outcome {
  if (matters && !held) {
    const due = dueName.value;
    const sinceMs = asked?.due === due ? downMs - asked.ms : Number.POSITIVE_INFINITY;
    const isConfirmed = brief && sinceMs >= SETTLE_MS && sinceMs <= AGAIN_MS;
    if (!isConfirmed) {
      // A second press that bounced does not put the first one off.
      if (!(sinceMs < SETTLE_MS)) asked = { due, ms: downMs };
      return brief ? 'again' : 'hold';
    }
  }
  go();
  return 'done';
}

function atMoment(moment: 'brakes released' | 'airborne', { main }: Offers): Outcome {
  if (main.what !== 'stamp' || main.moment !== moment) return 'not-now';
  doIt(main);
  return 'done';
}

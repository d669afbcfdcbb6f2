/**
 * What can be done without touching the screen: only what the screen could do now, and with the
 * same care. A false tick is the worst failure.
 */

import { signal } from '@preact/signals';
import { type Offers, wantsHold } from '../../core';
import type { Action } from '../../device/bindings';
import { SETTLE_MS } from '../../device/presses';
import { day } from '../board';
import { passNext } from '../flight/taxi';
import { bigCard, onRoll, openPlace, PLACES, place } from '../places';
import { closeCard, openCard } from '../steps/card';
import { dueName, dueSinceMs } from '../steps/due';
import { stepsShown } from '../steps/leavingSteps';
import { doIt, goBack, offered, stopRoll, tick } from '../steps/stepping';

/** How a control was pressed for an action. */
export interface ActionPress {
  /** When it went down, by the time since the app started, ms. */
  readonly downMs: number;
  /** It has been held. */
  readonly held: boolean;
  /** The device can't hold: its presses are too brief for a finger, or have no duration. */
  readonly brief: boolean;
}

/**
 * The outcome. `not-here`: what the action works on isn't on screen. `not-now`: it is, but there is
 * nothing to do. `too-soon`: the due step has only just changed. `hold`, `again`: a critical step
 * wants the control held or, if it can't be, pressed once more. `not-known`: a live number of the
 * step isn't known.
 */
export type Outcome = 'done' | 'not-here' | 'not-now' | 'too-soon' | 'hold' | 'again' | 'not-known';

/** A second press that stands in for a hold comes within this time of the first, ms. */
const AGAIN_MS = 4000;

/** The last action with its outcome, and how many there have been. */
export const lastAct = signal<{
  readonly action: Action;
  readonly outcome: Outcome;
  readonly count: number;
} | null>(null);

/** How often the pilot asked to hear it again. */
export const asksToRepeat = signal(0);

const isShown = stepsShown;

/** The press of a critical step that another must confirm. */
let asked: { readonly due: string; readonly ms: number } | null = null;

/** Does it, or says why not. */
export function act(action: Action, pressed: ActionPress): Outcome {
  const outcome = outcomeOf(action, pressed);
  if (outcome === 'done') asked = null;
  lastAct.value = { action, outcome, count: (lastAct.peek()?.count ?? 0) + 1 };
  return outcome;
}

function outcomeOf(action: Action, pressed: ActionPress): Outcome {
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
      if (!day.progress()?.next) return 'not-now';
      passNext();
      return 'done';
    default:
      return inSteps(action, pressed);
  }
}

type StepAction = Exclude<Action, 'repeat' | 'next-place' | 'big-card' | 'stopwatch'>;

function inSteps(action: StepAction, pressed: ActionPress): Outcome {
  const now = offered.value;
  if (!isShown.value || now === null) return 'not-here';
  // A stop is never put off: its key or button is for nothing else.
  if (action !== 'stopping' && pressed.downMs < dueSinceMs() + SETTLE_MS) return 'too-soon';
  switch (action) {
    case 'done':
      return doMain(now, pressed);
    case 'back':
      if (now.undo === null) return 'not-now';
      goBack();
      return 'done';
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

/** Does what the largest key does. Brakes released and airborne have actions of their own. */
function doMain({ main }: Offers, pressed: ActionPress): Outcome {
  if (main.what === 'stamp' && main.moment !== 'landed') return 'not-now';
  // Nobody who presses a pad wants another place on the screen: it is said what is missing.
  if (main.what === 'supply') return 'not-known';
  return withCare(wantsHold(main, true), pressed, () => doIt(main));
}

/** What matters most must be held. A device that can't hold must press again, and not at once. */
function withCare(matters: boolean, { downMs, held, brief }: ActionPress, go: () => void): Outcome {
  if (matters && !held) {
    const due = dueName.value;
    const sinceMs = asked?.due === due ? downMs - asked.ms : Number.POSITIVE_INFINITY;
    const isConfirmed = brief && sinceMs >= SETTLE_MS && sinceMs <= AGAIN_MS;
    if (!isConfirmed) {
      // A second press that bounced doesn't restart the wait.
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

/**
 * When something is read aloud: the due step as it becomes due, the gates of roll and climb by the
 * clock, and again on request.
 */

import { computed, effect, signal, untracked } from '@preact/signals';
import {
  type ClimbRung,
  type Id,
  isReadAloud,
  isReleasing,
  type Rung,
  takeoffUnderWay,
} from '../../core';
import { isForemost } from '../../device/foremost';
import { kept } from '../../device/kept';
import { pageLanguage } from '../../device/pageLanguage';
import { fallSilent, followVoices, isSpeaking, type Said, say } from '../../device/speech';
import { day, sortie } from '../board';
import { cautions } from '../flight/cautions';
import { wallNowMs } from '../flight/time';
import { place } from '../places';
import { sayAgain } from '../steps/card';
import { dueName } from '../steps/due';
import { stepsShown } from '../steps/leavingSteps';
import { offered } from '../steps/stepping';
import { asksToRepeat } from './actions';

/** How this device reads aloud. */
export interface Voicing {
  readonly on: boolean;
  /** Read the gates of the roll and climb too. */
  readonly gates: boolean;
  /** 1 is the voice's own pace. */
  readonly rate: number;
  /** The chosen voice; null for the first that works offline. */
  readonly voice: string | null;
}

/** The paces on offer. */
export const RATES = [0.8, 1, 1.25, 1.5] as const;

function readVoicing(stored: unknown): Voicing {
  const { on, gates, rate, voice } = (stored ?? {}) as Partial<Record<keyof Voicing, unknown>>;
  return {
    on: on === true,
    gates: gates !== false,
    rate: RATES.find((known) => known === rate) ?? 1,
    voice: typeof voice === 'string' ? voice.slice(0, 300) : null,
  };
}

/** How this device reads aloud, as stored. */
export const voicing = kept('voice', readVoicing);

/** Changes how it reads aloud. */
export function setVoicing(changed: Partial<Voicing>): void {
  voicing.value = { ...voicing.value, ...changed };
}

/** What is said, in the words of the page's language. */
export interface Sayings {
  /** What is due, each part in its own language; empty if nothing is. */
  readonly due: () => Said;
  /** The radio call due on Taxi; empty if none is. */
  readonly call: () => Said;
  /** The worst that stops, against the runway in use; empty if nothing does. */
  readonly caution: () => Said;
  readonly gate: (rung: Rung | ClimbRung) => string;
  /** That the gates are times. */
  readonly warning: string;
}

/** A gate later than this is not said: it would be wrong by then, ms. */
const LATE_MS = 700;

/** Something in the language of the page. */
const inPage = (text: string): Said => [{ text, language: pageLanguage() }];

/** Says something now, in the chosen voice and pace; plain text is in the language of the page. */
export function sayNow(what: string | Said): void {
  const { voice, rate } = voicing.peek();
  say(typeof what === 'string' ? inPage(what) : what, voice, rate);
}

const hasGates = computed(
  () => voicing.value.on && voicing.value.gates && (day.ladder()?.rungs.length ?? 0) > 0,
);

const isRead = computed(() => offered.value !== null && isReadAloud(offered.value));

const isTaxi = computed(() => place.value === 'taxi');

/** The last sortie in which we said that gates are times. */
const warnedIn = signal<Id | null>(null);

/** Brake release is next, and the gates will be read: say on screen that they are times. */
export const warnsOfGates = computed(
  () => hasGates.value && offered.value !== null && isReleasing(offered.value),
);

/** Whether the last thing said was the due step, not a gate. */
let wasDue = false;

/** Starts reading aloud, if wanted. */
export function startVoice(sayings: Sayings): void {
  followVoices();
  const isHeard = computed(() => voicing.value.on && isForemost.value && stepsShown.value);
  effect(() => {
    void dueName.value;
    if (!isHeard.value) return;
    // What was being said belonged to the step before.
    fallSilent();
    wasDue = false;
    if (!isRead.value) return;
    untracked(() => sayNow([...sayings.due(), ...inPage(warning(sayings))]));
    wasDue = true;
  });
  // On Taxi, where no step is shown, the next call is.
  const callHeard = computed(() =>
    voicing.value.on && isForemost.value && !isHeard.value && isTaxi.value
      ? (day.dueCall()?.kind ?? null)
      : null,
  );
  effect(() => {
    fallSilent();
    if (callHeard.value !== null) untracked(() => sayNow(sayings.call()));
  });
  followCautions(sayings);
  followRepeats(sayings);
  followRoll(sayings);
}

/** Said once per sortie, before the roll. */
function warning(sayings: Sayings): string {
  const { id } = sortie.peek();
  if (!warnsOfGates.peek() || warnedIn.peek() === id) return '';
  warnedIn.value = id;
  return sayings.warning;
}

/** What comes to stop is said once, wherever the pilot is; not on the roll, where gates speak. */
function followCautions(sayings: Sayings): void {
  const worst = computed(() => {
    const stops = cautions.value.find((caution) => caution.stops);
    return stops === undefined ? '' : `${stops.code} ${stops.value} ${day.wind().using}`;
  });
  effect(() => {
    if (worst.value === '' || !voicing.peek().on || !isForemost.peek()) return;
    untracked(() => {
      if (day.wind().using !== null) sayNow(sayings.caution());
    });
  });
}

/** What was asked for is said even if nothing is read aloud by itself. */
function followRepeats(sayings: Sayings): void {
  // Two fingers on the Big card.
  sayAgain.value = () => {
    asksToRepeat.value += 1;
  };
  let heard = asksToRepeat.peek();
  effect(() => {
    if (asksToRepeat.value === heard) return;
    heard = asksToRepeat.value;
    untracked(() => {
      const rungs = offered.value?.rolling ? (day.ladder()?.rungs ?? []) : [];
      if (rungs.length > 0) sayNow(rungs.map(sayings.gate).join(' '));
      else {
        const call = isTaxi.value && !stepsShown.value ? sayings.call() : [];
        sayNow(call.length > 0 ? call : sayings.due());
      }
    });
  });
}

/**
 * Each gate when it is expected after brake release, once: a ladder that changes on the way repeats
 * none.
 */
function followRoll(sayings: Sayings): void {
  const roll = computed(() => {
    const known = day.ladder();
    if (!hasGates.value || !isForemost.value || known === null) return null;
    return takeoffUnderWay(known, sortie.value.stamps);
  });
  const said = new Set<string>();
  const begun = computed(() => roll.value?.id ?? null);
  effect(() => {
    if (begun.value === null) return;
    said.clear();
    // Stopped: what was being said no longer applies.
    return fallSilent;
  });
  effect(() => {
    const timers = (roll.value?.gates ?? []).flatMap(({ gate, atMs }) => {
      const waitMs = atMs - wallNowMs();
      if (waitMs < 0 || said.has(gate.what)) return [];
      return [
        setTimeout(() => {
          if (wallNowMs() - atMs >= LATE_MS) return;
          said.add(gate.what);
          sayGate(gate, sayings);
        }, waitMs),
      ];
    });
    return () => {
      for (const timer of timers) clearTimeout(timer);
    };
  });
}

/** A gate interrupts whatever is being said; a step cut short is said again after it. */
function sayGate(gate: Rung | ClimbRung, sayings: Sayings): void {
  const isCut = wasDue && isSpeaking();
  sayNow([...inPage(sayings.gate(gate)), ...(isCut ? sayings.due() : [])]);
  wasDue = isCut;
}

/** The browser's speech: listing voices, speaking, and stopping. */

import { type Signal, signal } from '@preact/signals';
import { primarySubtag } from '../core';

/** A voice of the browser. */
export interface Voice {
  /** The browser's name for it, stable across sessions. */
  readonly uri: string;
  readonly name: string;
  readonly lang: string;
  /** It works offline. */
  readonly local: boolean;
}

/** Something said in one go, and its language, as a BCP 47 tag. */
export interface Utterance {
  readonly text: string;
  readonly language: string;
}

/** What is said, part after part. */
export type Said = readonly Utterance[];

const speech = (): SpeechSynthesis | null =>
  'speechSynthesis' in window && typeof SpeechSynthesisUtterance === 'function'
    ? (window.speechSynthesis ?? null)
    : null;

/** Whether this browser can speak at all. */
export const canSpeak = (): boolean => speech() !== null;

/** All voices, offline ones first; browsers list them late, and some never do. */
const all: Signal<readonly Voice[]> = signal([]);

/** Normalises a voice's language: some browsers write `de_DE`. */
const tagOf = ({ lang }: Voice) => lang.toLowerCase().replace('_', '-');

/** The voices for a language, whatever their region; offline ones first. */
export const voicesIn = (language: string): readonly Voice[] =>
  all.value.filter((voice) => primarySubtag(tagOf(voice)) === primarySubtag(language));

/** Whether the browser refused to speak last time, as it does before a first touch. */
export const speechRefused = signal(false);

/** Starts following the list of voices. */
export function followVoices(): void {
  const found = speech();
  if (found === null) return;
  const list = () => {
    all.value = found
      .getVoices()
      .map(({ voiceURI, name, lang, localService }) => ({
        uri: voiceURI,
        name,
        lang,
        local: localService,
      }))
      .sort((a, b) => Number(b.local) - Number(a.local) || a.name.localeCompare(b.name));
  };
  list();
  // Some browsers have the voices at once, and lack this event.
  found.addEventListener?.('voiceschanged', list);
}

/** The voice to use: the one chosen, else the first that works offline, else the first. */
export const voiceFor = (chosen: string | null, among: readonly Voice[]): Voice | null =>
  among.find(({ uri }) => uri === chosen) ?? among[0] ?? null;

/**
 * A reference held while it speaks: some browsers collect an utterance nobody holds, and never
 * report its end.
 */
let saying: readonly SpeechSynthesisUtterance[] = [];

/**
 * Speaks, cutting off whatever is being said: each part in a voice of its language, by `chosen` if
 * that one speaks it.
 */
export function say(said: Said, chosen: string | null, rate: number): void {
  const found = speech();
  const parts = said.filter(({ text }) => text.trim() !== '');
  if (found === null || parts.length === 0) return;
  saying = parts.map((part) => utteranceOf(part, found, chosen, rate));
  found.cancel();
  for (const utterance of saying) found.speak(utterance);
}

function utteranceOf(
  { text, language }: Utterance,
  found: SpeechSynthesis,
  chosen: string | null,
  rate: number,
): SpeechSynthesisUtterance {
  const utterance = new SpeechSynthesisUtterance(text);
  const voice = voiceFor(chosen, voicesIn(language));
  const own = found.getVoices().find(({ voiceURI }) => voiceURI === voice?.uri);
  if (own !== undefined) utterance.voice = own;
  utterance.lang = own?.lang ?? language;
  utterance.rate = rate;
  utterance.onerror = ({ error }) => {
    if (error === 'not-allowed') speechRefused.value = true;
  };
  utterance.onstart = () => {
    speechRefused.value = false;
  };
  return utterance;
}

/** Whether something is being said right now. */
export const isSpeaking = (): boolean => speech()?.speaking ?? false;

/** Stops speaking. */
export function fallSilent(): void {
  if (saying.length === 0) return;
  saying = [];
  speech()?.cancel();
}

/** The browser's speech: which voices there are, saying something, and falling silent. */

import { type Signal, signal } from '@preact/signals';
import { primarySubtag } from '../core';

/** A voice of the browser. */
export interface Voice {
  /** Its name for the browser: the same tomorrow. */
  readonly uri: string;
  readonly name: string;
  readonly lang: string;
  /** It speaks without a network. */
  readonly local: boolean;
}

/** Something that is said in one go, and the language it is in, as a BCP 47 tag. */
export interface Utterance {
  readonly text: string;
  readonly language: string;
}

/** What is said, one after the other. */
export type Said = readonly Utterance[];

const speech = (): SpeechSynthesis | null =>
  'speechSynthesis' in window && typeof SpeechSynthesisUtterance === 'function'
    ? (window.speechSynthesis ?? null)
    : null;

/** Whether this browser speaks at all. */
export const canSpeak = (): boolean => speech() !== null;

/** All voices, those that need no network first; browsers tell of them late, and some of none. */
const all: Signal<readonly Voice[]> = signal([]);

/** How browsers write a voice's language: some as `de_DE`. */
const tagOf = ({ lang }: Voice) => lang.toLowerCase().replace('_', '-');

/** The voices for a language, whatever their region; those that need no network come first. */
export const voicesIn = (language: string): readonly Voice[] =>
  all.value.filter((voice) => primarySubtag(tagOf(voice)) === primarySubtag(language));

/** Whether the last thing to be said was refused, as before a first touch. */
export const speechRefused = signal(false);

/** Begins to follow which voices there are. */
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
  // Some browsers have the voices at once and not this.
  found.addEventListener?.('voiceschanged', list);
}

/** The voice that is used: the one chosen, else the first that needs no network, else the first. */
export const voiceFor = (chosen: string | null, among: readonly Voice[]): Voice | null =>
  among.find(({ uri }) => uri === chosen) ?? among[0] ?? null;

/** Kept while it speaks: some browsers forget what nobody holds, and never say that it ended. */
let saying: readonly SpeechSynthesisUtterance[] = [];

/**
 * Says something, in place of whatever is being said: each part by a voice of its language, by the
 * one `chosen` where it is of that language.
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

/** Whether something is being said at this moment. */
export const isSpeaking = (): boolean => speech()?.speaking ?? false;

/** Falls silent. */
export function fallSilent(): void {
  if (saying.length === 0) return;
  saying = [];
  speech()?.cancel();
}

/** The browser's speech: which voices there are, saying something, and falling silent. */

import { type Signal, signal } from '@preact/signals';

/** A voice of the browser. */
export interface Voice {
  /** Its name for the browser: the same tomorrow. */
  readonly uri: string;
  readonly name: string;
  readonly lang: string;
  /** It speaks without a network. */
  readonly local: boolean;
}

const speech = (): SpeechSynthesis | null =>
  'speechSynthesis' in window && typeof SpeechSynthesisUtterance === 'function'
    ? (window.speechSynthesis ?? null)
    : null;

/** Whether this browser speaks at all. */
export const canSpeak = (): boolean => speech() !== null;

/** The voices for the language of the page; browsers tell of them late, and some of none. */
export const voices: Signal<readonly Voice[]> = signal([]);

/** Whether the last thing to be said was refused, as before a first touch. */
export const speechRefused = signal(false);

/** Begins to follow which voices there are. */
export function followVoices(language: string): void {
  const found = speech();
  if (found === null) return;
  const list = () => {
    voices.value = found
      .getVoices()
      .filter(({ lang }) => lang.toLowerCase().replace('_', '-').startsWith(language))
      .map(({ voiceURI, name, lang, localService }) => ({
        uri: voiceURI,
        name,
        lang,
        local: localService,
      }))
      // Those that need no network first.
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
let saying: SpeechSynthesisUtterance | null = null;

/** Says something, in place of whatever is being said. */
export function say(text: string, voice: Voice | null, rate: number, language: string): void {
  const found = speech();
  if (found === null || text === '') return;
  const utterance = new SpeechSynthesisUtterance(text);
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
  saying = utterance;
  found.cancel();
  found.speak(utterance);
}

/** Falls silent. */
export function fallSilent(): void {
  if (saying === null) return;
  saying = null;
  speech()?.cancel();
}

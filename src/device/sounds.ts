/**
 * Short synthesised tones. Each kind has its own rhythm and pitch, so that one is recognised
 * without having heard the others.
 */

/** A tone: start and duration, ms, and pitch, Hz. */
interface Tone {
  readonly atMs: number;
  readonly ms: number;
  readonly hz: number;
}

/** What can be heard. */
export type Sound = 'done' | 'held' | 'barrier';

/** Done: one, high. Held back: two, falling. Barrier: three low ones, alike. */
export const SOUNDS: Readonly<Record<Sound, readonly Tone[]>> = {
  done: [{ atMs: 0, ms: 70, hz: 1047 }],
  held: [
    { atMs: 0, ms: 90, hz: 659 },
    { atMs: 120, ms: 90, hz: 440 },
  ],
  barrier: [0, 160, 320].map((atMs) => ({ atMs, ms: 110, hz: 294 })),
};

const LOUDNESS = 0.2;
const EDGE_S = 0.008;

let context: AudioContext | null = null;

/** Whether this browser can play sounds at all. */
export const canSound = (): boolean => typeof AudioContext === 'function';

/** Plays a sound. Silent if the browser awaits a first touch, or has no sound. */
export function play(sound: Sound): void {
  if (!canSound()) return;
  try {
    context ??= new AudioContext({ latencyHint: 'interactive' });
    if (context.state === 'suspended') void context.resume().catch(() => undefined);
    for (const tone of SOUNDS[sound]) playTone(context, tone);
  } catch {
    // No sound device: the pilot still sees and feels what was done.
    context = null;
  }
}

function playTone(audio: AudioContext, { atMs, ms, hz }: Tone): void {
  const from = audio.currentTime + atMs / 1000;
  const until = from + ms / 1000;
  const loudness = audio.createGain();
  // Without ramps a tone starts and ends with a click.
  loudness.gain.setValueAtTime(0, from);
  loudness.gain.linearRampToValueAtTime(LOUDNESS, from + EDGE_S);
  loudness.gain.setValueAtTime(LOUDNESS, until - EDGE_S);
  loudness.gain.linearRampToValueAtTime(0, until);
  const tone = audio.createOscillator();
  tone.type = 'triangle';
  tone.frequency.value = hz;
  tone.connect(loudness).connect(audio.destination);
  tone.start(from);
  tone.stop(until);
}

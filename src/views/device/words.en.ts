/** The words for what belongs to the device. */

import type { Language } from '../../device/language';
import type { Theme } from '../../device/preferences';
import type { Hand } from '../../device/sides';
import type { Awake } from '../../device/wakeLock';

export const words = {
  language: 'Language',
  /** Each in its own language, for those who read no other. */
  languages: { en: 'English', de: 'Deutsch' } satisfies Record<Language, string>,
  theme: 'Screen',
  themes: { device: 'As the device', day: 'Day', dusk: 'Dusk', night: 'Night' } satisfies Record<
    Theme,
    string
  >,
  brightNight: 'Brighter night',
  dimIt: 'Turn the device’s brightness down as far as you can still read, and its night tint off.',
  awake: {
    'not-wanted': 'The screen is kept lit from the first step to the end of the sortie.',
    held: 'The screen is kept lit until the sortie ends.',
    refused:
      'The device refuses to keep the screen lit, as it does to save its battery: its own setting decides when it dims.',
    none: 'This browser cannot keep the screen lit: the device’s own setting decides when it dims.',
  } satisfies Record<Awake, string>,
  fullScreen: 'Full screen',
  fullScreenRefused: 'The browser refused full screen.',
  isBeside: 'Lapstrip was started anew. What was stored before is on this device still.',
  goBack: 'Go back to what was stored before',
  hand: 'Keys at the',
  hands: { right: 'Right hand', left: 'Left hand' } satisfies Record<Hand, string>,
  beside: 'Beside Steps on a wide screen',
  besides: { wind: 'Wind', taxi: 'Taxi', numbers: 'Numbers' },
  cardAtLineUp: 'Big card at line-up',
  watching: 'For others to watch',
  watchHint: 'A page for others to watch, in another window of this browser. It changes nothing.',
  watch: 'Open it to watch',
  storage: 'Storage and version',
  kept: 'Everything stays on this device: no account, no server, nothing is sent.',
  notKept: 'Nothing is stored just now: what you enter is forgotten when the window closes.',
  version: (version: string) => `Version ${version}`,
} as const;

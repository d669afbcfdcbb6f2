/** The board of the sortie flown in this window: what views read of its day. */

import { computed, signal } from '@preact/signals';
import { boardOf } from './boardOf';
import { parts } from './dayParts';
import { aircraft, field, procedure } from './documents/inUse';
import { wallMs } from './flight/time';
import { sortie, sortieMinute } from './record/sortie';

export { keeping, record, sortie, sortieMinute, sorties, unread } from './record/sortie';
export { steady } from './signals';

/** What is typed but not set yet. */
export const draft = signal('');

/** Whether the north that a spoken text has by itself was turned, while it is typed. */
export const turned = signal(false);

/** The default board. */
export const { day, typed } = boardOf({
  sortie,
  documents: { field, aircraft, procedure },
  minuteMs: sortieMinute,
  secondMs: wallMs,
  parts,
  draft,
  turned,
});

export const inputs = computed(day.inputs);

/** The field and aircraft in use, as far as loaded; the same object while both stay the same. */
export const documents = computed(() => ({ field: field.value, aircraft: aircraft.value }));

/** What Wind judges for. */
export const purpose = computed(day.purpose);

/** The wind in use: the one entered last. */
export const enteredWind = computed(day.enteredWind);

/** The same as text and north. */
export const enteredText = computed(day.enteredText);

/** What the wind in use says. */
export const enteredRead = computed(day.read);

/** When the last report was issued, by the sortie's clock, ms; null if unknown or there is none. */
export const issuedMs = computed(day.issuedMs);

/** Whether a wind was entered after that report. */
export const windIsNewer = computed(day.windIsNewer);

/** For each end, a low sun ahead; empty until computed. */
export const lowSunOn = computed(day.lowSunOn);

/** What field, date, weather and choices settle before there is a wind. */
export const settled = computed(day.settled);

/** What the wind in use means. */
export const wind = computed(day.wind);

/** What the typed wind says, before it is set; the wind in use while nothing is typed. */
export const typedRead = computed(typed.read);

/** What the typed wind would mean; the wind in use while nothing is typed. */
export const typedWind = computed(typed.wind);

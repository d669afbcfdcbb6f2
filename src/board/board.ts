/** The board of the sortie flown in this window: what views read of its day. */

import { computed, signal } from '@preact/signals';
import { boardOf } from './boardOf';
import { parts } from './dayParts';
import { aircraft, field, fieldCode, procedure } from './documents/inUse';
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
  fieldCode,
  minuteMs: sortieMinute,
  secondMs: wallMs,
  parts,
  draft,
  turned,
});

/** The field and aircraft in use, as far as loaded; the same object while both stay the same. */
export const documents = computed(() => ({ field: field.value, aircraft: aircraft.value }));

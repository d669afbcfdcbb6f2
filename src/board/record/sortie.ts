/** The record, and the sortie folded from it. */

import { computed, type ReadonlySignal, signal } from '@preact/signals';
import { type Entry, type Sortie, sortieFlown, sortiesOf, sortieTimeMs } from '../../core';
import { deviceId } from '../../device/self';
import { type Keeping, newId, SortieRecord, type Unread } from '../../record/record';
import { wallMs } from '../flight/time';
import { watching } from '../places';

const entries = signal<readonly Entry[]>([]);

/** Whether what is entered outlives this window. */
export const keeping = signal<Keeping>('opening');

/** What this version can't use of the record. */
export const unread = signal<Unread>({ damaged: 0, newer: 0 });

const recordChanged = () => {
  entries.value = record.entries;
  keeping.value = record.keeping;
  unread.value = record.unread;
};

/** The one list. */
export const record = new SortieRecord(recordChanged, deviceId(newId), watching);

/** All sorties, newest last, by their entries. */
export const sorties = computed(() => sortiesOf(entries.value));

/** The sortie in progress: the one begun or resumed last, unless that was undone. */
export const sortie: ReadonlySignal<Sortie> = computed(() =>
  sortieFlown(sorties.value, record.newerSorties),
);

/** The sortie's own time, UTC, updated every minute. */
export const sortieMinute = computed(
  () => Math.floor(sortieTimeMs(sortie.value.clock, wallMs.value) / 60_000) * 60_000,
);

/** The board of a sortie: its day as signals, and the day as it would be with the typed wind. */

import { computed, type ReadonlySignal } from '@preact/signals';
import {
  type Day,
  type Documents,
  day,
  northOf,
  type Part,
  type Parts,
  type Sortie,
  withWind,
} from '../core';
import { memo } from './signals';

type Signals<T> = { readonly [Name in keyof T]: ReadonlySignal<T[Name]> };

/** What a board is made for. Several can coexist: they share nothing but the parts. */
export interface BoardSources {
  readonly sortie: ReadonlySignal<Sortie>;
  readonly documents: Signals<Documents>;
  /**
   * The sortie's own time at its last whole minute, and the device's clock at its last second, ms.
   */
  readonly minuteMs: ReadonlySignal<number>;
  readonly secondMs: ReadonlySignal<number>;
  readonly parts: Signals<{ readonly [Name in keyof Parts]: Part<Parts[Name]> }>;
  /** What is typed of a wind but not set yet. */
  readonly draft: ReadonlySignal<string>;
  /** Whether the north that a spoken text has by itself was turned. */
  readonly turned: ReadonlySignal<boolean>;
}

export interface Board {
  readonly day: Day;
  /** The day with the typed wind in use; while nothing is typed, the day as it is. */
  readonly typed: Pick<Day, 'read' | 'wind'>;
}

/** Makes a board. */
export function boardOf({
  sortie,
  documents,
  parts,
  draft,
  turned,
  ...times
}: BoardSources): Board {
  const sources = {
    sortie: () => sortie.value,
    documents: {
      field: () => documents.field.value,
      aircraft: () => documents.aircraft.value,
      procedure: () => documents.procedure.value,
    },
    minuteMs: () => times.minuteMs.value,
    secondMs: () => times.secondMs.value,
    parts: {
      reports: () => parts.reports.value,
      physics: () => parts.physics.value,
      taxi: () => parts.taxi.value,
      sun: () => parts.sun.value,
      variation: () => parts.variation.value,
    },
  };
  const now = day(sources, memo);
  const withDraft = computed(() => {
    const [text, { typedNorth }] = [draft.value, sortie.value.inputs];
    const north = northOf(text, documents.field.value, typedNorth, turned.value);
    return withWind(sortie.value, { text, north });
  });
  const typed = day({ ...sources, sortie: () => withDraft.value }, memo);
  const isTyped = computed(() => draft.value.trim() !== '');
  return {
    day: now,
    typed: {
      read: () => (isTyped.value ? typed : now).read(),
      wind: () => (isTyped.value ? typed : now).wind(),
    },
  };
}

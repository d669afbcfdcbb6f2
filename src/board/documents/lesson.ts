/** Lessons: what goes into one, and flying one that came. */

import type { ListedAircraft, ListedField, ListedProcedure } from 'virtual:lapstrip-catalogue';
import type { Hash } from '../../core';
import { day } from '../board';
import { atField, chooseAircraft, chooseField, takeUp } from '../record/choices';
import { type Listed, listedAircraft, listedBy } from './documents';
import { KINDS, ownRows, today } from './library';
import { takeReceived } from './ownDocuments';

/** What may go into a lesson. */
export interface ForLesson {
  /** What is flown today, the pilot's own or not. */
  readonly today: readonly Listed[];
  /** What else the pilot owns. */
  readonly others: readonly Listed[];
}

/** What may go into a lesson now. */
export function forLesson(): ForLesson {
  const flown = [...today.value].flatMap((hash) => listedBy(hash) ?? []);
  const owned = KINDS.flatMap((kind) => ownRows(kind).map(({ newest }) => newest));
  return { today: flown, others: owned.filter(({ hash }) => !today.value.has(hash)) };
}

/** What a lesson is flown with. */
interface Flown {
  readonly field: ListedField;
  readonly aircraft: ListedAircraft;
  /** Null if the lesson has none, or a choice of several. */
  readonly procedure: ListedProcedure | null;
}

/** One field, and one aircraft or the one its procedure is for; null if the pilot has to choose. */
function flownIn(hashes: readonly Hash[]): Flown | null {
  const listed = hashes.flatMap((hash) => listedBy(hash) ?? []);
  const field = onlyOne(listed.filter((one) => one.kind === 'field'));
  const procedure = onlyOne(listed.filter((one) => one.kind === 'procedure'));
  const aircraft =
    onlyOne(listed.filter((one) => one.kind === 'aircraft')) ??
    listedAircraft.value.find(({ code }) => code === procedure?.aircraft);
  if (field === null || aircraft === undefined) return null;
  return { field, aircraft, procedure: procedure?.aircraft === aircraft.code ? procedure : null };
}

const onlyOne = <L extends Listed>(listed: readonly L[]): L | null =>
  listed.length === 1 ? (listed[0] ?? null) : null;

/** Whether a lesson whose documents are here says what to fly. */
export const mayBeFlown = (hashes: readonly Hash[]): boolean => flownIn(hashes) !== null;

/** Sets the sortie to it. */
export function flyLesson(hashes: readonly Hash[]): void {
  const flown = flownIn(hashes);
  if (flown === null) return;
  const { field, aircraft, procedure } = flown;
  const chosen = { procedure: procedure?.hash ?? null };
  if (aircraft.hash === day.inputs().aircraft) {
    chooseField(field);
    takeUp({ ...chosen, load: null });
  } else {
    // In one change: where the aircraft before has moved, its sortie ends where it was flown.
    const elsewhere = field.hash === day.inputs().field ? {} : atField(field.hash);
    chooseAircraft(aircraft, { ...elsewhere, ...chosen });
  }
  for (const one of [field, aircraft, procedure]) {
    if (one !== null) void takeReceived(one.hash);
  }
}

/** Today's numbers, once the first answer stands. Comes with the code that works them out. */

import { computed, effect, signal } from '@preact/signals';
import { loadPerformance, type TodayBrief } from '../core';
import { documents, inputs, lengthNeededM, steady, wind } from './board';
import { weather } from './day';
import { sheetOfToday } from './load';
import { noParachute } from './parachute';

type Parts = Awaited<ReturnType<typeof loadPerformance>>;

const parts = signal<Parts | null>(null);

/** What looks numbers up; null before the code is there. */
export const lookUps = computed(() => parts.value);

/** The air over the field; null before the code is there, and without a field. */
export const air = steady(() => {
  const { field } = documents.value;
  return parts.value === null || field === null
    ? null
    : parts.value.airOf(field.place.elevationFt, inputs.value, weather.value);
});

const load = steady(() => sheetOfToday.value);

const dayInputs = steady(() => {
  const { surface, rollsFromM, checkMarkM, holdShortM, load } = inputs.value;
  const without = noParachute.value !== null;
  return { surface, rollsFromM, checkMarkM, holdShortM, noParachute: without, load };
});

/** What today's numbers are worked out from, but for the wind; null while something is missing. */
export const dayGiven = computed(() => {
  const { field, aircraft } = documents.value;
  if (field === null || aircraft === null || air.value === null || load.value === null) return null;
  if (aircraft.performance === undefined) return null;
  return { field, aircraft, air: air.value, load: load.value, inputs: dayInputs.value };
});

/** The end that numbers are for: the one in use, else the best. */
export const numbersEnd = computed(() => wind.value.inUse ?? wind.value.ranked?.best ?? null);

/** Today's numbers; null before the code is there, without field or aircraft, and where it has only book figures. */
export const today = computed((): TodayBrief | null => {
  if (parts.value === null || dayGiven.value === null) return null;
  const end = numbersEnd.value;
  const { speedKt, gustKt } = wind.value.wind ?? { speedKt: null, gustKt: null };
  const spreadKt = speedKt === null || gustKt === null ? 0 : gustKt - speedKt;
  return parts.value.todayStage(
    dayGiven.value,
    end?.designator ?? wind.value.using,
    end?.headwindLeastKt ?? null,
    spreadKt,
  );
});

/** The ladder of the roll; null where today's take-off is not worked out. */
export const ladder = computed(() =>
  parts.value === null || today.value === null ? null : parts.value.ladderOf(today.value),
);

/** Loads the code, and lets the choice of an end go by today's lengths. */
export async function startToday(): Promise<void> {
  const loadedParts = await loadPerformance();
  parts.value = loadedParts;
  effect(() => {
    const given = dayGiven.value;
    lengthNeededM.value = given === null ? undefined : loadedParts.lengthsNeeded(given);
  });
}

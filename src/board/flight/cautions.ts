/** What speaks against the runway in use, as every place shows it. */

import { computed } from '@preact/signals';
import { type Caution, isStopping, notAccepted } from '../../core';
import { day, documents, sortie } from '../board';
import { aircraftText, fieldText, type Shown } from '../language';
import { offered } from '../steps/stepping';

/** A caution with the words of a document in the language of the page. */
export interface ShownCaution extends Caution {
  /** It stops, and nobody went on in spite of it. */
  readonly stops: boolean;
  /** It stops, but the pilot went on. */
  readonly accepted: boolean;
  /** A document's own words in it; null if there are none. */
  readonly written: Shown | null;
}

/** The words a document has for what a caution is about. */
function writtenIn({ code, value, limit }: Caution): Shown | null {
  if (code === 'closed') return fieldText(String(value ?? ''));
  if (code !== 'station-over') return null;
  const station = documents.value.aircraft?.load?.stations.find(({ id }) => id === limit);
  return aircraftText(station?.name ?? String(limit ?? ''));
}

/**
 * All cautions, worst first. On the roll nothing new appears: those the pilot went on with stay.
 */
export const cautions = computed((): readonly ShownCaution[] => {
  const verdict = day.verdict();
  const { accepted } = sortie.value;
  const open = new Set(notAccepted(verdict, accepted));
  const shown = verdict.cautions.map((caution) => ({
    ...caution,
    stops: open.has(caution),
    accepted: isStopping(caution) && !open.has(caution),
    written: writtenIn(caution),
  }));
  if (offered.value?.rolling !== true) return shown;
  return shown
    .filter(({ code }) => accepted.some((one) => one.code === code))
    .map((caution) => ({ ...caution, stops: false, accepted: true }));
});

/** Whether a runway other than the one in question is within limits. */
export const isOtherWithin = computed((): boolean => {
  const about = day.verdict().end;
  const ends = day.wind().ranked?.ends ?? [];
  return ends.some(({ designator, withinLimits }) => withinLimits && designator !== about);
});

/** Said of a runway nobody has selected, these would only repeat what Wind asks for. */
const ASKED_ANYWAY: readonly Caution['code'][] = [
  'no-field',
  'no-limits',
  'no-variation',
  'no-wind',
];

/**
 * Those worth a line over every place. Which runway is best is said beside, with a key; before one
 * is selected only what stops on any runway counts.
 */
export const cautionsOverhead = computed((): readonly ShownCaution[] => {
  const isSelected = day.wind().using !== null;
  return cautions.value.filter(
    ({ code, stops, accepted }) =>
      code !== 'not-best' &&
      // Numbers off the book are the aircraft's, whatever the runway.
      (isSelected || code === 'off-book' || ((stops || accepted) && !ASKED_ANYWAY.includes(code))),
  );
});

/** Whether the line over every place says what stops, and offers the best runway beside it. */
export const stopsOverhead = computed(() => cautionsOverhead.value[0]?.stops === true);

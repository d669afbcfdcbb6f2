/** What the day is like: the whole report, the sun, where the winds lead. */

import { computed, effect, signal, untracked } from '@preact/signals';

import { type Designator, type Parts, present, reportNotes, type WindReport } from '../core';
import { day, draft, sortieMinute } from './board';
import { parts } from './dayParts';

import { chooseTextsWith } from './wind/windEntry';

const reader = computed(() => present(parts.reports.value));

/** The whole of what stands in the entry, for the meaning of each group. */
export const shownReport = computed(
  () => reader.value?.readReport(draft.value || (day.enteredText()?.text ?? '')) ?? null,
);

/** Whose report it is and how old, if that is not what one would expect. */
export const notes = computed(() => {
  const read = day.report();
  const sinceMs = day.issuedMs();
  const ageMin = sinceMs === null ? null : (sortieMinute.value - sinceMs) / 60_000;
  return read === null ? [] : reportNotes(read.station, day.settled().field?.code ?? null, ageMin);
});

/**
 * Which rule puts one end above another; null until the code is loaded, or without a wind to judge.
 */
export function compare(a: Designator, b: Designator) {
  const { question } = day.wind();
  return reader.value === null || question === null
    ? null
    : reader.value.compareEnds(question, a, b);
}

/** Another report in a pasted text, to use instead. */
export interface OfferedReport {
  readonly station: string | null;
  readonly text: string;
}

/** The reports of the last text taken, newest for the field first. */
const together = signal<readonly OfferedReport[]>([]);

/** The other reports that came with the one in use. */
export const otherReports = computed((): readonly OfferedReport[] => {
  const inUse = day.enteredText()?.text;
  const isAmong = together.value.some(({ text }) => text === inUse);
  return isAmong ? together.value.filter(({ text }) => text !== inUse) : [];
});

/**
 * How many reports of one text can be chosen from: a pilot compares a few, a bulletin holds
 * hundreds.
 */
const MOST_TOGETHER = 6;

/**
 * Of several reports, takes the newest for the field, with the newest forecast pasted with it; the
 * other reports are offered.
 */
function newestOf(reading: Parts['reports'], text: string): string {
  const { reports } = reading.readTokens(text);
  const { field } = day.settled();
  const near = new Date(sortieMinute.value);
  const newest =
    reading.newestFor(reports, field?.code ?? null, near) ?? reading.newestFor(reports, null, near);
  const chosen = newest === null ? undefined : reports[newest];
  const expected = newestForecast(reading, reports, chosen?.station ?? field?.code ?? null, near);
  if (reports.length < 2 || (chosen ?? expected) === undefined) return text;
  const textOf = ({ spans }: WindReport) =>
    text.slice(spans[0]?.at[0] ?? 0, spans.at(-1)?.at[1] ?? 0).trim();
  const taken = [chosen, expected]
    .filter((one) => one !== undefined)
    .map(textOf)
    .join('\n');
  const others = reports.filter((one) => one !== chosen && one.kind === 'report');
  const byText = new Map([[taken, { station: chosen?.station ?? null, text: taken }]]);
  for (const one of others) {
    if (byText.size === MOST_TOGETHER) break;
    byText.set(textOf(one), { station: one.station, text: textOf(one) });
  }
  together.value = [...byText.values()];
  return taken;
}

/** The forecast issued last, of this station before any other; undefined without one. */
function newestForecast(
  { issuedAt }: Parts['reports'],
  reports: readonly WindReport[],
  station: string | null,
  near: Date,
): WindReport | undefined {
  const all = reports.filter(({ kind }) => kind === 'forecast');
  const own = all.filter((one) => one.station === station);
  const issuedMs = ({ issued }: WindReport) =>
    issued === null ? Number.NEGATIVE_INFINITY : issuedAt(issued, near).getTime();
  return (own.length > 0 ? own : all).reduce<WindReport | undefined>(
    (newest, one) => (newest === undefined || issuedMs(one) >= issuedMs(newest) ? one : newest),
    undefined,
  );
}

/** Once the reader is loaded, lets a report be chosen from a text. */
export function startChoosing(): void {
  effect(() => {
    const reading = reader.value;
    if (reading === null) return;
    untracked(() => chooseTextsWith((text) => newestOf(reading, text)));
  });
}

/** What the day is like: the whole report, the sun, where the winds lead. */

import { computed, effect, signal, untracked } from '@preact/signals';

import { type Designator, type Parts, present, type WindReport } from '../core';
import { day, draft, enteredText, issuedMs, settled, sortieMinute, wind } from './board';
import { parts } from './dayParts';

import { chooseTextsWith } from './wind/windEntry';

const reader = computed(() => present(parts.reports.value));

/** What the report in use means for the day; null where the wind in use is not a report. */
export const weather = computed(day.weather);

/** What stands in the entry, read in whole: for what each of its groups means. */
export const shownReport = computed(
  () => reader.value?.readReport(draft.value || (enteredText.value?.text ?? '')) ?? null,
);

/** What must be known of the report before it is believed. */
export type ReportNote =
  | { readonly code: 'other-field'; readonly station: string; readonly field: string }
  | { readonly code: 'old' | 'ahead'; readonly minutes: number };

/** A report older than this, or so far ahead of the clock, is pointed out, minutes: reports come each half hour or hour. */
const OLD_MIN = 90;

/** Whose and how old the report is, where that is not as one would think. */
export const reportNotes = computed((): readonly ReportNote[] => {
  const read = day.report();
  const field = settled.value.field?.code ?? null;
  if (read === null) return [];
  const notes: ReportNote[] = [];
  if (field !== null && read.station !== null && read.station !== field) {
    notes.push({ code: 'other-field', station: read.station, field });
  }
  if (issuedMs.value !== null) {
    const minutes = Math.round((sortieMinute.value - issuedMs.value) / 60_000);
    if (minutes > OLD_MIN) notes.push({ code: 'old', minutes });
    if (minutes < -OLD_MIN) notes.push({ code: 'ahead', minutes: -minutes });
  }
  return notes;
});

/** Sunrise, sunset and civil twilight at the field, on the sortie's day. */
export const sunToday = computed(day.sunToday);

/** Where the winds entered so far lead. */
export const outlook = computed(day.outlook);

/** Which rule puts one end above another; null until the code is there, or without a wind to judge. */
export function compare(a: Designator, b: Designator) {
  const { question } = wind.value;
  return reader.value === null || question === null
    ? null
    : reader.value.compareEnds(question, a, b);
}

/** Another report in a pasted text, to be taken instead. */
export interface OfferedReport {
  readonly station: string | null;
  readonly text: string;
}

/** The reports of the text that was taken last, the newest for the field first. */
const together = signal<readonly OfferedReport[]>([]);

/** The other reports that came together with the one in use. */
export const offered = computed((): readonly OfferedReport[] => {
  const inUse = enteredText.value?.text;
  const isAmong = together.value.some(({ text }) => text === inUse);
  return isAmong ? together.value.filter(({ text }) => text !== inUse) : [];
});

/** How many reports of one text are kept to choose from: a pilot compares a few, a bulletin holds hundreds. */
const MOST_TOGETHER = 6;

/** Of several reports the newest for the field; the others are offered. */
function newestOf(reading: Parts['reports'], text: string): string {
  const { reports } = reading.readTokens(text);
  const { field } = settled.value;
  const near = new Date(sortieMinute.value);
  const newest =
    reading.newestFor(reports, field?.code ?? null, near) ?? reading.newestFor(reports, null, near);
  const chosen = newest === null ? undefined : reports[newest];
  if (reports.length < 2 || chosen === undefined) return text;
  const textOf = ({ spans }: WindReport) =>
    text.slice(spans[0]?.at[0] ?? 0, spans.at(-1)?.at[1] ?? 0).trim();
  const others = reports.filter((one) => one !== chosen && one.kind === 'report');
  const byText = new Map<string, OfferedReport>();
  for (const one of [chosen, ...others]) {
    if (byText.size === MOST_TOGETHER) break;
    byText.set(textOf(one), { station: one.station, text: textOf(one) });
  }
  together.value = [...byText.values()];
  return textOf(chosen);
}

/** Lets a text be chosen from once the reader is there. */
export function startChoosing(): void {
  effect(() => {
    const reading = reader.value;
    if (reading === null) return;
    untracked(() => chooseTextsWith((text) => newestOf(reading, text)));
  });
}

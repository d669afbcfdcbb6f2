/**
 * What the day is like, once the first answer stands: the whole report, the sun on each end, where
 * the winds lead. Comes with the code that works it out.
 */

import { computed, effect, signal } from '@preact/signals';
import {
  type Designator,
  endsOf,
  loadDay,
  type Report,
  type WeatherBrief,
  type WindReport,
} from '../core';
import {
  draft,
  enteredText,
  issuedMs,
  lowSunOn,
  preferenceApplies,
  purpose,
  settled,
  sortie,
  sortieMinute,
} from './board';
import { chooseTextsWith } from './windEntry';

type Day = Awaited<ReturnType<typeof loadDay>>;

const day = signal<Day | null>(null);

/** The report in use, read in whole; null where the wind in use is not a report, or none is. */
export const report = computed((): Report | null => {
  const read = day.value?.readReport(enteredText.value?.text ?? '') ?? null;
  return read?.kind === 'report' ? read : null;
});

/** What stands in the entry, read in whole: for what each of its groups means. */
export const shownReport = computed(
  () => day.value?.readReport(draft.value || (enteredText.value?.text ?? '')) ?? null,
);

/** What the report in use means for the day. */
export const weather = computed((): WeatherBrief | null =>
  day.value === null || report.value === null
    ? null
    : day.value.weatherStage(report.value, settled.value),
);

/** What must be known of the report before it is believed. */
export type ReportNote =
  | { readonly code: 'other-field'; readonly station: string; readonly field: string }
  | { readonly code: 'old' | 'ahead'; readonly minutes: number };

/** A report older than this, or so far ahead of the clock, is pointed out, minutes: reports come each half hour or hour. */
const OLD_MIN = 90;

/** Whose and how old the report is, where that is not as one would think. */
export const reportNotes = computed((): readonly ReportNote[] => {
  const read = report.value;
  const field = settled.value.field?.code ?? null;
  if (read === null || day.value === null) return [];
  const notes: ReportNote[] = [];
  if (field !== null && read.station !== null && read.station !== field) {
    notes.push({ code: 'other-field', station: read.station, field });
  }
  if (read.issued !== null) {
    const at = day.value.issuedAt(read.issued, new Date(sortieMinute.value));
    const minutes = Math.round((sortieMinute.value - at.getTime()) / 60_000);
    if (minutes > OLD_MIN) notes.push({ code: 'old', minutes });
    if (minutes < -OLD_MIN) notes.push({ code: 'ahead', minutes: -minutes });
  }
  return notes;
});

/** Sunrise, sunset and civil twilight at the field, on the sortie's day. */
export const sunToday = computed(() => {
  const { field } = settled.value;
  return day.value === null || field === null
    ? null
    : day.value.sunDay(field.place, new Date(sortieMinute.value));
});

/** Where the winds entered so far lead. */
export const outlook = computed(
  () =>
    day.value?.outlookStage(
      sortie.value.winds.map(({ text, north, at }) => ({ text, north, timeMs: at.sortieMs })),
      settled.value,
      purpose.value,
      new Date(sortieMinute.value),
    ) ?? null,
);

/** Which rule puts one end above another; null until the code is there, or without a wind to judge. */
export function compare(a: Designator, b: Designator) {
  const { question } = comparable.value;
  return day.value === null || question === null ? null : day.value.compareEnds(question, a, b);
}

const comparable = computed(() => {
  const read = enteredText.value;
  const question =
    day.value?.questionAbout(settled.value, read, purpose.value, new Date(sortieMinute.value)) ??
    null;
  return { question };
});

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
function newestOf(parts: Day, text: string): string {
  const { reports } = parts.readTokens(text);
  const { field } = settled.value;
  const near = new Date(sortieMinute.value);
  const newest =
    parts.newestFor(reports, field?.code ?? null, near) ?? parts.newestFor(reports, null, near);
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

/** Loads the code, and lets what the first answer went without have its say. */
export async function startDay(): Promise<void> {
  const parts = await loadDay();
  day.value = parts;
  chooseTextsWith((text) => newestOf(parts, text));
  effect(() => {
    const now = weather.value?.now;
    const { surface } = settled.value;
    preferenceApplies.value = parts.preferenceApplies({
      purpose: purpose.value,
      surface,
      visibilityM: now?.visibilityM ?? null,
      ceilingFt: now?.ceilingFt ?? null,
      windShear: now?.windShear ?? false,
      thunderstorm: now?.thunderstorm ?? false,
    });
  });
  effect(() => {
    const issued = report.value?.issued ?? null;
    const near = new Date(sortieMinute.value);
    issuedMs.value = issued === null ? null : parts.issuedAt(issued, near).getTime();
  });
  effect(() => {
    const { field } = settled.value;
    const at = new Date(sortieMinute.value);
    if (field === null) return;
    lowSunOn.value = new Map(
      endsOf(field).map(({ designator, heading }) => [
        designator,
        parts.lowSunAhead(field.place, heading, at),
      ]),
    );
  });
}

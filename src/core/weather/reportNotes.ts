/** What must be known of a report before it is believed: whose it is, and how old. */

/** What is not as one would think. */
export type ReportNote =
  | { readonly code: 'other-field'; readonly station: string; readonly field: string }
  | { readonly code: 'old' | 'ahead'; readonly minutes: number };

/** A report older than this, or so far ahead of the clock, is pointed out, minutes: reports come each half hour or hour. */
const OLD_MIN = 90;

/**
 * Whose and how old a report is, where that is not as one would think. `station` is whom it names,
 * `field` the field chosen, `ageMin` its age in minutes, negative when it is of later; each null
 * where it is not known.
 */
export function reportNotes(
  station: string | null,
  field: string | null,
  ageMin: number | null,
): readonly ReportNote[] {
  const notes: ReportNote[] = [];
  if (field !== null && station !== null && station !== field) {
    notes.push({ code: 'other-field', station, field });
  }
  const minutes = Math.round(ageMin ?? 0);
  if (minutes > OLD_MIN) notes.push({ code: 'old', minutes });
  if (minutes < -OLD_MIN) notes.push({ code: 'ahead', minutes: -minutes });
  return notes;
}

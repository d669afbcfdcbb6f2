/** What to know of a report before believing it: whose it is, and how old. */

export type ReportNote =
  | { readonly code: 'other-field'; readonly station: string; readonly field: string }
  | { readonly code: 'old' | 'ahead'; readonly minutes: number };

/** Pointed out beyond this, minutes, either way: reports come every half hour or hour. */
const OLD_MIN = 90;

/**
 * Points out a report of another field, or an old one. `station` is the one it names, `field` the
 * field chosen, `ageMin` its age in minutes, negative if it lies ahead; each null if unknown.
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

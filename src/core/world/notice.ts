/** What a field taken from the set says of where it comes from: it goes wherever the field goes. */

/** With which the notice begins, by which such a field is known again. */
const BEGINS = 'From OurAirports, ';

/** The notice in English, and in the other languages of the app; `date` is that of the set. ODbL 1.0, 4.3. */
export const noticeOf = (date: string) => ({
  en: `${BEGINS}${date}, ODbL 1.0 (opendatacommons.org/licenses/odbl). Not for navigation.`,
  de: `Von OurAirports, ${date}, ODbL 1.0 (opendatacommons.org/licenses/odbl). Nicht zur Navigation.`,
});

/** The date of the set that a field was taken from, ISO 8601; null if it is from no set. */
export function takenOn({ about }: { readonly about: string }): string | null {
  if (!about.startsWith(BEGINS)) return null;
  return /^\d{4}-\d{2}-\d{2}/.exec(about.slice(BEGINS.length))?.[0] ?? null;
}

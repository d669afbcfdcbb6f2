/**
 * Numbers as they are said on the radio: digit by digit, runways with left, centre and right.
 * ICAO Annex 10 Vol. II, 5.2.1.4.
 */

const DIGITS = ['zero', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine'];
const SIDES: Readonly<Record<string, string>> = { L: 'left', C: 'centre', R: 'right' };

/** A number or a designator, digit by digit: `28L` is "two eight left". Other letters stand as they are. */
export const spokenDigits = (text: string): string =>
  [...text]
    .map((letter) => (/\d/.test(letter) ? DIGITS[Number(letter)] : (SIDES[letter] ?? letter)))
    .join(' ');

/** A heading in three digits, one by one; north is three six zero. */
export function spokenHeading(deg: number): string {
  const whole = ((Math.round(deg) + 359) % 360) + 1;
  return spokenDigits(String(whole).padStart(3, '0'));
}

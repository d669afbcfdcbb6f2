/**
 * How things are said on the radio, on a page in any language: digit by digit, letters by the
 * spelling alphabet.
 * ICAO Annex 10, vol. II, 5.2.1.3 and 5.2.1.4; Doc 9432, ch. 2.
 */

const DIGITS = ['zero', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine'];

/** The spelling alphabet. Annex 10, vol. II, figure 5-1. */
const ALPHABET =
  'Alfa Bravo Charlie Delta Echo Foxtrot Golf Hotel India Juliett Kilo Lima Mike November Oscar Papa Quebec Romeo Sierra Tango Uniform Victor Whiskey X-ray Yankee Zulu'.split(
    ' ',
  );

const SIDES: Readonly<Record<string, string>> = { L: 'left', C: 'centre', R: 'right' };

const saidLetter = (letter: string): string =>
  ALPHABET[letter.toUpperCase().charCodeAt(0) - 'A'.charCodeAt(0)] ?? letter;

/** A character as it is said; null for what is not said, such as a hyphen. */
function saidCharacter(character: string): string | null {
  if (/\d/.test(character)) return DIGITS[Number(character)] ?? null;
  if (character === '.') return 'decimal';
  return /[A-Za-z]/.test(character) ? saidLetter(character) : null;
}

/** Every character by itself: `118.7` is "one one eight decimal seven". */
export const saidEach = (text: string): string =>
  [...text].flatMap((character) => saidCharacter(character) ?? []).join(' ');

/** `09L` is "zero nine left", and `01/19` "zero one one nine". */
export const saidRunway = (name: string): string =>
  name
    .split('/')
    .map((end) => {
      const side = SIDES[end.slice(2)];
      return saidEach(end.slice(0, 2)) + (side === undefined ? '' : ` ${side}`);
    })
    .join(' ');

/** A direction in three digits, one by one; north is three six zero. */
export function saidDirection(deg: number): string {
  const whole = ((Math.round(deg) + 359) % 360) + 1;
  return saidEach(String(whole).padStart(3, '0'));
}

/** A whole number, digit by digit. */
export const saidDigits = (value: number): string =>
  `${value < 0 ? 'minus ' : ''}${saidEach(String(Math.abs(Math.round(value))))}`;

/** A taxiway or holding point: `B` is "Bravo", `K2` "Kilo two". A word stays a word. */
export const saidPoint = (name: string): string =>
  name
    .trim()
    .split(/\s+/)
    .map((word) => (/^[A-Z]{1,2}\d*$/.test(word) || /^\d+$/.test(word) ? saidEach(word) : word))
    .join(' ');

/** A stand: `Stand 6` is "stand six"; one that has a name goes by it. */
export const saidStand = (name: string): string => saidPoint(name).replace(/^Stand\b/, 'stand');

/**
 * A callsign: words as words, numbers digit by digit, registrations letter by letter. Annex 10,
 * vol. II, 5.2.1.7.2.1: `Tallow 12` is "Tallow one two", `X-ABCD` "X-ray Alfa Bravo Charlie Delta".
 */
export function saidCallsign(callsign: string): string {
  const parts = callsign.trim().split(/\s+/);
  return parts
    .map((part, index) => {
      const isWord = /^[A-Za-z]{3,}$/.test(part);
      const hasSmall = /[a-z]/.test(part);
      const beforeNumber = /\d/.test(parts[index + 1] ?? '');
      if (isWord && hasSmall) return part;
      if (isWord && beforeNumber) return part.charAt(0) + part.slice(1).toLowerCase();
      return saidEach(part);
    })
    .join(' ');
}

/** A distance of whole hundreds, as it is said: 1 400 is "one thousand four hundred". Annex 10, vol. II, 5.2.1.4.1.2. */
export function saidHundreds(value: number): string {
  const hundreds = Math.round(value / 100);
  const thousands = Math.floor(hundreds / 10);
  const said = [
    thousands > 0 ? `${saidEach(String(thousands))} thousand` : '',
    hundreds % 10 > 0 ? `${saidEach(String(hundreds % 10))} hundred` : '',
  ].filter(Boolean);
  return said.join(' ') || 'zero';
}

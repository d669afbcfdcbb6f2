/**
 * Saying things piece by piece: digit by digit, letters by the spelling alphabet, in any language.
 */

/** The words a language uses. */
export interface SpellingWords {
  /** From zero to nine. */
  readonly digits: readonly string[];
  /** The decimal separator, as said. */
  readonly point: string;
  readonly minus: string;
  readonly thousand: string;
  readonly hundred: string;
  /** Which of several parallel runways. */
  readonly sides: Readonly<Record<string, string>>;
  readonly stand: string;
}

/** The spelling alphabet, the same in every language. ICAO Annex 10, vol. II, figure 5-1. */
const ALPHABET =
  'Alfa Bravo Charlie Delta Echo Foxtrot Golf Hotel India Juliett Kilo Lima Mike November Oscar Papa Quebec Romeo Sierra Tango Uniform Victor Whiskey X-ray Yankee Zulu'.split(
    ' ',
  );

const saidLetter = (letter: string): string =>
  ALPHABET[letter.toUpperCase().charCodeAt(0) - 'A'.charCodeAt(0)] ?? letter;

/** How a language with these words says things. */
export function spellingWith(words: SpellingWords) {
  const digit = (value: number): string => words.digits[value] ?? '';

  /** A character as said; null if it isn't said, such as a hyphen. */
  function saidCharacter(character: string): string | null {
    if (/\d/.test(character)) return digit(Number(character));
    if (character === '.') return words.point;
    return /[A-Za-z]/.test(character) ? saidLetter(character) : null;
  }

  /** Every character by itself: `118.7` is "one one eight decimal seven". */
  const saidEach = (text: string): string =>
    [...text].flatMap((character) => saidCharacter(character) ?? []).join(' ');

  /** `09L` is "zero nine left", and `01/19` "zero one one nine". */
  const saidRunway = (name: string): string =>
    name
      .split('/')
      .map((end) => {
        const side = words.sides[end.slice(2)];
        return saidEach(end.slice(0, 2)) + (side === undefined ? '' : ` ${side}`);
      })
      .join(' ');

  /** A direction in three digits, one by one; north is three six zero. */
  function saidDirection(deg: number): string {
    const whole = ((Math.round(deg) + 359) % 360) + 1;
    return saidEach(String(whole).padStart(3, '0'));
  }

  /** A whole number, digit by digit. */
  const saidDigits = (value: number): string =>
    `${value < 0 ? `${words.minus} ` : ''}${saidEach(String(Math.abs(Math.round(value))))}`;

  /** A taxiway or holding point: `B` is "Bravo", `K2` "Kilo two". A word stays a word. */
  const saidPoint = (name: string): string =>
    name
      .trim()
      .split(/\s+/)
      .map((word) => (/^[A-Z]{1,2}\d*$/.test(word) || /^\d+$/.test(word) ? saidEach(word) : word))
      .join(' ');

  /** A stand: `Stand 6` is "stand six"; one that has a name goes by it. */
  const saidStand = (name: string): string => saidPoint(name).replace(/^Stand\b/, words.stand);

  /**
   * A callsign: words, numbers digit by digit, registrations letter by letter. Annex 10,
   * vol. II, 5.2.1.7.2.1: `Tallow 12` is "Tallow one two", `X-ABCD` "X-ray Alfa Bravo Charlie
   * Delta".
   */
  function saidCallsign(callsign: string): string {
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

  /**
   * A distance in whole hundreds, as said: 1 400 is "one thousand four hundred". Annex 10, vol. II,
   * 5.2.1.4.1.2.
   */
  function saidHundreds(value: number): string {
    const hundreds = Math.round(value / 100);
    const thousands = Math.floor(hundreds / 10);
    const said = [
      thousands > 0 ? `${saidEach(String(thousands))} ${words.thousand}` : '',
      hundreds % 10 > 0 ? `${digit(hundreds % 10)} ${words.hundred}` : '',
    ].filter(Boolean);
    return said.join(' ') || digit(0);
  }

  /**
   * A distance: whole hundreds as such, anything else digit by digit, so that 1 050 is "one zero five
   * zero". Annex 10, vol. II, 5.2.1.4.1.
   */
  const saidDistance = (value: number): string =>
    value % 100 === 0 ? saidHundreds(value) : saidDigits(value);

  return {
    ...{ saidEach, saidRunway, saidDirection, saidDigits },
    ...{ saidPoint, saidStand, saidCallsign, saidHundreds, saidDistance },
  };
}

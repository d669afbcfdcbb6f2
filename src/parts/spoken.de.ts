/**
 * How things are said when they are read aloud in German: digit by digit, letters by the spelling
 * alphabet. What is said on the radio stays English.
 */

import { saidEach as saidInEnglish } from './radio/spelling';
import type * as english from './spoken.en';

/** Zwo, so that it is not taken for drei. */
const DIGITS = ['null', 'eins', 'zwo', 'drei', 'vier', 'fünf', 'sechs', 'sieben', 'acht', 'neun'];

const SIDES: Readonly<Record<string, string>> = { L: 'links', C: 'Mitte', R: 'rechts' };

/** A character as it is said; null for what is not said, such as a hyphen. The spelling alphabet is the same. */
function saidCharacter(character: string): string | null {
  if (/\d/.test(character)) return DIGITS[Number(character)] ?? null;
  return character === '.' ? 'Komma' : saidInEnglish(character) || null;
}

/** Every character by itself: `118.7` is "eins eins acht Komma sieben". */
export const saidEach: typeof english.saidEach = (text) =>
  [...text].flatMap((character) => saidCharacter(character) ?? []).join(' ');

/** `09L` is "null neun links", and `01/19` "null eins eins neun". */
export const saidRunway: typeof english.saidRunway = (name) =>
  name
    .split('/')
    .map((end) => {
      const side = SIDES[end.slice(2)];
      return saidEach(end.slice(0, 2)) + (side === undefined ? '' : ` ${side}`);
    })
    .join(' ');

/** A direction in three digits, one by one; north is drei sechs null. */
export const saidDirection: typeof english.saidDirection = (deg) => {
  const whole = ((Math.round(deg) + 359) % 360) + 1;
  return saidEach(String(whole).padStart(3, '0'));
};

/** A whole number, digit by digit. */
export const saidDigits: typeof english.saidDigits = (value) =>
  `${value < 0 ? 'minus ' : ''}${saidEach(String(Math.abs(Math.round(value))))}`;

/** A taxiway or holding point: `B` is "Bravo", `K2` "Kilo zwo". A word stays a word. */
export const saidPoint: typeof english.saidPoint = (name) =>
  name
    .trim()
    .split(/\s+/)
    .map((word) => (/^[A-Z]{1,2}\d*$/.test(word) || /^\d+$/.test(word) ? saidEach(word) : word))
    .join(' ');

/** A stand: `Stand 6` is "Standplatz sechs"; one that has a name goes by it. */
export const saidStand: typeof english.saidStand = (name) =>
  saidPoint(name).replace(/^Stand\b/, 'Standplatz');

/** A callsign: words as words, numbers digit by digit, registrations letter by letter. */
export const saidCallsign: typeof english.saidCallsign = (callsign) => {
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
};

/** A distance of whole hundreds, as it is said: 1 400 is "eins tausend vier hundert". */
export const saidHundreds: typeof english.saidHundreds = (value) => {
  const hundreds = Math.round(value / 100);
  const thousands = Math.floor(hundreds / 10);
  const said = [
    thousands > 0 ? `${saidEach(String(thousands))} tausend` : '',
    hundreds % 10 > 0 ? `${saidEach(String(hundreds % 10))} hundert` : '',
  ].filter(Boolean);
  return said.join(' ') || 'null';
};

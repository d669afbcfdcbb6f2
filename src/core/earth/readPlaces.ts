/** Reading places as people write, print and paste them: latitude and longitude in one text. */

import type { Place } from './place';

/** Which of the two coordinates. */
type Axis = 'lat' | 'lon';

/** Why a text is no place. `text` is the part that is wrong, as it was understood. */
export type PlaceProblem =
  | { readonly code: 'unread' }
  /** A latitude without its longitude, or the other way round. */
  | { readonly code: 'half' }
  /** Two latitudes in a row, or two longitudes. */
  | { readonly code: 'same-axis' }
  | { readonly code: 'out-of-range'; readonly axis: Axis; readonly text: string }
  /** The first number is beyond 90° and the second is not: longitude seems to come first. */
  | { readonly code: 'swapped' }
  | { readonly code: 'sixty'; readonly text: string }
  /** Digits run together that may be read in two ways. */
  | { readonly code: 'digits'; readonly axis: Axis; readonly text: string }
  /** Digits run together without a letter or a sign that says on which side of the equator. */
  | { readonly code: 'no-letter'; readonly text: string }
  /** A comma that may stand for a decimal point or between the two. */
  | { readonly code: 'comma' }
  /** O is east in German and west in French, Italian and Spanish. */
  | { readonly code: 'letter-o' };

/** The places read, at least one; or why there is none. */
export type PlacesRead =
  | { readonly places: readonly Place[]; readonly problem: null }
  | { readonly places: null; readonly problem: PlaceProblem };

/** Longer texts hold no place or two. */
export const LONGEST_PLACES = 160;

const MOST_DEG: Readonly<Record<Axis, number>> = { lat: 90, lon: 180 };

/** What says which axis, and on which side of its zero. */
const LETTERS: Readonly<Record<string, readonly [Axis, 1 | -1]>> = {
  N: ['lat', 1],
  S: ['lat', -1],
  E: ['lon', 1],
  W: ['lon', -1],
};

/** Thrown from however deep in a text, and caught where reading began. */
class Unread extends Error {
  constructor(readonly problem: PlaceProblem) {
    super(problem.code);
  }
}

const refuse = (problem: PlaceProblem): never => {
  throw new Unread(problem);
};

/**
 * One place or several, latitude before longitude unless letters say otherwise (ISO 6709), north
 * and east positive. Read are decimal degrees; degrees, minutes and seconds with or without their
 * marks; digits run together as AIPs, charts and flight plans print them (`523541N0043606E`,
 * `N5235.688 E00436.1`); ISO 6709's own strings (`+52.5948+004.6017/`); decimal commas. What can
 * be read in two ways is refused with the reason, never guessed.
 */
export function readPlaces(text: string): PlacesRead {
  try {
    if (text.length > LONGEST_PLACES) refuse({ code: 'unread' });
    return { places: placesIn(text), problem: null };
  } catch (error) {
    if (error instanceof Unread) return { places: null, problem: error.problem };
    throw error;
  }
}

/** One coordinate as written: its numbers, as typed, and what is known of its axis. */
interface Written {
  readonly numbers: readonly string[];
  /** It has a degree mark: its first number is degrees, however many digits it has. */
  readonly marked: boolean;
  readonly sign: 1 | -1 | null;
  readonly axis: Axis | null;
  readonly letter: string | null;
}

function placesIn(text: string): readonly Place[] {
  const iso = isoString(text);
  const written = iso ?? grouped(tokensOf(plain(text)));
  if (written.length === 0) refuse({ code: 'unread' });
  if (written.length % 2 === 1) refuse({ code: 'half' });
  return Array.from({ length: written.length / 2 }, (_, pair) => {
    const [one, other] = [written[2 * pair], written[2 * pair + 1]];
    return one && other ? placeOf(one, other) : refuse({ code: 'half' });
  });
}

function placeOf(one: Written, other: Written): Place {
  const first = one.axis ?? opposite(other.axis ?? 'lon');
  const second = other.axis ?? opposite(first);
  if (first === second) refuse({ code: 'same-axis' });
  const isBare = one.axis === null && other.axis === null && !isRunTogether(one);
  const size = Math.abs(Number(one.numbers[0]));
  if (isBare && size > 90 && size <= 180 && Math.abs(Number(other.numbers[0])) <= 90)
    refuse({ code: 'swapped' });
  const [a, b] = [degrees(one, first), degrees(other, second)];
  return first === 'lat' ? { latDeg: a, lonDeg: b } : { latDeg: b, lonDeg: a };
}

const opposite = (axis: Axis): Axis => (axis === 'lat' ? 'lon' : 'lat');

/** More than three digits before the point: degrees with minutes, and perhaps seconds. */
const isRunTogether = ({ numbers, marked }: Written): boolean =>
  numbers.length === 1 && !marked && /^\d{4}/.test(numbers[0] ?? '');

/** The degrees of a coordinate, by its sign or letter. */
function degrees(written: Written, axis: Axis): number {
  const { numbers, sign, letter } = written;
  const shown = `${letter ?? ''}${sign === -1 && letter === null ? '-' : ''}${numbers.join(' ')}`;
  const parts = isRunTogether(written) ? splitUp(written, axis, shown) : numbers;
  const [deg = '', minutes, seconds] = parts;
  if (parts.length > 3 || parts.slice(0, -1).some((part) => part.includes('.')))
    refuse({ code: 'unread' });
  const [m, s] = [Number(minutes ?? 0), Number(seconds ?? 0)];
  if (m >= 60 || s >= 60) refuse({ code: 'sixty', text: shown });
  const size = Number(deg) + m / 60 + s / 3600;
  if (size > MOST_DEG[axis]) refuse({ code: 'out-of-range', axis, text: shown });
  return size === 0 ? 0 : size * (sign ?? 1);
}

/** Two digits of degrees for a latitude, three for a longitude; then minutes; then seconds. */
function splitUp({ numbers, letter, sign }: Written, axis: Axis, text: string): readonly string[] {
  if (letter === null && sign === null) refuse({ code: 'no-letter', text });
  const form =
    axis === 'lat'
      ? /^(\d{2})(\d{2}(?:\.\d+)?)$|^(\d{2})(\d{2})(\d{2}(?:\.\d+)?)$/
      : /^(\d{3})(\d{2}(?:\.\d+)?)$|^(\d{3})(\d{2})(\d{2}(?:\.\d+)?)$/;
  const found = form.exec(numbers[0] ?? '');
  const parts = (found ?? []).slice(1).filter((part) => part !== undefined);
  // `43606E` lacks its zeros: there are no 436°.
  if (parts.length === 0 || Number(parts[0]) > MOST_DEG[axis])
    refuse({ code: 'digits', axis, text });
  return parts;
}

/**
 * ISO 6709, annex H: `+DDMMSS.S-DDDMMSS.S/`, a height and the name of the reference system after
 * it. Null if the text is not of that form.
 */
function isoString(text: string): readonly Written[] | null {
  const form =
    /^([+-])((?:\d{2}){1,3}(?:\.\d+)?)([+-])(\d{3}(?:\d{2}){0,2}(?:\.\d+)?)(?:[+-][\d.]+)?(?:CRS\w+)?\/?$/;
  const [, latSign, lat, lonSign, lon] =
    form.exec(text.trim().replaceAll('−', '-').replaceAll(',', '.')) ?? [];
  if (lat === undefined || lon === undefined) return null;
  const as = (axis: Axis, sign: string | undefined, digits: string): Written => ({
    numbers: [digits],
    marked: false,
    sign: sign === '-' ? -1 : 1,
    axis,
    letter: null,
  });
  return [as('lat', latSign, lat), as('lon', lonSign, lon)];
}

/** Words for letters, and labels that say which coordinate follows. */
const WORDS: readonly (readonly [RegExp, string])[] = [
  // The scheme of RFC 5870, and what it allows after the place.
  [/^GEO:([^;?]*).*/s, '$1'],
  // A label before the threshold's own coordinates, as in the tables of an AIP.
  [/\b(?:RWY|THR|PISTE|SCHWELLE)\s*\d{1,2}[LCR]?\b/g, ' ; '],
  [/\b(?:NORTH|NORD)\b/g, 'N'],
  [/\b(?:SOUTH|SÜD)\b/g, 'S'],
  [/\b(?:EAST|OST)\b/g, 'E'],
  [/\bWEST\b/g, 'W'],
  [/\b(?:LATITUDE|LAT|BREITE)\b[.:=]?/g, ' lat '],
  [/\b(?:LONGITUDE|LONG|LON|LNG|LÄNGE)\b[.:=]?/g, ' lon '],
];

/** One way of writing for each sign. */
function plain(text: string): string {
  const upper = text
    .normalize('NFC')
    .toUpperCase()
    .replace(/[\u00a0\u2000-\u200a\u202f\t]/g, ' ')
    .replace(/[−–‐‑]/g, '-')
    .replace(/[º˚∘]/g, '°')
    .replace(/''|[″”“„]/g, '"')
    .replace(/[′’‘´`]/g, "'")
    .trim();
  return withPoints(WORDS.reduce((now, [word, by]) => now.replace(word, by), upper));
}

/**
 * Commas that stand for decimal points, as points. Where a point is used too, a comma stands between
 * numbers; one tight between two numbers that nothing else tells apart may be either.
 */
function withPoints(text: string): string {
  const tight = /(\d),(?=\d)/g;
  if (text.includes('.')) return text;
  const count = [...text.matchAll(tight)].length;
  const isPlain = !/[NSEWO°'"a-z;\n]/.test(text);
  if (isPlain && (count > 2 || (count === 1 && !/,\s|\s,/.test(text)))) refuse({ code: 'comma' });
  return text.replace(tight, '$1.');
}

type Token =
  | { readonly is: 'number'; readonly text: string; readonly sign: 1 | -1 | null }
  | { readonly is: 'mark'; readonly text: string }
  | { readonly is: 'letter'; readonly text: string }
  | { readonly is: 'label'; readonly axis: Axis }
  /** Between degrees and minutes, `52-35-41N`, or between two coordinates. */
  | { readonly is: 'dash' }
  | { readonly is: 'break' };

/** A hyphen is a sign at the head of a number, and only there. */
const TOKEN =
  /(?<label>lat|lon)|(?<letter>[A-ZÄÖÜ])|(?<sign>(?<![\d°'"A-Z)])[+-])?(?<number>\d+(?:\.\d+)?)|(?<mark>[°'"])|(?<brk>[,;/\n])|(?<dash>-)|[\s:()]/y;

function tokensOf(text: string): readonly Token[] {
  const tokens: Token[] = [];
  TOKEN.lastIndex = 0;
  while (TOKEN.lastIndex < text.length) {
    const found = TOKEN.exec(text);
    if (found === null) return refuse({ code: 'unread' });
    const { label, letter, sign, number, mark, brk, dash } = found.groups ?? {};
    if (label) tokens.push({ is: 'label', axis: label === 'lat' ? 'lat' : 'lon' });
    else if (letter) tokens.push(letterOrMark(letter, tokens));
    else if (number) tokens.push({ is: 'number', text: number, sign: signOf(sign) });
    else if (mark) tokens.push({ is: 'mark', text: mark });
    else if (brk) tokens.push({ is: 'break' });
    else if (dash) tokens.push({ is: 'dash' });
  }
  return tokens;
}

const signOf = (sign: string | undefined): 1 | -1 | null =>
  sign === undefined ? null : sign === '-' ? -1 : 1;

/** `52d 35m 41s`: after degrees and minutes, S is seconds and not south. */
function letterOrMark(letter: string, before: readonly Token[]): Token {
  const marks = before.flatMap((token) => (token.is === 'mark' ? token.text : []));
  if (letter === 'O') refuse({ code: 'letter-o' });
  if (letter === 'D') return { is: 'mark', text: '°' };
  if (letter === 'M') return { is: 'mark', text: 'm' };
  if (letter === 'S' && marks.at(-1) === 'm') return { is: 'mark', text: '"' };
  return letter in LETTERS ? { is: 'letter', text: letter } : refuse({ code: 'unread' });
}

/** The tokens of each coordinate. */
function grouped(tokens: readonly Token[]): readonly Written[] {
  const first = tokens.find(({ is }) => is === 'letter' || is === 'number');
  const hasLetters = tokens.some(({ is }) => is === 'letter');
  const groups = hasLetters ? byLetter(tokens, first?.is === 'letter') : byShape(tokens);
  return groups.map(writtenOf);
}

const hasNumber = (tokens: readonly Token[]): boolean => tokens.some(({ is }) => is === 'number');

/** Each letter begins a coordinate, or ends one. */
function byLetter(tokens: readonly Token[], isBefore: boolean): readonly (readonly Token[])[] {
  const groups: Token[][] = [[]];
  for (const token of tokens) {
    if (token.is === 'dash' && isBefore && !hasNumber(groups.at(-1) ?? []))
      refuse({ code: 'unread' });
    if (token.is === 'break' || token.is === 'label' || token.is === 'dash') continue;
    if (token.is === 'letter' && isBefore && hasNumber(groups.at(-1) ?? [])) groups.push([]);
    groups.at(-1)?.push(token);
    if (token.is === 'letter' && !isBefore) groups.push([]);
  }
  const written = groups.filter((group) => group.length > 0);
  const isLettered = (group: readonly Token[]) => group.some(({ is }) => is === 'letter');
  return written.every(isLettered) ? written : refuse({ code: 'half' });
}

/** Without letters: by labels and breaks, then by degree marks and signs, then by counting. */
function byShape(tokens: readonly Token[]): readonly (readonly Token[])[] {
  // `52.5948 - 4.6017` may mean west or nothing.
  if (tokens.some(({ is }) => is === 'dash')) refuse({ code: 'unread' });
  const parts: Token[][] = [[]];
  for (const token of tokens) {
    if (token.is === 'break' || token.is === 'label') parts.push([]);
    if (token.is !== 'break') parts.at(-1)?.push(token);
  }
  const written = parts.filter(hasNumber);
  return written.flatMap((part) => coordinatesIn(part, written.length === 1));
}

/** A coordinate, or those of a pair that no break parts. */
function coordinatesIn(part: readonly Token[], isAll: boolean): readonly (readonly Token[])[] {
  const numbers = part.flatMap((token, at) => (token.is === 'number' ? [at] : []));
  const begins = numbers.filter((at) => {
    const [token, next] = [part[at], part[at + 1]];
    const isDegrees = next?.is === 'mark' && next.text === '°';
    return isDegrees || (token?.is === 'number' && token.sign !== null);
  });
  const inner = begins.filter((at) => at !== numbers[0]);
  if (inner.length > 0) return cutAt(part, inner);
  const isMarked = part.some(({ is }) => is === 'mark' || is === 'label');
  const first = part[numbers[0] ?? 0];
  const isPair =
    numbers.length > 3 ||
    (numbers.length === 2 && (isAll || (first?.is === 'number' && first.text.includes('.'))));
  // As many numbers for the one as for the other.
  return isPair && !isMarked && numbers.length % 2 === 0
    ? cutAt(part, [numbers[numbers.length / 2] ?? 0])
    : [part];
}

const cutAt = (part: readonly Token[], at: readonly number[]): readonly (readonly Token[])[] =>
  [0, ...at].map((begin, index) => part.slice(begin, at[index] ?? part.length));

function writtenOf(tokens: readonly Token[]): Written {
  const numbers = tokens.flatMap((token) => (token.is === 'number' ? [token] : []));
  const letters = tokens.flatMap((token) => (token.is === 'letter' ? [token.text] : []));
  const labels = tokens.flatMap((token) => (token.is === 'label' ? [token.axis] : []));
  const marks = tokens.flatMap((token) => (token.is === 'mark' ? [token.text] : []));
  if (numbers.length === 0 || letters.length > 1 || labels.length > 1) refuse({ code: 'unread' });
  const [letter = null] = letters;
  const [axis, side] = letter === null ? [null, null] : (LETTERS[letter] ?? [null, null]);
  const [{ sign = null } = {}, ...more] = numbers;
  // A sign and a letter say one thing twice, and perhaps not the same.
  if (more.some((one) => one.sign !== null) || (letter !== null && sign !== null))
    refuse({ code: 'unread' });
  return {
    numbers: numbers.map(({ text }) => text),
    marked: marks.includes('°'),
    sign: side ?? sign,
    axis: axis ?? labels[0] ?? null,
    letter,
  };
}

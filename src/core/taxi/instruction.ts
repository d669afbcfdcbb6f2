/**
 * A taxi route as a controller gives it, read from what the pilot types: `B K H, hold short 19`.
 * Letters may be spelled out, as heard. ICAO Doc 4444, 12.3.4.7; Doc 9432, 4.4.
 */

import type { Designator, Field } from '../airfield/field';
import { LONGEST_TOLD } from '../sortie/entry';
import type { NodeId } from './graph';
import { stripsOf } from './runwayStrip';

/** One item of a route as told. */
export type ToldItem =
  | { readonly code: 'taxiway'; readonly name: string }
  /** A holding point or another named point on the way. */
  | { readonly code: 'point'; readonly node: NodeId; readonly name: string }
  | { readonly code: 'stand'; readonly node: NodeId; readonly name: string }
  | { readonly code: 'hold-at'; readonly node: NodeId; readonly name: string }
  | { readonly code: 'hold-short' | 'cross' | 'backtrack'; readonly runway: string }
  /** The end that the route leads to. */
  | { readonly code: 'runway'; readonly end: Designator };

/** A word that can't be used, with what stands there. */
export interface UnreadItem {
  readonly code: 'no-name' | 'no-runway' | 'too-long';
  readonly said: string;
  /** What may have been meant; empty if nothing is like it. */
  readonly suggestions: readonly string[];
}

export interface ReadInstruction {
  readonly items: readonly ToldItem[];
  readonly unread: readonly UnreadItem[];
}

/** The spelling alphabet and the digits as said, with other spellings of both. Annex 10, fig. 5-1. */
const SPELLED: Readonly<Record<string, string>> = {
  ...Object.fromEntries(
    'BRAVO CHARLIE DELTA ECHO FOXTROT GOLF HOTEL INDIA KILO LIMA MIKE NOVEMBER OSCAR PAPA QUEBEC ROMEO SIERRA TANGO UNIFORM VICTOR WHISKEY YANKEE ZULU'
      .split(' ')
      .map((word) => [word, word.charAt(0)]),
  ),
  ...{ ALFA: 'A', ALPHA: 'A', JULIETT: 'J', JULIET: 'J', WHISKY: 'W' },
  ...{ XRAY: 'X', 'X-RAY': 'X' },
  ...{ ZERO: '0', ONE: '1', TWO: '2', THREE: '3', TREE: '3', FOUR: '4', FIVE: '5', FIFE: '5' },
  ...{ SIX: '6', SEVEN: '7', EIGHT: '8', NINE: '9', NINER: '9' },
};

/** Said between the items, and meaning nothing by themselves. */
const FILLERS = new Set('TAXI VIA TO THEN AND ON OF THE AT TAXIWAY TAXIWAYS PLEASE BY'.split(' '));

const SIDES: Readonly<Record<string, string>> = { LEFT: 'L', RIGHT: 'R', CENTRE: 'C', CENTER: 'C' };

interface Word {
  /** As read: a letter or digit where it was spelled out. */
  readonly text: string;
  readonly typed: string;
  readonly spelled: boolean;
}

function wordsOf(text: string): readonly Word[] {
  return text
    .toUpperCase()
    .split(/[\s,;.]+/)
    .filter((typed) => typed !== '' && !FILLERS.has(typed))
    .map((typed) => {
      const spelled = SPELLED[typed];
      return { text: spelled ?? typed, typed, spelled: spelled !== undefined };
    });
}

/** The names of a field's taxiways, each once, in order of the alphabet. */
export const taxiwaysOf = ({ taxi }: Pick<Field, 'taxi'>): readonly string[] =>
  [...new Set(taxi.edges.filter(({ on }) => on === 'taxiway').map(({ name }) => name))].sort(
    (a, b) => a.localeCompare(b, 'en', { numeric: true }),
  );

/** Reads a route as told. What can't be read is named, with what may have been meant. */
export function readInstruction(text: string, field: Field): ReadInstruction {
  if (text.length > LONGEST_TOLD) {
    return { items: [], unread: [{ code: 'too-long', said: '', suggestions: [] }] };
  }
  return new Reader(text, field).read();
}

/** The most words that one name or number is said in: `zero five right`. */
const LONGEST_NAME = 4;

class Reader {
  readonly #words: readonly Word[];
  readonly #field: Field;
  readonly #taxiways: ReadonlyMap<string, string>;
  readonly #items: ToldItem[] = [];
  readonly #unread: UnreadItem[] = [];
  #at = 0;

  constructor(text: string, field: Field) {
    this.#words = wordsOf(text);
    this.#field = field;
    this.#taxiways = new Map(taxiwaysOf(field).map((name) => [name.toUpperCase(), name]));
  }

  read(): ReadInstruction {
    while (this.#at < this.#words.length) this.#item();
    return { items: this.#items, unread: this.#unread };
  }

  #item(): void {
    if (this.#takes('HOLD') || this.#takes('HOLDING')) this.#hold();
    else if (this.#takes('CROSS')) this.#runwayFor('cross');
    else if (this.#takes('BACKTRACK')) this.#runwayFor('backtrack');
    else if (this.#takes('RUNWAY') || this.#takes('RWY')) this.#runway();
    else if (this.#takes('STAND') || this.#takes('GATE')) this.#stand();
    else this.#name();
  }

  #takes(word: string): boolean {
    if (this.#words[this.#at]?.text !== word) return false;
    this.#at += 1;
    return true;
  }

  /** `hold short 19`, `holding point K2`, `hold K2`. */
  #hold(): void {
    if (this.#takes('SHORT')) {
      this.#runwayFor('hold-short');
      return;
    }
    this.#takes('POINT');
    const point = this.#longest((said) => this.#pointNamed(said));
    if (point !== null) {
      this.#items.push({ code: 'hold-at', node: point.id, name: point.name });
    } else this.#refuse('no-name', holdNames(this.#field));
  }

  #runwayFor(code: 'hold-short' | 'cross' | 'backtrack'): void {
    if (!this.#takes('RUNWAY')) this.#takes('RWY');
    // "Hold short K2" means the holding point.
    const point = code === 'hold-short' ? this.#longest((said) => this.#pointNamed(said)) : null;
    if (point !== null) {
      this.#items.push({ code: 'hold-at', node: point.id, name: point.name });
      return;
    }
    const runways = this.#longest((said) => this.#runwaysNamed(said));
    const [runway, ...others] = new Set(runways ?? []);
    if (runway !== undefined && others.length === 0) this.#items.push({ code, runway });
    else if (runway !== undefined) this.#ambiguous(runways ?? []);
    else if (code === 'backtrack') this.#backtrackUnnamed();
    else
      this.#refuse(
        'no-runway',
        stripsOf(this.#field).map(({ name }) => name),
      );
  }

  /** "Backtrack" alone, where there is but one runway. */
  #backtrackUnnamed(): void {
    const [only, ...others] = stripsOf(this.#field);
    if (only !== undefined && others.length === 0) {
      this.#items.push({ code: 'backtrack', runway: only.name });
    } else {
      this.#refuse(
        'no-runway',
        stripsOf(this.#field).map(({ name }) => name),
        'BACKTRACK',
      );
    }
  }

  #runway(): void {
    const ends = this.#longest((said) => this.#endsNamed(said));
    const [end, ...others] = ends ?? [];
    if (end !== undefined && others.length === 0) this.#items.push({ code: 'runway', end });
    else if (end !== undefined) this.#ambiguous(ends ?? []);
    else this.#refuse('no-runway', this.#allEnds());
  }

  #stand(): void {
    const stands = this.#field.taxi.nodes.filter(({ kind }) => kind === 'stand');
    const stand = this.#longest(
      (said) =>
        stands.find(({ name }) => name?.toUpperCase().replace(/^(STAND|GATE)\s*/, '') === said) ??
        null,
    );
    if (stand !== null) {
      this.#items.push({ code: 'stand', node: stand.id, name: stand.name ?? stand.id });
    } else this.#refuse('no-name', stands.flatMap(({ name }) => name ?? []).slice(0, MOST_OFFERED));
  }

  #name(): void {
    const found = this.#longest((said): ToldItem | null => {
      const taxiway = this.#taxiways.get(said);
      if (taxiway !== undefined) return { code: 'taxiway', name: taxiway };
      const point = this.#pointNamed(said);
      return point && { code: 'point', node: point.id, name: point.name };
    });
    if (found !== null) {
      this.#items.push(found);
      return;
    }
    const word = this.#words[this.#at];
    const letters = [...(word?.text ?? '')].map((letter) => this.#taxiways.get(letter));
    if (letters.length > 1 && letters.every((letter) => letter !== undefined)) {
      // "BKH", typed without spaces.
      this.#items.push(...letters.map((name) => ({ code: 'taxiway', name }) as const));
      this.#at += 1;
      return;
    }
    this.#refuse('no-name', this.#likeIt(word?.text ?? ''));
  }

  /** Taxiways that meet the last one named come first; then those that read alike. */
  #likeIt(said: string): readonly string[] {
    const last = this.#items.findLast((item) => item.code === 'taxiway');
    const named = new Set(this.#items.map((item) => ('name' in item ? item.name : '')));
    const meeting = last === undefined ? [] : meetingTaxiways(this.#field, last.name);
    const alike = [...this.#taxiways.values()].filter(
      (name) => name.length > 1 && name.startsWith(said.charAt(0)),
    );
    const all = [...new Set([...alike, ...meeting])].filter((name) => !named.has(name));
    const offered = all.length > 0 ? all : [...this.#taxiways.values()];
    return offered.slice(0, MOST_OFFERED);
  }

  /** The longest run of words from here that names something; they are taken if it does. */
  #longest<T>(find: (said: string) => T | null): T | null {
    for (let count = LONGEST_NAME; count > 0; count--) {
      const words = this.#words.slice(this.#at, this.#at + count);
      if (words.length < count || !isOneName(words)) continue;
      const found = find(words.map(({ text }) => SIDES[text] ?? text).join(''));
      if (found === null) continue;
      this.#at += count;
      return found;
    }
    return null;
  }

  #pointNamed(said: string): { readonly id: NodeId; readonly name: string } | null {
    const point = this.#field.taxi.nodes.find(
      ({ kind, name }) => kind !== 'stand' && name?.toUpperCase() === said,
    );
    return point?.name === undefined ? null : { id: point.id, name: point.name };
  }

  /** The runways that a number means: `19`, `1`, `23L` or `01/19`; both of a pair by `23`. */
  #runwaysNamed(said: string): readonly string[] | null {
    const strips = stripsOf(this.#field);
    const whole = strips.find(({ name }) => name === said.split('/').sort().join('/'));
    if (whole !== undefined) return [whole.name];
    const ends = this.#endsNamed(said) ?? [];
    const named = strips.filter((strip) =>
      strip.ends.some(({ designator }) => ends.includes(designator)),
    );
    return named.length === 0 ? null : named.map(({ name }) => name);
  }

  #endsNamed(said: string): readonly Designator[] | null {
    if (!/^\d{1,2}[LCR]?$/.test(said)) return null;
    const number = (/^\d$|^\d[LCR]$/.test(said) ? `0${said}` : said).slice(0, 2);
    const side = said.replace(/^\d+/, '');
    const ends = this.#allEnds().filter(
      (end) => end.slice(0, 2) === number && (side === '' || end.slice(2) === side),
    );
    return ends.length === 0 ? null : ends;
  }

  readonly #allEnds = (): readonly Designator[] =>
    this.#field.runways.flatMap(({ ends }) => ends.map(({ designator }) => designator));

  #ambiguous(suggestions: readonly string[]): void {
    const said = this.#words[this.#at - 1]?.typed ?? '';
    this.#unread.push({ code: 'no-runway', said, suggestions });
  }

  #refuse(code: UnreadItem['code'], suggestions: readonly string[], before = ''): void {
    const word = this.#words[this.#at];
    this.#at += 1;
    this.#unread.push({ code, said: word?.typed ?? before, suggestions });
  }
}

/** How many names are offered in place of one that isn't there. */
const MOST_OFFERED = 4;

/**
 * Whether words may be one name: digits and sides follow on, and letters that were spelled out;
 * `B K` typed as letters are two taxiways.
 */
const isOneName = (words: readonly Word[]): boolean =>
  words.slice(1).every(({ text, spelled }) => /^\d+[LCR]?$/.test(text) || text in SIDES || spelled);

const holdNames = ({ taxi }: Field): readonly string[] =>
  taxi.nodes
    .flatMap(({ kind, name }) => (kind === 'hold' && name !== undefined ? [name] : []))
    .slice(0, MOST_OFFERED);

/** The taxiways that meet one, in order of the alphabet. */
export function meetingTaxiways(field: Field, name: string): readonly string[] {
  const { edges } = field.taxi;
  const points = new Set(
    edges.filter((edge) => edge.name === name).flatMap(({ from, to }) => [from, to]),
  );
  return taxiwaysOf(field).filter(
    (other) =>
      other !== name &&
      edges.some((edge) => edge.name === other && (points.has(edge.from) || points.has(edge.to))),
  );
}

/** An instruction as it is usually written: `A E B, hold short 05R/23L`. */
export const writtenInstruction = (items: readonly ToldItem[]): string =>
  items
    .map((item, at) => `${at === 0 ? '' : isName(item) ? ' ' : ', '}${writtenItem(item)}`)
    .join('');

const isName = ({ code }: ToldItem): boolean => code === 'taxiway' || code === 'point';

function writtenItem(item: ToldItem): string {
  switch (item.code) {
    case 'taxiway':
    case 'point':
    case 'stand':
      return item.name;
    case 'hold-at':
      return `hold ${item.name}`;
    case 'hold-short':
      return `hold short ${item.runway}`;
    case 'cross':
    case 'backtrack':
      return `${item.code} ${item.runway}`;
    case 'runway':
      return `runway ${item.end}`;
  }
}

/**
 * Finding a field of the world by code, name and town: an index of the beginnings of its words, made
 * once, because going through ten thousand fields at every letter takes too long on a tablet.
 */

import { folded, forgiven, wordsIn } from '../found';
import type { World } from './readWorld';
import { WORLD_KINDS, type WorldKind } from './worldField';

/** What is asked for. */
export interface WorldQuestion {
  readonly kinds: ReadonlySet<WorldKind>;
  /** How many are wanted at most. */
  readonly most: number;
}

/** Finds fields by what was typed, best first, as their indexes; none if nothing was typed. */
export type WorldSearch = (typed: string, question: WorldQuestion) => readonly number[];

/** Fewer hits than this, and slips of the finger are forgiven too. */
const FEW = 8;

/** More words than this find nothing more. */
const MOST_WORDS = 6;

/** How well a word typed matches one of a field, 0 best; the same as in found.ts. */
const [CODE, CODE_BEGINS, WORD, WORD_BEGINS, SLIP] = [0, 1, 2, 3, 4];

/** No match. */
const NONE = 255;

/** Letters beyond this are not compared, neither of a word nor of what is typed. */
const LONGEST_WORD = 60;

interface Vocabulary {
  /** Every word, in order. */
  readonly words: readonly string[];
  /** How many letters a word shares with the one before it. */
  readonly shared: Uint8Array;
  /** Where the fields of each word begin among `fields`; one more than there are words. */
  readonly starts: Int32Array;
  /** Twice the index of a field, plus 1 if the word is a code of it. */
  readonly fields: Int32Array;
}

/** After so many fields or words, other work has its turn. */
const AT_A_TIME = 1500;

function* vocabularyOf({ codes, otherCodes, names, towns }: World): Generator<void, Vocabulary> {
  const fieldsOf = new Map<string, number[]>();
  const add = (word: string, entry: number) => {
    const fields = fieldsOf.get(word);
    if (fields === undefined) fieldsOf.set(word, [entry]);
    else if (fields.at(-1) !== entry) fields.push(entry);
  };
  // All at once: folding ten thousand short texts takes several times as long.
  const lines = (texts: readonly string[]) => folded(texts.join('\n')).split('\n');
  const [named, situated] = [lines(names), lines(towns)];
  for (const [index, code] of codes.entries()) {
    if (index % AT_A_TIME === 0) yield;
    for (const own of [code, ...(otherCodes[index] ?? '').split(' ')]) {
      const word = own.toLowerCase();
      if (word !== '') add(word, 2 * index + 1);
      // A code with a hyphen is typed without it too.
      if (word.includes('-')) for (const part of word.split('-')) add(part, 2 * index);
    }
    for (const word of `${named[index]} ${situated[index]}`.match(/[\p{L}\p{N}]+/gu) ?? [])
      add(word, 2 * index);
  }
  yield;
  const words = [...fieldsOf.keys()].sort();
  yield;
  const shared = new Uint8Array(words.length);
  const starts = new Int32Array(words.length + 1);
  const fields = new Int32Array(
    [...fieldsOf.values()].reduce((sum, { length }) => sum + length, 0),
  );
  for (const [place, word] of words.entries()) {
    if (place % (4 * AT_A_TIME) === 0) yield;
    const before = words[place - 1] ?? '';
    let alike = 0;
    while (alike < word.length && word[alike] === before[alike]) alike += 1;
    shared[place] = Math.min(alike, NONE);
    const entries = fieldsOf.get(word) ?? [];
    const start = starts[place] ?? 0;
    fields.set(entries, start);
    starts[place + 1] = start + entries.length;
  }
  return { words, shared, starts, fields };
}

/** The place of the first word that isn't before `prefix`. */
function firstFrom(words: readonly string[], prefix: string): number {
  let [low, high] = [0, words.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((words[middle] ?? '') < prefix) low = middle + 1;
    else high = middle;
  }
  return low;
}

/**
 * Tells every word whose beginning is at most so many slips from what was typed, as `slipsIn` counts
 * them. The words are in order, so a beginning that several share is compared once, and none of them
 * is looked at further when it is too far off already.
 */
export function eachWithSlips(
  { words, shared }: Pick<Vocabulary, 'words' | 'shared'>,
  typed: string,
  most: number,
  tell: (place: number, slips: number) => void,
): void {
  const width = typed.length + 1;
  const letters = Uint16Array.from(typed, (letter) => letter.charCodeAt(0));
  // A row for each letter of a word: how far the word so far is from each beginning of what was
  // typed. All in one array, since this runs at every letter.
  const rows = new Uint8Array((LONGEST_WORD + 1) * width);
  for (let at = 0; at < width; at++) rows[at] = at;
  // The best of each row's last entry and those above it.
  const best = new Uint8Array(LONGEST_WORD + 1);
  best[0] = typed.length;
  let known = 0;
  for (let place = 0; place < words.length; place++) {
    const alike = shared[place] ?? 0;
    const word = words[place] ?? '';
    const length = Math.min(word.length, LONGEST_WORD);
    // What begins as a word that was given up gets no nearer than that one did.
    let isFar = alike > known;
    let depth = Math.min(alike, known);
    while (depth < length && !isFar) {
      const row = (depth + 1) * width;
      const before = row - width;
      const letter = word.charCodeAt(depth);
      const last = depth > 0 ? word.charCodeAt(depth - 1) : 0;
      let least = depth + 1;
      rows[row] = least;
      for (let at = 1; at < width; at++) {
        const typedHere = letters[at - 1];
        let slips = rows[before + at - 1] ?? most;
        if (typedHere !== letter) slips += 1;
        const added = (rows[before + at] ?? most) + 1;
        if (added < slips) slips = added;
        const left = (rows[row + at - 1] ?? most) + 1;
        if (left < slips) slips = left;
        if (at > 1 && depth > 0 && letters[at - 2] === letter && typedHere === last) {
          const swapped = (rows[before - width + at - 2] ?? most) + 1;
          if (swapped < slips) slips = swapped;
        }
        rows[row + at] = slips;
        if (slips < least) least = slips;
      }
      depth += 1;
      best[depth] = Math.min(best[depth - 1] ?? most, rows[row + width - 1] ?? most);
      isFar = least > most;
    }
    known = depth;
    const slips = best[depth] ?? most + 1;
    if (slips <= most) tell(place, slips);
  }
}

/** Makes the index, in steps of some milliseconds: whoever takes them may do other work between. */
export function* worldSearch(world: World): Generator<void, WorldSearch> {
  const vocabulary = yield* vocabularyOf(world);
  const { words, starts, fields } = vocabulary;
  const count = world.codes.length;

  // Of two that match alike, the larger field is the likelier, then the one with the longer runway.
  const order = world.codes.map((_, index) => index);
  const size = (index: number) => Math.floor((world.sorts[index] ?? 0) / 4) % 4;
  const longest = (index: number) => world.longestFt[index] ?? 0;
  order.sort((a, b) => size(a) - size(b) || longest(b) - longest(a) || a - b);
  const ranks = new Int32Array(count);
  order.forEach((index, rank) => {
    ranks[index] = rank;
  });

  const mark = (scores: Uint8Array, place: number, score: number, codeScore: number) => {
    for (let at = starts[place] ?? 0; at < (starts[place + 1] ?? 0); at++) {
      const entry = fields[at] ?? 0;
      const own = entry % 2 === 1 ? codeScore : score;
      const index = entry >> 1;
      if (own < (scores[index] ?? NONE)) scores[index] = own;
    }
  };

  const scoresOf = (word: string, forgives: boolean): Uint8Array => {
    const scores = new Uint8Array(count).fill(NONE);
    for (let place = firstFrom(words, word); words[place]?.startsWith(word); place++) {
      if (words[place] === word) mark(scores, place, WORD, CODE);
      else mark(scores, place, WORD_BEGINS, CODE_BEGINS);
    }
    const most = forgives ? forgiven(word.length) : 0;
    if (most > 0)
      eachWithSlips(vocabulary, word, most, (place, slips) =>
        mark(scores, place, SLIP + slips, SLIP + slips),
      );
    return scores;
  };

  const hits = (asked: readonly string[], kinds: ReadonlySet<WorldKind>, forgives: boolean) => {
    const scores = asked.map((word) => scoresOf(word, forgives));
    const keys: number[] = [];
    for (let index = 0; index < count; index++) {
      let sum = 0;
      for (const of of scores) {
        const score = of[index] ?? NONE;
        sum = score === NONE ? Number.POSITIVE_INFINITY : sum + score;
      }
      if (sum === Number.POSITIVE_INFINITY) continue;
      const kind = WORLD_KINDS[(world.sorts[index] ?? 0) % 4];
      if (kind !== undefined && kinds.has(kind)) keys.push(sum * count + (ranks[index] ?? 0));
    }
    return Float64Array.from(keys).sort();
  };

  return (typed, { kinds, most }) => {
    const asked = wordsIn(typed.slice(0, LONGEST_WORD)).slice(0, MOST_WORDS);
    if (asked.length === 0) return [];
    const plain = hits(asked, kinds, false);
    const found = plain.length < FEW ? hits(asked, kinds, true) : plain;
    return Array.from(found.subarray(0, most), (key) => order[key % count] ?? 0);
  };
}

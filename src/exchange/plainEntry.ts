/**
 * The texts of an imported entry: notes, callsigns, reasons, reports. They are held to the rules of
 * document texts, so that none is drawn differently from how it is written. Misleading characters
 * are replaced and the entry kept, because a pilot must be able to read their own log on another
 * device, whatever was pasted into a note. What is already stored is not judged by these rules.
 */

import { type Entry, plainly } from '../core';

type As = Parameters<typeof plainly>[1];

/** What the `text` of an entry is, by kind. */
const TEXT_AS = new Map<string, As>([
  ['noted', 'note'],
  ['wind', 'report'],
]);

/**
 * The entry with its texts and names cleaned wherever they stand; the same object if nothing was
 * wrong.
 */
export function plainEntry(entry: Entry): Entry {
  const as = (name: string): As => (name === 'text' ? TEXT_AS.get(entry.kind) : undefined);
  return plainObject(entry, as) as Entry;
}

function plainObject(value: object, as: (name: string) => As = () => undefined): object {
  const parts = Object.entries(value);
  const plain = parts.map(([name, part]) => [plainly(name), plainValue(part, as(name))] as const);
  const isPlain = plain.every(
    ([name, part], at) => name === parts[at]?.[0] && part === parts[at]?.[1],
  );
  return isPlain ? value : Object.fromEntries(plain);
}

function plainValue(value: unknown, as?: As): unknown {
  if (typeof value === 'string') return plainly(value, as);
  if (typeof value !== 'object' || value === null) return value;
  if (!Array.isArray(value)) return plainObject(value);
  const plain = value.map((part) => plainValue(part));
  return plain.every((part, at) => part === value[at]) ? value : plain;
}

/**
 * The texts of an entry that came from elsewhere: notes, callsigns, reasons, reports. They are held to
 * what the texts of documents are, so that none is drawn otherwise than it is written. What misleads is
 * replaced and the entry kept, because a pilot's own log must be read again on another device, whatever
 * was pasted into a note. What is stored already is not judged by it.
 */

import { type Entry, plainly } from '../core';

type As = Parameters<typeof plainly>[1];

/** What the `text` of an entry is, by its kind. */
const TEXT_AS = new Map<string, As>([
  ['noted', 'note'],
  ['wind', 'report'],
]);

/** The entry, its texts and the names in it mended wherever they stand; the very same where nothing is amiss. */
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

/** The order of the versions of a procedure that pilots wrote. */

import type { Hash } from '../sortie/entry';
import type { Procedure } from './procedure';

/** A version a pilot wrote. */
export interface WrittenVersion {
  readonly hash: Hash;
  readonly content: Procedure;
}

/**
 * Nobody counts this far: a version with a higher number counts as older than all others, or none
 * could follow it.
 */
const BELIEVED_NUMBER = 100_000;

const numberOf = ({ content }: WrittenVersion): number => {
  const number = content.edition?.number ?? 0;
  return number > BELIEVED_NUMBER ? 0 : number;
};

/**
 * Versions, oldest first: by number, and always after the version they were made from. When they
 * were saved doesn't count, because a clock may be wrong. Two with one number, as two devices can
 * save, are ordered by their hashes, which is the same on both.
 */
export function editionsInOrder<V extends WrittenVersion>(versions: readonly V[]): readonly V[] {
  const byHash = new Map(versions.map((version) => [version.hash, version]));
  const place = (version: V, seen: ReadonlySet<Hash> = new Set()): number => {
    const from = byHash.get(version.content.basedOn?.hash ?? '');
    const own = numberOf(version);
    return from === undefined || seen.has(from.hash)
      ? own
      : Math.max(own, place(from, new Set([...seen, version.hash])) + 0.5);
  };
  const places = new Map(versions.map((version) => [version.hash, place(version)]));
  const at = ({ hash }: V) => places.get(hash) ?? 0;
  return [...versions].sort((a, b) => at(a) - at(b) || (a.hash < b.hash ? -1 : 1));
}

/** The number of the next version. `versions` are those of one procedure. */
export const nextEdition = (versions: readonly WrittenVersion[]): number =>
  Math.max(0, ...versions.map(numberOf)) + 1;

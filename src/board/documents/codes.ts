/** Assembling a document from the codes it is spread over. */

import { keepCodes, keptCodes } from '../../device/codes';
import type { CodePart } from '../../exchange/link';

/** What we have of a document: its digits once all codes are read, else which are missing. */
export type Gathered =
  | { readonly digits: string; readonly missing: null }
  | { readonly digits: null; readonly missing: readonly number[] };

interface Gathering {
  readonly set: string;
  readonly of: number;
  readonly digits: readonly (string | null)[];
}

/** Takes one more code. Unfinished codes of another document are dropped. */
export function gatherCodes({ set, part, of, digits }: CodePart): Gathered {
  const kept = keptCodes();
  const before = isGathering(kept) && kept.set === set && kept.of === of ? kept.digits : [];
  const all = Array.from({ length: of }, (_, index) =>
    index === part - 1 ? digits : (before[index] ?? null),
  );
  const missing = all.flatMap((one, index) => (one === null ? [index + 1] : []));
  keepCodes(missing.length === 0 ? null : ({ set, of, digits: all } satisfies Gathering));
  return missing.length === 0 ? { digits: all.join(''), missing: null } : { digits: null, missing };
}

function isGathering(kept: unknown): kept is Gathering {
  if (typeof kept !== 'object' || kept === null) return false;
  const { digits } = kept as Partial<Gathering>;
  return (
    Array.isArray(digits) &&
    digits.every((one) => one === null || (typeof one === 'string' && /^\d+$/.test(one)))
  );
}

/**
 * Entries and documents this version can't read: moved out of the record so that they break
 * nothing, kept byte for byte, exported, and put back by a version that can read them.
 */

import { changeDrafts, draftsUnder } from './drafts';
import type { Store, StorePart } from './store';

const PREFIX = ' aside/';

/** Something set aside, and the part of the store it came from. */
export interface SetAside {
  readonly code: string;
  readonly part: StorePart;
  readonly value: unknown;
}

const PARTS: readonly StorePart[] = ['entries', 'brought', 'documents'];

function isSetAside(draft: unknown): draft is SetAside {
  if (typeof draft !== 'object' || draft === null) return false;
  const { code, part } = draft as Partial<SetAside>;
  return typeof code === 'string' && PARTS.some((known) => known === part) && 'value' in draft;
}

/** The key a value is stored under in a part; null if the store could never take it back. */
function keyOf(part: StorePart, value: unknown): string | null {
  const { id, hash } = Object(value) as { readonly id?: unknown; readonly hash?: unknown };
  const key = part === 'documents' ? hash : id;
  return typeof key === 'string' ? key : null;
}

/**
 * Moves values out of a part: copies first, then removes, so that a page killed in between has them
 * twice rather than never. What can't be moved stays. Resolves to how many were moved.
 */
export async function setAside(
  store: Store,
  part: StorePart,
  values: readonly unknown[],
): Promise<number> {
  const moved = values.flatMap((value) => {
    const key = keyOf(part, value);
    return key === null ? [] : [{ code: `${PREFIX}${part}/${key}`, key, part, value }];
  });
  const isKept = await changeDrafts(
    moved.map(({ code, value }) => ({ code, part, value })),
    [],
  );
  if (!isKept) return 0;
  const keys = moved.map(({ key }) => key);
  await store.remove(part, keys);
  return keys.length;
}

/** Everything set aside. */
export const allSetAside = async (): Promise<readonly SetAside[]> =>
  (await draftsUnder(PREFIX)).filter(isSetAside);

/** Puts back what this version can read, and resolves to it. */
export async function putBack(
  store: Store,
  canRead: (part: StorePart, value: unknown) => boolean,
): Promise<readonly SetAside[]> {
  const readable = (await allSetAside()).filter(({ part, value }) => canRead(part, value));
  for (const { code, part, value } of readable) {
    await store.write({ [part]: [value] });
    await changeDrafts([], [code]);
  }
  return readable;
}

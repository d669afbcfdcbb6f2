/**
 * What could not be read: taken out of the record, so that nothing stumbles over it, and kept as it is,
 * to be exported and to be put back by a version that can read it.
 */

import { change, draftsUnder } from './drafts';
import type { Part, Store } from './store';

const PREFIX = ' aside/';

/** Something set aside, and the part of the store it was taken from. */
export interface SetAside {
  readonly code: string;
  readonly part: Part;
  readonly value: unknown;
}

const PARTS: readonly Part[] = ['entries', 'brought', 'documents'];

function isSetAside(draft: unknown): draft is SetAside {
  if (typeof draft !== 'object' || draft === null) return false;
  const { code, part } = draft as Partial<SetAside>;
  return typeof code === 'string' && PARTS.some((known) => known === part) && 'value' in draft;
}

/** What stands under a key in a part; null where the device would take no such value back. */
function keyOf(part: Part, value: unknown): string | null {
  const { id, hash } = Object(value) as { readonly id?: unknown; readonly hash?: unknown };
  const key = part === 'documents' ? hash : id;
  return typeof key === 'string' ? key : null;
}

/**
 * Takes values out of a part and sets them aside: first the one, then the other, so that a page that
 * is killed between has them twice and not never. What cannot be moved stays. Gives how many are aside now.
 */
export async function setAside(
  store: Store,
  part: Part,
  values: readonly unknown[],
): Promise<number> {
  const moved = values.flatMap((value) => {
    const key = keyOf(part, value);
    return key === null ? [] : [{ code: `${PREFIX}${part}/${key}`, key, part, value }];
  });
  const isKept = await change(
    moved.map(({ code, value }) => ({ code, part, value })),
    [],
  );
  if (!isKept) return 0;
  const keys = moved.map(({ key }) => key);
  await store.remove(part, keys);
  return keys.length;
}

/** All that is set aside. */
export const allSetAside = async (): Promise<readonly SetAside[]> =>
  (await draftsUnder(PREFIX)).filter(isSetAside);

/** Puts back what this version can read. Gives it. */
export async function putBack(
  store: Store,
  canRead: (part: Part, value: unknown) => boolean,
): Promise<readonly SetAside[]> {
  const readable = (await allSetAside()).filter(({ part, value }) => canRead(part, value));
  for (const { code, part, value } of readable) {
    await store.write({ [part]: [value] });
    await change([], [code]);
  }
  return readable;
}

/** What a new version of the app says about itself before it is taken. */

import * as v from 'valibot';
import type { Language } from './language';
import { VERSION } from './version';

/** Not stored with the app: it is fetched to read the newer version's. */
const ADDRESS = './whatsNew.json';

const lines = v.pipe(v.array(v.pipe(v.string(), v.maxLength(200))), v.maxLength(2));
const schema = v.pipe(
  v.array(v.object({ version: v.pipe(v.string(), v.maxLength(20)), en: lines, de: lines })),
  v.maxLength(10),
);

/** What is new since this page's version, newest first, two lines at most. */
export function newsIn(read: unknown, own: string, language: Language): string[] {
  const { success, output } = v.safeParse(schema, read);
  if (!success) return [];
  const known = output.findIndex(({ version }) => version === own);
  const newer = known < 0 ? output.slice(0, 1) : output.slice(0, known);
  return newer.flatMap((release) => release[language]).slice(0, 2);
}

/** The same, read from the host; empty without a network. Never rejects. */
export async function whatsNew(language: Language): Promise<string[]> {
  try {
    const response = await fetch(ADDRESS, { cache: 'no-store' });
    return response.ok ? newsIn(await response.json(), VERSION, language) : [];
  } catch {
    return [];
  }
}

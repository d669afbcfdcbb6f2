/**
 * What is new, from CHANGELOG.md: `whatsNew.json` in the build, which an older page reads before it
 * offers this version, and the version itself for the page (`src/device/version.ts`).
 */

import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Plugin } from 'vite';

/** What is new in a version, a line or two in each language. */
export interface Release {
  readonly version: string;
  readonly en: readonly string[];
  readonly de: readonly string[];
}

/** As much as a notice holds; it also bounds what is fetched. */
const MOST_LINES = 2;
const MOST_CHARACTERS = 120;
const MOST_RELEASES = 10;

/** A changelog's releases, newest first; throws if one is too long or lacks a language. */
export function readChangelog(text: string): Release[] {
  const [, ...parts] = text.split(/^## /m);
  return parts.map((part) => {
    const [version = '', ...lines] = part.trim().split('\n');
    const en = lines.flatMap((line) => /^- (.+)$/.exec(line)?.slice(1) ?? []);
    const de = lines.flatMap((line) => /^ {2}- de: (.+)$/.exec(line)?.slice(1) ?? []);
    const told = lines.filter((line) => line.trim() !== '').length;
    if (!/^\d+\.\d+\.\d+$/.test(version)) throw new Error(`CHANGELOG.md: no version: ${version}`);
    if (en.length === 0 || en.length > MOST_LINES || en.length !== de.length) {
      throw new Error(`CHANGELOG.md: ${version} needs one or two lines, each with its German twin`);
    }
    if (told !== en.length + de.length || [...en, ...de].some((l) => l.length > MOST_CHARACTERS)) {
      throw new Error(`CHANGELOG.md: ${version} has a line that cannot be read, or is too long`);
    }
    return { version, en, de };
  });
}

/** The plugin; `root` is the project's. */
export function changelog(root: string): Plugin {
  const { version } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8'));
  return {
    name: 'lapstrip-changelog',
    config: () => ({ define: { __LAPSTRIP_VERSION__: JSON.stringify(version) } }),
    generateBundle() {
      const releases = readChangelog(readFileSync(join(root, 'CHANGELOG.md'), 'utf8'));
      if (releases[0]?.version !== version) {
        throw new Error(`CHANGELOG.md does not begin with ${version}, as package.json does`);
      }
      const source = JSON.stringify(releases.slice(0, MOST_RELEASES));
      this.emitFile({ type: 'asset', fileName: 'whatsNew.json', source });
    },
  };
}

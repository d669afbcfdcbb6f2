/**
 * Notes which modules went into which file of the build, in .cache/chunks.json, so that the bench can
 * say what arrives with the first answer and what does not.
 */

import { mkdirSync, writeFileSync } from 'node:fs';
import { join, relative } from 'node:path';
import type { Plugin } from 'vite';

/**
 * By file of dist: the modules in it that were not shaken off, relative to the project's root, each
 * with its length before it was made small, largest first.
 */
export type Chunks = Record<string, Record<string, number>>;

/** The plugin; `root` is the project's. */
export function chunks(root: string): Plugin {
  return {
    name: 'lapstrip-chunks',
    apply: 'build',
    generateBundle(_options, bundle) {
      const held: Chunks = {};
      for (const [file, output] of Object.entries(bundle)) {
        if (output.type !== 'chunk') continue;
        const lengths = Object.entries(output.modules)
          .map(([id, { renderedLength }]) => [relative(root, id), renderedLength] as const)
          .filter(([, length]) => length > 0)
          .sort(([, a], [, b]) => b - a);
        held[file] = Object.fromEntries(lengths);
      }
      mkdirSync(join(root, '.cache'), { recursive: true });
      writeFileSync(join(root, '.cache/chunks.json'), JSON.stringify(held, null, 1));
    },
  };
}

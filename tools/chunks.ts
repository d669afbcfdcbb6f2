/**
 * Notes which modules went into which file of the build, in .cache/chunks.json, so that the bench can
 * say what arrives with the first answer and what does not.
 */

import { mkdirSync, writeFileSync } from 'node:fs';
import { join, relative } from 'node:path';
import type { Plugin } from 'vite';

/** By file of dist: the modules in it that were not shaken off, relative to the project's root. */
export type Chunks = Record<string, string[]>;

/** The plugin; `root` is the project's. */
export function chunks(root: string): Plugin {
  return {
    name: 'lapstrip-chunks',
    apply: 'build',
    generateBundle(_options, bundle) {
      const held: Chunks = {};
      for (const [file, output] of Object.entries(bundle)) {
        if (output.type !== 'chunk') continue;
        held[file] = Object.entries(output.modules)
          .filter(([, { renderedLength }]) => renderedLength > 0)
          .map(([id]) => relative(root, id));
      }
      mkdirSync(join(root, '.cache'), { recursive: true });
      writeFileSync(join(root, '.cache/chunks.json'), JSON.stringify(held, null, 1));
    },
  };
}

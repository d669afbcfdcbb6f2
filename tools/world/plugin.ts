/**
 * Puts the file of the world's fields into the build, and tells the app where it lies and how large
 * it is. The worker doesn't store it: it is fetched when the pilot first looks for a field there.
 */

import type { Plugin } from 'vite';
import { type WorldFile, worldFile } from './file';

const MODULE = 'virtual:lapstrip-world';

/** The plugin. */
export function world(): Plugin {
  let made: Promise<WorldFile> | null = null;
  const file = () => {
    made ??= worldFile();
    return made;
  };
  return {
    name: 'lapstrip-world',
    resolveId: (id) => (id === MODULE ? `\0${id}` : undefined),
    async load(id) {
      if (id !== `\0${MODULE}`) return undefined;
      const { header, packed, path } = await file();
      const { date, fields } = header;
      const told = { path, date, fields, bytes: packed.length };
      return `export const worldFile = ${JSON.stringify(told)};`;
    },
    async generateBundle() {
      const { packed, path } = await file();
      this.emitFile({ type: 'asset', fileName: path, source: packed });
    },
    configureServer({ middlewares }) {
      middlewares.use((request, response, next) => {
        if (!/\/assets\/world-[^/]*\.bin$/.test(request.url ?? '')) return next();
        void file().then(({ packed }) => response.end(packed), next);
      });
    },
  };
}

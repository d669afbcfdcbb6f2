/**
 * Lets another language take the place of the English words: to every catalogue, `*.en.ts`, it adds a
 * line that lists it in src/parts/catalogues.ts with how each of its exports is taken from the twin
 * in that language. What imports the catalogue sees the twin's words from then on, because an import
 * is a view of the exporting file's own name and not a copy. What a twin leaves out stays English.
 */

import { relative } from 'node:path';
import type { Plugin } from 'vite';

const CATALOGUE = /\.en\.ts$/;
const EXPORTED = /^export (const|function) (\w+)/gm;

/** The plugin; `source` is the folder that the names of catalogues are told from. */
export function languages(source: string): Plugin {
  const listed = `${source}parts/catalogues.ts`;
  return {
    name: 'lapstrip-languages',
    enforce: 'pre',
    transform(code, id) {
      if (!CATALOGUE.test(id)) return undefined;
      const name = relative(source, id).replaceAll('\\', '/').replace(CATALOGUE, '');
      const exported = [...code.matchAll(EXPORTED)].map(([, , name]) => name);
      const taken = exported.map((name) => `${name} = ${name}`).join(', ');
      return [
        `import { catalogues } from ${JSON.stringify(listed)};`,
        code.replaceAll(EXPORTED, (declared, kind) =>
          kind === 'const' ? declared.replace('const', 'let') : declared,
        ),
        `catalogues.push([${JSON.stringify(name)}, (twin) => { ({ ${taken} } = twin); }]);`,
      ].join('\n');
    },
  };
}

/**
 * Writes `licences.txt` into the build: the terms of everything in it that others made. vite lists
 * the packages it bundled, with their licences. This adds the rest: the worker (bundled by
 * workbox), vite's and rolldown's own few lines, the typefaces, and the text for packages that
 * carry none. A package without a text fails the build.
 */

import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Plugin, Rolldown } from 'vite';

export const LICENCES = 'licences.txt';

/** Packages that vite did not bundle; tests/built/licences.test.ts checks the worker's. */
const FURTHER = [
  'workbox-core',
  'workbox-precaching',
  'workbox-routing',
  'workbox-strategies',
  'vite',
  'rolldown',
  '@fontsource-variable/atkinson-hyperlegible-next',
  '@fontsource-variable/atkinson-hyperlegible-mono',
];

/** Licence files with another name. */
const FILE: Readonly<Record<string, string>> = { 'jsonc-parser': 'LICENSE.md', vite: 'LICENSE.md' };

/** MIT, as the SPDX License List has it. */
const MIT = `Permission is hereby granted, free of charge, to any person obtaining a copy of this software and
associated documentation files (the "Software"), to deal in the Software without restriction,
including without limitation the rights to use, copy, modify, merge, publish, distribute, sublicense,
and/or sell copies of the Software, and to permit persons to whom the Software is furnished to do so,
subject to the following conditions:

The above copyright notice and this permission notice shall be included in all copies or substantial
portions of the Software.

THE SOFTWARE IS PROVIDED "AS IS", WITHOUT WARRANTY OF ANY KIND, EXPRESS OR IMPLIED, INCLUDING BUT NOT
LIMITED TO THE WARRANTIES OF MERCHANTABILITY, FITNESS FOR A PARTICULAR PURPOSE AND NONINFRINGEMENT. IN
NO EVENT SHALL THE AUTHORS OR COPYRIGHT HOLDERS BE LIABLE FOR ANY CLAIM, DAMAGES OR OTHER LIABILITY,
WHETHER IN AN ACTION OF CONTRACT, TORT OR OTHERWISE, ARISING FROM, OUT OF OR IN CONNECTION WITH THE
SOFTWARE OR THE USE OR OTHER DEALINGS IN THE SOFTWARE.`;

/** Packages that name their licence without its text; copyright from the head of their source. */
const WITHOUT_TEXT: Readonly<Record<string, string>> = {
  '@nodable/entities': `Copyright (c) Amit Gupta\n\n${MIT}`,
  'qrcode-generator': `Copyright (c) 2009 Kazuhiko Arase\n\n${MIT}`,
};

/** A licence text contains one of these. MIT, BSD, OFL, ISC (SPDX License List). */
const GRANTS = [
  /Permission is hereby granted, free of charge, to any person obtaining\s+a\s+copy/,
  /Redistribution and use in source and binary forms, with or without\s+modification, are\s+permitted/,
  /SIL OPEN FONT LICENSE Version 1\.1/,
  /Permission to use, copy, modify, and\/or distribute this software for any\s+purpose/,
];

/** The packages that have no licence text in the list. */
export function withoutTerms(text: string, packages: readonly string[]): string[] {
  const parts = text.split(/^## /m);
  return packages.filter((name) => {
    const terms = parts.find((part) => part.startsWith(`${name} - `)) ?? '';
    return !GRANTS.some((grant) => grant.test(terms));
  });
}

function entryOf(root: string, name: string): string {
  const folder = join(root, 'node_modules', name);
  const { version, license } = JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8'));
  const whole = WITHOUT_TEXT[name] ?? readFileSync(join(folder, FILE[name] ?? 'LICENSE'), 'utf8');
  // vite's continues with what vite itself bundles, which is not in the app.
  const [text = ''] = whole.split('# Licenses of bundled dependencies');
  return `## ${name} - ${version} (${license})\n\n${text.trim()}\n`;
}

/** The package a module belongs to: `@preact/signals` of `…/node_modules/@preact/signals/dist/x.js`. */
const packageOf = (id: string): string[] =>
  /.*node_modules\/((?:@[^/]+\/)?[^/]+)/.exec(id.replaceAll('\\', '/'))?.slice(1) ?? [];

/** What the page's workers are made of; they are bundled before the page is. */
const inWorkers = new Set<string>();

/** Notes what a worker bundles, for {@link licences}. */
export const licencesOfWorker = (): Plugin => ({
  name: 'lapstrip-licences-of-worker',
  generateBundle(_options, bundle) {
    for (const name of packagesIn(bundle)) inWorkers.add(name);
  },
});

const packagesIn = (
  bundle: Readonly<Record<string, Rolldown.OutputAsset | Rolldown.OutputChunk>>,
) =>
  Object.values(bundle)
    .flatMap((output) => (output.type === 'chunk' ? Object.keys(output.modules) : []))
    .flatMap(packageOf);

/** The plugin; `root` is the project's. */
export function licences(root: string): Plugin {
  return {
    name: 'lapstrip-licences',
    apply: 'build',
    enforce: 'post',
    config: () => ({ build: { license: { fileName: LICENCES } } }),
    generateBundle: {
      order: 'post',
      handler(_options, bundle) {
        const listed = bundle[LICENCES];
        if (listed?.type !== 'asset') throw new Error(`${LICENCES} was not written`);
        const bundled = Object.entries(WITHOUT_TEXT).reduce(
          (text, [name, terms]) =>
            text.replace(new RegExp(`^## ${name} - .*$`, 'm'), (title) => `${title}\n\n${terms}`),
          String(listed.source).trim(),
        );
        const apart = [...inWorkers].filter((name) => !bundled.includes(`## ${name} - `)).sort();
        const further = [...apart, ...FURTHER];
        listed.source = [bundled, ...further.map((name) => entryOf(root, name))].join('\n\n');
        const packages = [...new Set([...packagesIn(bundle), ...further])];
        const missing = withoutTerms(listed.source, packages);
        if (missing.length > 0) throw new Error(`no licence's text for ${missing.join(', ')}`);
      },
    },
  };
}

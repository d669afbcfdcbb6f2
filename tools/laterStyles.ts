/**
 * Puts a small loader in place of the bundler's own for files that come later: it waits for their
 * style sheets and then loads them. The bundler's also preloads scripts, which are stored by the
 * worker here, and is a tenth of what the first answer may weigh in code of its own.
 */

import type { Plugin } from 'vite';

const HELPER = '\0vite/preload-helper.js';

const CODE = `
const styles = {};
for (const { href } of document.styleSheets) styles[href] = 0;
const style = (href) => (styles[href] ??= new Promise((loaded, failed) => {
  const link = document.createElement('link');
  link.rel = 'stylesheet';
  link.href = href;
  link.onload = loaded;
  link.onerror = () => {
    link.remove();
    delete styles[href];
    failed(new Error(href));
  };
  document.head.append(link);
}));
export const __vitePreload = (load, files = [], from) =>
  Promise.all(files.map((file) => style(new URL(file, from).href))).then(load);
`;

/** The plugin. */
export function laterStyles(): Plugin {
  return {
    name: 'lapstrip-later-styles',
    apply: 'build',
    enforce: 'pre',
    load: (id) => (id === HELPER ? CODE : undefined),
    transform: (_code, id) => (id === HELPER ? CODE : undefined),
  };
}

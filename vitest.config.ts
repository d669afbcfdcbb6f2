import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';
import { catalogue } from './tools/catalogue';
import { changelog } from './tools/changelog';
import { world } from './tools/world/plugin';

const root = fileURLToPath(new URL('.', import.meta.url));
const plugins = [catalogue(`${root}airfields-demo`), changelog(root), world()];

export default defineConfig({
  test: {
    projects: [
      {
        plugins,
        test: {
          name: 'core',
          isolate: false,
          include: ['tests/core/**/*.test.{ts,tsx}'],
          testTimeout: 30_000,
        },
      },
      {
        plugins,
        test: {
          name: 'reference',
          include: ['tests/reference/**/*.test.ts'],
          testTimeout: 30_000,
        },
      },
      // The files of the build, without a browser.
      { test: { name: 'built', include: ['tests/built/**/*.test.ts'], testTimeout: 30_000 } },
      {
        test: {
          name: 'browser',
          // One browser serves all files of a worker; each window has a profile of its own.
          isolate: false,
          include: ['tests/browser/**/*.test.ts'],
          testTimeout: 120_000,
          // What is waited for comes late on a machine that is busy; what fails is waited for in vain.
          expect: { poll: { timeout: 10_000 } },
          hookTimeout: 60_000,
        },
      },
      {
        test: {
          name: 'engines',
          include: ['tests/engines/*.test.ts'],
          // A test starts its browser, some of them twice, which takes long on a machine that is busy.
          testTimeout: 180_000,
          hookTimeout: 120_000,
        },
      },
    ],
  },
});

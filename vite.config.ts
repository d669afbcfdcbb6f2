import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vite';
import { VitePWA } from 'vite-plugin-pwa';
import { catalogue } from './tools/catalogue';
import { changelog } from './tools/changelog';
import { contentPolicy } from './tools/contentPolicy';
import { headers } from './tools/headers';
import { licences, licencesOfWorker } from './tools/licences';
import { manifest } from './tools/manifest';
import { TARGET } from './tools/oldest';
import { world } from './tools/world/plugin';

const folder = (name: string) => fileURLToPath(new URL(name, import.meta.url));

export default defineConfig({
  root: 'src',
  base: './',
  publicDir: '../public',
  build: {
    outDir: '../dist',
    emptyOutDir: true,
    target: TARGET,
    assetsInlineLimit: 0,
    modulePreload: { polyfill: false },
    rolldownOptions: {
      checks: { bundlerTimings: false },
      output: {
        codeSplitting: {
          groups: [{ name: 'first', tags: ['$initial'] }],
          includeDependenciesRecursively: false,
        },
      },
    },
  },
  // A worker loads what it needs when it needs it. What reads a map is told by its name from what is
  // stored with the app (below, and src/offline).
  worker: {
    format: 'es',
    plugins: () => [licencesOfWorker()],
    rolldownOptions: {
      output: {
        chunkFileNames: ({ moduleIds }) =>
          `assets/${moduleIds.some((id) => id.includes('/core/map/')) ? 'map.' : ''}[name]-[hash].js`,
      },
    },
  },
  preview: { port: 4173 },
  plugins: [
    catalogue(folder('airfields-demo')),
    world(),
    contentPolicy(),
    headers(),
    licences(folder('.')),
    changelog(folder('.')),
    VitePWA({
      registerType: 'prompt',
      injectRegister: null,
      includeManifestIcons: false,
      manifest,
      strategies: 'injectManifest',
      srcDir: 'offline',
      filename: 'sw.ts',
      injectManifest: {
        // Not every browser takes a worker that is a module.
        rollupFormat: 'iife',
        target: TARGET,
        globPatterns: [
          '**/*.{html,js,css,json,woff2,webmanifest}',
          'icons/{mark.svg,192.png}',
          'licences.txt',
        ],
        // whatsNew.json is read of the version on the host; few bring a map.
        globIgnores: ['whatsNew.json', 'schemas/**', 'pictures/**', 'sw.js', 'assets/map.*.js'],
      },
    }),
  ],
});

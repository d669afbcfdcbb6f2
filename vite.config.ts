import { readdirSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vite';
import { VitePWA } from 'vite-plugin-pwa';
import { catalogue } from './tools/catalogue';
import { chunks } from './tools/chunks';
import { contentPolicy } from './tools/contentPolicy';
import { languages } from './tools/languages';
import { laterStyles } from './tools/laterStyles';
import { manifest } from './tools/manifest';

const here = fileURLToPath(new URL('.', import.meta.url));

/**
 * Of core, what the first answer needs; all else that its door names comes with what asks for it. A
 * module that is missing here comes with the first answer too, but as a file of its own.
 */
const FIRST_OF_CORE = [
  'angle|figure|index|units',
  'airfield/ends',
  'brief/(facts|wind)',
  'earth/geodesic',
  'procedure/phases',
  'runway/(components|holds|judge|order|rank|situation)',
  'sortie/\\w+',
  'weather/(envelope|groups|judgeWind|observation|read(Statement|Wind)|spans|statements|tokens|writtenWind)',
];
const isLaterCore = new RegExp(`/src/core/(?!(${FIRST_OF_CORE.join('|')})\\.ts$)`);

const styleFiles = readdirSync(`${here}src`, { recursive: true, encoding: 'utf8' })
  .filter((file) => file.endsWith('.module.css'))
  .map((file) => file.replaceAll('\\', '/'))
  .sort();
const FILE_LETTERS = 'abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ';
const classesOf = new Map<string, string[]>();

/** A class in the built page: a letter for its file and a number in it, since both script and style carry it. */
function shortClass(local: string, file: string): string {
  const index = styleFiles.findIndex((known) => file.endsWith(`src/${known}`));
  if (index < 0) throw new Error(`not a style file: ${file}`);
  const letter = FILE_LETTERS.charAt(index % FILE_LETTERS.length);
  const classes = classesOf.get(file) ?? [];
  classesOf.set(file, classes);
  if (!classes.includes(local)) classes.push(local);
  // More files than letters: the next round of letters is underlined.
  const round = '_'.repeat(Math.floor(index / FILE_LETTERS.length));
  return `${round}${letter}${classes.indexOf(local).toString(36)}`;
}

export default defineConfig(({ command }) => ({
  root: 'src',
  // Every address in the built app is relative, so that dist/ works from any folder of any host.
  base: './',
  publicDir: '../public',
  build: {
    outDir: '../dist',
    emptyOutDir: true,
    target: 'es2022',
    // Colours may be written with light-dark(), which older targets would have spelled out.
    cssTarget: ['chrome123', 'edge123', 'firefox120', 'safari17.5'],
    // What is loaded later is loaded once and then stored: no list of it in the first answer's way.
    modulePreload: false,
    // Two per cent smaller than what the bundler's own minifier makes, which goes before it below.
    minify: 'terser',
    terserOptions: { module: true, compress: { passes: 3 } },
    // The content policy refuses data: addresses.
    assetsInlineLimit: 0,
    rolldownOptions: {
      checks: { bundlerTimings: false },
      output: {
        minify: true,
        codeSplitting: {
          groups: [
            // All that the first answer needs is one file: it compresses better than eight, and none
            // of them has to be read before the next is asked for.
            {
              name: 'first',
              tags: ['$initial'],
              test: (id) => !isLaterCore.test(id),
              priority: 1,
            },
            // So is what several of the later parts need: thirty small files are slow to ask for.
            { name: 'shared', minShareCount: 2, test: /\/src\// },
          ],
          // Or the door would take all that it names with it.
          includeDependenciesRecursively: false,
        },
      },
    },
  },
  // Shorter than what tsconfig.json says, which needs a module of its own to be called from.
  oxc: {
    jsx: { runtime: 'classic', pragma: 'h', pragmaFrag: 'Fragment' },
    jsxInject: "import { Fragment, h } from 'preact'",
  },
  css: {
    modules: {
      localsConvention: 'camelCaseOnly',
      generateScopedName: command === 'build' ? shortClass : '[local]_[hash:base64:5]',
    },
  },
  preview: { port: 4173, strictPort: false },
  plugins: [
    catalogue(`${here}airfields-demo`),
    contentPolicy(),
    languages(`${here}src/`),
    chunks(here),
    laterStyles(),
    VitePWA({
      // The pilot says when a new version is taken, and src/device/update.ts registers the worker
      // after the first answer, so that storing everything never stands in that answer's way.
      registerType: 'prompt',
      injectRegister: null,
      includeManifestIcons: false,
      manifest,
      workbox: {
        globPatterns: ['**/*.{html,js,css,json,woff2,webmanifest}', 'icons/{mark.svg,192.png}'],
        globIgnores: ['schemas/**', 'pictures/**', 'sw.js', 'workbox-*.js'],
        navigateFallback: 'index.html',
        // A link to a file, such as a schema, asks for that file and not for the app.
        navigateFallbackDenylist: [/\/[^/?]+\.[^/]+$/],
        // The first visit can be finished without a network too.
        clientsClaim: true,
        cleanupOutdatedCaches: true,
      },
    }),
  ],
}));

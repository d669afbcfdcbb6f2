/** The installed app. Addresses are relative, so it installs from any folder of any host. */

import { existsSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { ManifestOptions } from 'vite-plugin-pwa';
import { words as german } from '../src/shell/words.de';
import { words as english } from '../src/shell/words.en';

const PUBLIC = new URL('../public/', import.meta.url);

/** Screenshots for the install dialogue, by tools/pictures.mjs; missing ones are left out. */
const SCREENSHOTS = [
  { src: 'pictures/wind-phone-day.png', sizes: '780x1688', form_factor: 'narrow', label: 'Wind' },
  { src: 'pictures/steps-phone-day.png', sizes: '780x1688', form_factor: 'narrow', label: 'Steps' },
  { src: 'pictures/wind-wide-dusk.png', sizes: '1366x1024', form_factor: 'wide', label: 'Wind' },
] as const;

type Shortcut = keyof typeof english.places;

const shortcut = (place: Shortcut) => ({
  name: english.places[place],
  name_localized: { de: german.places[place] },
  url: `./#/${place}`,
  icons: [{ src: 'icons/192.png', sizes: '192x192' }],
});

/** The files that are looked at: documents, logs, and extracts of a map. */
const FILES = {
  'application/json': ['.json'],
  'application/geo+json': ['.geojson'],
  'application/vnd.openstreetmap.data+xml': ['.osm'],
  'application/xml': ['.xml'],
};

/**
 * The web app manifest. W3C Web Application Manifest; shortcuts and screenshots by its registries.
 * One file for all languages: English, with German in `*_localized` members for browsers that read
 * them (the same, "Localized members").
 */
export const manifest: Partial<ManifestOptions> & Record<`${string}_localized`, unknown> = {
  name: 'Lapstrip',
  short_name: 'Lapstrip',
  description:
    'A kneeboard for pilots who fly simulators: the wind in, the runway out, the steps ticked off, without a network.',
  description_localized: { de: german.caution.what },
  lang: 'en',
  dir: 'ltr',
  // The same wherever on a host the app lies, so that moving it makes no second app.
  id: 'lapstrip',
  start_url: './',
  scope: './',
  display: 'standalone',
  // If the app gets no window of its own, at least one with a way back.
  display_override: ['standalone', 'minimal-ui'],
  orientation: 'any',
  // The paper of the day, as in style/tokens.css and index.html.
  theme_color: '#f5f1e6',
  background_color: '#f5f1e6',
  categories: ['education', 'utilities'],
  icons: [
    { src: 'icons/mark.svg', sizes: 'any', type: 'image/svg+xml' },
    { src: 'icons/192.png', sizes: '192x192', type: 'image/png' },
    { src: 'icons/512.png', sizes: '512x512', type: 'image/png' },
    { src: 'icons/maskable-512.png', sizes: '512x512', type: 'image/png', purpose: 'maskable' },
  ],
  shortcuts: [shortcut('wind'), shortcut('steps')],
  // Text shared from another app lands in the wind entry, a file is looked at first. Files need POST,
  // which the worker takes (src/offline/shared.ts). W3C Web Share Target.
  share_target: {
    action: './',
    method: 'POST',
    enctype: 'multipart/form-data',
    params: {
      title: 'title',
      text: 'text',
      url: 'url',
      files: [{ name: 'file', accept: [...Object.entries(FILES)].flat(2) }],
    },
  },
  // One sortie, one window: whatever is opened comes to the existing window
  // (src/board/documents/launched.ts), which never reloads mid-sequence. W3C Web App Launch
  // Handler.
  launch_handler: { client_mode: ['focus-existing', 'auto'] },
  // Files open as those chosen in the Library do. W3C Manifest Incubations, file_handlers.
  file_handlers: [{ action: './', accept: FILES }],
  screenshots: SCREENSHOTS.filter(({ src }) => existsSync(fileURLToPath(new URL(src, PUBLIC)))).map(
    (shot) => ({ ...shot, type: 'image/png' }),
  ),
};

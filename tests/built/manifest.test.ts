/** What an installed Lapstrip asks of the device, as its manifest says it. W3C Web Application Manifest and its incubations. */

import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { DIST } from '../browser/server';

const manifest = JSON.parse(readFileSync(join(DIST, 'manifest.webmanifest'), 'utf8'));

/** Any folder of any host, by example. */
const WHERE = 'https://host.example/some/folder/manifest.webmanifest';
const within = (address: string) => new URL(address, WHERE).href;

test('wherever it lies, it starts within its own folder, and files and shared texts come there', () => {
  const scope = within(manifest.scope);
  expect(scope).toBe('https://host.example/some/folder/');
  const addresses = [
    manifest.start_url,
    manifest.share_target.action,
    ...manifest.file_handlers.map(({ action }: { action: string }) => action),
    ...manifest.shortcuts.map(({ url }: { url: string }) => url),
  ];
  for (const address of addresses) expect(within(address).startsWith(scope)).toBe(true);
});

test('it takes files that are shared with it, which need POST, and texts as before', () => {
  const { method, enctype, params } = manifest.share_target;
  // W3C Web Share Target, 2.2: files are sent only by POST, as multipart/form-data.
  expect([method, enctype]).toEqual(['POST', 'multipart/form-data']);
  expect(params).toMatchObject({ title: 'title', text: 'text', url: 'url' });
  expect(params.files[0].accept).toEqual(expect.arrayContaining(['.json', '.osm', '.geojson']));
});

test('it is one app wherever it moves to, in one window, and opens its own files', () => {
  expect(manifest.id).toBe('lapstrip');
  // What is opened comes to the window that is there, not to a second one that reloads it.
  expect(manifest.launch_handler.client_mode[0]).toBe('focus-existing');
  const opened = Object.values(manifest.file_handlers[0].accept).flat();
  expect(opened).toEqual(['.json', '.geojson', '.osm', '.xml']);
  // Never a mode without a way back where the device draws none.
  expect(manifest.display_override).not.toContain('fullscreen');
  expect(manifest.display_override.at(0)).toBe(manifest.display);
});

/**
 * A static host with the headers of tools/headers.ts, serving the built app from a folder below its
 * root, because the app must run from any folder of any host. It can be stopped and restarted at
 * the same address: offline means that nothing answers.
 */

import { readFile } from 'node:fs/promises';
import { createServer, type Server } from 'node:http';
import { extname, join, normalize, sep } from 'node:path';
import { fileURLToPath } from 'node:url';
import { gzipSync } from 'node:zlib';
import { cachingOf, HEADERS } from '../../tools/headers';

/** Where the app is built; the environment can name another build. */
export const DIST =
  process.env.LAPSTRIP_DIST ?? fileURLToPath(new URL('../../dist', import.meta.url));

/** The host's folder the app is served from. */
export const BELOW = '/some/where/';

const TYPES: Readonly<Record<string, string>> = {
  '.css': 'text/css; charset=utf-8',
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.json': 'application/json; charset=utf-8',
  '.png': 'image/png',
  '.svg': 'image/svg+xml',
  '.txt': 'text/plain; charset=utf-8',
  '.webmanifest': 'application/manifest+json',
  '.woff2': 'font/woff2',
};

/** Files that hosts send as they are; all others go out gzipped, as from most hosts. */
const COMPRESSED = new Set(['.png', '.woff2']);

/** Cache of the built app's files, which don't change while they are tested. */
const files = new Map<string, Promise<Buffer | null>>();
const gzips = new WeakMap<Buffer, Buffer>();

function gzipped(body: Buffer): Buffer {
  const kept = gzips.get(body) ?? gzipSync(body);
  gzips.set(body, kept);
  return kept;
}

/** A host that serves one folder. */
export class Host {
  /** The folder served; assigning another puts a new version on the host. */
  folder: string;
  /** The paths requested so far, in the app's folder, in order. */
  readonly asked: string[] = [];
  /** Called with each of these paths as it is requested. */
  onAsked: (path: string) => void = () => undefined;
  readonly #name: string;
  #port = 0;
  #server: Server | null = null;

  /**
   * `localhost` counts as secure, so that workers and locks are allowed; other names don't. `below`
   * is the host's folder the app is served from.
   */
  constructor(
    folder = DIST,
    name = 'localhost',
    readonly below = BELOW,
  ) {
    this.folder = folder;
    this.#name = name;
  }

  /** The address of the app. */
  get url(): string {
    return `http://${this.#name}:${this.#port}${this.below}`;
  }

  /** Starts answering; at its previous address, if it was stopped. */
  async start(): Promise<void> {
    const server = createServer(async (request, response) => {
      const { pathname } = new URL(request.url ?? '/', this.url);
      const within = pathname.startsWith(this.below) ? pathname.slice(this.below.length) : null;
      if (within !== null) {
        this.asked.push(within);
        this.onAsked(within);
      }
      const body = within === null ? null : await this.#read(within || 'index.html');
      if (body === null) {
        response.writeHead(404, { 'content-type': 'text/plain' }).end('not here');
        return;
      }
      const type = TYPES[extname(pathname) || '.html'] ?? 'application/octet-stream';
      const caching = cachingOf(pathname);
      const headers = { ...HEADERS, 'content-type': type, 'cache-control': caching };
      if (COMPRESSED.has(extname(pathname))) response.writeHead(200, headers).end(body);
      else response.writeHead(200, { ...headers, 'content-encoding': 'gzip' }).end(gzipped(body));
    });
    await new Promise<void>((resolve, reject) => {
      server.once('error', reject).listen(this.#port, this.#name, resolve);
    });
    const address = server.address();
    if (address !== null && typeof address === 'object') this.#port = address.port;
    this.#server = server;
  }

  /** Stops answering, open connections included. */
  async stop(): Promise<void> {
    const server = this.#server;
    this.#server = null;
    if (!server) return;
    const closed = new Promise((resolve) => server.close(resolve));
    server.closeAllConnections();
    await closed;
  }

  async #read(within: string): Promise<Buffer | null> {
    const file = normalize(join(this.folder, decodeURIComponent(within)));
    if (!file.startsWith(this.folder + sep)) return null;
    const read = () => readFile(file).catch(() => null);
    if (this.folder !== DIST) return read();
    const kept = files.get(file) ?? read();
    files.set(file, kept);
    return kept;
  }
}

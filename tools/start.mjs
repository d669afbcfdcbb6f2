/**
 * Builds the app and serves it: `npm start`, or `npm start -- --host --port 8080` to let other
 * machines in. Prints the address; if the port is taken, uses the next free one.
 */

import { parseArgs } from 'node:util';

// The configuration imports core's schemas, which import neighbours without an extension.
process.env.VITE_CONFIG_NATIVE_IGNORE_WARNING = 'true';
const { build, preview } = await import('vite');

const LOCAL = 'localhost';
const EVERYONE = '0.0.0.0';

/** `--host` alone means everyone, as for vite itself. */
const args = process.argv.slice(2).flatMap((arg, i, all) => {
  const alone = arg === '--host' && (all[i + 1] ?? '--').startsWith('--');
  return alone ? ['--host', EVERYONE] : [arg];
});
const { values } = parseArgs({
  args,
  options: {
    host: { type: 'string', default: process.env.HOST ?? LOCAL },
    port: { type: 'string', default: process.env.PORT ?? '4173' },
  },
});

await build({ logLevel: 'warn' });
const server = await preview({ preview: { host: values.host, port: Number(values.port) } });
server.printUrls();

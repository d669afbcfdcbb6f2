/** All rows, file by file, for tools/bench.mjs to bundle, run and print. */

import type { Row, Rows } from './row';

const FILES = import.meta.glob<{ rows?: Rows }>(['./*.ts', '!./index.ts', '!./row.ts']);

export { keeps } from './row';

/** Too slow to measure unless asked for by name. */
const ON_REQUEST = ['./kills.ts'];

/** Measures every file, or those whose name contains `wanted`. */
export async function* measure(wanted = ''): AsyncGenerator<Row> {
  for (const [file, load] of Object.entries(FILES)) {
    if (!file.includes(wanted) || (wanted === '' && ON_REQUEST.includes(file))) continue;
    const { rows } = await load();
    if (rows) yield* await rows();
  }
}

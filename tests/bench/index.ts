/** All rows, file by file. tools/bench.mjs bundles this, runs it and prints what it gives. */

import type { Row, Rows } from './row';

const FILES = import.meta.glob<{ rows?: Rows }>(['./*.ts', '!./index.ts', '!./row.ts']);

export { keeps } from './row';

/** These take long, and are measured only when they are asked for by name. */
const ON_REQUEST = ['./kills.ts'];

/** Measures everything, or what stands in the files whose name holds `wanted`. */
export async function* measure(wanted = ''): AsyncGenerator<Row> {
  for (const [file, load] of Object.entries(FILES)) {
    if (!file.includes(wanted) || (wanted === '' && ON_REQUEST.includes(file))) continue;
    const { rows } = await load();
    if (rows) yield* await rows();
  }
}

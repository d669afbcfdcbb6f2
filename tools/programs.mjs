/** Programs that this machine has. */

import { accessSync, constants } from 'node:fs';
import { delimiter, join } from 'node:path';

/** Whether a file can be run. */
export function runs(path) {
  try {
    accessSync(path, constants.X_OK);
    return true;
  } catch {
    return false;
  }
}

/** The path of a program by its name; undefined where there is none. */
export const programOnPath = (name) =>
  (process.env.PATH ?? '')
    .split(delimiter)
    .map((folder) => join(folder, name))
    .find(runs);

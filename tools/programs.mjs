/** Programs on this machine. */

import { accessSync, constants } from 'node:fs';
import { delimiter, join } from 'node:path';

/** Whether a file is executable. */
export function runs(path) {
  try {
    accessSync(path, constants.X_OK);
    return true;
  } catch {
    return false;
  }
}

/** A program's path by its name; undefined if there is none. */
export const programOnPath = (name) =>
  (process.env.PATH ?? '')
    .split(delimiter)
    .map((folder) => join(folder, name))
    .find(runs);

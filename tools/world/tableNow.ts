/** The table of the set that is installed, for tools/world.mjs. */

import { worldFile } from './file';
import { worldTable } from './table';

// While the module is evaluated, because its importer can load nothing afterwards.
export const table = worldTable(await worldFile());

/** Finding an end by its name. */

import { readDesignator } from './designator';
import { type End, endsOf } from './ends';
import type { Field } from './field';

/** The end of that name, which may be written loosely (`9L` for `09L`); null if there is none. */
export function findEnd(field: Field, name: string): End | null {
  const designator = readDesignator(name);
  return endsOf(field).find((end) => end.designator === designator) ?? null;
}

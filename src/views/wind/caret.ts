/** Where the caret stands in the entry: the group there is explained. */

import { signal } from '@preact/signals';

/** A place in the text; null while the entry does not have the keyboard. */
export const caret = signal<number | null>(null);

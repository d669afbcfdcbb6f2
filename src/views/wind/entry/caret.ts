/** How the entry is typed in: where the caret stands, whose group is explained, and on whose keys. */

import { signal } from '@preact/signals';

/** The device's own keyboard is wanted, for letters that the keypad has not. */
export const letters = signal(false);

/** A place in the text; null while the entry does not have the keyboard. */
export const caret = signal<number | null>(null);

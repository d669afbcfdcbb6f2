/**
 * How the entry is used: where the caret is, whose group is explained, and which keyboard types.
 */

import { signal } from '@preact/signals';

/** The device's own keyboard is wanted, for letters the keypad lacks. */
export const letters = signal(false);

/** A place in the text; null while the entry isn't focused. */
export const caret = signal<number | null>(null);

/** Whether a new version of the app waits to be taken. What finds out is loaded after the first answer. */

import { signal } from '@preact/signals';

/** Takes the new version and shows it; null while there is none. */
export const takeUpdate = signal<(() => void) | null>(null);

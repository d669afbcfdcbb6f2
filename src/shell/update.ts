/** Whether a new version of the app waits to be taken. What finds out is loaded after the first answer. */

import { signal } from '@preact/signals';

/** A version that waits to be taken. */
export interface Update {
  /** Takes it and shows it. */
  readonly take: () => void;
  /** What is new in it, in a line or two; none where it does not say. */
  readonly news: readonly string[];
}

/** The version that waits; null while there is none. */
export const update = signal<Update | null>(null);

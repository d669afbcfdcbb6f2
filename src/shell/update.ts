/** Whether a new version of the app is waiting. What finds out is loaded after the first answer. */

import { signal } from '@preact/signals';

/** A version waiting to be taken. */
export interface Update {
  /** Takes it and shows it. */
  readonly take: () => void;
  /** What is new in it, in a line or two; empty if it doesn't say. */
  readonly news: readonly string[];
}

/** The waiting version; null if there is none. */
export const update = signal<Update | null>(null);

/** What the card shows of one thing, and what it does. */

import type { ComponentChildren } from 'preact';
import type { Gesture } from '../../parts/key/gesture';

/** One thing over the whole screen. */
export interface Face {
  /** Names it: when it changes, touches meant for the previous face don't count. */
  readonly name: string;
  /** Progress in the phase, from 0 to 1; null if there is nothing to count. */
  readonly share: number | null;
  /** Along the top edge: where one is, the end in use, and the one number that matters. */
  readonly head: readonly [ComponentChildren, string, string];
  /** What is shown as large as it fits, and the same as text. */
  readonly drawn: ComponentChildren;
  readonly text: string;
  /** Along the bottom edge: what follows, and what is held back. */
  readonly foot: readonly [ComponentChildren, string];
  /** How to do it, in words. */
  readonly hint: string;
  /** What pressing it does, for those who can't see it. */
  readonly label: ComponentChildren;
  /** Read to those who can't see it, when it comes up. */
  readonly spoken: ComponentChildren;
  readonly critical: boolean;
  /** What a hold will have done, shown while it lasts. */
  readonly held: string;
  readonly does: Readonly<Partial<Record<Gesture, () => void>>>;
  /** The small keys, which do what the gestures do. */
  readonly keys: readonly SmallKey[];
}

/** A key along the bottom edge. */
export interface SmallKey {
  readonly name: string;
  /** Absent: it can do nothing right now. */
  readonly onPress: (() => void) | undefined;
}

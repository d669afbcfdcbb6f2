/**
 * What is in the aircraft: every change is stored at once, and repeated adjustments of one thing
 * are undone together.
 */

import { computed } from '@preact/signals';
import type { Entry, Load } from '../../core';
import { day } from '../board';
import { add, undoable } from '../record/adding';

/** What the aircraft weighs with today's load, or with its usual one; null without an aircraft. */
export const sheetOfToday = computed(day.load);

/** What was changed last: the fuel, a station by its name, or everything by a preset. */
let changedLast: string | null = null;

/**
 * Loads the aircraft. `part` names what changes: repeated changes of one part are undone together.
 */
export function setLoad(part: string, load: Load): void {
  const { value: offered } = undoable;
  const isGoingOn = offered?.what === 'load' && changedLast === part;
  const before: readonly Entry[] = isGoingOn ? offered.entries : [];
  changedLast = part;
  undoable.value = {
    what: 'load',
    entries: [...before, ...add({ kind: 'set', inputs: { load } })],
  };
}

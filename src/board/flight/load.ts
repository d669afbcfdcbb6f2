/** What is in the aircraft: every change is stored as it happens, and adjusting one thing is taken back in one. */

import { computed } from '@preact/signals';
import type { Entry, Load } from '../../core';
import { day } from '../board';
import { add, undoable } from '../record/adding';

/** What the aircraft weighs with today's load, or with its usual one; null without an aircraft. */
export const sheetOfToday = computed(day.load);

/** What was changed last: the fuel, a station by its name, or all by a preset. */
let changedLast: string | null = null;

/** Loads the aircraft. `part` names what is changed: what is changed again and again is undone at once. */
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

/** The steps' texts with present live numbers. */

import { live } from '../../board/flight/live';
import type { Facts, LiveName } from '../../core';
import { readNumber, readText, saidText } from '../../parts/live/live';

/** The text as read today; unknown values are dashes. */
export const liveText = (text: string): string => readText(text, live.value);

/** The text as it read when a step was handled: what was seen then, not what is so now. */
export function seenText(text: string, saw: Partial<Facts>): string {
  const { facts, wind } = live.value;
  return readText(text, { facts: facts === null ? null : { ...facts, ...saw }, wind });
}

export const callText = (text: string): string => saidText(text, live.value);

/** A live number as read; a dash if unknown. */
export const liveNumber = (name: LiveName): string => readNumber(name, live.value);

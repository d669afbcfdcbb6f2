/** The steps' texts with present live numbers. */

import { live } from '../../board/flight/live';
import type { LiveName } from '../../core';
import { readNumber, readText, saidText } from '../../parts/live/live';

/** The text as read today; unknown values are dashes. */
export const liveText = (text: string): string => readText(text, live.value);

export const callText = (text: string): string => saidText(text, live.value);

/** A live number as read; a dash if unknown. */
export const liveNumber = (name: LiveName): string => readNumber(name, live.value);

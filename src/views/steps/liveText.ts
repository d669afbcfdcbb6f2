/** The steps' texts with the live numbers of now. */

import { live } from '../../board/flight/live';
import type { LiveName } from '../../core';
import { readNumber, readText, saidText } from '../../parts/live/live';

/** The text as it is read today; what is not known yet is a dash. */
export const liveText = (text: string): string => readText(text, live.value);

/** The text as it is said on the radio. */
export const callText = (text: string): string => saidText(text, live.value);

/** A live number as it is read; a dash where it is not known. */
export const liveNumber = (name: LiveName): string => readNumber(name, live.value);

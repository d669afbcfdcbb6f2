/** Sentences for what the reader of maps tells by codes. */

import { LONG_LEAD_IN_M, type MapExtract, type MapNote } from '../../core';
import { length } from '../../parts/units';
import { notes, problems } from './noteWords';

/** Why nothing, or not all, could be read. */
export const problemSaid = ({ code }: MapExtract['problems'][number]): string => problems[code];

/** What notes of a kind say, and how many there are. */
export const noteTitle = (code: MapNote['code'], n: number): string =>
  notes[code](n, length(LONG_LEAD_IN_M));

/** One of them: what it is called, or its number. */
export const noteSaid = ({ what }: MapNote, number: number): string => what ?? String(number);

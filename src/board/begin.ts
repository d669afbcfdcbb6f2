/** Takes up where the pilot left off. */

import { isOpenElsewhere } from '../device/windows';
import { readDraft } from '../record/drafts';
import { inputs, keeping, record, sortie } from './board';
import { followDate } from './dayParts';
import { aircraft, askAgain } from './documents/documents';
import { takeFromAddress, watching } from './places';
import { chooseAircraft } from './record/choices';
import { interrupt } from './steps/interruption';
import { goOnTyping, WIND_DRAFT } from './wind/windEntry';

/** Reads the record and what it asks for. Resolves when the first frame can be drawn. */
export async function begin(): Promise<void> {
  const opened = record.open();
  // One that only watches does not count as another window.
  const elsewhere = watching || isOpenElsewhere();
  await opened;
  followDate();
  const isLate = keeping.value === 'late';
  if (!isLate) await goOn();
  await takeFromAddress().catch(() => undefined);
  if (!isLate) return takeUp(await elsewhere);
  // The pilot works meanwhile: nothing is chosen unasked before it is known what is flown.
  void record.answered().then(async () => {
    await goOn();
    takeUp(await elsewhere);
  });
}

/** Goes on with what was typed, and with documents that were asked for before they could be had. */
async function goOn(): Promise<void> {
  askAgain();
  const kept = await readDraft(WIND_DRAFT);
  const text = textIn(kept) ?? record.draftOfVersion1;
  if (text !== null) goOnTyping(text);
}

/** Marks what was left, and takes an aircraft where there is none. */
function takeUp(isElsewhere: boolean): void {
  // A reload in mid-sequence is an interruption, since the last that is known; another window is none.
  if (!isElsewhere && !record.workedMeanwhile) interrupt(sortie.value.lastAt?.wallMs);
  const first = aircraft.value[0];
  if (inputs.value.aircraft === null && first !== undefined) chooseAircraft(first);
}

const textIn = (kept: unknown): string | null =>
  typeof kept === 'object' && kept !== null && 'text' in kept && typeof kept.text === 'string'
    ? kept.text
    : null;

/** Resumes where the pilot left off. */

import { isOpenElsewhere } from '../device/windows';
import { readDraft } from '../record/drafts';
import { day, keeping, record, sortie } from './board';
import { followDate } from './dayParts';
import { askAgain, listedAircraft } from './documents/documents';
import { wallNowMs } from './flight/time';
import { isPlaceAsked, takeFromAddress, watching } from './places';
import { chooseAircraft } from './record/choices';
import { backToSteps, interrupt } from './steps/interruption';
import { goOnTyping, WIND_DRAFT } from './wind/windEntry';

/** Reads the record and what it asks for. Resolves when the first frame can be drawn. */
export async function begin(): Promise<void> {
  const opened = record.open();
  // A window that only watches doesn't count as another.
  const elsewhere = watching || isOpenElsewhere();
  await opened;
  followDate();
  const isLate = keeping.value === 'late';
  if (!isLate) await goOn();
  await takeFromAddress().catch(() => undefined);
  if (!isLate) return takeUp(await elsewhere);
  // The pilot works meanwhile: nothing is chosen by itself until we know which sortie is being
  // flown.
  void record.answered().then(async () => {
    await goOn();
    takeUp(await elsewhere);
  });
}

/** Continues with what was being typed, and with documents requested before they were available. */
async function goOn(): Promise<void> {
  askAgain();
  const kept = await readDraft(WIND_DRAFT);
  const text = textIn(kept) ?? record.draftOfVersion1;
  if (text !== null) goOnTyping(text);
}

/** Marks the interruption, and takes an aircraft if there is none. */
function takeUp(isElsewhere: boolean): void {
  const lastMs = sortie.value.lastAt?.wallMs;
  // A reload in mid-sequence is an interruption, counted from the last thing we know of; another
  // window is not.
  if (!isElsewhere && !record.workedMeanwhile) {
    interrupt(lastMs);
    if (!watching) backToSteps(wallNowMs() - (lastMs ?? wallNowMs()), isPlaceAsked());
  }
  const first = listedAircraft.value[0];
  if (day.inputs().aircraft === null && first !== undefined) chooseAircraft(first);
}

const textIn = (kept: unknown): string | null =>
  typeof kept === 'object' && kept !== null && 'text' in kept && typeof kept.text === 'string'
    ? kept.text
    : null;

/** Takes up where the pilot left off. */

import { isOpenElsewhere } from '../device/windows';
import { draft, followDate, inputs, record, sortie } from './board';
import { chooseAircraft } from './choices';
import { aircraft } from './documents';
import { interrupt } from './interruption';
import { takeFromAddress, watching } from './places';

/** Reads the record and what it asks for. Resolves when the first frame can be drawn. */
export async function begin(): Promise<void> {
  const opened = record.open();
  // One that only watches does not count as another window.
  const elsewhere = watching || isOpenElsewhere();
  await opened;
  followDate();
  draft.value = inputs.value.draft;
  await takeFromAddress().catch(() => undefined);
  // A reload in mid-sequence is an interruption, since the last that is known; another window is none.
  if (!(await elsewhere)) interrupt(sortie.value.lastAt?.wallMs);
  const first = aircraft.value[0];
  if (inputs.value.aircraft === null && first !== undefined) chooseAircraft(first);
}

/** Takes up where the pilot left off. */

import { isOpenElsewhere } from '../device/windows';
import { draft, followDate, inputs, record, sortie } from './board';
import { chooseAircraft } from './choices';
import { aircraft } from './documents';
import { interrupt } from './interruption';
import { takeFromAddress, watching } from './places';

/** Longer than this the app will not wait for a storage that does not answer. */
const STORE_PATIENCE_MS = 2000;

/** Reads the record and what it asks for. Resolves when the first frame can be drawn. */
export async function begin(): Promise<void> {
  const opened = record.open();
  // One that only watches does not count as another window.
  const elsewhere = watching || isOpenElsewhere();
  await Promise.race([opened, new Promise((done) => setTimeout(done, STORE_PATIENCE_MS))]);
  followDate();
  draft.value = inputs.value.draft;
  await takeFromAddress().catch(() => undefined);
  // A reload in mid-sequence is an interruption, since the last that is known; another window is none.
  if (!(await elsewhere)) interrupt(sortie.value.lastAt?.wallMs);
  const first = aircraft.value[0];
  if (inputs.value.aircraft === null && first !== undefined) chooseAircraft(first);
}

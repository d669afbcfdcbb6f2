/** Begins to listen to keys and sticks, to read aloud, and to tell with tones what was done. */

import { startFeedback } from '../../board/feedback';
import { startHands } from '../../board/hands';
import { startVoice } from '../../board/voice';
import { takeTurns } from '../../device/foremost';
import { saidCall, saidDue, saidGate } from './said';
import { words } from './words';

/** To be called once, when the first answer stands. */
export function startHandsAndVoice(): void {
  takeTurns();
  startHands();
  startFeedback();
  startVoice({ due: saidDue, call: saidCall, gate: saidGate, warning: words.warning });
}

/** Begins to listen to keys and sticks, to read aloud, and to tell with tones what was done. */

import { startHands } from '../../board/hands/hands';
import { startVoice } from '../../board/hands/voice';
import { startFeedback } from '../../board/steps/feedback';
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

/** Starts listening to keys and sticks, reading aloud, and sounding tones for what was done. */

import { startHands } from '../../board/hands/hands';
import { startVoice } from '../../board/hands/voice';
import { startFeedback } from '../../board/steps/feedback';
import { takeTurns } from '../../device/foremost';
import { saidCall, saidCaution, saidDue, saidGate } from './said';
import { words } from './words';

/** Call once, when the first answer is on screen. */
export function startHandsAndVoice(): void {
  takeTurns();
  startHands();
  startFeedback();
  startVoice({
    due: saidDue,
    call: saidCall,
    caution: saidCaution,
    gate: saidGate,
    warning: words.warning,
  });
}

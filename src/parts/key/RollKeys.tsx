/** The two keys of the roll. */

import type { JSX } from 'preact';
import type { Refusals } from './TickKey';
import { TickKey } from './TickKey';

interface RollKeysProps {
  readonly words: {
    readonly stopping: string;
    readonly airborne: string;
    readonly refused: Refusals;
  };
  /** Whether the roll can still be stopped. */
  readonly mayStop: boolean;
  /** Since when the aircraft rolls, ms since the app started. */
  readonly sinceMs: () => number;
  readonly onStop: () => void;
  readonly onAirborne: () => void;
}

/** Stopping and Airborne, side by side in whatever holds them. */
export function RollKeys({
  words,
  mayStop,
  sinceMs,
  onStop,
  onAirborne,
}: RollKeysProps): JSX.Element {
  const both = { refusals: words.refused, moving: true, step: 'rolling' };
  return (
    <>
      <TickKey {...both} look="stop" urgentSinceMs={sinceMs} disabled={!mayStop} onPress={onStop}>
        {words.stopping}
      </TickKey>
      <TickKey {...both} look="pick" onPress={onAirborne}>
        {words.airborne}
      </TickKey>
    </>
  );
}

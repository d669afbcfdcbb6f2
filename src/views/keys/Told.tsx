/**
 * Why a key or stick did nothing, for a moment; and, before a roll whose gates are spoken, what
 * they are.
 */

import type { JSX } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { lastAct } from '../../board/hands/actions';
import { warnsOfGates } from '../../board/hands/voice';
import { stepsShown } from '../../board/steps/leavingSteps';
import styles from './Told.module.css';
import { words } from './words';

/** How long it says why nothing was done, ms. */
const SHOWN_MS = 2000;

/** Lies over the place, so that nothing moves under a finger. */
export function KeysTold(): JSX.Element {
  const last = lastAct.value;
  const [over, setOver] = useState(0);
  useEffect(() => {
    if (last === null) return;
    const timer = setTimeout(() => setOver(last.count), SHOWN_MS);
    return () => clearTimeout(timer);
  }, [last]);
  const isShown = last !== null && last.outcome !== 'done' && last.count > over;
  return (
    <>
      <div role="status" class={styles.place}>
        {isShown && (
          <p class={styles.told}>{words.outcome[last.outcome](words.action[last.action])}</p>
        )}
      </div>
      {warnsOfGates.value && stepsShown.value && <p class={styles.gates}>{words.gates}</p>}
    </>
  );
}

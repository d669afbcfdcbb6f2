/** The sheet behind the time: the sortie's clock. */

import type { JSX } from 'preact';
import { Sheet } from '../../parts/sheet/Sheet';
import { ClockSetting } from './ClockSetting';
import styles from './Sortie.module.css';
import { words } from './words';

/** The clock. */
export function ClockSheet({ onClose }: { onClose: () => void }): JSX.Element {
  return (
    <Sheet title={words.clock} close={words.close} onClose={onClose}>
      <div class={styles.clock}>
        <ClockSetting />
      </div>
    </Sheet>
  );
}

/** Said once, on first start: what Lapstrip is not. */

import type { JSX } from 'preact';
import { cautionRead } from '../device/preferences';
import { Cautions } from '../parts/cautions/Cautions';
import { Sheet } from '../parts/sheet/Sheet';
import styles from './Caution.module.css';
import { words } from './words';

/** The caution, shown once on each device; About repeats it. */
export function CautionSheet(): JSX.Element {
  return (
    <Sheet
      title={words.caution.title}
      close={words.caution.understood}
      onClose={() => {
        cautionRead.value = true;
      }}
    >
      <p class={styles.what}>{words.caution.what}</p>
      <Cautions />
    </Sheet>
  );
}

/**
 * Says, over whatever is open, that this page must be reloaded: a part of it can no longer be loaded.
 */

import type { JSX } from 'preact';
import { keeping } from '../board/board';
import { onRoll } from '../board/places';
import { mustReload } from '../device/missing';
import { Key } from '../parts/key/Key';
import { Sheet } from '../parts/sheet/Sheet';
import styles from './Replaced.module.css';
import { words } from './words';

/** Nothing until a part is missing, and nothing on the roll. */
export function Replaced(): JSX.Element | null {
  const why = mustReload.value;
  if (why === null || onRoll.value) return null;
  const said = keeping.value === 'forgotten' ? words.replaced.forgetful : words.replaced.kept;
  return (
    <Sheet
      title={words.replaced.title}
      close={words.replaced.close}
      onClose={() => {
        mustReload.value = null;
      }}
    >
      <div class={styles.replaced}>
        <p>{words.replaced.why[why]}</p>
        <p>{said.text}</p>
        <Key onPress={() => location.reload()}>{said.reload}</Key>
      </div>
    </Sheet>
  );
}

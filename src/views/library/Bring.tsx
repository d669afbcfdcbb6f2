/**
 * Adding a field, an aircraft, a procedure or a log from a file or a link, or a field from an
 * extract of a map: it is shown before it is stored.
 */

import type { JSX } from 'preact';
import { openFile } from '../../board/documents/opened';
import styles from './Bring.module.css';
import { words } from './documentWords';
import { Paste } from './Paste';

/** The keys that open a file, and take a link or a code. */
export function Bring(): JSX.Element {
  return (
    <>
      <p>{words.hint}</p>
      <label class={styles.choose}>
        {words.choose}
        <input
          class={styles.file}
          type="file"
          accept="application/json,.json,.geojson,.osm,.xml"
          onChange={(event) => {
            const input = event.currentTarget;
            const from = input.files?.[0];
            if (from !== undefined) void openFile(from);
            // Lets the same file, corrected, be chosen again.
            input.value = '';
          }}
        />
      </label>
      <Paste />
    </>
  );
}

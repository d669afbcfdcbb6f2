/** Adding a field, an aircraft or a procedure from a file. */

import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import { type Brought, bringDocument } from '../../board/bringing';
import styles from './Bring.module.css';
import { words } from './documentWords.en';

/** The key that opens a file, and what came of it. */
export function Bring(): JSX.Element {
  const [brought, setBrought] = useState<Brought | null>(null);
  return (
    <>
      <p>{words.hint}</p>
      <label class={styles.choose}>
        {words.choose}
        <input
          class={styles.file}
          type="file"
          accept="application/json,.json"
          onChange={async (event) => {
            const input = event.currentTarget;
            const file = input.files?.[0];
            if (file !== undefined) setBrought(await bringDocument(file));
            // The same file, mended, can be chosen again.
            input.value = '';
          }}
        />
      </label>
      <div role="status">
        {brought?.problems === null && <p>{words.added(brought.name)}</p>}
        {brought?.problems && (
          <>
            <p class={styles.refused}>{words.refused}</p>
            <ul>
              {brought.problems.map(({ at, what }) => (
                <li key={at + what}>{words.problem(at, what)}</li>
              ))}
            </ul>
          </>
        )}
      </div>
    </>
  );
}

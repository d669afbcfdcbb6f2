/** The frame: the strip on top, a place (two on a wide screen), the places' keys at the bottom. */

import { signal } from '@preact/signals';
import type { JSX } from 'preact';
import { beside, onRoll, place, sheet, typing, whole } from '../board/places';
import { cautionRead } from '../device/preferences';
import styles from './App.module.css';
import { Caution } from './Caution';
import { Places } from './Places';
import { Strip } from './Strip';
import { Notices, Sheets, views } from './views';
import { words } from './words.en';

/** Whether two places stand side by side: at first as the window is, then as wide.ts measures. */
export const wide = signal(matchMedia('(min-width: 60rem) and (min-height: 36rem)').matches);

/** The app. */
export function App(): JSX.Element {
  const Whole = whole.value;
  if (Whole !== null) return <Whole />;
  // A wind is typed over any place; on a wide screen beside it, where Wind stands.
  const main = typing.value && !wide.value ? 'wind' : place.value;
  const other = typing.value && place.value !== 'wind' ? 'wind' : beside.value[place.value];
  const Main = views[main];
  const Beside = views[other];
  return (
    <div class={styles.frame}>
      <Strip />
      <Notices />
      <div class={styles.places}>
        <main class={styles.place}>
          <h1 class="spoken">{words.places[main]}</h1>
          <Main />
        </main>
        {wide.value && (
          // Steps keep their side, so that Done stays under the same thumb.
          <aside class={`${styles.place} ${other === 'steps' ? styles.left : ''}`}>
            <Beside />
          </aside>
        )}
      </div>
      {!onRoll.value && !(typing.value && !wide.value) && <Places />}
      {sheet.value !== null && <Sheets />}
      {!cautionRead.value && <Caution />}
    </div>
  );
}

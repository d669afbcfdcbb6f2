/**
 * The frame: the strip on top, one place (two on a wide screen), the places' keys at the bottom.
 */

import { signal } from '@preact/signals';
import type { JSX } from 'preact';
import {
  beside,
  bigCard,
  inFront,
  onRoll,
  openPlace,
  type PlaceName,
  place,
  sheet,
  typing,
} from '../board/places';
import { cautionRead } from '../device/preferences';
import { Boundary } from '../parts/boundary/Boundary';
import styles from './App.module.css';
import { CautionSheet } from './Caution';
import { Places } from './Places';
import { Strip } from './Strip';
import { broken, LaterNotices, LaterSheets, underWay, verdictLine, views } from './views';
import { words } from './words';

/**
 * Whether two places stand side by side: at first by the window's size, then as wide.ts measures.
 */
export const wide = signal(matchMedia('(min-width: 60rem) and (min-height: 36rem)').matches);

const closeSheet = () => {
  sheet.value = null;
};

/** Parts that couldn't be drawn and that the pilot chose to do without. */
const without = signal<ReadonlySet<PlaceName | 'strip'>>(new Set());

function leaveOut(part: PlaceName | 'strip'): void {
  without.value = new Set(without.value).add(part);
}

/** The app. A part that can't be drawn takes nothing else with it. */
export function App(): JSX.Element {
  return (
    <Boundary
      fallback={(again) => (
        <broken.Later
          part="whole"
          onAgain={again}
          onWithout={() => {
            openPlace('wind');
            again();
          }}
        />
      )}
    >
      <Frame />
    </Boundary>
  );
}

function Frame() {
  const Whole = inFront.value;
  if (Whole !== null) {
    const onWithout = () => {
      bigCard.value = false;
    };
    return (
      <Boundary
        key="whole"
        fallback={(again) => <broken.Later part="whole" onAgain={again} onWithout={onWithout} />}
      >
        <Whole />
      </Boundary>
    );
  }
  // A wind is typed over any place; on a wide screen, beside it, where Wind stands.
  const main = typing.value && !wide.value ? 'wind' : place.value;
  const other = typing.value && place.value !== 'wind' ? 'wind' : beside.value[place.value];
  const Main = views[main];
  const Beside = views[other];
  return (
    <div class={styles.frame}>
      {!without.value.has('strip') && (
        <Boundary
          fallback={(again) => (
            <broken.Later part="strip" onAgain={again} onWithout={() => leaveOut('strip')} />
          )}
        >
          <Strip />
        </Boundary>
      )}
      <Boundary fallback={() => null}>
        <verdictLine.Later />
      </Boundary>
      <Boundary fallback={() => null}>
        <underWay.Later />
      </Boundary>
      <Boundary fallback={() => null}>
        <LaterNotices />
      </Boundary>
      <div class={styles.places}>
        <main class={styles.place}>
          <h1 class="spoken">{words.places[main]}</h1>
          <Boundary
            key={main}
            fallback={(again) => (
              <broken.Later
                part={main}
                onAgain={again}
                onWithout={() => openPlace(main === 'wind' ? 'steps' : 'wind')}
              />
            )}
          >
            <Main />
          </Boundary>
        </main>
        {wide.value && !without.value.has(other) && (
          // Steps keep their side, so that Done stays under the same thumb.
          <aside class={`${styles.place} ${other === 'steps' ? styles.left : ''}`}>
            <Boundary
              key={other}
              fallback={(again) => (
                <broken.Later part={other} onAgain={again} onWithout={() => leaveOut(other)} />
              )}
            >
              <Beside />
            </Boundary>
          </aside>
        )}
      </div>
      {!onRoll.value && !(typing.value && !wide.value) && <Places />}
      {sheet.value !== null && <LaterSheets onClose={closeSheet} />}
      {!cautionRead.value && <CautionSheet />}
    </div>
  );
}

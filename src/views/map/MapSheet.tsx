/** What an extract of a map holds: it is read apart, shown, and kept only when the pilot says so. */

import type { JSX } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { kindOf } from '../../board/documents/opened';
import type { MapExtract } from '../../core';
import { type MapReading, readMapApart } from '../../exchange/mapApart';
import { Key } from '../../parts/key/Key';
import { Sheet } from '../../parts/sheet/Sheet';
import styles from './Map.module.css';
import { MapPreview } from './MapPreview';
import { problemSaid } from './said';
import { refusals, words } from './words';

interface MapSheetProps {
  /** A file, or a pasted text. */
  readonly from: File | string;
  readonly onClose: () => void;
}

type State =
  | { readonly kind: 'reading'; readonly share: number }
  | { readonly kind: 'read'; readonly extract: MapExtract }
  | { readonly kind: 'refused'; readonly why: keyof typeof refusals };

/** The sheet: a bar while it reads, then what was found, or why there is nothing. */
export function MapSheet({ from, onClose }: MapSheetProps): JSX.Element {
  const [state, setState] = useState<State>({ kind: 'reading', share: 0 });
  const [reading, setReading] = useState<MapReading | null>(null);
  useEffect(() => {
    let running: MapReading | null = null;
    let isGone = false;
    const tell = (next: State) => {
      if (!isGone) setState(next);
    };
    void kindOf(from).then((kind) => {
      if (isGone) return;
      if (kind !== 'map' && kind !== 'text') {
        tell({ kind: 'refused', why: kind });
        return;
      }
      running = readMapApart(from, (share) => tell({ kind: 'reading', share }));
      setReading(running);
      void running.outcome.then((outcome) =>
        tell(outcome.kind === 'read' ? outcome : { kind: 'refused', why: outcome.problem }),
      );
    });
    return () => {
      isGone = true;
      running?.stop();
    };
  }, [from]);
  return (
    <Sheet title={words.title} close={words.close} size="page" onClose={onClose}>
      <div class={styles.map}>
        {state.kind === 'reading' && (
          <div class={styles.reading}>
            <p role="status">{words.reading}</p>
            <progress class={styles.bar} max={1} value={state.share} aria-label={words.reading} />
            <Key disabled={reading === null} onPress={() => reading?.stop()}>
              {words.stop}
            </Key>
          </div>
        )}
        {state.kind === 'refused' && (
          <p role="status" class={styles.refused}>
            {refusals[state.why]} {words.nothingKept}
          </p>
        )}
        {state.kind === 'read' && <Read extract={state.extract} />}
      </div>
    </Sheet>
  );
}

function Read({ extract: { fields, problems } }: { readonly extract: MapExtract }) {
  const [chosen, setChosen] = useState<number | null>(fields.length === 1 ? 0 : null);
  const found = chosen === null ? undefined : fields[chosen];
  return (
    <>
      {problems.length > 0 && (
        <ul role="status" class={styles.refused}>
          {problems.map((problem, index) => (
            <li key={index}>{problemSaid(problem)}</li>
          ))}
          {fields.length === 0 && <li>{words.nothingKept}</li>}
        </ul>
      )}
      {fields.length > 1 && (
        <fieldset class={styles.which}>
          <legend>{words.which}</legend>
          {fields.map(({ field: { code, name } }, index) => (
            <Key key={index} pressed={index === chosen} onPress={() => setChosen(index)}>
              {words.aerodrome(code, name)}
            </Key>
          ))}
        </fieldset>
      )}
      {found && <MapPreview key={chosen} found={found} />}
    </>
  );
}

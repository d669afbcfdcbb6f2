/** For an aircraft without a procedure: write one, copy one, or fly without. */

import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import { all } from '../../board/documents/documents';
import { aircraft } from '../../board/documents/inUse';
import { langOf } from '../../board/language';
import { openSheet, sheet } from '../../board/places';
import { copyFirst, flyWithout, writeFirst } from '../../board/writing/firstProcedure';
import { type Hash, primarySubtag } from '../../core';
import { pageLanguage } from '../../device/pageLanguage';
import { Hint, Wrong } from '../../parts/field/Labelled';
import { Key } from '../../parts/key/Key';
import { marked } from '../../parts/marked';
import { Sheet } from '../../parts/sheet/Sheet';
import { SheetPart, SheetParts } from '../../parts/sheet/SheetPart';
import { starterWords } from '../../parts/starter/starterWords';
import { starterName } from '../../parts/starter/words';
import styles from './ProcedureSheet.module.css';
import { words } from './words';

/** The sheet; what was made is opened in the editor. */
export function ProcedureSheet({ onClose }: { onClose: () => void }): JSX.Element {
  const [state, setState] = useState<'asking' | 'making' | 'failed'>('asking');
  const flown = aircraft.value?.name ?? '';
  const make = (made: Promise<Hash | null>) => {
    setState('making');
    made.then(
      (hash) => {
        if (hash === null) return setState('failed');
        onClose();
        openSheet({ kind: 'editor', hash, over: sheet.value });
      },
      () => setState('failed'),
    );
  };
  return (
    <Sheet title={words.title(flown)} close={words.close} onClose={onClose}>
      <p>{words.intro}</p>
      {state === 'making' && <p role="status">{words.making}</p>}
      {state === 'failed' && <Wrong>{words.failed}</Wrong>}
      <SheetParts>
        <SheetPart title={words.write}>
          <Hint>{words.writeHint}</Hint>
          <div class={styles.keys}>
            <Key
              look="pick"
              disabled={state === 'making'}
              onPress={() => make(writeFirst(starterWords(), starterName(flown)))}
            >
              {words.write}
            </Key>
          </div>
        </SheetPart>
        <SheetPart title={words.copy}>
          <Hint>{words.copyHint}</Hint>
          <div class={styles.keys}>
            {offered().map(({ hash, name, language }) => (
              <Key
                key={hash}
                disabled={state === 'making'}
                onPress={() => make(copyFirst(hash, words.copied(flown, name)))}
              >
                {marked(langOf(language), words.copyOf, name)}
              </Key>
            ))}
          </div>
        </SheetPart>
        <SheetPart title={words.without}>
          <Hint>{words.withoutHint}</Hint>
          <div class={styles.keys}>
            <Key
              onPress={() => {
                flyWithout();
                onClose();
              }}
            >
              {words.without}
            </Key>
          </div>
        </SheetPart>
      </SheetParts>
    </Sheet>
  );
}

/** Those in the language of the page; all, if there are none. */
function offered() {
  const procedures = all.value.filter((listed) => listed.kind === 'procedure');
  const own = procedures.filter(({ language }) => primarySubtag(language) === pageLanguage());
  return own.length === 0 ? procedures : own;
}

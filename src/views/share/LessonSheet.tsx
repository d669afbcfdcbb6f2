/** Making a lesson: what goes in, what it is called, what the instructor says of it. */

import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import type { Listed } from '../../board/documents/documents';
import { forLesson } from '../../board/documents/lesson';
import { type SharedLesson, sharedLesson } from '../../board/documents/sharing';
import { nameLang } from '../../board/language';
import { openSheet, sheet } from '../../board/places';
import type { Hash } from '../../core';
import { Hint, inputClass, Labelled, linesClass } from '../../parts/field/Labelled';
import { Fold } from '../../parts/fold/Fold';
import { Key } from '../../parts/key/Key';
import { Keys } from '../../parts/key/Keys';
import { markedText } from '../../parts/marked';
import { Problems } from '../../parts/problem/Problems';
import { Sheet } from '../../parts/sheet/Sheet';
import { SheetPart, SheetParts } from '../../parts/sheet/SheetPart';
import { words } from './lessonWords';
import { WaysOut } from './ShareSheet';

/** As long as they may be, characters. */
const LONGEST_NAME = 80;
const LONGEST_NOTE = 6000;

/** The sheet. */
export function LessonSheet({ onClose }: { readonly onClose: () => void }): JSX.Element {
  const { today, others } = forLesson();
  const [chosen, setChosen] = useState<ReadonlySet<Hash>>(
    () => new Set(today.map(({ hash }) => hash)),
  );
  const [name, setName] = useState('');
  const [note, setNote] = useState('');
  const [made, setMade] = useState<SharedLesson | 'failed' | null>(null);
  const documents = [...today, ...others].filter(({ hash }) => chosen.has(hash));
  const header = { name, note: note.split('\n') };
  const isReady = name.trim() !== '' && documents.length > 0;
  const toggle = (hash: Hash) => {
    setMade(null);
    setChosen(
      (now) => new Set(now.has(hash) ? [...now].filter((one) => one !== hash) : [...now, hash]),
    );
  };
  const rows = (listed: readonly Listed[]) => (
    <Keys>
      {listed.map((one) => (
        <Key key={one.hash} pressed={chosen.has(one.hash)} onPress={() => toggle(one.hash)}>
          {one.kind === 'field' && `${one.code} `}
          {markedText(nameLang(one), one.name)}
        </Key>
      ))}
    </Keys>
  );
  return (
    <Sheet title={words.title} close={words.close} size="page" onClose={onClose}>
      <SheetParts>
        <SheetPart title={words.what}>
          <Hint>{words.whatHint}</Hint>
          {rows(today)}
          {others.length > 0 && (
            <Fold quiet title={words.others(others.length)}>
              {() =>
                (['field', 'aircraft', 'procedure'] as const).map((kind) => {
                  const ofKind = others.filter((one) => one.kind === kind);
                  return ofKind.length === 0 ? null : (
                    <div key={kind}>
                      <h4>{words.kinds[kind]}</h4>
                      {rows(ofKind)}
                    </div>
                  );
                })
              }
            </Fold>
          )}
        </SheetPart>
        <SheetPart title={words.called}>
          <Labelled name={words.name}>
            <input
              class={inputClass}
              maxLength={LONGEST_NAME}
              value={name}
              onInput={(event) => {
                setMade(null);
                setName(event.currentTarget.value);
              }}
            />
          </Labelled>
          <Labelled name={words.note}>
            <textarea
              class={linesClass}
              rows={4}
              maxLength={LONGEST_NOTE}
              value={note}
              onInput={(event) => {
                setMade(null);
                setNote(event.currentTarget.value);
              }}
            />
          </Labelled>
          <Keys>
            <Key
              look="pick"
              disabled={!isReady}
              onPress={() =>
                void sharedLesson(header, documents).then(setMade, () => setMade('failed'))
              }
            >
              {words.make(documents.length)}
            </Key>
            <Key
              disabled={!isReady}
              onPress={() =>
                openSheet({
                  kind: 'printLesson',
                  ...header,
                  documents: documents.map(({ hash }) => hash),
                  over: sheet.value,
                })
              }
            >
              {words.print}
            </Key>
          </Keys>
          {!isReady && <Hint>{documents.length === 0 ? words.nothing : words.noName}</Hint>}
        </SheetPart>
        {made === 'failed' && <p role="status">{words.failed}</p>}
        {made !== null && made !== 'failed' && (
          <section aria-label={words.ways}>
            {made.shared === null ? (
              <Problems of={made.problems} />
            ) : (
              <WaysOut document={made.shared} lang={undefined} />
            )}
          </section>
        )}
      </SheetParts>
    </Sheet>
  );
}

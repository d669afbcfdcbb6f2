/** What was assumed, or is missing: by kind, each with its places. */

import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import type { MapNote } from '../../core';
import type { GroundPoint } from '../../parts/plan/projection';
import styles from './Map.module.css';
import { noteSaid, noteTitle } from './said';
import { words } from './words';

/** How many of a kind are listed until the pilot asks for all of them. */
const FEW = 4;

interface NotesProps {
  readonly title: string;
  readonly hint: string;
  readonly notes: readonly MapNote[];
  readonly onShow: (at: GroundPoint) => void;
}

/** A list of notes, those of one kind together. */
export function Notes({ title, hint, notes, onShow }: NotesProps): JSX.Element {
  const kinds = new Map<MapNote['code'], MapNote[]>();
  for (const note of notes) kinds.set(note.code, [...(kinds.get(note.code) ?? []), note]);
  return (
    <section class={styles.notes}>
      <h4 class={styles.title}>{title}</h4>
      <p class={styles.small}>{notes.length === 0 ? words.nothing : hint}</p>
      {[...kinds].map(([code, alike]) => (
        <Kind key={code} alike={alike} code={code} onShow={onShow} />
      ))}
    </section>
  );
}

interface KindProps extends Pick<NotesProps, 'onShow'> {
  readonly code: MapNote['code'];
  readonly alike: readonly MapNote[];
}

function Kind({ code, alike, onShow }: KindProps) {
  const [isAll, setAll] = useState(false);
  const placed = alike.filter(({ at }) => at !== null);
  const shown = isAll ? placed : placed.slice(0, FEW);
  return (
    <div class={styles.kind}>
      <p>{noteTitle(code, alike.length)}</p>
      {placed.length > 0 && (
        <ul class={styles.places}>
          {shown.map((note, index) => (
            <li key={index}>
              <button
                type="button"
                class={styles.place}
                onClick={() =>
                  note.at !== null && onShow({ eastM: note.at.xM, northM: note.at.yM })
                }
              >
                {noteSaid(note, index + 1)}
              </button>
            </li>
          ))}
          {placed.length > shown.length && (
            <li>
              <button type="button" class={styles.place} onClick={() => setAll(true)}>
                {words.all(placed.length)}
              </button>
            </li>
          )}
        </ul>
      )}
    </div>
  );
}

/**
 * One search for a field: a box, and under it the fields as keys. A plain list, so that a screen
 * reader and the Tab key go through it as through any other; the arrows do too.
 */

import type { ComponentChildren, JSX } from 'preact';
import { useRef, useState } from 'preact/hooks';
import { inputClass, Labelled } from '../field/Labelled';
import { Key } from '../key/Key';
import styles from './FieldSearch.module.css';
import { words } from './words';

/** A field to choose. */
export interface FieldRow {
  readonly key: string;
  readonly code: string;
  readonly name: string;
  /** What tells it from others: where it lies, how long its runway is. */
  readonly about: ComponentChildren;
  /** It is the one in use. */
  readonly isChosen?: boolean;
  readonly onChoose: () => void;
}

/** Rows under a heading, such as those nearby. */
export interface FieldGroup {
  /** Left out where it needs none. */
  readonly title?: string | undefined;
  /** What stands over the rows, and without any. */
  readonly head?: ComponentChildren;
  readonly rows: readonly FieldRow[];
  /** What stands under them. */
  readonly foot?: ComponentChildren;
}

interface FieldSearchProps {
  readonly text: string;
  readonly onText: (text: string) => void;
  readonly groups: readonly FieldGroup[];
  /** The level of the groups' headings on the page. */
  readonly heading: 'h3' | 'h4';
  /** What stands under the list. */
  readonly children?: ComponentChildren;
}

/** More than this isn't read: who has more types a letter. */
export const SHOWN = 8;

/** A longer text finds nothing more, characters. */
const LONGEST = 60;

/** The box, and what it finds. */
export function FieldSearch({
  text,
  onText,
  groups,
  heading: Heading,
  children,
}: FieldSearchProps): JSX.Element {
  const [isWhole, setWhole] = useState(false);
  const box = useRef<HTMLDivElement>(null);
  const total = groups.reduce((sum, { rows }) => sum + rows.length, 0);
  const first = groups.flatMap(({ rows }) => rows)[0];
  const cut = (rows: readonly FieldRow[]) => (isWhole ? rows : rows.slice(0, SHOWN));
  const hidden = groups.reduce((sum, { rows }) => sum + rows.length - cut(rows).length, 0);
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: the arrows move between the box and the keys within; the Tab key does too.
    <div ref={box} class={styles.search} onKeyDown={(event) => move(box.current, event)}>
      <Labelled name={words.label}>
        <input
          class={inputClass}
          type="search"
          maxLength={LONGEST}
          value={text}
          placeholder={words.hint}
          autocomplete="off"
          autocapitalize="off"
          spellcheck={false}
          enterkeyhint="search"
          onInput={(event) => {
            setWhole(false);
            onText(event.currentTarget.value);
          }}
          onKeyDown={(event) => {
            if (event.key === 'Enter' && text.trim() !== '') first?.onChoose();
          }}
        />
      </Labelled>
      <p class="spoken" role="status">
        {text.trim() === '' ? '' : words.found(total)}
      </p>
      {total === 0 && text.trim() !== '' && <p class={styles.none}>{words.none}</p>}
      {groups.map(
        ({ title, head, rows, foot }, place) =>
          (rows.length > 0 || head !== undefined) && (
            <section key={place}>
              {title !== undefined && <Heading class={styles.title}>{title}</Heading>}
              {head}
              <ul class={styles.fields}>
                {cut(rows).map((row) => (
                  <li key={row.key}>
                    <button
                      type="button"
                      data-field
                      class={`${styles.field} ${row.isChosen ? styles.chosen : ''}`}
                      aria-pressed={row.isChosen}
                      onClick={row.onChoose}
                    >
                      <b class={styles.code}>{row.code}</b>{' '}
                      <span>
                        <b>{row.name}</b> <span class={styles.about}>{row.about}</span>
                      </span>
                    </button>
                  </li>
                ))}
              </ul>
              {foot}
            </section>
          ),
      )}
      {hidden > 0 && (
        <div>
          <Key onPress={() => setWhole(true)}>{words.more(hidden)}</Key>
        </div>
      )}
      {children}
    </div>
  );
}

/** Moves between the box and the rows with the arrows, as in any list. */
function move(within: HTMLDivElement | null, event: KeyboardEvent): void {
  if (within === null || (event.key !== 'ArrowDown' && event.key !== 'ArrowUp')) return;
  const stops = [...within.querySelectorAll<HTMLElement>('input, [data-field]')];
  const at = stops.findIndex((one) => one.matches(':focus'));
  const next = stops[at + (event.key === 'ArrowDown' ? 1 : -1)];
  if (at === -1 || next === undefined) return;
  event.preventDefault();
  next.focus();
}

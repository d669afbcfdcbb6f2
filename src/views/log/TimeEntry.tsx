/** A time of the log, written as 1850: the stamp is shown beside the correction. */

import { useSignal } from '@preact/signals';
import type { JSX } from 'preact';
import { correct, takeBackEntry } from '../../board/record/log';
import type { Id, LoggedTime, LogMoment } from '../../core';
import { inputClass, wrongClass } from '../../parts/field/Labelled';
import { timeOfDay, zulu } from '../../parts/format';
import { Key } from '../../parts/key/Key';
import styles from './Logged.module.css';
import { words } from './words';

interface TimeEntryProps {
  readonly sortie: Id;
  readonly moment: LogMoment;
  readonly time: LoggedTime;
  /** The moment nearest to a typed time of day; ms by the sortie's clock. */
  readonly nearest: (minuteOfDay: number) => number;
}

/** Minutes of the day; null for nothing, NaN for anything that is no time. */
function read(text: string): number | null {
  if (text.trim() === '') return null;
  const clock = /^(\d{1,2}):?(\d{2})\s*Z?$/i.exec(text.trim());
  const hours = Number(clock?.[1]);
  const minutes = Number(clock?.[2]);
  return hours < 24 && minutes < 60 ? hours * 60 + minutes : Number.NaN;
}

/** The input for one time. */
export function TimeEntry({ sortie, moment, time, nearest }: TimeEntryProps): JSX.Element {
  // Read when it is committed: what is drawn may be older, while the record is being written.
  const typed = useSignal<string | null>(null);
  const stands = time.sortieMs === null ? '' : zulu(time.sortieMs).slice(0, 4);
  const isBad = typed.value !== null && Number.isNaN(read(typed.value));
  const commit = () => {
    const text = typed.peek();
    const minute = text === null ? Number.NaN : read(text);
    if (text === null || Number.isNaN(minute)) return;
    typed.value = null;
    if (text.trim() === stands) return;
    correct(sortie, moment, minute === null ? null : nearest(minute));
  };
  const { recorded, correction } = time;
  const name = words.moments[moment];
  return (
    <div class={styles.time}>
      <label for={`time-${moment}`}>{name}</label>
      <input
        id={`time-${moment}`}
        class={`${inputClass} ${styles.typed}`}
        inputMode="numeric"
        maxLength={6}
        placeholder={words.sheet.missing}
        value={typed.value ?? stands}
        aria-invalid={isBad}
        onInput={(event) => {
          typed.value = event.currentTarget.value;
        }}
        onBlur={commit}
        onKeyDown={(event) => {
          if (event.key === 'Enter') commit();
        }}
      />
      {isBad && <span class={`${styles.was} ${wrongClass}`}>{words.sheet.bad}</span>}
      {correction !== null && (
        <span class={styles.was}>
          {recorded === null
            ? words.sheet.never
            : words.sheet[recorded.from === 'stamp' ? 'stamped' : 'steps'](
                timeOfDay(recorded.sortieMs),
              )}
          <Key
            label={words.sheet.takeBackOf(name)}
            onPress={() => takeBackEntry(sortie, correction)}
          >
            {words.sheet.takeBack}
          </Key>
        </span>
      )}
    </div>
  );
}

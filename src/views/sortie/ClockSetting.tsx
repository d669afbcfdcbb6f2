/** The sortie's own clock: set to a date and a time, running or paused, or the device's. */

import { useSignal } from '@preact/signals';
import type { JSX } from 'preact';
import { sortie, sortieMinute } from '../../board/board';
import { wallNowMs } from '../../board/flight/time';
import { setClock } from '../../board/record/choices';
import { sortieTimeMs } from '../../core';
import { inputClass, Labelled, Wrong } from '../../parts/field/Labelled';
import { Key } from '../../parts/key/Key';
import { Keys } from '../../parts/key/Keys';
import styles from './Sortie.module.css';
import { words } from './words';

const FIRST_MS = Date.UTC(1900, 0, 1);
const LAST_MS = Date.UTC(2100, 0, 1);

/** A date and a time of day as one moment, ms; null if it isn't one from 1900 to 2099. */
function momentOf(date: string, time: string): number | null {
  const clock = /^(\d{1,2}):?(\d{2})\s*Z?$/i.exec(time.trim());
  const hours = Number(clock?.[1]);
  const minutes = Number(clock?.[2]);
  if (!(hours < 24 && minutes < 60)) return null;
  const ms = Date.parse(`${date}T00:00:00Z`) + (hours * 60 + minutes) * 60_000;
  return ms >= FIRST_MS && ms < LAST_MS ? ms : null;
}

/** Date, time, and the keys that set, pause and release the clock. */
export function ClockSetting(): JSX.Element {
  const shown = new Date(sortieMinute.value).toISOString();
  const date = useSignal<string | null>(null);
  const time = useSignal<string | null>(null);
  const paused = sortie.value.clock?.rate === 0;
  const dateShown = () => date.value ?? shown.slice(0, 10);
  const timeShown = () => time.value ?? shown.slice(11, 16).replace(':', '');
  const typedMs = () => momentOf(dateShown(), timeShown());
  const isTyped = date.value !== null || time.value !== null;
  const set = (ms: number | null, rate: number) => {
    if (ms === null) return;
    setClock(ms, rate);
    date.value = null;
    time.value = null;
  };
  const now = () => sortieTimeMs(sortie.value.clock, wallNowMs());
  return (
    <>
      <div class={styles.moment}>
        <Labelled name={words.date}>
          <input
            class={inputClass}
            type="date"
            min="1900-01-01"
            max="2099-12-31"
            value={dateShown()}
            onInput={(event) => {
              date.value = event.currentTarget.value;
            }}
          />
        </Labelled>
        <Labelled name={words.time}>
          <input
            class={inputClass}
            inputMode="numeric"
            maxLength={6}
            value={timeShown()}
            onInput={(event) => {
              time.value = event.currentTarget.value;
            }}
          />
        </Labelled>
      </div>
      {typedMs() === null && <Wrong>{words.clockBad}</Wrong>}
      <Keys>
        <Key
          look={isTyped && typedMs() !== null ? 'pick' : 'plain'}
          disabled={typedMs() === null || !isTyped}
          onPress={() => set(typedMs(), paused ? 0 : 1)}
        >
          {words.setClock}
        </Key>
        <Key pressed={paused} onPress={() => set(now(), paused ? 1 : 0)}>
          {paused ? words.run : words.pause}
        </Key>
        <Key onPress={() => set(wallNowMs(), 1)}>{words.now}</Key>
      </Keys>
    </>
  );
}

/** Log: the sorties so far, latest first, with their totals; each can be opened. */

import type { JSX } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { record, sortie } from '../../board/board';
import { openSheet } from '../../board/places';
import { add } from '../../board/record/adding';
import { lines, nameOf, openLog, stillReading, totals } from '../../board/record/log';
import { chocksNow, type LogMoment, type LogSummary } from '../../core';
import { timeOfDay, utcDate, wholeNumber } from '../../parts/format';
import { Key } from '../../parts/key/Key';
import { hoursMinutes } from './hours';
import styles from './Log.module.css';
import { saveCsv, saveJson } from './saving';
import { words } from './words';

/** How many lines are shown at first, and added with every tap. */
const PAGE = 50;

/** The place Log. */
export function Log(): JSX.Element {
  const [shown, setShown] = useState(PAGE);
  useEffect(() => void openLog().catch(() => undefined), [record.store]);
  const all = lines.value;
  const older = Math.min(PAGE, (all?.length ?? 0) - shown);
  return (
    <div class={styles.log}>
      <Chocks />
      {all === null && <p class={styles.empty}>{words.reading}</p>}
      {all?.length === 0 && stillReading.value === 0 && <p class={styles.empty}>{words.empty}</p>}
      {all !== null && all.length > 0 && <Totals />}
      <Files />
      <ol>
        {all?.slice(0, shown).map((line) => (
          <Line key={line.sortie} line={line} />
        ))}
      </ol>
      {older > 0 && (
        <p class={styles.keys}>
          <Key onPress={() => setShown(shown + PAGE)}>{words.older(wholeNumber(older))}</Key>
        </p>
      )}
      {stillReading.value > 0 && (
        <p class={styles.counts} role="status">
          {words.stillReading(wholeNumber(stillReading.value))}
        </p>
      )}
    </div>
  );
}

/** The keys that stamp what no step does, while the sortie is in progress. */
function Chocks() {
  const { run, endedAt } = sortie.value;
  if (run === null || endedAt !== null) return null;
  const next = chocksNow(sortie.value);
  return next === null ? null : (
    <p class={styles.keys}>
      <Key onPress={() => add({ kind: 'stamp', what: next })}>{words.stampNow(next)}</Key>
    </p>
  );
}

function Totals() {
  const sums = totals.value;
  if (sums === null) return null;
  const figures = [
    [words.totals.sorties, wholeNumber(sums.sorties)],
    [words.totals.block, hoursMinutes(sums.blockMinutes)],
    [words.totals.flight, hoursMinutes(sums.flightMinutes)],
    [words.totals.landings, wholeNumber(sums.landings)],
  ] as const;
  return (
    <dl class={styles.totals} aria-label={words.totals.label}>
      {figures.map(([name, value]) => (
        <div key={name}>
          <dt>{name}</dt>
          <dd>{value}</dd>
        </div>
      ))}
    </dl>
  );
}

const MOMENTS: readonly LogMoment[] = ['off chocks', 'airborne', 'landed', 'on chocks'];

function Line({ line }: { line: LogSummary }) {
  const field = nameOf(line.field);
  const aircraft = nameOf(line.aircraft);
  const date = line.times.find((ms) => ms !== null) ?? line.sortieMs;
  const counts = [
    ...(aircraft === null ? [] : [aircraft.name]),
    ...(line.blockMinutes === null ? [] : [words.block(hoursMinutes(line.blockMinutes))]),
    ...(line.flightMinutes === null ? [] : [words.flight(hoursMinutes(line.flightMinutes))]),
    ...(line.rejected > 0 ? [words.rejected(line.rejected)] : []),
    ...(line.outside ? [words.outsideLimits] : []),
    ...(line.heldBack > 0 ? [words.held(line.heldBack)] : []),
    ...(line.cannot > 0 ? [words.cannot(line.cannot)] : []),
    ...(line.notes > 0 ? [words.noted(line.notes)] : []),
  ];
  return (
    <li>
      <button
        type="button"
        class={styles.sortie}
        onClick={() => openSheet({ kind: 'logged', sortie: line.sortie })}
      >
        <span class={styles.title}>
          {words.sortie(
            field === null ? words.noField : `${field.code} ${field.name}`,
            utcDate(date),
          )}
          {line.sortie === sortie.value.id && <b class={styles.now}>{words.now}</b>}
        </span>
        <span class={styles.counts}>{counts.join(', ')}</span>
        <span class={styles.moments}>
          {MOMENTS.map((moment, index) => {
            const ms = line.times[index] ?? null;
            return ms === null ? null : (
              <span key={moment}>
                <time>{timeOfDay(ms)}</time> {words.moments[moment]}
              </span>
            );
          })}
        </span>
      </button>
    </li>
  );
}

/** Files out and in. */
function Files() {
  const [said, setSaid] = useState('');
  const save = (work: () => Promise<number>) => {
    setSaid(words.saving);
    work().then(
      (files) => setSaid(words.saved(files)),
      () => setSaid(words.notSaved),
    );
  };
  const isEmpty = lines.value === null || lines.value.length === 0;
  return (
    <section class={styles.files}>
      <Key disabled={isEmpty} onPress={() => save(saveCsv)}>
        {words.saveCsv}
      </Key>
      <Key disabled={isEmpty} onPress={() => save(saveJson)}>
        {words.saveJson}
      </Key>
      <label class={styles.bring}>
        {words.bring}
        <input
          class={styles.file}
          type="file"
          aria-label={words.bringLabel}
          accept="application/json,.json"
          onChange={(event) => {
            const input = event.currentTarget;
            const from = input.files?.[0];
            if (from !== undefined) openSheet({ kind: 'incoming', from, over: null });
            // Lets the same file be chosen again.
            input.value = '';
          }}
        />
      </label>
      <span role="status">{said}</span>
    </section>
  );
}

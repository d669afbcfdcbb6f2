/** Log: the sorties so far, newest first, with their moments and the figures that were sealed. */

import type { JSX } from 'preact';
import { sortie, sorties } from '../../board/board';
import { fields } from '../../board/documents';
import { foldSortie, type Seal, type Sortie } from '../../core';
import { decimal, NO_BREAK_SPACE, utcDate, zulu } from '../../parts/format';
import styles from './Log.module.css';
import { words } from './words.en';

/** The place Log. */
export function Log(): JSX.Element {
  const flown = [...sorties.value.values()]
    .map(foldSortie)
    .filter(({ id, run, stamps }) => id !== null && (run !== null || stamps.length > 0))
    .reverse();
  if (flown.length === 0) return <p class={styles.empty}>{words.empty}</p>;
  return (
    <ol class={styles.log}>
      {flown.map((one) => (
        <Flown key={one.id} one={one} />
      ))}
    </ol>
  );
}

function Flown({ one }: { one: Sortie }) {
  const ticks = [...(one.run?.ticks.values() ?? [])];
  const count = (outcome: string) => ticks.filter((tick) => tick.outcome === outcome).length;
  const counts = [
    words.ticked(count('done')),
    ...(count('held') > 0 ? [words.held(count('held'))] : []),
    ...(count('cannot') > 0 ? [words.cannot(count('cannot'))] : []),
  ];
  const field = fields.value.find(({ hash }) => hash === one.inputs.field);
  return (
    <li class={styles.sortie}>
      <h2 class={styles.title}>
        <span>
          {words.sortie(
            field === undefined ? words.noField : `${field.code} ${field.name}`,
            utcDate(one.startedAt?.sortieMs ?? 0),
          )}
        </span>
        {one.id === sortie.value.id && <b class={styles.now}>{words.now}</b>}
      </h2>
      <p class={styles.counts}>{counts.join(', ')}</p>
      <ul class={styles.moments}>
        {one.stamps.map((stamp) => (
          <li key={stamp.id}>
            <time>{zulu(stamp.at.sortieMs)}</time> {words.moments[stamp.what]}
          </li>
        ))}
      </ul>
      {one.seals.map((seal) => (
        <Sealed key={seal.at.wallMs} seal={seal} title={words.sealed(momentOf(one, seal))} />
      ))}
    </li>
  );
}

/** What a seal was set at, with its time: a moment that was stamped with it, else the end. */
function momentOf({ stamps }: Sortie, { at }: Seal): string {
  const stamp = stamps.find((one) => one.at.wallMs === at.wallMs);
  return `${stamp === undefined ? words.ended : words.moments[stamp.what]}, ${zulu(at.sortieMs)}`;
}

function Sealed({ seal, title }: { seal: Seal; title: string }) {
  return (
    <details class={styles.sealed}>
      <summary>{title}</summary>
      <dl>
        {Object.entries(seal.figures).map(([name, { value, unit }]) => (
          <div key={name} class={styles.figure}>
            <dt>{words.figures[name] ?? name}</dt>
            <dd>
              {typeof value === 'number'
                ? `${decimal(value, 1)}${NO_BREAK_SPACE}${unit === 'deg' ? '°' : unit}`
                : value}
            </dd>
          </div>
        ))}
      </dl>
    </details>
  );
}

/** The strip: the end in use, the wind and its age, the field, the time. The same over every place. */

import type { JSX } from 'preact';
import { enteredWind, purpose, settled, sortie, sortieMinute, wind } from '../board/board';
import { openPlace, openSheet, openTyping } from '../board/places';
import { wallMs } from '../board/time';
import { old } from '../parts/age';
import { direction, utcDate, whole, zulu } from '../parts/format';
import styles from './Strip.module.css';
import { words } from './words.en';

/** The strip. Each cell opens what changes it. */
export function Strip(): JSX.Element {
  const { using } = wind.value;
  const { field } = settled.value;
  const entered = enteredWind.value;
  const openSortie = () => openSheet({ kind: 'sortie' });
  return (
    <header class={styles.strip}>
      <Cell
        label={purpose.value === 'landing' ? words.strip.landingOn : words.strip.using}
        opens={words.strip.open.end}
        className={using === null ? '' : styles.used}
        onPress={() => openPlace('wind')}
      >
        {using ?? words.strip.none}
      </Cell>
      <Cell
        label={
          entered === null
            ? words.strip.wind
            : words.strip.windAge(old(wallMs.value - entered.at.wallMs))
        }
        opens={words.strip.open.wind}
        className={styles.wind}
        onPress={openTyping}
      >
        {windShort()}
      </Cell>
      <Cell
        label={words.strip.field}
        opens={words.strip.open.sortie}
        className={styles.field}
        onPress={openSortie}
      >
        {field === null ? words.strip.noField : `${field.code} ${field.name}`}
      </Cell>
      <Cell
        label={sortie.value.clock?.rate === 0 ? words.strip.paused : utcDate(sortieMinute.value)}
        className={styles.time}
        opens={words.strip.open.sortie}
        onPress={openSortie}
      >
        {zulu(sortieMinute.value)}
      </Cell>
    </header>
  );
}

interface CellProps {
  readonly label: string;
  readonly opens: string;
  readonly className?: string | undefined;
  readonly onPress: () => void;
  readonly children: string;
}

function Cell({ label, opens, className = '', onPress, children }: CellProps) {
  return (
    <button
      type="button"
      class={`${styles.cell} ${className}`}
      aria-description={opens}
      onClick={onPress}
    >
      <span class={styles.label}>{label}</span>
      <span class={styles.value}>{children}</span>
    </button>
  );
}

function windShort(): string {
  const read = wind.value.wind;
  if (read === null) return words.strip.noWind;
  if (read.speedKt === 0 && read.gustKt === null) return words.strip.calm;
  const from = read.fromDeg === null ? words.strip.variable : direction(read.fromDeg);
  const gust = read.gustKt === null ? '' : ` ${words.strip.gust} ${whole(read.gustKt)}`;
  return `${from} ${read.speedKt === null ? '—' : whole(read.speedKt)}${gust}`;
}

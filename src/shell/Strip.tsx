/**
 * The strip: the end in use, the wind and its age, the field, the time. The same over every place.
 */

import type { ComponentChildren, JSX } from 'preact';
import { day, sortie, sortieMinute } from '../board/board';
import { windMs } from '../board/flight/aged';
import { wallMs } from '../board/flight/time';
import { openPlace, openSheet, openTyping } from '../board/places';
import { localTime } from '../device/preferences';
import { ageText } from '../parts/age';
import { direction, localClock, utcDate, wholeNumber, zulu } from '../parts/format';
import { cutSentence } from '../parts/sentence';
import styles from './Strip.module.css';
import { wrongKey } from './views';
import { words } from './words';

/** The strip. Each cell opens what changes it. */
export function Strip(): JSX.Element {
  const { using } = day.wind();
  const { field } = day.settled();
  return (
    <header class={styles.strip}>
      <Cell
        label={day.purpose() === 'landing' ? <Landing /> : words.strip.using}
        opens={words.strip.open.end}
        className={using === null ? '' : styles.used}
        onPress={() => openPlace('wind')}
      >
        {using ?? words.strip.none}
      </Cell>
      <Cell
        label={windLabel()}
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
        onPress={() => openSheet({ kind: 'sortie' })}
      >
        {field === null ? (
          words.strip.noField
        ) : (
          <>
            {field.code}
            <span class={styles.name}> {field.name}</span>
          </>
        )}
      </Cell>
      <Cell
        label={
          <>
            <span class={localTime.value ? styles.notLocal : ''}>
              {sortie.value.clock?.rate === 0 ? words.strip.paused : <Today />}
            </span>
            {localTime.value && ` ${localClock(sortieMinute.value)}`}
          </>
        }
        opens={words.strip.open.clock}
        onPress={() => openSheet({ kind: 'clock' })}
      >
        {zulu(sortieMinute.value)}
      </Cell>
      <wrongKey.Later />
    </header>
  );
}

/** The narrowest screens show the age alone; what it is the age of is read out. */
const WindAge = ({ age }: { readonly age: string }) =>
  cutSentence(words.strip.windAge, 1).map((piece) =>
    typeof piece === 'string' ? (
      <span key={piece} class={styles.word}>
        {piece}
      </span>
    ) : (
      age
    ),
  );

/** A narrow screen leaves out the little word. */
function Landing() {
  return (
    <>
      {words.strip.landing}
      <span class={styles.little}> {words.strip.on}</span>
    </>
  );
}

/** The sortie's date; a narrow screen leaves out the year, but only the current one. */
function Today() {
  const date = utcDate(sortieMinute.value);
  const thisYear = utcDate(wallMs.value).slice(-4);
  const [year, dayAndMonth] = [date.slice(-4), date.slice(0, -5)];
  return (
    <>
      {dayAndMonth}
      <span class={year === thisYear ? styles.year : undefined}> {year}</span>
    </>
  );
}

interface CellProps {
  readonly label: ComponentChildren;
  readonly opens: string;
  readonly className?: string | undefined;
  readonly onPress: () => void;
  readonly children: ComponentChildren;
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

/** What is forecast has no age that matters: it counts by its own time. */
function windLabel(): ComponentChildren {
  if (day.windIsForecast()) return words.strip.windForecast;
  const ageMs = windMs();
  return ageMs === null ? words.strip.wind : <WindAge age={ageText(ageMs)} />;
}

function windShort(): string {
  const read = day.wind().wind;
  if (read === null) return words.strip.noWind;
  if (read.speedKt === 0 && read.gustKt === null) return words.strip.calm;
  // A direction nobody gave must not read as "variable".
  const unknown = read.variable ? words.strip.variable : '—';
  const from = read.fromDeg === null ? unknown : direction(read.fromDeg);
  const north =
    day.read().north === 'magnetic' && read.fromDeg !== null ? words.strip.magnetic : '';
  const above = (isMinimum: boolean) => (isMinimum ? `${words.strip.above} ` : '');
  const speed =
    read.speedKt === null ? '—' : above(read.speedIsMinimum) + wholeNumber(read.speedKt);
  const gust =
    read.gustKt === null
      ? ''
      : ` ${words.strip.gust} ${above(read.gustIsMinimum)}${wholeNumber(read.gustKt)}`;
  // On a narrow phone it breaks between direction and speed, and nowhere else.
  return [`${from}${north}`, `${speed}${gust}`].map(unbroken).join(' ');
}

const unbroken = (text: string) => text.replaceAll(' ', '\u00a0');

/**
 * The winds entered so far, newest first; which way they are going, and when that would change the
 * choice.
 */

import type { JSX } from 'preact';
import { day, sortieMinute } from '../../../board/board';
import { takeText } from '../../../board/wind/windEntry';
import type { OutlookBrief } from '../../../core';
import { timeOfDay } from '../../../parts/format';
import { words as weatherWords } from '../report/words';
import { words } from '../runways/words';
import styles from './History.module.css';

/** How many are shown: what a pilot compares. */
const SHOWN = 5;

/** The last winds, each with its time; a tap uses one again. */
export function WindHistory(): JSX.Element | null {
  const winds = day.windsHere().slice(-SHOWN).reverse();
  if (winds.length < 2) return null;
  const outlook = day.outlook();
  return (
    <section class={styles.history} aria-label={words.history}>
      {outlook && <Trend brief={outlook} />}
      <ol class={styles.winds}>
        {winds.map((wind) => (
          <li key={wind.id}>
            <button
              type="button"
              class={styles.wind}
              aria-description={words.again}
              onClick={() => takeText(wind.text)}
            >
              <time>{timeOfDay(wind.at.sortieMs)}</time> {wind.text.slice(0, 28)}
            </button>
          </li>
        ))}
      </ol>
    </section>
  );
}

/** Silent if the winds are too few or jump about: reads nothing into them. */
function Trend({ brief: { trend, outlook: ahead } }: { brief: OutlookBrief }) {
  if (trend.kind === 'thin') return null;
  const { turn, strength, basis } = trend;
  const said = weatherWords.trend;
  const parts = [
    ...(turn === 'steady'
      ? []
      : [said.turned(said.turn[turn], Math.abs(Math.round(trend.turnDeg)))]),
    ...(strength === 'steady'
      ? []
      : [said.changed(said.strength[strength], Math.abs(Math.round(trend.changeKt)))]),
  ].join(said.and);
  const minutes = Math.round(basis.minutes);
  return (
    <div class={styles.trend}>
      <p>{parts === '' ? said.steady(minutes) : said.in(capital(parts), minutes)}</p>
      {ahead && ahead.kind !== 'thin' && <b>{outlookWords(ahead)}</b>}
      <p class={styles.basis}>{said.basis(basis.count)}</p>
    </div>
  );
}

function outlookWords(
  ahead: Exclude<NonNullable<OutlookBrief['outlook']>, { kind: 'thin' }>,
): string {
  const said = weatherWords.trend;
  const time = timeOfDay(sortieMinute.value + ahead.minutes * 60_000);
  if (ahead.kind === 'holds')
    return ahead.now === null ? said.none(time) : said.holds(ahead.now, time);
  return ahead.then === null ? said.breaks(time) : said.changes(ahead.then, time);
}

const capital = (text: string) => text.charAt(0).toUpperCase() + text.slice(1);

/** What is forecast, judged for the runway in use: in one line what matters now, and all of it. */

import type { JSX } from 'preact';
import { day, sortieMinute } from '../../../board/board';
import type { ExpectedBrief, Forecast, JudgedPart, Wind } from '../../../core';
import { againstLimit, timeOfDay, wholeNumber, zulu } from '../../../parts/format';
import { readWindShort } from '../../../parts/live/live';
import styles from './Expected.module.css';
import { words } from './words';

/** What counts now or within the hour beyond a limit. */
export function ExpectedBeyond(): JSX.Element | null {
  const worst = day.expected()?.worst;
  if (worst == null || worst.wind === null || worst.beyond === null) return null;
  const { expected: said } = words;
  const coming = worst.fromMs > sortieMinute.value ? time(worst.fromMs) : null;
  const within = said.within[worst.of];
  return (
    <p class={styles.beyond}>
      {said.said(
        worst.percent === null ? within : `${within}, ${said.chance(worst.percent)}`,
        windShort(worst.wind),
        figure(worst) ?? '',
        coming,
        time(worst.untilMs),
      )}
    </p>
  );
}

/** Every part that still counts or will, of the trend and of the forecast. */
export function Expected(): JSX.Element | null {
  const brief = day.expected();
  if (brief === null || brief.forecasts.length === 0) return null;
  return (
    <section class={styles.expected} aria-label={words.expected.title}>
      {brief.forecasts.map((forecast) => (
        <OneForecast key={forecast.of} forecast={forecast} brief={brief} />
      ))}
    </section>
  );
}

function OneForecast({ forecast, brief }: { forecast: Forecast; brief: ExpectedBrief }) {
  const parts = brief.parts.filter(
    ({ of, untilMs }) => of === forecast.of && untilMs > sortieMinute.value,
  );
  return (
    <>
      <p class={styles.title}>{titleOf(forecast)}</p>
      <dl>
        {parts.map((part, place) => (
          <Part key={`${place} ${part.text}`} part={part} />
        ))}
      </dl>
    </>
  );
}

function titleOf({ of, station, state, validMs }: Forecast): string {
  const { expected: said } = words;
  if (state === 'cancelled') return said.cancelled(station);
  if (state === 'missing' || validMs === null) return said.missing(station);
  const [from, until] = validMs;
  return of === 'trend' ? said.trend(time(until)) : said.taf(station, time(from), time(until));
}

function Part({ part }: { part: JudgedPart }) {
  const { expected: said } = words;
  const { kind, percent, fromMs, byMs, untilMs, wind, beyond } = part;
  const chance = percent === null ? '' : `, ${said.chance(percent)}`;
  return (
    <div class={styles.part}>
      <dt>
        {said.kinds[kind]}
        {chance}, {said.when(time(fromMs), time(kind === 'BECMG' ? byMs : untilMs))}
      </dt>
      <dd class={beyond === null ? undefined : styles.over}>
        {wind === null
          ? said.windStays
          : [windShort(wind), figure(part)].filter((text) => text !== null).join(', ')}
      </dd>
    </div>
  );
}

/** The limit a part exceeds, else its crosswind. */
function figure({ end, beyond }: JudgedPart): string | null {
  const { expected: said } = words;
  if (beyond !== null) {
    const { code, valueKt, limitKt } = beyond;
    return said[code](againstLimit(valueKt, limitKt), wholeNumber(limitKt));
  }
  const limitKt = day.settled().crosswindLimit.value;
  if (end === null || end.crosswindWorstKt === null || limitKt === null) return null;
  return said.crosswind(againstLimit(end.crosswindWorstKt, limitKt), wholeNumber(limitKt));
}

const windShort = (wind: Wind): string =>
  wind.variable ? `${words.expected.variable} ${readWindShort(wind)}` : readWindShort(wind);

/** `1850Z`, with the day before it as in the codes, `061850Z`, if it is another than today's. */
function time(ms: number): string {
  const [date, today] = [new Date(ms), new Date(sortieMinute.value)];
  const isToday = date.toISOString().slice(0, 10) === today.toISOString().slice(0, 10);
  return isToday ? timeOfDay(ms) : String(date.getUTCDate()).padStart(2, '0') + zulu(ms);
}

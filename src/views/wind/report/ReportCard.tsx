/**
 * What the report says besides the wind: the questions it raises, the air, the sun, group by group.
 */

import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import { day } from '../../../board/board';
import { otherReports } from '../../../board/day';
import { ask } from '../../../board/places';
import { setInputs } from '../../../board/record/choices';
import { takeText } from '../../../board/wind/windEntry';
import type { Figure, Unit, WeatherQuestion } from '../../../core';
import { Asked } from '../../../parts/asked/Asked';
import { shownFigure } from '../../../parts/digits';
import { decimal, timeOfDay } from '../../../parts/format';
import { Key } from '../../../parts/key/Key';
import { otherPressure } from '../../../parts/units';
import { Expected } from './Expected';
import { GroupByGroup } from './GroupByGroup';
import styles from './ReportCard.module.css';
import { words } from './words';

/** The card under the list of ends. */
export function ReportCard(): JSX.Element {
  const [open, setOpen] = useState(false);
  const brief = day.weather();
  const issuedMs = day.issuedMs();
  return (
    <section class={styles.card} aria-label={words.title}>
      {brief?.questions.map((question) => (
        <Question key={question.code} question={question} />
      ))}
      {otherReports.value.map(({ station, text }) => (
        <div key={text} class={styles.question}>
          <span>
            {words.other(station)} <code class={styles.code}>{text.slice(0, 44)}</code>
          </span>
          <Key onPress={() => takeText(text)}>{words.take}</Key>
        </div>
      ))}
      {brief !== null && day.windIsNewer() && (
        <p>{words.butTheWind(issuedMs === null ? null : timeOfDay(issuedMs))}</p>
      )}
      {brief !== null && (
        <dl class={styles.rows}>
          <Row name={words.qnh} figure={brief.qnhHpa}>
            {brief.qnhHpa.value !== null && otherPressure(brief.qnhHpa.value)}
          </Row>
          <Row name={words.temperature} figure={brief.temperature}>
            {dewPoint(brief.report.weather.temperature?.dewPointC ?? null)}
          </Row>
          <Row name={words.pressureAltitude} figure={brief.pressureAltitude} />
          <Row name={words.densityAltitude} figure={brief.densityAltitude} />
          {brief.gustSpread.value !== null && !day.windIsNewer() && (
            <Row name={words.gustSpread} figure={brief.gustSpread} />
          )}
        </dl>
      )}
      <Expected />
      <div class={styles.foot}>
        <Sun />
        {brief !== null && <Key onPress={() => setOpen(true)}>{words.groupByGroup}</Key>}
      </div>
      {open && brief !== null && (
        <GroupByGroup report={brief.report} onClose={() => setOpen(false)} />
      )}
    </section>
  );
}

const dewPoint = (dewPointC: number | null) =>
  dewPointC === null ? null : words.dewPoint(decimal(dewPointC, 0));

/** A question of the weather; one tap answers it, if the answer changes anything. */
function Question({ question }: { question: WeatherQuestion }) {
  const treat =
    question.code === 'treat-as-wet'
      ? 'wet'
      : question.code === 'treat-as-contaminated'
        ? 'contaminated'
        : null;
  return (
    <div class={styles.question}>
      <b>{words.question(question)}</b>
      {treat !== null && (
        <Key onPress={() => setInputs({ surface: treat })}>{words.treatAs[treat]}</Key>
      )}
    </div>
  );
}

interface RowProps {
  readonly name: string;
  readonly figure: Figure<Unit>;
  readonly children?: string | false | null;
}

function Row({ name, figure, children }: RowProps) {
  return (
    <div class={styles.row}>
      <dt>{name}</dt>
      <dd>
        {figure.value === null ? (
          <span class={styles.absent}>{words.absent[figure.because]}</span>
        ) : (
          <Asked hint={words.ask} onAsk={() => ask(name, figure)}>
            {shownFigure(figure)}
          </Asked>
        )}
        {children && <span> {children}</span>}
      </dd>
    </div>
  );
}

/** When the sun rises and sets today, or that it does neither. */
function Sun() {
  const today = day.sunToday();
  if (today === null) return null;
  const { sunUp, civil } = today;
  return (
    <p class={styles.sun}>
      {sunUp.kind === 'between'
        ? words.sun(timeOfDay(sunUp.from.getTime()), timeOfDay(sunUp.until.getTime()))
        : words.sunAllDay[sunUp.kind]}
      {civil.kind === 'between' &&
        ` ${words.civil(timeOfDay(civil.from.getTime()), timeOfDay(civil.until.getTime()))}`}
    </p>
  );
}

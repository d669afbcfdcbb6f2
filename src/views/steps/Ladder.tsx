/** On the roll: a few speeds, read from the bottom up, with how to stop printed under them. */

import type { JSX } from 'preact';
import { useEffect } from 'preact/hooks';
import { day, documents, sortie } from '../../board/board';
import { wallMs } from '../../board/flight/time';
import {
  aircraftText,
  type Shown,
  stepsLang,
  stepsLanguage,
  stopping,
  stopText,
  withinSentence,
} from '../../board/language';
import { ask, onRoll } from '../../board/places';
import { openCard, wasJustClosed } from '../../board/steps/card';
import { rollingSinceMs } from '../../board/steps/due';
import { doIt, offered, stopRoll } from '../../board/steps/stepping';
import type { Figure, Ladder, Rung } from '../../core';
import { Asked } from '../../parts/asked/Asked';
import { CardOpener } from '../../parts/card/CardOpener';
import { shownFigure } from '../../parts/digits';
import { NO_BREAK_SPACE, stopwatch, wholeNumber } from '../../parts/format';
import { RollKeys } from '../../parts/key/RollKeys';
import { marked } from '../../parts/marked';
import { aboutLength, length } from '../../parts/units';
import { BackKey } from './BackKey';
import styles from './Ladder.module.css';
import { liveText } from './liveText';
import { words } from './words';

/**
 * The rungs: the first speed lowest, in the order of speeds; today's, or the book's if there are no
 * others.
 */
export function LadderRungs(): JSX.Element | null {
  const todays = day.ladder();
  return todays === null ? <BookRungs /> : <TodaysRungs ladder={todays} />;
}

function TodaysRungs({ ladder: { rungs } }: { ladder: Ladder }): JSX.Element {
  return (
    <ol class={styles.rungs}>
      {[...rungs].reverse().map((rung) => (
        <li
          key={rung.what}
          class={`${styles.rung} ${rung.what === 'last-stop' ? styles.lastStop : ''}`}
        >
          <Speed name={nameOf(rung)} figure={rung.speed} down={rung.what === 'last-stop'} />
          <span>
            <b class={styles.name}>{nameOf(rung)}</b>
            <Note {...noteOf(rung)} />
          </span>
          <span class={styles.when}>
            <b>{words.seconds(wholeNumber(rung.s))}</b>
            <span>
              {rung.what === 'mark'
                ? length(rung.distanceM)
                : // As Numbers says it: what is needed rounds up.
                  aboutLength(rung.distanceM, 'up')}
            </span>
            {rung.what === 'lift-off' && <span>{words.expected}</span>}
          </span>
        </li>
      ))}
    </ol>
  );
}

const nameOf = ({ what, distanceM }: Rung): string =>
  words.rung[what](day.inputs().checkMarkM ?? distanceM);

const ofPage = (text: string): Shown => ({ text, lang: undefined });

function Note({ text, lang }: Shown): JSX.Element {
  return (
    <span class={styles.note} lang={lang}>
      {text}
    </span>
  );
}

function noteOf(rung: Rung): Shown {
  const aircraft = documents.value.aircraft;
  switch (rung.what) {
    case 'mark': {
      const least = rung.least?.value;
      return ofPage(least == null ? '' : words.stopUnder(wholeNumber(Math.ceil(least))));
    }
    case 'last-stop':
      return ofPage(
        rung.boundBy === undefined
          ? ''
          : words.bound[rung.boundBy](words.surface[day.inputs().surface]),
      );
    case 'rotate':
      return aircraftText(aircraft?.takeoff.rotateTo ?? '');
    case 'lift-off': {
      const gear = aircraft?.climb.gearUpByKt ?? aircraft?.limits.gearKt;
      return ofPage(gear === undefined ? '' : words.gearUp(wholeNumber(gear)));
    }
  }
}

interface SpeedProps {
  readonly name: string;
  readonly figure: Figure<'kt'>;
  /** Not to be exceeded: rounding must not raise it. */
  readonly down?: boolean;
}

function Speed({ name, figure, down }: SpeedProps): JSX.Element {
  const { value } = figure;
  return (
    <Asked hint={words.knots} className={styles.speed} onAsk={() => ask(name, figure)}>
      {value === null ? words.unknownLive : wholeNumber(down === true ? Math.floor(value) : value)}
      <small class={styles.unit}>{`${NO_BREAK_SPACE}${words.knots}`}</small>
    </Asked>
  );
}

function BookRungs(): JSX.Element | null {
  const brief = day.numbers();
  if (brief === null) return null;
  const { rotateKt, liftOffKt } = brief.takeoff;
  const gear = brief.climb.gearUpByKt.value ?? brief.limits.gearKt.value;
  const rungs = [
    {
      name: words.rung['lift-off'](0),
      figure: liftOffKt,
      note: ofPage(gear === null ? '' : words.gearUp(wholeNumber(gear))),
    },
    {
      name: words.rung.rotate(0),
      figure: rotateKt,
      note: aircraftText(brief.aircraft.takeoff.rotateTo ?? ''),
    },
  ];
  return (
    <ol class={styles.rungs}>
      {rungs.map(({ name, figure, note }) => (
        <li key={name} class={styles.rung}>
          <Speed name={name} figure={figure} />
          <span>
            <b class={styles.name}>{name}</b>
            <Note {...note} />
          </span>
        </li>
      ))}
    </ol>
  );
}

/** What stands over the ladder: the planned run and what it leaves, or the book's run. */
function Head(): JSX.Element | null {
  const worked = day.today()?.takeoff.planned;
  if (worked?.because === null) {
    const { runM, toraLeftM } = worked.figures;
    const left = toraLeftM.value;
    return (
      <>
        <HeadCell name={words.runPlanned} figure={runM} />
        {left !== null && <HeadCell name={words.available} figure={toraLeftM} short={left < 0} />}
      </>
    );
  }
  const run = day.numbers()?.takeoff.runM;
  return run?.value == null ? null : <HeadCell name={words.runBook} figure={run} />;
}

interface HeadCellProps {
  readonly name: string;
  readonly figure: Figure<'m'>;
  /** It falls short: marked as what stops. */
  readonly short?: boolean;
}

function HeadCell({ name, figure, short = false }: HeadCellProps): JSX.Element {
  return (
    <div class={short ? styles.short : undefined}>
      <dt>{name}</dt>
      <dd>
        {figure.value !== null && (
          <Asked hint={words.opens} onAsk={() => ask(name, figure)}>
            {shownFigure(figure)}
          </Asked>
        )}
      </dd>
    </div>
  );
}

/** The roll: time, ladder, how to stop, and two keys. */
export function LadderView(): JSX.Element {
  useEffect(() => {
    onRoll.value = true;
    return () => {
      onRoll.value = false;
    };
  }, []);
  const released = sortie.value.stamps.findLast(({ what }) => what === 'brakes released');
  const stop = stopText();
  const now = offered.value;
  const missing = [
    ...new Set(
      stopping().notThere.map(({ step }) => withinSentence(liveText(step.item), stepsLanguage())),
    ),
  ];
  return (
    <div class={styles.ladder}>
      <dl class={styles.head}>
        <Head />
        <div>
          <dt>{words.timed}</dt>
          <dd>{released && stopwatch(wallMs.value - released.at.wallMs)}</dd>
        </div>
      </dl>
      <LadderRungs />
      <p class={styles.stop}>
        <b class={styles.stopLabel}>{words.toStop}</b> <b lang={stop.lang}>{stop.text}</b>
        {missing.length > 0 && <b>{marked(stepsLang(), words.without, missing.join(', '))}</b>}
        <span class={styles.aside}>
          <CardOpener
            name={words.bigCard}
            wasJustClosed={wasJustClosed}
            onOpen={() => openCard('steps')}
          />
          <BackKey className={styles.back} />
        </span>
      </p>
      <div class={styles.keys}>
        <RollKeys
          words={words}
          mayStop={now?.stop === true}
          sinceMs={rollingSinceMs}
          onStop={stopRoll}
          onAirborne={() => now && doIt(now.main)}
        />
      </div>
    </div>
  );
}

/** On the roll: a few speeds, read from the bottom up, and what to do to stop printed under them. */

import type { JSX } from 'preact';
import { useEffect } from 'preact/hooks';
import { documents, sortie, wind } from '../../board/board';
import { numbers } from '../../board/flight';
import { ask, onRoll } from '../../board/places';
import { goBack, stamp, stopRoll } from '../../board/stepping';
import { wallMs } from '../../board/time';
import { Asked } from '../../parts/asked/Asked';
import { stopwatch, whole } from '../../parts/format';
import { Key } from '../../parts/key/Key';
import { TickKey } from '../../parts/key/TickKey';
import styles from './Ladder.module.css';
import { words } from './words.en';

/** The rungs: the first speed lowest, as the speeds come. */
export function Rungs(): JSX.Element | null {
  const brief = numbers.value;
  if (brief === null) return null;
  const { rotateKt, liftOffKt } = brief.takeoff;
  const gear = brief.climb.gearUpByKt.value ?? brief.limits.gearKt.value;
  const rungs = [
    {
      name: words.liftsOff,
      figure: liftOffKt,
      note: gear === null ? '' : words.gearUp(whole(gear)),
    },
    { name: words.rotate, figure: rotateKt, note: brief.aircraft.takeoff.rotateTo },
  ];
  return (
    <ol class={styles.rungs}>
      {rungs.map(({ name, figure, note }) => (
        <li key={name} class={styles.rung}>
          <Asked hint={words.knots} className={styles.speed} onAsk={() => ask(name, figure)}>
            {figure.value === null ? words.unknownLive : whole(figure.value)}
            <small class={styles.unit}>{words.knots}</small>
          </Asked>
          <span>
            <b class={styles.name}>{name}</b>
            <span class={styles.note}>{note}</span>
          </span>
        </li>
      ))}
    </ol>
  );
}

/** The roll: time, ladder, what to do to stop, and two keys. */
export function LadderView(): JSX.Element {
  useEffect(() => {
    onRoll.value = true;
    return () => {
      onRoll.value = false;
    };
  }, []);
  const released = sortie.value.stamps.findLast(({ what }) => what === 'brakes released');
  const aircraft = documents.value.aircraft;
  const run = numbers.value?.takeoff.runM;
  const available = wind.value.inUse?.availableM ?? null;
  return (
    <div class={styles.ladder}>
      <dl class={styles.head}>
        <div>
          <dt>{words.runBook}</dt>
          <dd>
            {run?.value != null && (
              <Asked hint={words.bookNote} onAsk={() => ask(words.runBook, run)}>
                {words.metres(whole(run.value))}
              </Asked>
            )}
          </dd>
        </div>
        {available !== null && run?.value != null && (
          <div>
            <dt>{words.available(whole(available))}</dt>
            <dd>{words.metres(whole(available - run.value))}</dd>
          </div>
        )}
        <div>
          <dt>{words.timed}</dt>
          <dd>{released && stopwatch(wallMs.value - released.at.wallMs)}</dd>
        </div>
      </dl>
      <Rungs />
      <p class={styles.stop}>
        <b class={styles.stopLabel}>{words.toStop}</b> <b>{aircraft?.stop.join(', ')}</b>
        <Key className={styles.back} onPress={goBack}>
          {words.back}
        </Key>
      </p>
      <div class={styles.keys}>
        <TickKey refusals={words.refused} look="stop" moving step="rolling" onPress={stopRoll}>
          {words.stopping}
        </TickKey>
        <TickKey
          refusals={words.refused}
          look="pick"
          moving
          step="rolling"
          onPress={() => stamp('airborne')}
        >
          {words.airborne}
        </TickKey>
      </div>
    </div>
  );
}

/** The stopwatch: one tap at each named point gives the ground speed between them. */

import type { JSX } from 'preact';
import { day, documents } from '../../board/board';
import { passNext, takeBackPassing } from '../../board/flight/taxi';
import { wallMs } from '../../board/flight/time';
import { openPlace } from '../../board/places';
import { openCard, wasJustClosed } from '../../board/steps/card';
import { KT_PER_MPS, type Stretch } from '../../core';
import { position } from '../../device/position';
import { CardOpener } from '../../parts/card/CardOpener';
import { decimal, wholeNumber } from '../../parts/format';
import { Key } from '../../parts/key/Key';
import { holdWords, markWords, passingWords } from '../../parts/pace';
import { length } from '../../parts/units';
import styles from './Taxi.module.css';
import { words } from './words';

/** The last measurement, and the key for the next point. */
export function TaxiWatch({ onRoute }: { onRoute: () => void }): JSX.Element | null {
  const at = day.progress();
  if (at === null) return <NoRoute onRoute={onRoute} />;
  const stretch = at.stretches.at(-1) ?? null;
  const passing = day.passing();
  return (
    <section class={styles.watch}>
      <div class={styles.measured} role="status">
        <HoldHere />
        {stretch === null ? <Ahead /> : <Measured stretch={stretch} />}
        <Device />
      </div>
      <Opener />
      {at.last !== null && (
        <Key className={styles.notYet ?? ''} onPress={takeBackPassing}>
          {words.notYet}
        </Key>
      )}
      {passing === null ? (
        <p class={styles.arrived}>{at.last === null ? '' : words.at(markWords(at.last))}</p>
      ) : (
        <Key
          look={passing.kind === 'cross' ? 'stop' : 'pick'}
          moving
          className={styles.passing ?? ''}
          onPress={passNext}
        >
          {passingWords(passing)}
        </Key>
      )}
    </section>
  );
}

/** At the holding point before a crossing: what one waits for there. */
function HoldHere() {
  const passing = day.passing();
  if (passing?.kind !== 'cross') return null;
  const controlled = day.settled().controlled === true;
  return <p class={styles.hold}>{holdWords(passing.crossing, controlled)}</p>;
}

function Opener() {
  return (
    <CardOpener
      name={words.bigCard}
      className={styles.card}
      wasJustClosed={wasJustClosed}
      onOpen={() => openCard('taxi')}
    />
  );
}

/** Without a route: the key that helps find one. */
function NoRoute({ onRoute }: { onRoute: () => void }) {
  if (day.fault() === null) return null;
  return (
    <section class={styles.watch}>
      <Opener />
      {day.wind().using === null ? (
        <Key look="pick" moving className={styles.passing ?? ''} onPress={() => openPlace('wind')}>
          {words.openWind}
        </Key>
      ) : (
        <Key look="pick" moving className={styles.passing ?? ''} onPress={onRoute}>
          {day.fault()?.code === 'no-destination' ? words.chooseStand : words.whereIAm}
        </Key>
      )}
    </section>
  );
}

/** The distance and time of the route, before anything is measured. */
function Ahead() {
  const at = day.progress();
  const maxKt = documents.value.aircraft?.taxi.maxKt;
  const takes = day.pace();
  if (at === null || takes?.leftS == null || maxKt === undefined) return null;
  return (
    <p>
      <span class={styles.speed}>{length(at.leftM)}</span>{' '}
      <span class={styles.ahead}>{words.atSpeed(words.time(takes.leftS), wholeNumber(maxKt))}</span>
    </p>
  );
}

function Measured({ stretch }: { stretch: Stretch }) {
  const { groundKt, leastKt, mostKt, distanceM, seconds, from, to } = stretch;
  const maxKt = documents.value.aircraft?.taxi.maxKt ?? null;
  // A stretch too short to time by thumb gives no speed, and so none that is too high.
  const isOver = mostKt !== null && maxKt !== null && groundKt > maxKt;
  const takes = day.pace();
  return (
    <>
      <p>
        <span class={`${styles.speed} ${isOver ? styles.over : ''}`}>
          {mostKt === null ? words.noSpeed : words.speed(wholeNumber(groundKt))}
        </span>{' '}
        <span class={`${styles.ahead} ${isOver ? styles.over : ''}`}>
          {mostKt === null
            ? words.giveNone
            : words.give(wholeNumber(Math.ceil(Math.max(groundKt - leastKt, mostKt - groundKt))))}
          {isOver && `, ${words.over(wholeNumber(maxKt))}`}
        </span>
      </p>
      <p class={styles.how}>
        {words.stretch(markWords(from), markWords(to), length(distanceM), words.time(seconds))}
      </p>
      {takes?.elapsedS != null && takes.expectedS !== null && (
        <p class={`${styles.how} ${styles.soFar}`}>
          {words.soFar(words.time(takes.elapsedS), words.time(takes.expectedS))}
        </p>
      )}
    </>
  );
}

/** The device's own speed, if requested. */
export function Device(): JSX.Element | null {
  const known = position.value;
  if (known.kind === 'off') return null;
  return <p class={styles.how}>{deviceWords()}</p>;
}

function deviceWords(): string {
  const known = position.value;
  switch (known.kind) {
    case 'off':
      return '';
    case 'waiting':
      return words.deviceWaiting;
    case 'refused':
      return words.deviceRefused;
    case 'none':
      return words.deviceNone;
    case 'known': {
      const age = words.time(Math.max(0, (wallMs.value - known.atMs) / 1000));
      const accuracy = length(known.accuracyM, 'up');
      return known.speedMps === null
        ? words.deviceNoSpeed(age, accuracy)
        : words.device(decimal(known.speedMps * KT_PER_MPS, 0), age, accuracy);
    }
  }
}

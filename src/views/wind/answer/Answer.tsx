/** The answer: the best end, huge, with how firm it is, its reasons, and the key that uses it. */

import type { JSX } from 'preact';
import { day } from '../../../board/board';
import { ask, typing } from '../../../board/places';
import { setInputs, useEnd } from '../../../board/record/choices';
import { isOld, answered as shown } from '../../../board/wind/answered';
import type { HoldsTo, RankedEnd, RankedEnds, WindAnswer } from '../../../core';
import { Asked } from '../../../parts/asked/Asked';
import { againstLimit, direction, wholeNumber } from '../../../parts/format';
import { Key } from '../../../parts/key/Key';
import { aboutLength, length } from '../../../parts/units';
import { lowSunRow, noBest, usingFails } from '../afterAnswer';
import { words } from '../words';
import styles from './Answer.module.css';
import { Row } from './Row';

/** The best end and why. */
export function Answer(): JSX.Element {
  const answered = shown.value;
  const { ranked, using } = answered;
  const best = ranked?.best ?? null;
  const differs = best !== null && using !== null && using !== best.designator;
  return (
    <section
      class={`${styles.answer} ${isOld.value ? styles.old : ''} ${typing.value ? styles.typing : ''}`}
      aria-live="polite"
    >
      <div class={`${styles.best} ${best === null ? styles.without : ''}`}>
        <p class={styles.label}>
          {differs ? words.usingOther(using, best.designator) : words.forPurpose(answered.purpose)}
        </p>
        <p
          class={`${styles.end} ${best === null ? styles.none : best.designator.length > 2 ? styles.long : ''}`}
        >
          {best?.designator ?? (ranked === null ? '–' : words.none)}
        </p>
        <p class={styles.foot}>{best !== null && <Foot end={best} answered={answered} />}</p>
      </div>
      <div class={styles.why}>
        {isOld.value && <p class={styles.oldMark}>{words.old}</p>}
        <usingFails.Later />
        <Reasons answered={answered} />
        <div class={styles.keys}>
          {best !== null && <UseKey end={best.designator} />}
          <PurposeKey />
        </div>
      </div>
    </section>
  );
}

function Foot({ end, answered }: { end: RankedEnd; answered: WindAnswer }) {
  const of = { end, answer: answered };
  return (
    <>
      {day.settled().variation.value !== null && (
        <Asked hint={words.ask} onAsk={() => ask('', { name: 'headingMagnetic', ...of })}>
          {words.magnetic(direction(end.headingMagneticDeg))}
        </Asked>
      )}
      <Asked hint={words.ask} onAsk={() => ask('', { name: 'available', ...of })}>
        {length(end.availableM, 'down')}
      </Asked>
      {end.leftM !== null && end.tightest !== null && !typing.value && (
        <Asked hint={words.ask} onAsk={() => ask('', { name: 'left', ...of })}>
          {words.leftOver(aboutLength(end.leftM, 'down'), end.tightest.of.toUpperCase())}
        </Asked>
      )}
    </>
  );
}

/** Redrawn only for another end: typing doesn't change which is in use. */
function UseKey({ end }: { end: string }) {
  return day.wind().using === end ? (
    <p class={styles.inUse}>{words.inUse(end)}</p>
  ) : (
    <Key look="pick" moving className={styles.use} onPress={() => useEnd(end)}>
      {words.use(end)}
    </Key>
  );
}

/** Take-off or landing: what the ends are judged for. */
function PurposeKey() {
  const now = day.purpose();
  const other = now === 'take-off' ? 'landing' : 'take-off';
  return (
    <Key
      className={styles.purpose}
      label={words.purpose.change(now)}
      onPress={() => setInputs({ purpose: other })}
    >
      {words.purpose[now]}
    </Key>
  );
}

function Reasons({ answered }: { answered: WindAnswer }) {
  const { ranked, because } = answered;
  if (ranked === null) return <p class={styles.sentence}>{because && words.noRanking[because]}</p>;
  const { best } = ranked;
  if (best === null) {
    return (
      <div class={styles.sentence}>
        <noBest.Later />
      </div>
    );
  }
  return (
    <dl class={styles.rows}>
      <AlongRow end={best} answered={answered} />
      <AcrossRow end={best} answered={answered} />
      <FirmRow ranked={ranked} best={best} />
      <LastRow ranked={ranked} best={best} />
    </dl>
  );
}

interface EndRowProps {
  readonly end: RankedEnd;
  readonly answered: WindAnswer;
}

function AlongRow({ end, answered }: EndRowProps) {
  const { tailwindWorstKt } = end;
  const of = { end, answer: answered };
  if (end.headwindKt === null || Math.round(end.headwindKt) < 0) {
    const limit = day.settled().tailwindLimit.value ?? 0;
    return (
      <Row name={words.tailWorst((answered.wind?.gustKt ?? null) !== null)}>
        <Asked hint={words.ask} onAsk={() => ask('', { name: 'tailwindWorst', ...of })}>
          {words.ofLimit(againstLimit(tailwindWorstKt ?? 0, limit), wholeNumber(limit))}
        </Asked>
      </Row>
    );
  }
  return (
    <Row name={words.headwind}>
      <Asked hint={words.ask} onAsk={() => ask(words.headwind, { name: 'headwind', ...of })}>
        {words.knots(end.headwindKt)}
      </Asked>
    </Row>
  );
}

function AcrossRow({ end, answered }: EndRowProps) {
  const limit = day.settled().crosswindLimit.value ?? 0;
  const side =
    Math.round(end.crosswindKt ?? 0) === 0 ? 'none' : (end.crosswindKt ?? 0) > 0 ? 'right' : 'left';
  const gust = answered.wind?.gustKt != null;
  const name = end.crosswindKt === null ? words.acrossWorst(gust) : words.across(side, gust);
  return (
    <Row name={name}>
      <Asked
        hint={words.ask}
        onAsk={() => ask(name, { name: 'crosswindWorst', end, answer: answered })}
      >
        {words.ofLimit(againstLimit(end.crosswindWorstKt ?? 0, limit), wholeNumber(limit))}
      </Asked>
    </Row>
  );
}

/** How far the wind can turn: the side with less to spare counts. */
function FirmRow({ ranked, best }: { ranked: RankedEnds; best: RankedEnd }) {
  const holds = ranked.holdsUntil;
  if (holds === null) {
    const [reason] = ranked.best?.reasons ?? [];
    return (
      <Row name={ranked.light ? words.lightWind : words.anywhere}>
        {reason ? words.reason[reason.code] : ''}
      </Row>
    );
  }
  const { left, right, close } = holds;
  const spare = Math.min(spareOf(left), spareOf(right));
  const value = (
    <Asked
      hint={words.ask}
      onAsk={() => ask('', { name: 'spare', end: best, answer: shown.value })}
    >
      {close ? words.close(spare) : words.toSpare(spare)}
    </Asked>
  );
  if (left === 'never' || right === 'never') {
    if (left !== 'never') return <Row name={words.firmLeft(direction(left.lastDeg))}>{value}</Row>;
    if (right !== 'never')
      return <Row name={words.firmRight(direction(right.lastDeg))}>{value}</Row>;
    return <Row name={words.firmAlways}>{words.firmAlwaysValue}</Row>;
  }
  return <Row name={words.firm(direction(left.lastDeg), direction(right.lastDeg))}>{value}</Row>;
}

const spareOf = (to: HoldsTo) => (to === 'never' ? 360 : to.spareDeg);

/** A limit only a storm would reach isn't worth a line, kt. */
const TELLING_KT = 60;

/** Today's gust if the wind had that speed; null if there is none. */
function gustAt(speedKt: number): number | null {
  const { speedKt: steady, gustKt } = shown.value.wind ?? { speedKt: null, gustKt: null };
  return steady && gustKt !== null ? Math.floor((gustKt / steady) * speedKt) : null;
}

/**
 * What else matters: a low sun ahead, the speed at which a limit is reached, or the rule that
 * decided.
 */
function LastRow({ ranked, best }: { ranked: RankedEnds; best: RankedEnd }) {
  const sun = day.lowSunOn().get(best.designator);
  if (sun !== undefined && sun.kind !== 'none') return <lowSunRow.Later sun={sun} />;
  const { speedKt, limit } = ranked.holdsUntil ?? { speedKt: null, limit: null };
  if (speedKt !== null && limit !== null && speedKt <= TELLING_KT) {
    return (
      <Row name={words.upTo[limit]}>
        <Asked
          hint={words.ask}
          onAsk={() =>
            ask(words.upTo[limit], { name: 'limitSpeed', end: best, answer: shown.value })
          }
        >
          {words.reachedAt(Math.floor(speedKt), gustAt(speedKt))}
        </Asked>
      </Row>
    );
  }
  const [reason] = ranked.holdsUntil === null ? [] : best.reasons;
  return reason ? <Row name={words.decidedBy}>{words.reason[reason.code]}</Row> : null;
}

/** The dial, fed from the day. */

import type { JSX } from 'preact';
import { day } from '../../../board/board';
import { typing } from '../../../board/places';
import { openCard, wasJustClosed } from '../../../board/steps/card';
import { degreesOf, type RunwayRing, runwayPlan, runwayRing, type WindAnswer } from '../../../core';
import { CardOpener } from '../../../parts/card/CardOpener';
import { Dial, type DialEnd, type DialWind } from '../../../parts/dial/Dial';
import { direction } from '../../../parts/format';
import { oncePerObject } from '../../../parts/once';
import { pictured } from '../entry/afterTyping';
import { words } from '../runways/words';
import styles from '../Wind.module.css';
import { words as windWords } from '../words';

/** The runways under the wind, with the runway ring. */
export function DialPanel(): JSX.Element | null {
  const { field, sun } = day.settled();
  const { answered, old } = pictured.value;
  if (field === null) return null;
  const ring = answered.question && runwayRing(answered.question);
  return (
    <div class={styles.dial}>
      <Dial
        runways={runwayPlan(field)}
        ends={dialEnds(
          answered,
          field.runways.flatMap((runway) => runway.ends),
        )}
        wind={dialWind(answered)}
        ring={ring}
        sun={
          sun && {
            azimuthTrueDeg: degreesOf(sun.position.azimuth),
            altitudeDeg: sun.position.altitudeDeg,
          }
        }
        old={old}
        label={inWords(answered, ring)}
        northLetters={words.dial.letters}
      />
      {!typing.value && (
        <CardOpener
          name={words.bigCard}
          className={styles.card}
          wasJustClosed={wasJustClosed}
          onOpen={() => openCard('wind')}
        />
      )}
    </div>
  );
}

function dialEnds(
  answered: WindAnswer,
  ends: readonly { designator: string }[],
): readonly DialEnd[] {
  const { ranked, using } = answered;
  if (ranked === null) {
    return ends.map(({ designator }) => ({
      designator,
      headingTrueDeg: 0,
      state: 'within',
      inUse: designator === using,
    }));
  }
  return ranked.ends.map((end) => ({
    designator: end.designator,
    headingTrueDeg: end.headingTrueDeg,
    state:
      end.designator === ranked.best?.designator
        ? 'best'
        : end.shortfalls.some(({ code }) => code === 'closed')
          ? 'closed'
          : end.withinLimits
            ? 'within'
            : 'outside',
    inUse: end.designator === using,
  }));
}

function dialWind({ wind, fromTrueDeg, sectorTrueDeg }: WindAnswer): DialWind {
  const kind =
    wind === null
      ? 'none'
      : wind.speedKt === 0 && wind.gustKt === null
        ? 'calm'
        : fromTrueDeg === null
          ? 'variable'
          : 'steady';
  return { fromTrueDeg, sectorDeg: sectorTrueDeg, kind };
}

/** What the dial shows, for those who can't see it. */
function inWords(
  { wind, fromTrueDeg, fromMagneticDeg }: WindAnswer,
  ring: RunwayRing | null,
): string {
  if (wind === null) return words.dial.noWind;
  const first = words.dial.wind(windWords.windWords(wind, fromTrueDeg, fromMagneticDeg));
  return ring === null ? first : `${first} ${words.dial.best(ringInWords(ring))}`;
}

const ringInWords = oncePerObject((ring: RunwayRing): string => {
  const starts = ring.flatMap((end, deg) => (end === ring.at(deg - 1) ? [] : [deg]));
  const only = ring[0] ?? null;
  if (starts.length === 0) {
    return only === null ? words.dial.alwaysNone : words.dial.always(only);
  }
  return starts
    .map((from, i) => {
      const next = starts[(i + 1) % starts.length] ?? 0;
      const end = ring[from] ?? null;
      const range = [direction(from), direction(next - 1 + (next === 0 ? 360 : 0))] as const;
      return end === null ? words.dial.arcNone(...range) : words.dial.arc(end, ...range);
    })
    .join('; ');
});

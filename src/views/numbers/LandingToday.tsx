/** Today's landing: the approach, the lengths on the runway, when to start down, going around. */

import type { JSX } from 'preact';
import type { TodayBrief } from '../../core';
import { decimal, wholeNumber } from '../../parts/format';
import { LengthBars } from '../../parts/lengthBars/LengthBars';
import { aboutLength, length, neededLength } from '../../parts/units';
import { Assumed } from './Assumed';
import { Available } from './Available';
import { downNm, slowing } from './descent';
import { Glance } from './Glance';
import { Group, Line, Pair, PairHead } from './Line';
import styles from './Numbers.module.css';
import { WithoutNumbers } from './TakeoffToday';
import { words } from './words';

/** Heights over the threshold to start down from, ft. */
const HEIGHTS_FT = [1000, 1500, 2000, 3000, 5000, 10_000];

export function LandingPanel({ today }: { today: TodayBrief }): JSX.Element {
  const { planned, expected } = today.landing;
  if (planned.because !== null)
    return <WithoutNumbers because={planned.because} title={words.landing} />;
  if (expected.because !== null)
    return <WithoutNumbers because={expected.because} title={words.landing} />;
  const [plan, hope] = [planned.figures, expected.figures];
  const needed = plan.plannedM.value ?? 0;
  const left = plan.plannedLeftM.value;
  const approachKt = hope.approachKt.value;
  const slow = approachKt === null ? null : slowing(today.aircraft, approachKt);
  return (
    <section>
      <h2 class={styles.title}>{words.landingOn(today.end)}</h2>
      {left !== null && left < 0 && <p class={styles.short}>{words.landingTooShort}</p>}
      {planned.exceeds.map((limit) => (
        <p key={limit} class={styles.short}>
          {words.landingExceeds[limit]}
        </p>
      ))}
      <Glance
        cells={[
          { name: words.approach, figure: hope.approachKt },
          { name: words.touchdown, figure: hope.touchdownKt },
          { name: words.sink, figure: hope.sinkFtMin },
          {
            name: words.landingPlanned,
            figure: plan.plannedM,
            note: words.leftNote(left),
            noteFigure: plan.plannedLeftM,
            noteName: words.ldaLeft,
          },
        ]}
      />
      <Assumed today={today} of="landing" />
      {today.end !== null && left !== null && (
        <LengthBars
          bars={[
            {
              name: words.landingPlanned,
              fromM: 0,
              toM: needed,
              expectedToM: hope.neededM.value,
              availableM: needed + left,
              available: <Available of="LDA" lengthM={needed + left} />,
              label: words.barSpoken(
                words.landingPlanned,
                neededLength(needed, needed + left),
                'LDA',
                length(needed + left, 'down'),
                aboutLength(left, 'down'),
              ),
            },
          ]}
        />
      )}
      <div class={styles.groups}>
        <Group title={words.lengths}>
          <PairHead />
          <Pair
            name={words.reference}
            planned={plan.referenceKt}
            expected={hope.referenceKt}
            round="up"
          />
          <Pair name={words.approach} planned={plan.approachKt} expected={hope.approachKt} />
          <Pair name={words.air} planned={plan.airM} expected={hope.airM} />
          <Pair name={words.landingRun} planned={plan.runM} expected={hope.runM} />
          <Pair name={words.landingNeeded} planned={plan.neededM} expected={hope.neededM} />
          <Pair name={words.withFactor} planned={plan.plannedM} expected={hope.plannedM} />
          {plan.plannedBareM.value !== null && (
            <Pair
              name={words.plannedBare}
              planned={plan.plannedBareM}
              expected={hope.plannedBareM}
            />
          )}
          <Pair name={words.ldaLeft} planned={plan.plannedLeftM} expected={hope.ldaLeftM} />
          <Line name={words.goAround} figure={hope.goAroundPercent} />
        </Group>
        <section>
          <h3 class={styles.group}>{words.startDown}</h3>
          <dl>
            {HEIGHTS_FT.map((ft) => (
              <div key={ft} class={styles.line}>
                <dt>{words.above(wholeNumber(ft))}</dt>
                <dd>
                  <b>{words.miles(decimal(downNm(ft), 1))}</b>
                </dd>
              </div>
            ))}
            {slow !== null && (
              <div class={styles.line}>
                <dt>{words.toSlow(wholeNumber(slow.fromKt), wholeNumber(slow.toKt))}</dt>
                <dd>
                  <b>{words.miles(wholeNumber(Math.ceil(slow.nm)))}</b>
                </dd>
              </div>
            )}
          </dl>
        </section>
      </div>
    </section>
  );
}

/** Today's take-off: four numbers at a glance, the lengths on the runway, and the rest. */

import type { JSX } from 'preact';
import type { TodayBrief } from '../../core';
import { type LengthBar, LengthBars } from '../../parts/lengthBars/LengthBars';
import { aboutLength, length, neededLength } from '../../parts/units';
import { Assumed } from './Assumed';
import { Available } from './Available';
import { Glance } from './Glance';
import { Group, Line, Pair, PairHead } from './Line';
import styles from './Numbers.module.css';
import { words } from './words';

/** The take-off of today. */
export function TakeoffPanel({ today }: { today: TodayBrief }): JSX.Element {
  const { planned, expected } = today.takeoff;
  if (planned.because !== null)
    return <WithoutNumbers because={planned.because} title={words.takeoff} />;
  if (expected.because !== null)
    return <WithoutNumbers because={expected.because} title={words.takeoff} />;
  const [plan, hope] = [planned.figures, expected.figures];
  const { boundBy } = planned.raw.stop;
  const short = [plan.toraLeftM, plan.todaLeftM].some(({ value }) => value !== null && value < 0);
  return (
    <section>
      <h2 class={styles.title}>{words.takeoffOn(today.end)}</h2>
      {short && <p class={styles.short}>{words.tooShort}</p>}
      <Glance
        cells={[
          { name: words.rotate, figure: hope.rotateKt },
          { name: words.liftOff, figure: hope.liftOffKt },
          {
            name: words.lastStop,
            figure: plan.lastStopKt,
            note: plan.lastStopKt.value === null ? '' : words.bound[boundBy],
          },
          {
            name: words.runPlanned,
            figure: plan.runM,
            note: words.leftNote(plan.toraLeftM.value),
            noteFigure: plan.toraLeftM,
            noteName: words.toraLeft,
          },
        ]}
      />
      <Assumed today={today} of="takeoff" />
      {today.end !== null && <LengthBars bars={bars(today)} />}
      <div class={styles.groups}>
        <Group title={words.lengths}>
          <PairHead />
          <Pair name={words.run} planned={plan.runM} expected={hope.runM} />
          <Pair name={words.to50ft} planned={plan.to50ftM} expected={hope.to50ftM} />
          <Pair name={words.stopFrom} planned={plan.stopM} expected={hope.stopM} />
          <Pair name={words.toraLeft} planned={plan.toraLeftM} expected={hope.toraLeftM} />
          <Pair name={words.todaLeft} planned={plan.todaLeftM} expected={hope.todaLeftM} />
          <Pair name={words.asdaLeft} planned={plan.asdaLeftM} expected={hope.asdaLeftM} />
          <Pair
            name={words.lastStop}
            planned={plan.lastStopKt}
            expected={hope.lastStopKt}
            round="down"
          />
          {planned.raw.stop.bare !== null && (
            <Pair
              name={words.lastStopBare}
              planned={plan.lastStopBareKt}
              expected={hope.lastStopBareKt}
              round="down"
            />
          )}
          <Pair name={words.atMark} planned={plan.atMarkKt} expected={hope.atMarkKt} />
          {/* One figure, for the wind there is: the planned wind is half of it. */}
          <Line name={words.atMarkLeast} figure={plan.atMarkLeastKt} round="up" />
          {planned.raw.goOn !== null && (
            <Pair name={words.goOn} planned={plan.lowestGoOnKt} expected={hope.lowestGoOnKt} />
          )}
        </Group>
        <Group title={words.climb}>
          <Line name={words.safety} figure={hope.safetyKt} />
          <Line name={words.climbSpeed} figure={hope.climbKt} />
          <Line name={words.pitch} figure={hope.climbPitch} />
          <Line name={words.gradient} figure={hope.climbGradient} />
          <Line name={words.groundGradient} figure={hope.climbGroundGradient} />
          <Line name={words.rate} figure={hope.climbRate} />
          <Line name={words.tyresLeft} figure={hope.tyreLeftKt} />
        </Group>
      </div>
      {planned.raw.goOn?.aboveStop === true && <p class={styles.short}>{words.goOnAboveStop}</p>}
    </section>
  );
}

/** Why nothing can be computed. */
export function WithoutNumbers({
  title,
  because,
}: {
  title: string;
  because: string;
}): JSX.Element {
  return (
    <section>
      <h2 class={styles.title}>{title}</h2>
      <p class={styles.short}>{words.cannot[because] ?? words.notKnown}</p>
    </section>
  );
}

function bars({ takeoff: { planned, expected }, end }: TodayBrief): readonly LengthBar[] {
  if (planned.because !== null || expected.because !== null || end === null) return [];
  const [plan, hope] = [planned.figures, expected.figures];
  const bar = (
    name: string,
    need: keyof typeof plan,
    left: keyof typeof plan,
    of: 'TORA' | 'TODA' | 'ASDA',
  ): LengthBar[] => {
    const [needed, over] = [plan[need].value, plan[left].value];
    if (needed === null || over === null) return [];
    const fromM = planned.rollsFromM;
    const availableM = fromM + needed + over;
    const expectedM = hope[need].value;
    return [
      {
        name,
        fromM,
        toM: fromM + needed,
        expectedToM: expectedM === null ? null : fromM + expectedM,
        availableM,
        available: <Available of={of} lengthM={availableM} />,
        label: words.barSpoken(
          name,
          neededLength(needed, needed + over),
          of,
          length(availableM, 'down'),
          aboutLength(over, 'down'),
        ),
      },
    ];
  };
  return [
    ...bar(words.run, 'runM', 'toraLeftM', 'TORA'),
    ...bar(words.to50ft, 'to50ftM', 'todaLeftM', 'TODA'),
    ...bar(words.stopFrom, 'stopM', 'asdaLeftM', 'ASDA'),
  ];
}

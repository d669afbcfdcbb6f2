/** Taxi: whom to call, where to, the speed not to exceed, the power to get and to keep rolling. */

import type { JSX } from 'preact';
import { settled, wind } from '../../board/board';
import { steps, taxi } from '../../board/flight';
import { ask, openPlace } from '../../board/places';
import { type Figure, runwayPlan, type TaxiBrief, type Unit } from '../../core';
import { Asked } from '../../parts/asked/Asked';
import { Dial } from '../../parts/dial/Dial';
import { direction, whole } from '../../parts/format';
import { Key } from '../../parts/key/Key';
import styles from './Taxi.module.css';
import { words } from './words.en';

/** The place Taxi. */
export function Taxi(): JSX.Element {
  const brief = taxi.value;
  if (brief === null) return <p class={styles.none}>{words.noAircraft}</p>;
  return (
    <div class={styles.taxi}>
      <Call brief={brief} />
      <Destination />
      <Crossings />
      <Numbers brief={brief} />
    </div>
  );
}

function Call({ brief: { radio } }: { brief: TaxiBrief }) {
  if (radio === null) return <p class={styles.call}>{words.noRadio}</p>;
  return (
    <section class={styles.call}>
      <p class={styles.station}>
        <b>{words.call(radio.name)}</b> <span class={styles.frequency}>{radio.mhz}</span>
      </p>
      <p>{radio.service === 'traffic' ? words.traffic : words.controlled}</p>
    </section>
  );
}

function Destination() {
  const { using } = wind.value;
  const heading = steps.value?.facts.runwayMagnetic ?? null;
  if (using === null) {
    return (
      <section class={styles.destination}>
        <p class={styles.runway}>{words.noEnd}</p>
        <Key look="pick" moving onPress={() => openPlace('wind')}>
          {words.chooseEnd}
        </Key>
      </section>
    );
  }
  return (
    <section class={styles.destination}>
      <div>
        <p class={styles.runway}>{words.to(using)}</p>
        <p class={styles.heading}>
          {typeof heading === 'number' ? words.heading(direction(heading)) : words.headingUnknown}
        </p>
      </div>
      <Layout using={using} />
    </section>
  );
}

/** The runways as they lie, the one in use solid, and the wind. */
function Layout({ using }: { using: string }) {
  const { field } = settled.value;
  if (field === null) return null;
  const { fromTrueDeg, sectorTrueDeg } = wind.value;
  const runways = runwayPlan(field);
  return (
    <div class={styles.layout}>
      <Dial
        runways={runways}
        ends={runways
          .flatMap(({ ends }) => ends)
          .map((end) => ({ ...end, state: 'within', inUse: end.designator === using }))}
        wind={{
          fromTrueDeg,
          sectorDeg: sectorTrueDeg,
          kind: fromTrueDeg === null ? 'none' : 'steady',
        }}
        ring={null}
        label={words.layout(using)}
        northLetters={words.northLetters}
      />
    </div>
  );
}

function Crossings() {
  const runways = settled.value.field?.runways ?? [];
  return (
    <section class={styles.crossings}>
      {runways.length > 1 && (
        <p>
          <b>
            {words.crossing(
              runways.map(({ ends }) => `${ends[0].designator}/${ends[1].designator}`).join(', '),
            )}
          </b>
        </p>
      )}
      <p>{settled.value.controlled ? words.hold : words.holdUncontrolled}</p>
      {settled.value.field && <p class={styles.about}>{settled.value.field.about}</p>}
    </section>
  );
}

function Numbers({ brief }: { brief: TaxiBrief }) {
  const number = (title: string, figure: Figure<Unit>) => (
    <Asked hint={words.ask} className={styles.number} onAsk={() => ask(title, figure)}>
      {figure.value === null ? '—' : whole(figure.value)}
    </Asked>
  );
  const unit = brief.getRolling.value === null ? '' : brief.getRolling.unit;
  return (
    <dl class={styles.numbers}>
      <div class={styles.limit}>
        <dt>{words.doNotExceed}</dt>
        <dd class={styles.big}>
          {number(words.doNotExceed, brief.doNotExceedKt)}
          <small>{words.kt}</small>
        </dd>
        <dd>{brief.inTurnsKt.value !== null && words.inTurns(whole(brief.inTurnsKt.value))}</dd>
      </div>
      <div>
        <dt>{words.getRolling}</dt>
        <dd class={styles.big}>
          {number(words.getRolling, brief.getRolling)}
          <small>{unit}</small>
        </dd>
        <dd>{words.afterwards(brief.afterBreakaway)}</dd>
      </div>
      <div>
        <dt>{words.keepRolling}</dt>
        <dd class={`${styles.big} ${(brief.keepRollingMost.value ?? 0) > 999 ? styles.long : ''}`}>
          {number(words.keepRolling, brief.keepRollingLeast)}–
          {number(words.keepRolling, brief.keepRollingMost)}
          <small>{unit}</small>
        </dd>
        <dd>{brief.steering}</dd>
      </div>
    </dl>
  );
}

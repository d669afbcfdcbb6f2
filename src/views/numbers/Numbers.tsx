/** Numbers: the speeds, lengths and limits at hand, each with where it comes from. */

import type { JSX } from 'preact';
import { settled } from '../../board/board';
import { numbers } from '../../board/flight';
import { ask } from '../../board/places';
import { degreesOf, endsOf, type Field, type Figure, toMagnetic, type Unit } from '../../core';
import { Asked } from '../../parts/asked/Asked';
import { decimal, direction, NO_BREAK_SPACE, whole } from '../../parts/format';
import styles from './Numbers.module.css';
import { words } from './words.en';

/** The place Numbers. */
export function Numbers(): JSX.Element {
  const brief = numbers.value;
  const { field, crosswindLimit, tailwindLimit, variation } = settled.value;
  if (brief === null) return <p class={styles.none}>{words.none}</p>;
  const { takeoff, climb, landing, limits } = brief;
  return (
    <div class={styles.numbers}>
      <h2 class={styles.title}>{brief.aircraft.name}</h2>
      <p class={styles.book}>{words.book}</p>
      <div class={styles.groups}>
        <Group title={words.takeoff}>
          <Line name={words.rotate} figure={takeoff.rotateKt} />
          <Line name={words.liftOff} figure={takeoff.liftOffKt} />
          <Line name={words.run} figure={takeoff.runM} />
          <Line name={words.mass} figure={takeoff.massKg} />
        </Group>
        <Group title={words.climb}>
          <Line name={words.gearUp} figure={climb.gearUpByKt} />
          <Line name={words.flapsUp} figure={climb.flapsUpByKt} />
          <Line name={words.reheatOff} figure={climb.reheatOffKt} />
          <Line name={words.climbLeast} figure={climb.leastKt} />
          <Line name={words.climbMost} figure={climb.mostKt} />
        </Group>
        <Group title={words.landing}>
          <Line name={words.approach} figure={landing.approachKt} />
          <Line name={words.landingRun} figure={landing.runM} />
          <Line name={words.mass} figure={landing.massKg} />
        </Group>
        <Group title={words.limits}>
          <Line name={words.crosswind} figure={crosswindLimit} />
          <Line name={words.tailwind} figure={tailwindLimit} />
          <Line name={words.gear} figure={limits.gearKt} />
          <Line name={words.flaps} figure={limits.flapsKt} />
          <Line name={words.tyres} figure={limits.tyreKt} />
        </Group>
      </div>
      {field !== null && <FieldTable field={field} variation={variation} />}
    </div>
  );
}

function Group({ title, children }: { title: string; children: JSX.Element[] }) {
  return (
    <section>
      <h3 class={styles.group}>{title}</h3>
      <dl>{children}</dl>
    </section>
  );
}

function Line({ name, figure }: { name: string; figure: Figure<Unit> }) {
  return (
    <div class={styles.line}>
      <dt>{name}</dt>
      <dd>
        {figure.value === null ? (
          <span class={styles.absent}>{words.because[figure.because]}</span>
        ) : (
          <Asked hint={words.ask} onAsk={() => ask(name, figure)}>
            {`${whole(figure.value)}${NO_BREAK_SPACE}${figure.unit}`}
          </Asked>
        )}
      </dd>
    </div>
  );
}

function FieldTable({ field, variation }: { field: Field; variation: Figure<'deg'> }) {
  return (
    <section>
      <h2 class={styles.title}>{`${field.code} ${field.name}`}</h2>
      <dl class={styles.groups}>
        <div class={styles.line}>
          <dt>{words.elevation}</dt>
          <dd>
            <b>{words.feet(whole(field.place.elevationFt))}</b>
          </dd>
        </div>
        <div class={styles.line}>
          <dt>{words.variation}</dt>
          <dd>
            {variation.value === null ? (
              <span class={styles.absent}>{words.because[variation.because]}</span>
            ) : (
              <Asked hint={words.ask} onAsk={() => ask(words.variation, variation)}>
                {variation.value < 0
                  ? words.west(decimal(-variation.value, 1))
                  : words.east(decimal(variation.value, 1))}
              </Asked>
            )}
          </dd>
        </div>
      </dl>
      <div class={styles.scroll}>
        <table class={styles.table}>
          <caption class={styles.group}>{words.ends}</caption>
          <thead>
            <tr>
              {words.endsHead.map((head) => (
                <th key={head} scope="col">
                  {head}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {endsOf(field).map(({ designator, given, heading }) => (
              <tr key={designator}>
                <th scope="row">{designator}</th>
                {[given.toraM, given.todaM, given.asdaM, given.ldaM].map((length, i) => (
                  <td key={words.endsHead[i + 1]}>{whole(length)}</td>
                ))}
                <td>
                  {variation.value === null
                    ? '—'
                    : direction(degreesOf(toMagnetic(heading, variation.value)))}
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
    </section>
  );
}

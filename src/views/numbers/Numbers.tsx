/** Numbers: today's speeds, lengths and limits, each with where it comes from. */

import type { JSX } from 'preact';
import { day } from '../../board/board';
import type { NumbersBrief } from '../../core';
import { Book } from './Book';
import { FieldTable } from './FieldTable';
import { Entries, Given } from './Given';
import { LandingPanel } from './LandingToday';
import { Group, Line } from './Line';
import { LookUps } from './LookUps';
import styles from './Numbers.module.css';
import { TakeoffPanel } from './TakeoffToday';
import { words } from './words';

/** The place Numbers: what comes next first, so the landing once airborne. */
export function Numbers(): JSX.Element {
  const brief = day.numbers();
  const { field, variation } = day.settled();
  if (brief === null) return <p class={styles.none}>{words.none}</p>;
  const worked = day.today();
  return (
    <div class={styles.numbers}>
      {worked === null ? (
        <>
          <h2 class={styles.title}>{brief.aircraft.name}</h2>
          <Book brief={brief} />
        </>
      ) : (
        <>
          <Given today={worked} />
          {day.purpose() === 'landing' && <LandingPanel today={worked} />}
          <TakeoffPanel today={worked} />
          {day.purpose() === 'take-off' && <LandingPanel today={worked} />}
        </>
      )}
      <Limits brief={brief} />
      {worked !== null && (
        <>
          <Entries today={worked} />
          <LookUps />
          <p class={styles.book}>{words.method}</p>
        </>
      )}
      {field !== null && <FieldTable field={field} variation={variation} />}
    </div>
  );
}

function Limits({ brief: { climb, limits } }: { brief: NumbersBrief }): JSX.Element {
  const { crosswindLimit, tailwindLimit } = day.settled();
  return (
    <div class={styles.groups}>
      <Group title={words.limits}>
        <Line name={words.crosswind} figure={crosswindLimit} />
        <Line name={words.tailwind} figure={tailwindLimit} />
        <Line name={words.tyres} figure={limits.tyreKt} />
      </Group>
      <Group title={words.cleanUp}>
        <Line name={words.gearUp} figure={climb.gearUpByKt} />
        <Line name={words.gear} figure={limits.gearKt} />
        <Line name={words.flapsUp} figure={climb.flapsUpByKt} />
        <Line name={words.flaps} figure={limits.flapsKt} />
        <Line name={words.reheatOff} figure={climb.reheatOffKt} />
      </Group>
    </div>
  );
}

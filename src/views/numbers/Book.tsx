/** The plain figures of an aircraft about which no more is known. */

import type { JSX } from 'preact';
import type { NumbersBrief } from '../../core';
import { Group, Line } from './Line';
import styles from './Numbers.module.css';
import { words } from './words';

/** Book figures: without today's mass, air or wind. */
export function Book({ brief }: { brief: NumbersBrief }): JSX.Element {
  const { takeoff, climb, landing } = brief;
  return (
    <>
      <p class={styles.book}>{words.book}</p>
      <div class={styles.groups}>
        <Group title={words.takeoff}>
          <Line name={words.rotate} figure={takeoff.rotateKt} />
          <Line name={words.liftOff} figure={takeoff.liftOffKt} />
          <Line name={words.run} figure={takeoff.runM} />
          <Line name={words.mass} figure={takeoff.massKg} />
        </Group>
        <Group title={words.climb}>
          <Line name={words.climbLeast} figure={climb.leastKt} />
          <Line name={words.climbMost} figure={climb.mostKt} />
        </Group>
        <Group title={words.landing}>
          <Line name={words.approach} figure={landing.approachKt} />
          <Line name={words.landingRun} figure={landing.runM} />
          <Line name={words.mass} figure={landing.massKg} />
        </Group>
      </div>
    </>
  );
}

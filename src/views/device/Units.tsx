/** The units that lengths, pressures and masses are in on this device, and whether local time stands beside UTC. */

import type { JSX } from 'preact';
import { lengthUnit, localTime, massUnit, pressureUnit } from '../../device/preferences';
import { Choice, choicesOf } from '../../parts/choice/Choice';
import { Hint } from '../../parts/field/Labelled';
import { Key } from '../../parts/key/Key';
import { Keys } from '../../parts/key/Keys';
import styles from './Device.module.css';
import { words } from './unitWords';

/** A choice for each; what is shown anywhere changes at once. */
export function Units(): JSX.Element {
  return (
    <>
      <p class={styles.said}>{words.length}</p>
      <Choice
        label={words.length}
        options={choicesOf(words.lengths)}
        chosen={lengthUnit.value}
        onChoose={(unit) => {
          lengthUnit.value = unit;
        }}
      />
      <p class={styles.said}>{words.pressure}</p>
      <Choice
        label={words.pressure}
        options={choicesOf(words.pressures)}
        chosen={pressureUnit.value}
        onChoose={(unit) => {
          pressureUnit.value = unit;
        }}
      />
      <p class={styles.said}>{words.mass}</p>
      <Choice
        label={words.mass}
        options={choicesOf(words.masses)}
        chosen={massUnit.value}
        onChoose={(unit) => {
          massUnit.value = unit;
        }}
      />
      <Keys>
        <Key
          pressed={localTime.value}
          onPress={() => {
            localTime.value = !localTime.value;
          }}
        >
          {words.localTime}
        </Key>
      </Keys>
      <Hint>{words.hint}</Hint>
    </>
  );
}

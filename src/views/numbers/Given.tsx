/**
 * What the numbers are for: end, mass, air and wind; what can be entered here, and what was
 * assumed.
 */

import type { JSX } from 'preact';
import { day, documents } from '../../board/board';
import { ask, openPlace, openSheet } from '../../board/places';
import { setInputs } from '../../board/record/choices';
import type { TodayBrief } from '../../core';
import { Asked } from '../../parts/asked/Asked';
import { Choice, choicesOf } from '../../parts/choice/Choice';
import { NumberField } from '../../parts/field/NumberField';
import { QuantityField } from '../../parts/field/QuantityField';
import { decimal, wholeNumber } from '../../parts/format';
import { Key } from '../../parts/key/Key';
import { mass, pressure } from '../../parts/units';
import { Value } from './Line';
import styles from './Numbers.module.css';
import { words } from './words';

/** One line for each, and what was assumed if nothing was given. */
export function Given({ today }: { today: TodayBrief }): JSX.Element {
  const { load, air, end, headwindKt } = today;
  const { bingoKg } = day.inputs();
  // What comes next is what stands at the top: the landing once airborne.
  const lands = day.purpose() === 'landing';
  const massName = lands ? words.massLanding : words.massTakeoff;
  return (
    <section class={styles.given}>
      <dl class={styles.givenList}>
        <div>
          <dt>{massName}</dt>
          <dd>
            <Value name={massName} figure={lands ? load.landingMassKg : load.takeoffMassKg} />
          </dd>
        </div>
        <div>
          <dt>{words.pressureAltitude}</dt>
          <dd>
            <Value name={words.pressureAltitude} figure={air.pressureAltitude} />
          </dd>
        </div>
        <div>
          <dt>{words.temperature}</dt>
          <dd>
            <Value name={words.temperature} figure={air.temperature} />
          </dd>
        </div>
        <div>
          <dt>{words.along}</dt>
          <dd>
            <Along headwindKt={headwindKt} />
          </dd>
        </div>
        {bingoKg !== null && (
          <div>
            <dt>{words.bingo}</dt>
            <dd>{mass(bingoKg)}</dd>
          </div>
        )}
      </dl>
      {end === null && (
        <p class={styles.taken}>
          {words.noEnd} <Key onPress={() => openPlace('wind')}>{words.toWind}</Key>
        </p>
      )}
      {air.standard.length > 0 && <p class={styles.taken}>{words.standardAir(air.standard)}</p>}
      {air.overruled.map((of) => (
        <Overruled key={of} of={of} />
      ))}
      {load.exceeded.length > 0 && <p class={styles.short}>{words.loadExceeds}</p>}
    </section>
  );
}

/** The wind along the end that the numbers are for: the least of it, which they count on. */
function Along({ headwindKt }: { headwindKt: number | null }) {
  const end = day.numbersEnd();
  if (headwindKt === null || end === null) return <b>{words.alongKt(null, false)}</b>;
  return (
    <Asked
      hint={words.ask}
      onAsk={() => ask(words.along, { name: 'headwindLeast', end, answer: day.wind() })}
    >
      {words.alongKt(wholeNumber(Math.abs(headwindKt)), headwindKt < 0)}
    </Asked>
  );
}

/** What was typed before the report that states it, and the key that brings it back. */
function Overruled({ of }: { of: 'qnh' | 'temperature' }) {
  const name = of === 'qnh' ? 'ownQnhHpa' : 'ownTemperatureC';
  const { [name]: typed } = day.inputs();
  if (typed === null) return null;
  const shown = of === 'qnh' ? pressure(typed) : words.celsius(decimal(typed, 0));
  return (
    <p class={styles.taken}>
      {words.overruled[of](shown)}{' '}
      <Key onPress={() => setInputs({ [name]: typed })}>{words.useTyped(shown)}</Key>
    </p>
  );
}

/** The part of it that is entered here. */
export function Entries({ today }: { today: TodayBrief }): JSX.Element {
  const { ownQnhHpa, ownTemperatureC, rollsFromM, checkMarkM, factors } = day.inputs();
  const counts = (of: 'qnh' | 'temperature') => !today.air.overruled.includes(of);
  const hasParachute = documents.value.aircraft?.performance?.parachute !== undefined;
  return (
    <section>
      <h2 class={styles.title}>{words.entries}</h2>
      <div class={styles.entries}>
        <Key onPress={() => openSheet({ kind: 'load', over: null })}>{words.openLoad}</Key>
        <QuantityField
          unit="hPa"
          name={words.qnh}
          value={counts('qnh') ? ownQnhHpa : null}
          least={850}
          most={1085}
          bad={words.between}
          hint={words.fromReport}
          onChange={(value) => setInputs({ ownQnhHpa: value })}
        />
        <NumberField
          name={words.ownTemperature}
          value={counts('temperature') ? ownTemperatureC : null}
          least={-60}
          most={55}
          bad={words.badTemperature}
          hint={words.fromReport}
          onChange={(value) => setInputs({ ownTemperatureC: value })}
        />
        <QuantityField
          unit="m"
          name={words.rollsFrom}
          value={rollsFromM === 0 ? null : rollsFromM}
          least={0}
          most={5000}
          bad={words.between}
          hint={words.fromStart}
          onChange={(value) => setInputs({ rollsFromM: value ?? 0 })}
        />
        <QuantityField
          unit="m"
          name={words.mark}
          value={checkMarkM}
          least={1}
          most={5000}
          bad={words.between}
          hint={words.noMark}
          onChange={(value) => setInputs({ checkMarkM: value })}
        />
        {hasParachute && <Parachute />}
        <p class={styles.taken}>{words.factors}</p>
        <Choice
          label={words.factors}
          options={choicesOf(words.factorChoices)}
          chosen={factors}
          onChoose={(choice) => setInputs({ factors: choice })}
        />
      </div>
    </section>
  );
}

/**
 * Whether the parachute counts: the pilot's to say, unless it is said elsewhere that there is none.
 */
function Parachute() {
  const why = day.noParachute();
  if (why === 'not-fitted' || why === 'cannot' || why === 'used')
    return <p>{words.noParachute[why]}</p>;
  return (
    <Key pressed={why === null} onPress={() => setInputs({ noParachute: why === null })}>
      {words.countOnParachute}
    </Key>
  );
}

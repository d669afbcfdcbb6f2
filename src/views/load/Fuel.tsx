/** Fuel: by slider, or typed. */

import type { JSX } from 'preact';
import type { Exceeded, Loading } from '../../core';
import { QuantityField } from '../../parts/field/QuantityField';
import { wholeNumber } from '../../parts/format';
import { fromShown, inShown, mass } from '../../parts/units';
import styles from './LoadSheet.module.css';
import { exceededText } from './told';
import { words } from './words';

/** Typed masses are accepted up to here, even if no tank holds them: the sheet says so. */
export const MOST_KG = 99_999;

/** Steps of the slider, in the unit it shows: the smallest that needs no more than this many of them. */
const STEPS = [1, 2, 5, 10, 20, 50, 100, 200, 500, 1000, 2000];
const MOST_STEPS = 128;

/** What the sheet says beside the fuel. */
const OF_FUEL: ReadonlySet<Exceeded['code']> = new Set([
  'no-fuel',
  'fuel-over',
  'below-landing-fuel',
]);

interface FuelProps {
  readonly fuel: Loading['fuel'];
  readonly fuelKg: number;
  readonly exceeded: readonly Exceeded[];
  /** The slider is being moved. */
  readonly onMove: (fuelKg: number) => void;
  readonly onChange: (fuelKg: number) => void;
}

/** The slider and the input for fuel, with what the tanks hold. */
export function Fuel({ fuel, fuelKg, exceeded, onMove, onChange }: FuelProps): JSX.Element {
  const { maxKg, landingKg, densityKgPerL } = fuel;
  const most = inShown(maxKg, 'kg');
  const step = STEPS.find((one) => one * MOST_STEPS >= most) ?? 5000;
  const typedKg = (input: HTMLInputElement) => fromShown(input.valueAsNumber, 'kg');
  const wrong = exceeded.find(({ code }) => OF_FUEL.has(code));
  return (
    <>
      <input
        class={styles.slider}
        type="range"
        aria-label={words.fuel}
        aria-valuetext={mass(fuelKg)}
        min={0}
        max={most}
        step={step}
        value={inShown(fuelKg, 'kg')}
        onInput={(event) => onMove(typedKg(event.currentTarget))}
        onChange={(event) => onChange(typedKg(event.currentTarget))}
      />
      <div class={styles.typed}>
        <QuantityField
          unit="kg"
          name={words.fuelIn}
          value={fuelKg}
          least={0}
          most={MOST_KG}
          bad={words.massBad}
          hint={words.empty}
          onChange={(kg) => onChange(kg ?? 0)}
        />
        {densityKgPerL !== undefined && (
          <span class={styles.litres}>{words.litres(wholeNumber(fuelKg / densityKgPerL))}</span>
        )}
      </div>
      {wrong === undefined ? (
        <p class={styles.hint}>{words.tanks(mass(maxKg, 'down'), mass(landingKg, 'up'))}</p>
      ) : (
        <p class={styles.bad}>{exceededText(wrong, []).drawn}</p>
      )}
    </>
  );
}

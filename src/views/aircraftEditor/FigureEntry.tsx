/** The box of one figure: its name and unit, what it means, and what happens if it is left empty. */

import type { JSX } from 'preact';
import { changeAircraft } from '../../board/writing/aircraft';
import { type Aircraft, type FigureName, figureSpec, isAssumed } from '../../core';
import { NumberField } from '../../parts/field/NumberField';
import { QuantityField } from '../../parts/field/QuantityField';
import { asWritten, NO_BREAK_SPACE } from '../../parts/format';
import { length, mass } from '../../parts/units';
import styles from './AircraftEditor.module.css';
import { figureUnit } from './figureUnit';
import { figures } from './figureWords';
import { words } from './words';

interface FigureEntryProps {
  readonly aircraft: Aircraft;
  readonly name: FigureName;
}

/** To how many decimals a figure is shown that was not typed in this unit. */
const DECIMALS = 1;

const rounded = (value: number) => Number(value.toFixed(DECIMALS));

/** A figure of the aircraft as it is read, with its unit; empty if there is none. */
export function figureText(aircraft: Aircraft, name: FigureName): string {
  const { unit, read } = figureSpec(name);
  const value = read(aircraft);
  if (value === undefined) return '';
  if (unit === 'kg') return mass(value);
  if (unit === 'm') return length(value);
  const shown = figureUnit(unit, powerUnitOf(aircraft));
  return `${asWritten(String(rounded(value / shown.per)))}${NO_BREAK_SPACE}${shown.unit}`;
}

export const powerUnitOf = ({ taxi, engine }: Aircraft) =>
  taxi.power?.unit ?? (engine === 'piston' ? 'rpm' : '%');

/** The box. */
export function FigureEntry({ aircraft, name }: FigureEntryProps): JSX.Element {
  const { unit, least, most, read } = figureSpec(name);
  const { name: title, about, empty } = figures[name];
  const taken = isAssumed(aircraft, name);
  const text = figureText(aircraft, name);
  const value = taken ? null : (read(aircraft) ?? null);
  const what = taken && text !== '' ? words.asClass(text) : (empty ?? '');
  const common = {
    // The rest of its meaning stands there only while it counts.
    about: value === null && what !== '' ? `${about} ${what}` : about,
    hint: taken ? text : '',
    onChange: (to: number | null) => changeAircraft({ kind: 'figure', name, to }),
  };
  if (unit === 'kg' || unit === 'm') {
    return (
      <div class={styles.figure} data-figure={name}>
        <QuantityField
          unit={unit}
          name={(shown) => words.named(title, shown)}
          value={value}
          least={least}
          most={most}
          bad={words.valueBad}
          {...common}
        />
      </div>
    );
  }
  const shown = figureUnit(unit, powerUnitOf(aircraft));
  return (
    <div class={styles.figure} data-figure={name}>
      <NumberField
        // What was typed in one unit says nothing in another.
        key={shown.unit}
        name={words.named(title, shown.unit)}
        value={value === null ? null : rounded(value / shown.per)}
        least={least / shown.per}
        most={most / shown.per}
        bad={words.valueBad(
          String(rounded(least / shown.per)),
          String(rounded(most / shown.per)),
          shown.unit,
        )}
        {...common}
        onChange={(to) => common.onChange(to === null ? null : to * shown.per)}
      />
    </div>
  );
}

/** A number of metres, kilograms or hectopascals, typed in the unit that the pilot chose. */

import type { ComponentChildren, JSX } from 'preact';
import { type Chosen, digitsIn, fromShown, inShown, stepsOf, toStep, unitFor } from '../units';
import { NumberField } from './NumberField';

interface QuantityFieldProps {
  /** What core reckons it in. `value`, `least` and `most` are in this, and so is what is handed on. */
  readonly unit: Chosen;
  /** The name of the field, given the unit it is typed in. */
  readonly name: (unit: string) => ComponentChildren;
  readonly value: number | null;
  readonly least: number;
  readonly most: number;
  /** Said if the input is no such number: given both bounds, and their unit. */
  readonly bad: (least: string, most: string, unit: string) => string;
  /** What applies while it is empty. */
  readonly hint: string;
  /** What it means, said below it. */
  readonly about?: string | undefined;
  readonly onChange: (value: number | null) => void;
}

/** A labelled input. What was typed stays as typed when it is read again: 29.92 inHg is no 29.919. */
export function QuantityField(props: QuantityFieldProps): JSX.Element {
  const { unit, name, value, least, most, bad, hint, about, onChange } = props;
  const shownUnit = unitFor(unit);
  const step = stepsOf(unit)?.step ?? 1;
  const bound = (of: number, round: 'up' | 'down') =>
    digitsIn(toStep(inShown(of, unit), step, round), shownUnit);
  return (
    <NumberField
      // What was typed in one unit says nothing in another.
      key={shownUnit}
      name={name(shownUnit)}
      value={value === null ? null : toStep(inShown(value, unit), shownUnit === unit ? 0.1 : step)}
      least={inShown(least, unit)}
      most={inShown(most, unit)}
      bad={bad(bound(least, 'up'), bound(most, 'down'), shownUnit)}
      hint={hint}
      about={about}
      onChange={(typed) => onChange(typed === null ? null : fromShown(typed, unit))}
    />
  );
}

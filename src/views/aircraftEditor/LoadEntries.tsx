/** The boxes of the load sheet's form: a mass, and how far aft of the datum it sits. */

import type { JSX } from 'preact';
import type { Loading } from '../../core';
import { NumberField } from '../../parts/field/NumberField';
import { QuantityField } from '../../parts/field/QuantityField';
import { armUnit } from './figureUnit';
import { words } from './words';

/** What a part of the form does to the load sheet; `part` names a box that is typed in. */
export type ChangeLoad = (to: Loading, part?: string) => void;

interface KilogramsProps {
  readonly name: string;
  readonly kg: number | null;
  readonly least?: number;
  readonly hint?: string;
  readonly onChange: (kg: number) => void;
}

/** A mass that is needed; emptied, it stays as it was until a number stands there. */
export const Kilograms = ({
  name,
  kg,
  least = 1,
  hint = '',
  onChange,
}: KilogramsProps): JSX.Element => (
  <QuantityField
    unit="kg"
    name={(shown) => words.named(name, shown)}
    value={kg}
    least={least}
    most={700_000}
    bad={words.valueBad}
    hint={hint}
    onChange={(typed) => {
      if (typed !== null) onChange(typed);
      else if (least === 0) onChange(0);
    }}
  />
);

interface ArmEntryProps {
  /** What sits there; the empty aircraft if absent. */
  readonly of?: string;
  readonly armM: number | undefined;
  readonly onChange: (armM: number) => void;
}

/** How far aft of the datum it sits. */
export function ArmEntry({ of, armM, onChange }: ArmEntryProps): JSX.Element {
  const { unit, per } = armUnit();
  const shown = (m: number) => Number((m / per).toFixed(3));
  return (
    <NumberField
      key={unit}
      name={of === undefined ? words.emptyArm(unit) : words.arm(of, unit)}
      value={armM === undefined ? null : shown(armM)}
      least={shown(-50)}
      most={shown(100)}
      bad={words.armBad(String(shown(-50)), String(shown(100)))}
      hint=""
      onChange={(typed) => {
        if (typed !== null) onChange(typed * per);
      }}
    />
  );
}

/** The load line by line: what is aboard, what it weighs and where it sits, down to the masses. */

import type { ComponentChildren, JSX } from 'preact';
import { ask } from '../../board/places';
import {
  type Aircraft,
  carriedKg,
  type Figure,
  type Load,
  type Loading,
  type LoadSheet,
} from '../../core';
import { Asked } from '../../parts/asked/Asked';
import { decimal } from '../../parts/format';
import { massDigits, unitFor } from '../../parts/units';
import styles from './LoadSheet.module.css';
import { named } from './told';
import { words } from './words';

interface ItemsProps {
  readonly aircraft: Aircraft;
  readonly loading: Loading;
  readonly load: Load;
  readonly sheet: LoadSheet;
}

/** The table of what is aboard. */
export function Items({ aircraft, loading, load, sheet }: ItemsProps): JSX.Element {
  const { emptyArmM, crew, stations, fuel } = loading;
  const hasArms = emptyArmM !== undefined;
  return (
    <table class={styles.table}>
      <thead>
        <tr>
          <th scope="col">{words.item}</th>
          <th scope="col">{unitFor('kg')}</th>
          {hasArms && <th scope="col">{words.arm}</th>}
        </tr>
      </thead>
      <tbody>
        <Item name={words.emptyAircraft} kg={aircraft.masses.emptyKg} armM={emptyArmM} />
        {crew.map(({ name, kg, armM }) => (
          <Item key={name} name={named(name)} kg={kg} armM={armM} />
        ))}
        {stations.map((station) => (
          <Item
            key={station.id}
            name={named(station.name)}
            kg={carriedKg(load, station)}
            armM={station.armM}
          />
        ))}
        <Total name={words.zeroFuel} mass={sheet.zeroFuelKg} hasArms={hasArms} />
        <Item name={words.fuel} kg={load.fuelKg} armM={fuel.armM} />
        <Total
          name={words.takeoff}
          mass={sheet.takeoffMassKg}
          arm={sheet.takeoffArmM}
          hasArms={hasArms}
        />
      </tbody>
    </table>
  );
}

interface ItemProps {
  readonly name: ComponentChildren;
  readonly kg: number;
  readonly armM: number | undefined;
}

function Item({ name, kg, armM }: ItemProps) {
  return (
    <tr>
      <th scope="row">{name}</th>
      <td>{massDigits(kg)}</td>
      {armM !== undefined && <td>{decimal(armM, 2)}</td>}
    </tr>
  );
}

interface TotalProps {
  readonly name: string;
  readonly mass: Figure<'kg'>;
  readonly arm?: Figure<'m'> | null;
  readonly hasArms: boolean;
}

function Total({ name, mass, arm, hasArms }: TotalProps) {
  return (
    <tr class={styles.total}>
      <th scope="row">{name}</th>
      <td>
        {mass.value === null ? (
          words.because[mass.because]
        ) : (
          <Asked hint={words.ask} onAsk={() => ask(name, mass)}>
            {massDigits(mass.value)}
          </Asked>
        )}
      </td>
      {hasArms && <td>{arm?.value == null ? '' : decimal(arm.value, 3)}</td>}
    </tr>
  );
}

/** One station: stores by choice, people by count, baggage by mass. */

import type { JSX } from 'preact';
import { useId } from 'preact/hooks';
import { carriedKg, type Exceeded, type Load, type Station } from '../../core';
import { Choice } from '../../parts/choice/Choice';
import { NumberField } from '../../parts/field/NumberField';
import { QuantityField } from '../../parts/field/QuantityField';
import { mass } from '../../parts/units';
import { MOST_KG } from './Fuel';
import styles from './LoadSheet.module.css';
import { exceededText, named, namedIn } from './told';
import { words } from './words';

interface StationProps {
  readonly station: Station;
  readonly load: Load;
  /** What is exceeded at the station. */
  readonly exceeded: readonly Exceeded[];
  readonly onChange: (kg: number) => void;
}

/** What a station carries, and its limit. */
export function StationEntry({ station, load, exceeded, onChange }: StationProps): JSX.Element {
  const id = useId();
  return (
    <section class={styles.part} aria-labelledby={id}>
      <h3 class={styles.title}>
        <span id={id}>{named(station.name)}</span> <span class={styles.hint}>{may(station)}</span>
      </h3>
      <Carried station={station} kg={carriedKg(load, station)} onChange={onChange} />
      {exceeded.map((one) => (
        <p key={one.code} class={styles.bad}>
          {exceededText(one, [station]).drawn}
        </p>
      ))}
    </section>
  );
}

const may = (station: Station) =>
  station.kind === 'people'
    ? words.each(mass(station.eachKg))
    : words.upTo(mass(station.maxKg, 'down'));

/** Far more than any aircraft seats. */
const MOST_PEOPLE = 999;

/** More people than this are typed as a number. */
const MOST_KEYS = 6;

const choiceWords = ({ name, kg }: { readonly name: string; readonly kg: number }) =>
  namedIn((text) => words.choice(text, mass(kg)), name);

interface CarriedProps {
  readonly station: Station;
  readonly kg: number;
  readonly onChange: (kg: number) => void;
}

function Carried({ station, kg, onChange }: CarriedProps) {
  switch (station.kind) {
    case 'stores':
      return (
        <Choice
          options={[
            { value: '0', name: words.nothing },
            ...station.choices.map((choice) => ({
              value: String(choice.kg),
              name: choiceWords(choice),
            })),
          ]}
          chosen={String(kg)}
          onChoose={(chosen) => onChange(Number(chosen))}
        />
      );
    case 'people': {
      const { eachKg } = station;
      const most = Math.floor(station.maxKg / eachKg);
      if (most > MOST_KEYS) {
        return (
          <NumberField
            name={words.people}
            value={kg / eachKg}
            least={0}
            most={MOST_PEOPLE}
            bad={words.peopleBad}
            hint={words.empty}
            onChange={(people) => onChange(Math.round(people ?? 0) * eachKg)}
          />
        );
      }
      return (
        <Choice
          options={Array.from({ length: most + 1 }, (_, people) => ({
            value: String(people),
            name: people === 0 ? words.nobody : String(people),
          }))}
          chosen={String(kg / eachKg)}
          onChoose={(people) => onChange(Number(people) * eachKg)}
        />
      );
    }
    case 'baggage':
      return (
        <QuantityField
          unit="kg"
          name={(unit) => namedIn((name) => words.stationIn(name, unit), station.name)}
          value={kg}
          least={0}
          most={MOST_KG}
          bad={words.massBad}
          hint={words.empty}
          onChange={(typed) => onChange(typed ?? 0)}
        />
      );
  }
}

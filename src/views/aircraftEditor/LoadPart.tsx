/** The load sheet: tanks, crew, stations and the envelope, drawn as they are typed. */

import type { JSX } from 'preact';
import { changeAircraft, changeOnce } from '../../board/writing/aircraft';
import { type Aircraft, carriedKg, type Loading, newLoading, type Station } from '../../core';
import { Choice, choicesOf } from '../../parts/choice/Choice';
import { anyText, EntryField } from '../../parts/field/EntryField';
import { Hint } from '../../parts/field/Labelled';
import { NumberField } from '../../parts/field/NumberField';
import { Key } from '../../parts/key/Key';
import { Keys } from '../../parts/key/Keys';
import { mass } from '../../parts/units';
import styles from './AircraftEditor.module.css';
import { Envelope } from './Envelope';
import { ArmEntry, type ChangeLoad, Kilograms } from './LoadEntries';
import { words } from './words';

interface PartProps {
  readonly aircraft: Aircraft;
}

const change: ChangeLoad = (to, part) =>
  part === undefined
    ? changeOnce({ kind: 'load', part: null, to })
    : changeAircraft({ kind: 'load', part, to });

/** The part. */
export function LoadPart({ aircraft }: PartProps): JSX.Element {
  const { load } = aircraft;
  return (
    <div class={styles.form}>
      <h3 class={styles.title}>{words.loadTitle}</h3>
      {load === undefined ? (
        <>
          <Hint>{words.withoutLoad}</Hint>
          <Keys>
            <Key
              look="pick"
              onPress={() =>
                change(newLoading(aircraft, { pilot: words.pilot, usual: words.usual }))
              }
            >
              {words.addLoad}
            </Key>
          </Keys>
        </>
      ) : (
        <LoadForm aircraft={aircraft} load={load} />
      )}
    </div>
  );
}

interface LoadFormProps extends PartProps {
  readonly load: Loading;
}

function LoadForm({ aircraft, load }: LoadFormProps) {
  const { fuel, presets } = load;
  const { masses } = aircraft;
  const hasArms = armsOf(load).some((arm) => arm !== undefined);
  return (
    <>
      <p>
        {words.usualLoad(
          mass(presets[0]?.fuelKg ?? 0),
          mass(masses.usualTakeoffKg),
          mass(masses.usualLandingKg),
        )}
      </p>
      <h4 class={styles.label}>{words.armsTitle}</h4>
      <Choice
        label={words.armsTitle}
        options={choicesOf(words.arms)}
        chosen={hasArms ? 'yes' : 'no'}
        onChoose={(to) => {
          if ((to === 'yes') !== hasArms) change(withArms(load, to === 'yes'));
        }}
      />
      <div class={styles.figures}>
        <Kilograms
          name={words.tanks}
          kg={fuel.maxKg}
          onChange={(maxKg) => change({ ...load, fuel: { ...fuel, maxKg } }, 'tanks')}
        />
        <Kilograms
          name={words.landingFuel}
          kg={fuel.landingKg}
          onChange={(landingKg) =>
            change({ ...load, fuel: { ...fuel, landingKg } }, 'landing fuel')
          }
        />
        <NumberField
          name={words.density}
          value={fuel.densityKgPerL ?? null}
          least={0.5}
          most={1.2}
          bad={words.armBad('0.5', '1.2')}
          hint={words.densityHint}
          onChange={(density) => {
            const { densityKgPerL: _, ...rest } = fuel;
            change(
              {
                ...load,
                fuel: density === null ? rest : { ...rest, densityKgPerL: density },
              },
              'density',
            );
          }}
        />
        {hasArms && (
          <>
            <ArmEntry
              of={words.fuelTitle}
              armM={fuel.armM}
              onChange={(armM) => change({ ...load, fuel: { ...fuel, armM } }, 'fuel arm')}
            />
            <ArmEntry
              armM={load.emptyArmM}
              onChange={(emptyArmM) => change({ ...load, emptyArmM }, 'empty arm')}
            />
          </>
        )}
      </div>
      <Crew load={load} hasArms={hasArms} />
      <Stations load={load} hasArms={hasArms} />
      {hasArms && <Envelope aircraft={aircraft} load={load} onChange={change} />}
      <Keys>
        <Key onPress={() => changeOnce({ kind: 'load', part: null, to: null })}>
          {words.removeLoad}
        </Key>
      </Keys>
    </>
  );
}

const armsOf = ({ emptyArmM, fuel, crew, stations }: Loading) => [
  emptyArmM,
  fuel.armM,
  ...crew.map(({ armM }) => armM),
  ...stations.map(({ armM }) => armM),
];

/** With an arm for every mass, each at the datum, or with none. */
function withArms(load: Loading, has: boolean): Loading {
  const { emptyArmM: _arm, envelope, ...rest } = load;
  const of = <T extends { armM?: number | undefined }>({ armM: _, ...one }: T) =>
    has ? { ...one, armM: 0 } : one;
  return {
    ...rest,
    ...(has ? { emptyArmM: 0 } : {}),
    ...(has && envelope !== undefined ? { envelope } : {}),
    fuel: of(rest.fuel),
    crew: rest.crew.map(of),
    stations: rest.stations.map((one) => (has ? { ...one, armM: 0 } : withoutArm(one))),
  };
}

function withoutArm(station: Station): Station {
  const { armM: _, ...rest } = station;
  return rest;
}

interface ListProps {
  readonly load: Loading;
  readonly hasArms: boolean;
}

const MOST_CREW = 6;

function Crew({ load, hasArms }: ListProps) {
  const { crew } = load;
  const set = (index: number, to: Partial<Loading['crew'][number]>, part: string) =>
    change(
      { ...load, crew: crew.map((one, at) => (at === index ? { ...one, ...to } : one)) },
      `crew ${index} ${part}`,
    );
  return (
    <>
      <h4 class={styles.label}>{words.crewTitle}</h4>
      {crew.map(({ name, kg, armM }, index) => (
        <fieldset key={index} class={styles.item} aria-label={name}>
          <div class={styles.figures}>
            <NameEntry
              name={words.crewName}
              text={name}
              onChange={(to) => set(index, { name: to }, 'name')}
            />
            <Kilograms
              name={words.crewMass}
              kg={kg}
              onChange={(to) => set(index, { kg: to }, 'mass')}
            />
            {hasArms && (
              <ArmEntry of={name} armM={armM} onChange={(to) => set(index, { armM: to }, 'arm')} />
            )}
          </div>
          {crew.length > 1 && (
            <Key onPress={() => change({ ...load, crew: crew.filter((_, at) => at !== index) })}>
              {words.remove(name)}
            </Key>
          )}
        </fieldset>
      ))}
      <Keys>
        <Key
          disabled={crew.length >= MOST_CREW}
          onPress={() =>
            change({
              ...load,
              crew: [
                ...crew,
                {
                  name: words.newCrew(crew.length + 1),
                  kg: crew[0]?.kg ?? 85,
                  ...(hasArms ? { armM: crew[0]?.armM ?? 0 } : {}),
                },
              ],
            })
          }
        >
          {words.addCrew}
        </Key>
      </Keys>
    </>
  );
}

interface NameEntryProps {
  readonly name: string;
  readonly text: string;
  readonly onChange: (text: string) => void;
}

const readName = (text: string) => anyText(80)(text) || null;

const NameEntry = ({ name, text, onChange }: NameEntryProps) => (
  <EntryField name={name} text={text} read={readName} bad={words.nameBad} onChange={onChange} />
);

const MOST_STATIONS = 12;

function Stations({ load, hasArms }: ListProps) {
  const { stations } = load;
  const add = () => {
    const taken = new Set(stations.map(({ id }) => id));
    let number = stations.length + 1;
    while (taken.has(`station-${number}`)) number++;
    change({
      ...load,
      stations: [
        ...stations,
        {
          id: `station-${number}`,
          name: words.newStation(number),
          kind: 'people',
          maxKg: 100,
          eachKg: 85,
          ...(hasArms ? { armM: 0 } : {}),
        },
      ],
    });
  };
  return (
    <>
      <h4 class={styles.label}>{words.stationsTitle}</h4>
      {stations.map((station, index) => (
        <StationEntry
          key={station.id}
          load={load}
          station={station}
          hasArms={hasArms}
          onChange={(to, part) =>
            change(
              { ...load, stations: stations.map((one, at) => (at === index ? to : one)) },
              part === undefined ? undefined : `station ${index} ${part}`,
            )
          }
        />
      ))}
      <Keys>
        <Key disabled={stations.length >= MOST_STATIONS} onPress={add}>
          {words.addStation}
        </Key>
      </Keys>
    </>
  );
}

interface StationEntryProps extends ListProps {
  readonly station: Station;
  readonly onChange: (to: Station, part?: string) => void;
}

function StationEntry({ load, station, hasArms, onChange }: StationEntryProps) {
  const { id, name, maxKg, armM } = station;
  const [usual, ...others] = load.presets;
  const aboard = usual === undefined ? 0 : carriedKg(usual, station);
  const without = (of: Readonly<Record<string, number>>) =>
    Object.fromEntries(Object.entries(of).filter(([key]) => key !== id));
  return (
    <fieldset class={styles.item} aria-label={words.station(name)}>
      <div class={styles.figures}>
        <NameEntry
          name={words.stationName}
          text={name}
          onChange={(to) => onChange({ ...station, name: to }, 'name')}
        />
        <Kilograms
          name={words.stationMost}
          kg={maxKg}
          onChange={(to) => onChange({ ...station, maxKg: to }, 'most')}
        />
        {station.kind === 'people' && (
          <Kilograms
            name={words.each}
            kg={station.eachKg}
            onChange={(to) => onChange({ ...station, eachKg: to }, 'each')}
          />
        )}
        {hasArms && (
          <ArmEntry
            of={name}
            armM={armM}
            onChange={(to) => onChange({ ...station, armM: to }, 'arm')}
          />
        )}
        <Kilograms
          name={words.aboard}
          kg={aboard === 0 ? null : aboard}
          least={0}
          hint={words.aboardHint}
          onChange={(kg) => {
            if (usual === undefined) return;
            const rest = without(usual.stations);
            change(
              {
                ...load,
                presets: [
                  { ...usual, stations: kg === 0 ? rest : { ...rest, [id]: kg } },
                  ...others,
                ],
              },
              `station ${id} aboard`,
            );
          }}
        />
      </div>
      <Choice
        label={words.stationKind}
        options={choicesOf(words.stationKinds)}
        chosen={station.kind}
        onChoose={(kind) => {
          if (kind !== station.kind) onChange(asKind(station, kind));
        }}
      />
      {station.kind === 'stores' && <Choices station={station} onChange={onChange} />}
      <Key
        onPress={() =>
          change({
            ...load,
            stations: load.stations.filter((one) => one.id !== id),
            presets: load.presets.map((preset) => ({
              ...preset,
              stations: without(preset.stations),
            })),
          })
        }
      >
        {words.remove(name)}
      </Key>
    </fieldset>
  );
}

function asKind({ id, name, maxKg, armM }: Station, kind: Station['kind']): Station {
  const common = { id, name, maxKg, ...(armM === undefined ? {} : { armM }) };
  switch (kind) {
    case 'people':
      return { ...common, kind, eachKg: Math.min(85, maxKg) };
    case 'baggage':
      return { ...common, kind };
    case 'stores':
      return { ...common, kind, choices: [{ name: words.newChoice(1), kg: maxKg }] };
  }
}

interface ChoicesProps {
  readonly station: Extract<Station, { kind: 'stores' }>;
  readonly onChange: (to: Station, part?: string) => void;
}

const MOST_CHOICES = 12;

/** What can hang there. */
function Choices({ station, onChange }: ChoicesProps) {
  const { choices } = station;
  const set = (index: number, to: Partial<(typeof choices)[number]>, part: string) =>
    onChange(
      { ...station, choices: choices.map((one, at) => (at === index ? { ...one, ...to } : one)) },
      `choice ${index} ${part}`,
    );
  return (
    <>
      {choices.map(({ name, kg }, index) => (
        <div key={index} class={styles.figures}>
          <NameEntry
            name={words.choiceName}
            text={name}
            onChange={(to) => set(index, { name: to }, 'name')}
          />
          <Kilograms
            name={words.choiceMass}
            kg={kg}
            onChange={(to) => set(index, { kg: to }, 'mass')}
          />
          {choices.length > 1 && (
            <Key
              onPress={() =>
                onChange({ ...station, choices: choices.filter((_, at) => at !== index) })
              }
            >
              {words.remove(name)}
            </Key>
          )}
        </div>
      ))}
      <Keys>
        <Key
          disabled={choices.length >= MOST_CHOICES}
          onPress={() =>
            onChange({
              ...station,
              choices: [
                ...choices,
                { name: words.newChoice(choices.length + 1), kg: choices.length },
              ],
            })
          }
        >
          {words.addChoice}
        </Key>
      </Keys>
    </>
  );
}

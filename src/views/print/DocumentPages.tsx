/** A field and an aircraft on paper: what a pilot looks up before the sortie. */

import type { ComponentChildren, JSX } from 'preact';
import { shownText } from '../../board/language';
import { type Aircraft, degreesOf, endsOf, type Field, type Strip } from '../../core';
import { direction, wholeNumber } from '../../parts/format';
import { inShown, length, lengthDigits, mass, unitFor } from '../../parts/units';
import { PaperPlan } from './PaperPlan';
import styles from './Print.module.css';
import { words } from './words';

interface PageProps {
  /** The kind, the name and the version. */
  readonly title: string;
  readonly about: { readonly text: string; readonly lang: string | undefined };
  readonly children: ComponentChildren;
}

const Page = ({ title, about, children }: PageProps) => (
  <section class={styles.document}>
    <h3>{title}</h3>
    {about.text !== '' && <p lang={about.lang}>{about.text}</p>}
    {children}
  </section>
);

interface FieldPageProps {
  readonly field: Field;
  readonly title: string;
  readonly strips: readonly Strip[];
}

/** A field: its runways, its radio and its plan. */
export const FieldPage = ({ field, title, strips }: FieldPageProps): JSX.Element => (
  <Page title={title} about={shownText(field, field.about)}>
    <p>{`${words.elevation}: ${words.feet(wholeNumber(field.place.elevationFt))}`}</p>
    <table class={styles.figures}>
      <thead>
        <tr>
          {words.runwayHead(unitFor('m')).map((head) => (
            <th key={head} scope="col">
              {head}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {endsOf(field).map(({ designator, heading, given }) => {
          const runway = field.runways.find(({ ends }) => ends.some((end) => end === given));
          return (
            <tr key={designator}>
              <th scope="row">{designator}</th>
              <td>{direction(degreesOf(heading))}</td>
              <td>{lengthDigits(given.toraM, 'down')}</td>
              <td>{lengthDigits(given.ldaM, 'down')}</td>
              <td>
                {runway === undefined
                  ? ''
                  : [
                      runway.widthM === undefined
                        ? ''
                        : `${wholeNumber(inShown(runway.widthM, 'm'))} ${unitFor('m')}`,
                      words.surfaces[runway.surface] ?? '',
                    ]
                      .filter(Boolean)
                      .join(', ')}
              </td>
            </tr>
          );
        })}
      </tbody>
    </table>
    {field.radio.length > 0 && (
      <table class={styles.figures} aria-label={words.radio}>
        <tbody>
          {field.radio.map(({ name, mhz }) => (
            <tr key={name + mhz}>
              <th scope="row">{name}</th>
              <td>{mhz}</td>
            </tr>
          ))}
        </tbody>
      </table>
    )}
    <p>{words.north}</p>
    <PaperPlan field={field} strips={strips} />
  </Page>
);

interface AircraftPageProps {
  readonly aircraft: Aircraft;
  readonly title: string;
}

/** An aircraft: its speeds, lengths and limits, as its document gives them. */
export function AircraftPage({ aircraft, title }: AircraftPageProps): JSX.Element {
  const { masses, takeoff, climb, landing, limits, taxi } = aircraft;
  const kt = (value: number) => words.kt(wholeNumber(value));
  const both = (one: number, other: number) => words.ktBoth(wholeNumber(one), wholeNumber(other));
  const stop = aircraft.stop.map((text) => shownText(aircraft, text).text).join(', ');
  const { figures: names } = words;
  const rows: readonly (readonly [string, string])[] = [
    [names.takeoffMass, mass(masses.usualTakeoffKg)],
    [names.landingMass, mass(masses.usualLandingKg)],
    [names.taxi, both(taxi.maxKt, taxi.turnKt)],
    [names.rotate, kt(takeoff.rotateKt)],
    [names.liftOff, kt(takeoff.liftOffKt)],
    ...(takeoff.runM === undefined
      ? []
      : [[names.takeoffRun, length(takeoff.runM, 'up')] as const]),
    ...(limits.gearKt === undefined ? [] : [[names.gear, kt(limits.gearKt)] as const]),
    [names.flaps, kt(limits.flapsKt)],
    [names.climb, words.ktBetween(wholeNumber(climb.speedKt[0]), wholeNumber(climb.speedKt[1]))],
    [names.approach, kt(landing.approachKt)],
    ...(landing.runM === undefined
      ? []
      : [[names.landingRun, length(landing.runM, 'up')] as const]),
    [names.crosswind, both(limits.crosswindKt.dry, limits.crosswindKt.wet)],
    [names.tailwind, both(limits.tailwindKt.dry, limits.tailwindKt.wet)],
    [names.stop, stop],
  ];
  return (
    <Page title={title} about={shownText(aircraft, aircraft.about)}>
      <table class={styles.figures}>
        <tbody>
          {rows.map(([name, value]) => (
            <tr key={name}>
              <th scope="row">{name}</th>
              <td>{value}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </Page>
  );
}

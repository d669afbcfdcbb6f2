/** What keeps the aircraft from being saved, as sentences; each leads to its box. */

import type { JSX } from 'preact';
import { madeFaults, typedAircraft } from '../../board/writing/aircraft';
import { type Aircraft, assumedFigures, type DocumentFault } from '../../core';
import { length, mass } from '../../parts/units';
import styles from './AircraftEditor.module.css';
import { faults, otherFault, places } from './faultWords';
import { figures } from './figureWords';
import { goToFigure, partShown } from './shown';
import { words } from './words';

interface Lack {
  readonly text: string;
  readonly go: () => void;
}

const toFigure = (name: string) => () => goToFigure(name);

/** What is lacking, a sentence each. */
export function lacksOf(aircraft: Aircraft): readonly Lack[] {
  const told = madeFaults.value
    // Its code comes from its name.
    .filter(({ path: [of] }) => of !== 'code')
    .map((fault) => lackOf(fault, aircraft));
  return told.filter(({ text }, at) => told.findIndex((one) => one.text === text) === at);
}

function lackOf(fault: DocumentFault, aircraft: Aircraft): Lack {
  const { code, path, figures: values = [] } = fault;
  const name = path.join('.');
  const [one = '', other = ''] = values.map((value) => inWords(name, Number(value)));
  const sentence = faults[codeOf(code, name)];
  const place = placeOf(name, aircraft);
  return {
    text: sentence === undefined ? otherFault(place) : sentence({ place, one, other }),
    go: wayTo(name, code),
  };
}

/** Faults that mean something of their own at one place. */
function codeOf(code: string, name: string): string {
  if (name === 'name') return 'name-missing';
  if (code === 'number-out-of-range' && name.startsWith('load.presets.0')) return 'no-usual-fuel';
  if (code === 'number-out-of-range' && name === 'load.fuel.landingKg') return 'no-landing-fuel';
  return code;
}

/** A figure of a fault with its unit, which follows from its place. */
function inWords(name: string, value: number): string {
  if (name.startsWith('masses') || name.startsWith('load')) return mass(value);
  if (name.endsWith('runM')) return length(value);
  if (name.startsWith('taxi.power') || name.startsWith('climb.pitch')) return String(value);
  return `${Math.round(value)} kt`;
}

const isFigure = (name: string): name is keyof typeof figures => Object.hasOwn(figures, name);

function placeOf(name: string, { load }: Aircraft): string {
  if (isFigure(name)) return figures[name].name;
  const [of, part, index] = name.split('.');
  if (of === 'performance') return places.physics;
  if (of === 'handbook') return places.table;
  if (of === 'stop') return words.stop;
  if (of !== 'load') return places.whole;
  if (part === 'stations') return load?.stations[Number(index)]?.name ?? words.stationsTitle;
  if (part === 'crew') return load?.crew[Number(index)]?.name ?? places.crew;
  if (part === 'presets') return places.usual;
  if (part === 'emptyArmM') return places.emptyArm;
  return part === 'envelope' ? places.envelope : places.fuel;
}

function wayTo(name: string, code: string): () => void {
  if (isFigure(name)) return toFigure(name);
  if (code.startsWith('rotates-below')) return toFigure('takeoff.rotateKt');
  const to = name.startsWith('load')
    ? 'load'
    : name.startsWith('performance')
      ? 'table'
      : 'figures';
  return () => {
    partShown.value = to;
  };
}

/** The list, and how much is its class's still. */
export function Checks(): JSX.Element | null {
  const aircraft = typedAircraft.value;
  if (aircraft === null) return null;
  const lacks = lacksOf(aircraft);
  const assumed = assumedFigures(aircraft).length;
  return (
    <section class={styles.checks} aria-live="polite">
      {lacks.length === 0 ? (
        <p>{words.nothingMissing}</p>
      ) : (
        <>
          <h3 class={styles.title}>{words.must}</h3>
          <ul>
            {lacks.map(({ text, go }) => (
              <li key={text}>
                <button type="button" class={styles.lack} onClick={go}>
                  {text}
                </button>
              </li>
            ))}
          </ul>
        </>
      )}
      {assumed > 0 && <p class={styles.assumed}>{words.assumed(assumed)}</p>}
    </section>
  );
}

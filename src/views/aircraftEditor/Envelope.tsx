/** The corners of the envelope, and the drawing that they make with the usual load in it. */

import type { JSX } from 'preact';
import { type Aircraft, type Loading, loadSheet, usualLoad } from '../../core';
import { EnvelopeDrawing } from '../../parts/envelope/EnvelopeDrawing';
import { Hint } from '../../parts/field/Labelled';
import { Key } from '../../parts/key/Key';
import { Keys } from '../../parts/key/Keys';
import styles from './AircraftEditor.module.css';
import { ArmEntry, type ChangeLoad, Kilograms } from './LoadEntries';
import { words } from './words';

interface EnvelopeProps {
  readonly aircraft: Aircraft;
  readonly load: Loading;
  readonly onChange: ChangeLoad;
}

type Corner = NonNullable<Loading['envelope']>[number];

const MOST_CORNERS = 24;

/** Corners and drawing. */
export function Envelope({ aircraft, load, onChange }: EnvelopeProps): JSX.Element {
  const corners = load.envelope ?? [];
  const set = (to: Corner[], part?: string) => {
    const { envelope: _, ...rest } = load;
    onChange(to.length === 0 ? rest : { ...rest, envelope: to }, part);
  };
  const withCorner = (index: number, to: Corner, part: string) =>
    set(
      corners.map((one, at) => (at === index ? to : one)),
      `corner ${index} ${part}`,
    );
  const { burn } = loadSheet(aircraft, usualLoad(load));
  const [takeoff, landing] = [burn[0], burn.at(-1)];
  return (
    <>
      <h4 class={styles.label}>{words.envelopeTitle}</h4>
      <Hint>{words.envelopeHint}</Hint>
      {corners.map(([armM, kg], index) => (
        <fieldset key={index} class={styles.corner} aria-label={words.corner(index + 1)}>
          <ArmEntry
            of={words.corner(index + 1)}
            armM={armM}
            onChange={(to) => withCorner(index, [to, kg], 'arm')}
          />
          <Kilograms
            name={words.cornerMass}
            kg={kg}
            onChange={(to) => withCorner(index, [armM, to], 'mass')}
          />
          <button
            type="button"
            class={styles.removeRow}
            aria-label={words.remove(words.corner(index + 1))}
            onClick={() => set(corners.filter((_, at) => at !== index))}
          >
            ×
          </button>
        </fieldset>
      ))}
      <Keys>
        <Key
          disabled={corners.length >= MOST_CORNERS}
          onPress={() => set([...corners, ...nextCorners(corners, aircraft)])}
        >
          {words.addCorner}
        </Key>
      </Keys>
      {corners.length > 1 && (
        <>
          <EnvelopeDrawing
            envelope={corners}
            others={burn}
            label={words.envelopeLabel(corners.length)}
          >
            {(at) => (
              <>
                <polyline
                  class={styles.burn}
                  points={burn.map((one) => at(one).join(',')).join(' ')}
                />
                {landing && <Square at={at(landing)} />}
                {takeoff && (
                  <circle class={styles.disc} cx={at(takeoff)[0]} cy={at(takeoff)[1]} r="7" />
                )}
              </>
            )}
          </EnvelopeDrawing>
          <Hint>{words.inEnvelope}</Hint>
        </>
      )}
    </>
  );
}

const Square = ({ at: [x, y] }: { readonly at: readonly [number, number] }) => (
  <rect class={styles.square} x={x - 6} y={y - 6} width="12" height="12" />
);

/** The first three corners come together, around where the empty aircraft balances. */
function nextCorners(corners: readonly Corner[], { masses, load }: Aircraft): Corner[] {
  const last = corners.at(-1);
  if (last !== undefined) return [[last[0], last[1]]];
  const arm = load?.emptyArmM ?? 0;
  return [
    [arm - 0.1, masses.emptyKg],
    [arm - 0.1, masses.maxTakeoffKg],
    [arm + 0.2, masses.maxTakeoffKg],
    [arm + 0.2, masses.emptyKg],
  ];
}

/**
 * The centre-of-gravity envelope, with the path from take-off to landing, and the same in words.
 */

import type { JSX } from 'preact';
import { ask } from '../../board/places';
import type { Balance, Envelope, Figure, LoadSheet } from '../../core';
import { Asked } from '../../parts/asked/Asked';
import { decimal, NO_BREAK_SPACE, wholeNumber } from '../../parts/format';
import { inShown, mass, unitFor } from '../../parts/units';
import styles from './LoadSheet.module.css';
import { frameOf, type PlotFrame } from './plotFrame';
import { exceededText } from './told';
import { words } from './words';

/** Millimetres: the precision of a centre of gravity. */
const ARM_DECIMALS = 3;

/** An arm is from the aircraft's document, and stays in its metres. */
const arm = (m: number): string => `${decimal(m, ARM_DECIMALS)}${NO_BREAK_SPACE}m`;

interface EnvelopeProps {
  readonly sheet: LoadSheet;
  /** Null if the aircraft's document has none. */
  readonly envelope: Envelope | null;
}

/** The drawing, with the centre of gravity beside it. */
export function EnvelopePlot({ sheet, envelope }: EnvelopeProps): JSX.Element {
  const { takeoffArmM, landingArmM, burn } = sheet;
  if (takeoffArmM === null || landingArmM === null) return <p>{words.noArms}</p>;
  const outside = sheet.exceeded.find(({ code }) => code === 'outside-envelope');
  const says = outside === undefined ? words.stays : exceededText(outside, []).text;
  return (
    <>
      {envelope === null ? (
        <p class={styles.hint}>{words.noEnvelope}</p>
      ) : (
        <>
          <Plot envelope={envelope} burn={burn} says={burn.length === 0 ? '' : says} />
          {burn.length > 0 && <p class={outside && styles.bad}>{says}</p>}
        </>
      )}
      <dl>
        <ArmLine name={words.takeoff} mark="take-off" figure={takeoffArmM} />
        <ArmLine name={words.landing} mark="landing" figure={landingArmM} />
      </dl>
      <p class={styles.hint}>{words.aftOfDatum(unitFor('kg'))}</p>
    </>
  );
}

interface ArmLineProps {
  readonly name: string;
  readonly mark: MarkProps['of'];
  readonly figure: Figure<'m'>;
}

function ArmLine({ name, mark, figure }: ArmLineProps) {
  return (
    <div class={styles.line}>
      <dt>
        <svg class={styles.legend} viewBox="-10 -10 20 20" aria-hidden="true">
          <Mark of={mark} x={0} y={0} />
        </svg>
        {name}
      </dt>
      <dd>
        {figure.value === null ? (
          <span class={styles.hint}>{words.because[figure.because]}</span>
        ) : (
          <Asked hint={words.ask} onAsk={() => ask(name, figure)}>
            {arm(figure.value)}
          </Asked>
        )}
      </dd>
    </div>
  );
}

interface MarkProps {
  readonly of: 'take-off' | 'landing';
  readonly x: number;
  readonly y: number;
}

/** Take-off is a full disc, landing an open square: distinct without colour. */
function Mark({ of, x, y }: MarkProps) {
  return of === 'take-off' ? (
    <circle class={styles.takeoff} cx={x} cy={y} r="7" />
  ) : (
    <rect class={styles.landing} x={x - 6} y={y - 6} width="12" height="12" />
  );
}

/** An arm, and its mass in the unit the plot is in, so that its lines stand at round numbers. */
const shown = ([armM, massKg]: Balance): Balance => [armM, inShown(massKg, 'kg')];

interface PlotProps {
  readonly envelope: Envelope;
  readonly burn: readonly Balance[];
  readonly says: string;
}

function Plot({ envelope, burn, says }: PlotProps) {
  const frame = frameOf([...envelope, ...burn].map(shown));
  const path = (points: readonly Balance[]) =>
    points
      .map(shown)
      .map(([armM, mass]) => `${frame.x(armM)},${frame.y(mass)}`)
      .join(' ');
  const [takeoff, landing] = [burn[0], burn.at(-1)];
  const point = (at: Balance | undefined) =>
    at === undefined ? '' : words.point(arm(at[0]), mass(at[1]));
  return (
    <svg
      class={styles.plot}
      viewBox={`0 0 ${frame.width} ${frame.height}`}
      role="img"
      aria-label={words.envelopeLabel(says, point(takeoff), point(landing))}
    >
      <Axes frame={frame} />
      <polygon class={styles.envelope} points={path(envelope)} />
      <polyline class={styles.burn} points={path(burn)} />
      {landing && <PlacedMark of="landing" at={shown(landing)} frame={frame} />}
      {takeoff && <PlacedMark of="take-off" at={shown(takeoff)} frame={frame} />}
    </svg>
  );
}

interface PlacedMarkProps {
  readonly of: MarkProps['of'];
  readonly at: Balance;
  readonly frame: PlotFrame;
}

const PlacedMark = ({ of, at: [armM, mass], frame }: PlacedMarkProps) => (
  <Mark of={of} x={frame.x(armM)} y={frame.y(mass)} />
);

function Axes({ frame }: { frame: PlotFrame }) {
  const { left, top, right, bottom, arms, masses } = frame;
  return (
    <>
      {masses.map((mass) => (
        <g key={mass}>
          <line class={styles.grid} x1={left} x2={right} y1={frame.y(mass)} y2={frame.y(mass)} />
          <text class={styles.tick} x={left - 8} y={frame.y(mass) + 6} text-anchor="end">
            {wholeNumber(mass)}
          </text>
        </g>
      ))}
      {arms.map((m) => (
        <g key={m}>
          <line class={styles.grid} x1={frame.x(m)} x2={frame.x(m)} y1={top} y2={bottom} />
          <text class={styles.tick} x={frame.x(m)} y={bottom + 24} text-anchor="middle">
            {decimal(m, frame.armDecimals)}
          </text>
        </g>
      ))}
    </>
  );
}

/**
 * The centre-of-gravity envelope, with the path from take-off to landing, and the same in words.
 */

import type { JSX } from 'preact';
import { ask } from '../../board/places';
import type { Balance, Envelope, Figure, LoadSheet } from '../../core';
import { Asked } from '../../parts/asked/Asked';
import { EnvelopeDrawing } from '../../parts/envelope/EnvelopeDrawing';
import { decimal, NO_BREAK_SPACE } from '../../parts/format';
import { mass, unitFor } from '../../parts/units';
import styles from './LoadSheet.module.css';
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

interface PlotProps {
  readonly envelope: Envelope;
  readonly burn: readonly Balance[];
  readonly says: string;
}

function Plot({ envelope, burn, says }: PlotProps) {
  const [takeoff, landing] = [burn[0], burn.at(-1)];
  const point = (at: Balance | undefined) =>
    at === undefined ? '' : words.point(arm(at[0]), mass(at[1]));
  return (
    <EnvelopeDrawing
      envelope={envelope}
      others={burn}
      label={words.envelopeLabel(says, point(takeoff), point(landing))}
    >
      {(at) => (
        <>
          <polyline class={styles.burn} points={burn.map((one) => at(one).join(',')).join(' ')} />
          {landing && <PlacedMark of="landing" at={at(landing)} />}
          {takeoff && <PlacedMark of="take-off" at={at(takeoff)} />}
        </>
      )}
    </EnvelopeDrawing>
  );
}

interface PlacedMarkProps {
  readonly of: MarkProps['of'];
  readonly at: readonly [x: number, y: number];
}

const PlacedMark = ({ of, at: [x, y] }: PlacedMarkProps) => <Mark of={of} x={x} y={y} />;

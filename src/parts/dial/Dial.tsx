/**
 * The dial: a field's runways under the wind, and around them the end that would be best for every
 * direction the wind might come from.
 */

import styles from './dial.module.css';
import { LABEL, placeLabels } from './labels';
import { band, type Point, towards } from './plane';
import { Runways } from './Runways';
import { type Arc, arcPath, arcsOf, hatchPath, RING, type Ring } from './ring';
import { type DialRunway, layOut } from './strips';
import { anywherePath, arrowPath, isBeside, SCALE, SUN_REACH, swingPath } from './wind';

/** What is known of one end, for its mark on the dial. */
export interface DialEnd {
  readonly designator: string;
  readonly headingTrueDeg: number;
  readonly state: 'best' | 'within' | 'outside' | 'closed';
  readonly inUse: boolean;
}

/** The wind as the dial shows it; directions are degrees true. */
export interface DialWind {
  readonly fromTrueDeg: number | null;
  /** A few words in the corner nearest to where the wind comes from. */
  readonly label?: string;
  /** The directions it swings between, clockwise from the first to the second. */
  readonly sectorDeg: readonly [number, number] | null;
  readonly kind: 'steady' | 'variable' | 'calm' | 'none';
}

export interface DialProps {
  /** Laid out once for each array: pass the same one while the field is the same. */
  readonly runways: readonly DialRunway[];
  readonly ends: readonly DialEnd[];
  readonly wind: DialWind;
  /** Null where there is no wind to turn. Its arcs are drawn once for each array. */
  readonly ring: Ring | null;
  /** Drawn only above the horizon. */
  readonly sun?: { readonly azimuthTrueDeg: number; readonly altitudeDeg: number } | null;
  /** The answer is from an earlier wind: ring and wind are drawn hollow, with broken lines. */
  readonly old?: boolean;
  /** What the dial shows, in words. */
  readonly label: string;
  readonly northLetters: {
    readonly n: string;
    readonly e: string;
    readonly s: string;
    readonly w: string;
  };
}

/** A function of an object, worked out once for each object. Nothing on the dial's ground moves at a key press. */
function once<K extends object, V>(work: (key: K) => V): (key: K) => V {
  const known = new WeakMap<K, V>();
  return (key) => {
    const value = known.get(key) ?? work(key);
    known.set(key, value);
    return value;
  };
}

const stripsOf = once(layOut);

const ringOf = once((ring: Ring) => {
  const arcs = arcsOf(ring);
  const path = (wanted: (arc: Arc) => boolean, heavy = false): string =>
    arcs
      .filter(wanted)
      .map((arc) => arcPath(arc, heavy))
      .join('');
  return {
    arcs,
    none: path((arc) => arc.end === null),
    hatch: arcs.map((arc) => (arc.end === null ? hatchPath(arc) : '')).join(''),
    others: (best: string | undefined) => path((arc) => arc.end !== null && arc.end !== best),
    heavy: (best: string) => path((arc) => arc.end === best, true),
  };
});

/** The circle of ticks as a band. */
const ALL_ROUND = band(0, 360, SCALE.inner, SCALE.outer);

/** The middle of a circle that lies in a direction. */
const centre = (deg: number, radius: number) => {
  const { x, y } = towards(deg, radius);
  return { cx: x, cy: y };
};

/** Where a text of a size begins so that its capitals stand around a place: 0.334 of the size is half their height. */
const centred = ({ x, y }: Point, size: number) => ({ x, y: y + 0.334 * size });

interface ScaleProps extends Pick<DialProps, 'northLetters'> {
  readonly windFromDeg: number | null;
}

/** Ticks, letters and figures; what would lie under the wind's arrow is left off. */
function Scale({ windFromDeg, northLetters }: ScaleProps) {
  const { n, e, s, w } = northLetters;
  const letters = [n, e, s, w];
  const marks = Array.from({ length: 12 }, (_, i) => i * 30);
  return (
    <>
      <circle class={styles.ticks} r={127} pathLength={360} />
      <circle class={styles.mainTicks} r={SCALE.middle} pathLength={360} />
      {marks.map((deg) => {
        if (isBeside(deg, windFromDeg)) return null;
        const letter = deg % 90 === 0 ? letters[deg / 90] : undefined;
        return (
          <text
            key={deg}
            class={letter ? styles.letter : styles.figure}
            {...centred(towards(deg, SCALE.text), letter ? 20 : 16)}
          >
            {letter ?? String(deg / 10).padStart(2, '0')}
          </text>
        );
      })}
    </>
  );
}

function RunwayRing({ ring, ends }: { ring: Ring | null; ends: readonly DialEnd[] }) {
  if (!ring) return <circle class={styles.noRing} r={RING.middle} />;
  const best = ends.find((end) => end.state === 'best')?.designator;
  const used = ends.find((end) => end.inUse)?.designator;
  const { arcs, none, hatch, others, heavy } = ringOf(ring);
  const headings = new Map(ends.map((end) => [end.designator, end.headingTrueDeg]));
  return (
    <>
      <path class={styles.arcs} d={others(best)} />
      <path class={styles.noArcs} d={none} />
      <path class={styles.hatch} d={hatch} />
      {best && <path class={styles.bestArcs} d={heavy(best)} />}
      {placeLabels(arcs, [used, best], headings).map((label) => (
        <g key={`${label.end} ${label.x}`} class={label.end === best ? styles.best : undefined}>
          {label.end === used && (
            <rect
              class={styles.frame}
              x={label.x - label.halfWidth}
              y={label.y - label.halfHeight}
              width={2 * label.halfWidth}
              height={2 * label.halfHeight}
            />
          )}
          <text {...centred(label, LABEL.size)} class={styles.label}>
            {label.end}
          </text>
        </g>
      ))}
    </>
  );
}

/** Fills the width it is given, or the height where that is less; 240 to 620 px square is what it is drawn for. */
export function Dial({ runways, ends, wind, ring, sun, old, label, northLetters }: DialProps) {
  const fromDeg = wind.kind === 'steady' ? wind.fromTrueDeg : null;
  const sunDeg = sun && sun.altitudeDeg > 0 ? sun.azimuthTrueDeg : null;
  const corner = towards(fromDeg ?? 315, 1);
  return (
    <svg
      class={`${styles.dial} ${old ? styles.old : ''}`}
      viewBox="-200 -200 400 400"
      role="img"
      aria-label={label}
    >
      {wind.kind === 'steady' && wind.sectorDeg && (
        <path class={styles.swing} d={swingPath(wind.sectorDeg)} />
      )}
      {wind.kind === 'calm' && <path class={styles.calm} d={ALL_ROUND} />}
      {wind.kind === 'variable' && (
        <>
          <path class={styles.swing} d={ALL_ROUND} />
          <path class={styles.arrow} d={anywherePath(sunDeg)} />
        </>
      )}
      <Scale windFromDeg={fromDeg} northLetters={northLetters} />
      <RunwayRing ring={ring} ends={ends} />
      <Runways strips={stripsOf(runways)} ends={ends} />
      {fromDeg !== null && (
        <>
          <path class={styles.arrow} d={arrowPath(fromDeg, sunDeg)} />
          <circle class={styles.dot} {...centre(fromDeg, RING.middle)} r={5} />
        </>
      )}
      {sunDeg !== null && (
        <>
          <circle class={styles.ground} {...centre(sunDeg, SCALE.middle)} r={SUN_REACH + 1} />
          <circle class={styles.sun} {...centre(sunDeg, SCALE.middle)} r={6} />
          <circle
            class={styles.rays}
            {...centre(sunDeg, SCALE.middle)}
            r={SUN_REACH - 1.5}
            pathLength={8}
          />
        </>
      )}
      {wind.label && (
        <text
          class={styles.words}
          x={corner.x > 0.1 ? 198 : -198}
          y={corner.y > 0.1 ? 196 : -184}
          text-anchor={corner.x > 0.1 ? 'end' : 'start'}
        >
          {wind.label}
        </text>
      )}
    </svg>
  );
}

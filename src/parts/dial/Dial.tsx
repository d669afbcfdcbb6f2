/**
 * The dial: a field's runways under the wind, surrounded by the best end for every direction the
 * wind might come from.
 */

import { oncePerObject } from '../once';
import styles from './dial.module.css';
import { frame, LABEL, placeLabels } from './labels';
import { band, type Point, towards } from './plane';
import { Runways } from './Runways';
import { arcPath, arcsOf, hatchPath, RING, type Ring } from './ring';
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
  /** Laid out once per array: pass the same one while the field stays the same. */
  readonly runways: readonly DialRunway[];
  readonly ends: readonly DialEnd[];
  readonly wind: DialWind;
  /** Null if there is no wind to turn. Arcs are computed once per array. */
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

const stripsOf = oncePerObject(layOut);

/** A ring as drawn, apart from what depends on today's best end. */
const ringOf = oncePerObject((ring: Ring) => {
  const arcs = arcsOf(ring);
  const without = arcs.filter(({ end }) => end === null);
  return {
    arcs,
    paths: arcs
      .filter(({ end }) => end !== null)
      .map((arc) => ({ end: arc.end, light: arcPath(arc, false), heavy: arcPath(arc, true) })),
    none: without.map((arc) => arcPath(arc, false)).join(''),
    hatch: without.map(hatchPath).join(''),
  };
});

const NO_RING: ReturnType<typeof ringOf> = { arcs: [], paths: [], none: '', hatch: '' };

/** The circle of ticks as a band. */
const ALL_ROUND = band(0, 360, SCALE.inner, SCALE.outer);

/** The centre of a circle that lies in a direction. */
const centre = (deg: number, radius: number) => {
  const { x, y } = towards(deg, radius);
  return { cx: x, cy: y };
};

/**
 * The baseline that centres a text's capitals on a point: half their height is 0.334 of the font
 * size.
 */
const centred = ({ x, y }: Point, size: number) => ({ x, y: y + 0.334 * size });

/** The directions that carry a letter, as `quarter` says, or a figure. */
const MARKS = Array.from({ length: 12 }, (_, i) => {
  const deg = i * 30;
  return { deg, quarter: deg % 90 === 0 ? deg / 90 : null };
});

/**
 * Ticks, letters and figures. They never change, so the same element is reused and skipped in
 * diffing.
 */
const scaleWith = oncePerObject(({ n, e, s, w }: DialProps['northLetters']) => {
  const letters = [n, e, s, w];
  return (
    <g>
      <circle class={styles.ticks} r={127} pathLength={360} />
      <circle class={styles.mainTicks} r={SCALE.middle} pathLength={360} />
      {MARKS.map(({ deg, quarter }) => (
        <text
          key={deg}
          class={quarter === null ? styles.figure : styles.letter}
          {...centred(towards(deg, SCALE.text), quarter === null ? 16 : 20)}
        >
          {quarter === null ? String(deg / 10).padStart(2, '0') : letters[quarter]}
        </text>
      ))}
    </g>
  );
});

/** Covers the letter or figure that would lie under the wind's arrow. */
function UnderArrow({ fromDeg }: { fromDeg: number }) {
  const mark = MARKS.find(({ deg }) => isBeside(deg, fromDeg));
  return mark ? <circle class={styles.ground} {...centre(mark.deg, SCALE.text)} r={14} /> : null;
}

// Every element of ring and runways stays while answers come and go, so that a key press redraws
// only what changed.

function RunwayRing({ ring, ends }: { ring: Ring | null; ends: readonly DialEnd[] }) {
  const best = ends.find((end) => end.state === 'best')?.designator;
  const used = ends.find((end) => end.inUse)?.designator;
  const { arcs, paths, none, hatch } = ring === null ? NO_RING : ringOf(ring);
  const headings = new Map(ends.map((end) => [end.designator, end.headingTrueDeg]));
  const labels = placeLabels(arcs, [used, best], headings);
  const look = (end: string) =>
    end === best ? styles.bestLabel : end === used ? styles.usedLabel : styles.label;
  return (
    <>
      {ring === null && <circle class={styles.noRing} r={RING.middle} />}
      <path
        class={styles.arcs}
        d={paths.map((arc) => (arc.end === best ? '' : arc.light)).join('')}
      />
      <path class={styles.noArcs} d={none} />
      <path class={styles.hatch} d={hatch} />
      <path
        class={styles.bestArcs}
        d={paths.map((arc) => (arc.end === best ? arc.heavy : '')).join('')}
      />
      <path
        class={styles.frame}
        d={labels
          .filter(({ end }) => end === used)
          .map(frame)
          .join('')}
      />
      {labels.map((label) => (
        <text class={look(label.end)} {...centred(label, LABEL.size)}>
          {label.end}
        </text>
      ))}
    </>
  );
}

/**
 * Fills the width it is given, or the height if that is less; designed for 240 to 620 px square.
 */
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
      {scaleWith(northLetters)}
      <RunwayRing ring={ring} ends={ends} />
      <Runways strips={stripsOf(runways)} ends={ends} />
      {fromDeg !== null && (
        <>
          <UnderArrow fromDeg={fromDeg} />
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

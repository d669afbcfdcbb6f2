/**
 * The runways on the dial: true bearings, true relative positions and true lengths, all to one
 * scale that fills the inside.
 *
 * For legibility, three things are not to scale: strips are wide enough for their numbers, long
 * enough for both of them, and parallels keep far enough apart to be told from each other.
 */

import { apartDeg, distanceToLine, type Point, towards } from './plane';

export interface DialRunway {
  readonly ends: readonly [DialRunwayEnd, DialRunwayEnd];
  /** The runway's middle relative to the field's, metres. */
  readonly eastM: number;
  readonly northM: number;
  readonly lengthM: number;
  readonly widthM: number;
}

/** One end of a runway: its name, and its heading. */
export interface DialRunwayEnd {
  readonly designator: string;
  readonly headingTrueDeg: number;
}

/** A runway's number where it is painted, read by the pilot who lands there. */
export interface Painted extends Point {
  readonly designator: string;
  /** How far the text is turned clockwise from upright. */
  readonly turnDeg: number;
}

/** A runway as drawn. */
export interface DrawnRunway extends Point {
  readonly ends: readonly [DialRunwayEnd, DialRunwayEnd];
  readonly length: number;
  readonly width: number;
  readonly corners: readonly Point[];
  readonly painted: readonly Painted[];
}

/** The strips stay within this distance of the centre. */
const INSIDE = 84;

/** Size of the painted text, its line spacing, and the width of its two figures. */
export const PAINTED = { size: 18, line: 16, width: 22 } as const;

/** Minimum gap between parallels too close to draw to scale. */
const BETWEEN = 8;

/** A number is painted no farther than this from where it belongs. */
const FAR_ENOUGH = 36;

/** Strips whose bearings differ by no more than this are parallels. */
const PARALLEL_WITHIN_DEG = 5;

/** From the strip's end to the text. */
const MARGIN = 4;

/** How long a painted number is along the strip: a letter is painted below the figures. */
export const paintedLength = (designator: string): number =>
  (designator.length > 2 ? 2 : 1) * PAINTED.line;

/** Strips are drawn 24 to 28 wide, by their width: from 18 m or less to 60 m or more. */
const drawnWidth = (widthM: number): number =>
  24 + 4 * Math.min(1, Math.max(0, (widthM - 18) / 42));

type Placed = Omit<DrawnRunway, 'corners' | 'painted'>;

const cornersOf = ({ ends, length, width, ...middle }: Placed): readonly Point[] => {
  const heading = ends[0].headingTrueDeg;
  return [1, -1].flatMap((along) =>
    [along, -along].map((side) =>
      towards(heading + 90, (side * width) / 2, towards(heading, (along * length) / 2, middle)),
    ),
  );
};

/** Moves two parallels that would touch apart, each by half of what is missing. */
function apart(a: Placed, b: Placed): readonly [Placed, Placed] {
  const heading = a.ends[0].headingTrueDeg;
  const turned = apartDeg(heading, b.ends[0].headingTrueDeg);
  const ahead = towards(heading, 1);
  const right = towards(heading + 90, 1);
  const [dx, dy] = [b.x - a.x, b.y - a.y];
  const along = Math.abs(dx * ahead.x + dy * ahead.y);
  const across = dx * right.x + dy * right.y;
  const missing = (a.width + b.width) / 2 + BETWEEN - Math.abs(across);
  const areParallel = Math.min(turned, 180 - turned) <= PARALLEL_WITHIN_DEG;
  if (!areParallel || missing <= 0 || along >= (a.length + b.length) / 2) return [a, b];
  const push = ((across < 0 ? -1 : 1) * missing) / 2;
  return [
    { ...a, ...towards(heading + 90, -push, a) },
    { ...b, ...towards(heading + 90, push, b) },
  ];
}

/**
 * Moves parallels apart. A strip moved away from one neighbour may meet the next, so it takes a few
 * rounds.
 */
function spread(strips: readonly Placed[]): readonly Placed[] {
  let moved = strips;
  for (let round = 0; round < 6; round += 1) {
    const settled: Placed[] = [];
    for (const strip of moved) {
      let last = strip;
      for (const [i, other] of settled.entries()) [settled[i], last] = apart(other, last);
      settled.push(last);
    }
    moved = settled;
  }
  return moved;
}

/** Whether a number clears every strip other than its own, so that none hides it. */
export function isClear(number: Painted, other: Placed): boolean {
  const heading = other.ends[0].headingTrueDeg;
  const across = towards(number.turnDeg - heading, 1);
  const reach =
    (Math.abs(across.x) * paintedLength(number.designator) + Math.abs(across.y) * PAINTED.width) /
    2;
  const start = towards(heading, -other.length / 2, other);
  const far = towards(heading, other.length / 2, other);
  return distanceToLine(number, start, far) > other.width / 2 + reach + 1;
}

/**
 * Where the numbers are painted: at the start of each end, or a little farther along if that keeps
 * them off every other strip. Numbers never overlap; one that would is left off.
 */
function paint(strips: readonly Placed[]): readonly Painted[] {
  const painted: Painted[] = [];
  for (const strip of strips) {
    for (const end of strip.ends) {
      const half = paintedLength(end.designator) / 2;
      const room = Math.min(FAR_ENOUGH, strip.length / 2 - MARGIN - 2 * half);
      const steps = Math.max(0, Math.floor(room / 2)) + 1;
      const places = Array.from({ length: steps }, (_, i) => ({
        ...towards(end.headingTrueDeg, MARGIN + half + 2 * i - strip.length / 2, strip),
        designator: end.designator,
        turnDeg: end.headingTrueDeg,
      })).filter((place) =>
        painted.every(
          ({ x, y }) => Math.hypot(place.x - x, place.y - y) > half + PAINTED.width / 2,
        ),
      );
      const others = strips.filter((other) => other !== strip);
      const place = places.find((at) => others.every((other) => isClear(at, other))) ?? places[0];
      if (place) painted.push(place);
    }
  }
  return painted;
}

/** The centre of the smallest circle around all points, approximately. Bădoiu and Clarkson 2003. */
function middleOf(places: readonly Point[]): Point {
  let middle = places[0] ?? { x: 0, y: 0 };
  const away = ({ x, y }: Point): number => Math.hypot(x - middle.x, y - middle.y);
  for (let step = 2; step < 200; step += 1) {
    const far = places.reduce((a, b) => (away(b) > away(a) ? b : a), middle);
    middle = {
      x: middle.x + (far.x - middle.x) / step,
      y: middle.y + (far.y - middle.y) / step,
    };
  }
  return middle;
}

/** The runways laid out on the dial; a number that has no room on its strip is left off. */
export function layOut(runways: readonly DialRunway[]): readonly DrawnRunway[] {
  const starts = runways.flatMap(({ ends, eastM, northM, lengthM }) =>
    [-1, 1].map((way) =>
      towards(ends[0].headingTrueDeg, (way * lengthM) / 2, { x: eastM, y: -northM }),
    ),
  );
  const middle = middleOf(starts);

  const atScale = (unitsPerM: number): readonly Placed[] =>
    spread(
      runways.map(({ ends, eastM, northM, lengthM, widthM }) => ({
        ends,
        x: (eastM - middle.x) * unitsPerM,
        y: (-northM - middle.y) * unitsPerM,
        length: Math.max(
          lengthM * unitsPerM,
          paintedLength(ends[0].designator) + paintedLength(ends[1].designator) + 3 * MARGIN,
        ),
        width: drawnWidth(widthM),
      })),
    );

  // What isn't to scale keeps its size as the scale shrinks, so finding the fit takes a few rounds.
  const farM = Math.max(1, ...starts.map(({ x, y }) => Math.hypot(x - middle.x, y - middle.y)));
  let unitsPerM = INSIDE / farM;
  let placed = atScale(unitsPerM);
  for (let round = 0; round < 6; round += 1) {
    const farthest = Math.max(...placed.flatMap(cornersOf).map(({ x, y }) => Math.hypot(x, y)));
    if (farthest <= INSIDE) break;
    unitsPerM *= (INSIDE - 0.2) / farthest;
    placed = atScale(unitsPerM);
  }

  const painted = paint(placed);
  return placed.map((strip) => ({
    ...strip,
    corners: cornersOf(strip),
    painted: painted.filter(({ designator }) =>
      strip.ends.some((end) => end.designator === designator),
    ),
  }));
}

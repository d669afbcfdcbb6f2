/** From metres on the ground to pixels on the screen. */

/** A point of the plan, metres east and north. */
export interface GroundPoint {
  readonly eastM: number;
  readonly northM: number;
}

/** A point of the drawing, pixels right and down from its corner. */
export interface Pixel {
  readonly x: number;
  readonly y: number;
}

/**
 * What part of the ground is drawn: the point in the middle, the scale, and which heading points
 * up.
 */
export interface Sight {
  readonly middle: GroundPoint;
  readonly pxPerM: number;
  readonly upDeg: number;
}

/** The size of the drawing, pixels. */
export interface Size {
  readonly width: number;
  readonly height: number;
}

const rad = (deg: number) => (deg * Math.PI) / 180;

/** East and north rotated so that a heading points up: right and up, metres. */
function turned({ eastM, northM }: GroundPoint, upDeg: number) {
  const [sin, cos] = [Math.sin(rad(upDeg)), Math.cos(rad(upDeg))];
  return { rightM: eastM * cos - northM * sin, upM: eastM * sin + northM * cos };
}

/** Where points are drawn: for many at once. */
export function projection(sight: Sight, size: Size): (point: GroundPoint) => Pixel {
  const [a, b, c, d, right, down] = matrix(sight, size);
  return ({ eastM, northM }) => ({
    x: a * eastM + c * northM + right,
    y: b * eastM + d * northM + down,
  });
}

/** Where a point is drawn. */
export const toPixel = (point: GroundPoint, sight: Sight, size: Size): Pixel =>
  projection(sight, size)(point);

/** From metres east and north to pixels, as SVG's `matrix()` takes it. */
export function matrix(
  { middle, pxPerM, upDeg }: Sight,
  size: Size,
): readonly [a: number, b: number, c: number, d: number, right: number, down: number] {
  const [sin, cos] = [Math.sin(rad(upDeg)) * pxPerM, Math.cos(rad(upDeg)) * pxPerM];
  return [
    cos,
    -sin,
    -sin,
    -cos,
    size.width / 2 - middle.eastM * cos + middle.northM * sin,
    size.height / 2 + middle.eastM * sin + middle.northM * cos,
  ];
}

/** Which point is drawn there. */
export function toGround(
  { x, y }: Pixel,
  { middle, pxPerM, upDeg }: Sight,
  size: Size,
): GroundPoint {
  const right = (x - size.width / 2) / pxPerM;
  const up = (size.height / 2 - y) / pxPerM;
  const [sin, cos] = [Math.sin(rad(upDeg)), Math.cos(rad(upDeg))];
  return {
    eastM: middle.eastM + right * cos + up * sin,
    northM: middle.northM - right * sin + up * cos,
  };
}

/** Never zoomed in further than this, however little there is to see. */
const CLOSEST_PX_PER_M = 2;

/**
 * The sight that shows all the points given, at least `margin` pixels from the edges. What lies over
 * the `covered` pixels at the top is kept clear of where there is height to spare: nothing is drawn
 * smaller for it.
 */
export function fitted(
  points: readonly GroundPoint[],
  upDeg: number,
  size: Size,
  margin: number,
  covered = 0,
): Sight {
  const all = points.map((point) => turned(point, upDeg));
  const span = (of: 'rightM' | 'upM') => {
    const values = all.map((point) => point[of]);
    return all.length === 0 ? [0, 0] : [Math.min(...values), Math.max(...values)];
  };
  const [left = 0, right = 0] = span('rightM');
  const [bottom = 0, top = 0] = span('upM');
  const room = (pixels: number, metres: number) =>
    Math.max(pixels - 2 * margin, 1) / Math.max(metres, 1);
  const pxPerM = Math.min(
    room(size.width, right - left),
    room(size.height, top - bottom),
    CLOSEST_PX_PER_M,
  );
  const sparePx = Math.max(0, (size.height - 2 * margin - (top - bottom) * pxPerM) / 2);
  const downPx = Math.min(sparePx, Math.max(0, covered - margin - sparePx));
  const [acrossM, upM] = [(left + right) / 2, (bottom + top) / 2 + downPx / pxPerM];
  const [sin, cos] = [Math.sin(rad(upDeg)), Math.cos(rad(upDeg))];
  return {
    middle: { eastM: acrossM * cos + upM * sin, northM: -acrossM * sin + upM * cos },
    pxPerM,
    upDeg,
  };
}

/** The sight after moving what is at one pixel to another, and zooming. */
export function moved(sight: Sight, size: Size, from: Pixel, to: Pixel, growth: number): Sight {
  const pxPerM = Math.min(5, Math.max(0.02, sight.pxPerM * growth));
  const held = toGround(from, sight, size);
  const now = toGround(to, { ...sight, pxPerM }, size);
  return {
    ...sight,
    pxPerM,
    middle: {
      eastM: sight.middle.eastM + held.eastM - now.eastM,
      northM: sight.middle.northM + held.northM - now.northM,
    },
  };
}

/**
 * A length for the scale bar: 1, 2 or 5 times a power of ten, no longer than a number of pixels.
 */
export function scaleM(pxPerM: number, mostPx: number): number {
  const most = mostPx / pxPerM;
  const power = 10 ** Math.floor(Math.log10(most));
  return ([5, 2, 1].find((step) => step * power <= most) ?? 1) * power;
}

/**
 * How a drawing made for one sight lies for another that points up the same way: enlarged about its
 * middle, then moved, px.
 */
export function shift(drawn: Sight, now: Sight, size: Size): Pixel & { readonly growth: number } {
  const { x, y } = toPixel(drawn.middle, now, size);
  return { x: x - size.width / 2, y: y - size.height / 2, growth: now.pxPerM / drawn.pxPerM };
}

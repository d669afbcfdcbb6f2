/** Where a picture lies under the plan of a field: moved, turned and enlarged, never sheared. */

import type { PlanPoint } from '../earth/planPoint';

/** A point of a picture, px right and down from its corner. */
export interface PicturePoint {
  readonly x: number;
  readonly y: number;
}

/**
 * How a picture lies: where its corner is, and how its right side runs, metres east and north for
 * each px. What runs down in the picture runs to the right of that.
 */
export interface PictureLie {
  readonly corner: PlanPoint;
  readonly east: number;
  readonly north: number;
}

/** Where a point of a picture lies on the plan. */
export const onPlan = ({ corner, east, north }: PictureLie, { x, y }: PicturePoint): PlanPoint => ({
  eastM: corner.eastM + east * x + north * y,
  northM: corner.northM + north * x - east * y,
});

/** Which point of a picture lies there. */
export function onPicture({ corner, east, north }: PictureLie, point: PlanPoint): PicturePoint {
  const [x, y] = [point.eastM - corner.eastM, point.northM - corner.northM];
  const size = east * east + north * north;
  return { x: (east * x + north * y) / size, y: (north * x - east * y) / size };
}

/** Two points of a picture nearer to each other than this, px, say nothing of how it lies. */
const APART_PX = 20;

/**
 * How a picture lies if two of its points lie where two points of the plan do; null if either two
 * are one.
 */
export function laidBy(
  pixels: readonly [PicturePoint, PicturePoint],
  points: readonly [PlanPoint, PlanPoint],
): PictureLie | null {
  const [a, b] = pixels;
  const [from, to] = points;
  const [x, y] = [b.x - a.x, b.y - a.y];
  const [eastM, northM] = [to.eastM - from.eastM, to.northM - from.northM];
  if (Math.hypot(x, y) < APART_PX || Math.hypot(eastM, northM) < 1) return null;
  const size = x * x + y * y;
  const [east, north] = [(eastM * x - northM * y) / size, (eastM * y + northM * x) / size];
  const corner = {
    eastM: from.eastM - east * a.x - north * a.y,
    northM: from.northM - north * a.x + east * a.y,
  };
  return { corner, east, north };
}

/** A picture moved so that what lay at one point lies at another, and enlarged about it. */
export function lieMoved(
  lie: PictureLie,
  from: PlanPoint,
  to: PlanPoint,
  growth: number,
): PictureLie {
  return {
    corner: {
      eastM: to.eastM + growth * (lie.corner.eastM - from.eastM),
      northM: to.northM + growth * (lie.corner.northM - from.northM),
    },
    east: lie.east * growth,
    north: lie.north * growth,
  };
}

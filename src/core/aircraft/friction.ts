/** Wheel friction by surface. */

import type { Surface } from '../airfield/field';
import type { GroundSurface, Performance } from './performance';

/**
 * What soft ground adds to rolling friction. Raymer, Aircraft Design, table 17.1 (values from
 * memory): dry concrete 0.03, firm dirt 0.04, hard turf 0.05, soft turf 0.07, wet grass 0.08.
 */
const SOFT_ROLLING: Readonly<Record<GroundSurface, Readonly<Record<Surface, number>>>> = {
  asphalt: { dry: 0, wet: 0, contaminated: 0 },
  concrete: { dry: 0, wet: 0, contaminated: 0 },
  gravel: { dry: 0.01, wet: 0.015, contaminated: 0.015 },
  grass: { dry: 0.04, wet: 0.05, contaminated: 0.05 },
};

/**
 * Share of braking left on it. The same table: dry concrete 0.3 to 0.5, firm dirt 0.3, hard turf
 * 0.4, soft turf 0.2, wet grass 0.2. What a surface's own wetness takes is the aircraft's to say.
 */
const SOFT_BRAKING: Readonly<Record<GroundSurface, number>> = {
  asphalt: 1,
  concrete: 1,
  gravel: 0.75,
  grass: 0.6,
};

/** Rolling friction over the weight on wheels. */
export const rollingFriction = (
  { rolling }: Performance,
  surface: Surface,
  ground: GroundSurface,
): number => rolling[surface] + SOFT_ROLLING[ground][surface];

/**
 * Braking friction over the weight on wheels, rolling included. On no ground does it improve from
 * dry to wet to contaminated. Drag from a contaminant never counts towards stopping, since the next
 * patch may be bare: what rolls against it is the dry ground's own friction.
 */
export const brakingFriction = (
  performance: Performance,
  surface: Surface,
  ground: GroundSurface,
): number =>
  Math.max(
    performance.brakes.friction[surface] * SOFT_BRAKING[ground],
    rollingFriction(performance, 'dry', ground),
  );

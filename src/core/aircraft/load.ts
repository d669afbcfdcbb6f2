/** What an aircraft can be loaded with, and what is in it. */

import type { Aircraft } from './aircraft';

/** How the aircraft's document describes loading. */
export type Loading = NonNullable<Aircraft['load']>;

export type LoadStation = Loading['stations'][number];

/** What is in the aircraft. */
export interface Load {
  readonly fuelKg: number;
  /** By station name; a missing one is empty. */
  readonly stations: Readonly<Record<string, number>>;
}

/** What a station carries in a load, kg. */
export const carriedKg = ({ stations }: Load, { id }: Pick<LoadStation, 'id'>): number =>
  Object.hasOwn(stations, id) ? (stations[id] ?? 0) : 0;

/** The load the book figures are for: the first preset. */
export function usualLoad({ presets }: Loading): Load {
  const [usual] = presets;
  return usual ?? { fuelKg: 0, stations: {} };
}

/** Whether two loads fill every tank and station alike. */
export const isSameLoad = ({ stations }: Loading, a: Load, b: Load): boolean =>
  a.fuelKg === b.fuelKg &&
  stations.every((station) => carriedKg(a, station) === carriedKg(b, station));

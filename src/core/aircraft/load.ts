/** What an aircraft can be loaded with, and what is in it. */

import type { Aircraft } from './aircraft';

/** What the aircraft's document says of its loading. */
export type Loading = NonNullable<Aircraft['load']>;

/** A place in the aircraft that carries something. */
export type LoadStation = Loading['stations'][number];

/** What is in the aircraft. */
export interface Load {
  readonly fuelKg: number;
  /** By the stations' names; what is left out is empty. */
  readonly stations: Readonly<Record<string, number>>;
}

/** What a station carries in a load, kg. */
export const carriedKg = ({ stations }: Load, { id }: Pick<LoadStation, 'id'>): number =>
  Object.hasOwn(stations, id) ? (stations[id] ?? 0) : 0;

/** The load that the aircraft's book figures are for: the first preset. */
export function usualLoad({ presets }: Loading): Load {
  const [usual] = presets;
  return usual ?? { fuelKg: 0, stations: {} };
}

/** Whether two loads put the same into every tank and station. */
export const isSameLoad = ({ stations }: Loading, a: Load, b: Load): boolean =>
  a.fuelKg === b.fuelKg &&
  stations.every((station) => carriedKg(a, station) === carriedKg(b, station));

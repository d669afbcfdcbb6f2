/** What the set of the world's fields says of one of them. */

import type { Place } from '../earth/place';

/** Aerodromes are what one looks for; the others are listed only when asked for. */
export const WORLD_KINDS = ['aerodrome', 'heliport', 'seaplane base'] as const;

export type WorldKind = (typeof WORLD_KINDS)[number];

/** How big a field is, by the traffic it takes, as its source sorts them; the largest first. */
export const WORLD_SIZES = ['large', 'medium', 'small'] as const;

export type WorldSize = (typeof WORLD_SIZES)[number];

/** What a runway is covered with; `unknown` where the set names none that limits are given for. */
export const WORLD_SURFACES = ['unknown', 'asphalt', 'concrete', 'grass', 'gravel'] as const;

export type WorldSurface = (typeof WORLD_SURFACES)[number];

/** What the set contradicts in a runway, or does not say and was worked out. */
export const WORLD_DOUBTS = [
  /** The numbers fit the other ends, and were swapped. */
  'swapped',
  /** A number is more than 25° off the direction of its runway, or was none and was worked out. */
  'number',
  /** Its stated length is more than 15 % off its coordinates: the shorter one counts. */
  'length',
  /** The stated direction is more than 3° off its coordinates. */
  'heading',
  /** One end only: the other was worked out from the direction and the length. */
  'one-end',
  /** An end's elevation can't be, and is left out. */
  'elevation',
  /** A displaced threshold lies beyond half of the runway. */
  'displaced',
] as const;

export type WorldDoubt = (typeof WORLD_DOUBTS)[number];

/** One end. */
export interface WorldEnd {
  /** `01` to `36`, with L, C or R for parallels. */
  readonly designator: string;
  readonly at: Place;
  /** Feet; null where the set doesn't say. */
  readonly elevationFt: number | null;
  /** How far the landing threshold lies from the end, feet. */
  readonly displacedFt: number;
}

/** A runway. */
export interface WorldRunway {
  readonly ends: readonly [WorldEnd, WorldEnd];
  readonly lengthFt: number;
  /** Null where the set doesn't say. */
  readonly widthFt: number | null;
  readonly surface: WorldSurface;
  /** Whether it is lit, as far as the set says: it never says that one is not. */
  readonly isLit: boolean;
  /** In the order of {@link WORLD_DOUBTS}. */
  readonly doubts: readonly WorldDoubt[];
}

/** Frequencies, MHz as written; null where the set has none. */
export interface WorldRadio {
  readonly tower: string | null;
  readonly ground: string | null;
  /** Where pilots tell each other. */
  readonly traffic: string | null;
}

/** A field. */
export interface WorldField {
  readonly code: string;
  /** Other codes it is known by, separated by spaces. */
  readonly otherCodes: string;
  readonly name: string;
  /** The town it serves; empty where the set doesn't say. */
  readonly town: string;
  /** ISO 3166-1, two letters. */
  readonly country: string;
  readonly kind: WorldKind;
  readonly size: WorldSize;
  readonly place: Place & { readonly elevationFt: number };
  /** Its numbers are painted to true north. */
  readonly isNumberedTrue: boolean;
  readonly radio: WorldRadio;
  readonly runways: readonly WorldRunway[];
}

/** Degrees are kept to a millionth: a decimetre. */
export const PER_DEGREE = 1e6;

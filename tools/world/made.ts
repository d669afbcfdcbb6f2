/**
 * Makes the world's fields from the open dataset: what it contradicts is marked, what can't be used
 * is left out and counted. The rules are the README's ("The world's fields").
 */

import { oppositeOf, readDesignator } from '../../src/core/airfield/designator';
import { degreesOf, trueDeg, turnDeg, wrapDeg } from '../../src/core/angle';
import { destination } from '../../src/core/earth/destination';
import { lineBetween } from '../../src/core/earth/geodesic';
import type { Place } from '../../src/core/earth/place';
import { M_PER_FT } from '../../src/core/units';
import {
  PER_DEGREE,
  WORLD_DOUBTS,
  WORLD_SURFACES,
  type WorldDoubt,
  type WorldEnd,
  type WorldField,
  type WorldKind,
  type WorldRunway,
  type WorldSize,
} from '../../src/core/world/worldField';
import type { SourceEnd, SourceField, SourceRunway } from './source';

/** Variation at a place on the day of the set, degrees, east positive. */
export type VariationAt = (place: Place) => number;

/** Why a runway is left out. */
export const LEFT_OUT = {
  helicopters: 'for helicopters only, at a field for aeroplanes',
  'one-point': 'with both ends in one place',
  'far-off': 'whose ends lie less than half or more than twice as far apart as they are long',
  'one-end': 'with one end only, whose number is more than 10° off its direction',
  'number-twice': 'with the number of another of the field',
} as const;

export type LeftOut = keyof typeof LEFT_OUT;

/** What became of a runway. */
type Made =
  | { readonly runway: WorldRunway; readonly numbers: readonly NumberFit[] }
  | { readonly out: LeftOut };

/** How far the number of an end, as written, is off its direction, degrees. */
interface NumberFit {
  readonly fromMagnetic: number;
  readonly fromTrue: number;
}

/** The world's fields, and what stands in the README's table about them. */
export interface MadeWorld {
  readonly fields: readonly WorldField[];
  readonly table: WorldTable;
}

export interface WorldTable {
  readonly fields: number;
  readonly kinds: Readonly<Record<WorldKind, number>>;
  readonly runways: number;
  readonly ends: number;
  /** Ends with a number in the set, and those whose number is within 10° of the magnetic heading. */
  readonly numbered: number;
  readonly agreeing: number;
  readonly doubts: Readonly<Record<WorldDoubt, number>>;
  readonly unknown: {
    readonly surface: number;
    readonly lights: number;
    readonly width: number;
    readonly endElevation: number;
  };
  readonly closed: number;
  readonly runwaysOut: Readonly<Record<LeftOut, number>>;
  readonly withoutRunway: number;
  readonly numberedTrue: number;
}

const rounded = (deg: number): number => Math.round(deg * PER_DEGREE) / PER_DEGREE;
const placeOf = ({ latDeg, lonDeg }: Place): Place => ({
  latDeg: rounded(latDeg),
  lonDeg: rounded(lonDeg),
});

/** How far a direction is off another, degrees, 0 to 180. */
const offDeg = (one: number, other: number): number => Math.abs(turnDeg(one - other));

/** Beyond these a runway's data contradicts itself. */
const NUMBER_OFF_DEG = 25;
const HEADING_OFF_DEG = 3;
/** The direction of a runway with one end stands alone, and many are no direction of a runway. */
const ONE_END_OFF_DEG = 10;
const LENGTH_OFF = 0.15;
const ELEVATION_OFF_FT = 500;

/** An end's name in the set, read. */
interface ReadIdent {
  /** Null where there is no number. */
  readonly designator: string | null;
  readonly isTrue: boolean;
  readonly isForHelicopters: boolean;
}

/**
 * Reads an end's name: a number, with a letter that tells parallels apart or says what it is for
 * (T: numbered to true north; H: helicopters; W: water; others the country's own), or three digits of
 * a direction. A compass point is no number.
 */
export function readIdent(ident: string): ReadIdent {
  const parts = /^(H?)(\d{1,3})([LCR]?)([A-Z]*)\.?$/.exec(ident.toUpperCase());
  if (parts === null) return { designator: null, isTrue: false, isForHelicopters: false };
  const [, before = '', digits = '', letter = '', after = ''] = parts;
  const number = digits.length === 3 ? Math.round(Number(digits) / 10) : Number(digits);
  return {
    designator: readDesignator(`${number === 0 ? 36 : number}${letter}`),
    isTrue: after === 'T',
    isForHelicopters: before === 'H' || after === 'H',
  };
}

const numberDeg = (designator: string): number => 10 * Number.parseInt(designator, 10);

/** The number nearest to a magnetic direction. */
const numberFor = (magneticDeg: number): string =>
  String(Math.round(wrapDeg(magneticDeg) / 10) || 36).padStart(2, '0');

interface Laid {
  readonly ends: readonly [SourceEnd, SourceEnd];
  readonly headingDeg: number;
  readonly measuredM: number;
  readonly isOneEnded: boolean;
}

/** Both ends of a runway, and its direction from the first. */
function laid({ ends: [one, other], lengthFt }: SourceRunway): Laid | LeftOut {
  if (one === undefined) return 'one-end';
  const lengthM = lengthFt * M_PER_FT;
  if (other === undefined) {
    const headingDeg = one.headingTrueDeg;
    const at = placeOf(destination(one, trueDeg(headingDeg), lengthM));
    const across = { ...one, ...at, ident: '', displacedFt: null, elevationFt: null };
    return { ends: [one, across], headingDeg, measuredM: lengthM, isOneEnded: true };
  }
  const line = lineBetween(placeOf(one), placeOf(other));
  if (line === null || line.azimuth === null) return 'one-point';
  const { distanceM: measuredM } = line;
  if (measuredM < lengthM / 2 || measuredM > 2 * lengthM) return 'far-off';
  const headingDeg = degreesOf(line.azimuth);
  return { ends: [one, other], headingDeg, measuredM, isOneEnded: false };
}

function madeRunway(of: SourceRunway, field: SourceField, variationDeg: number): Made {
  const read = of.ends.map(({ ident }) => readIdent(ident));
  if (field.type !== 'heliport' && read.some(({ isForHelicopters }) => isForHelicopters))
    return { out: 'helicopters' };
  const strip = laid(of);
  if (typeof strip === 'string') return { out: strip };
  const { ends, headingDeg, measuredM, isOneEnded } = strip;
  const trueDegs = [headingDeg, wrapDeg(headingDeg + 180)];
  const doubts = new Set<WorldDoubt>();

  // The numbers, each at the end it stands for.
  const written = ends.map((_, side) => read[side]?.designator ?? null);
  const fits = written.map((designator, side): NumberFit | null => {
    if (designator === null) return null;
    const fromTrue = offDeg(trueDegs[side] ?? 0, numberDeg(designator));
    const fromMagnetic = offDeg((trueDegs[side] ?? 0) - variationDeg, numberDeg(designator));
    return { fromTrue, fromMagnetic };
  });
  const off = fits.map((fit) =>
    fit === null
      ? Number.POSITIVE_INFINITY
      : Math.min(fit.fromMagnetic, mayBeTrue(field) ? fit.fromTrue : fit.fromMagnetic),
  );
  const known = off.filter((deg) => deg !== Number.POSITIVE_INFINITY);
  if (isOneEnded && !known.some((deg) => deg <= ONE_END_OFF_DEG)) return { out: 'one-end' };
  const isSwapped = known.length > 0 && known.every((deg) => deg >= 180 - NUMBER_OFF_DEG);
  if (isSwapped) doubts.add('swapped');
  else if (known.length === 0 || known.some((deg) => deg > NUMBER_OFF_DEG)) doubts.add('number');
  const [first, second] = isSwapped ? [written[1], written[0]] : written;
  const [offFirst = 0, offSecond = 0] = isSwapped ? [off[1], off[0]] : off;
  let numbers: readonly [string, string];
  if (first && (!second || offFirst <= offSecond)) numbers = [first, oppositeOf(first)];
  else if (second) numbers = [oppositeOf(second), second];
  else {
    const made = numberFor(headingDeg - variationDeg);
    numbers = [made, oppositeOf(made)];
  }
  const replaced = [first, second].some((one, side) => one != null && one !== numbers[side]);
  if (replaced) doubts.add('number');

  if (isOneEnded) doubts.add('one-end');
  const lengthM = of.lengthFt * M_PER_FT;
  if (Math.abs(measuredM - lengthM) > LENGTH_OFF * lengthM) doubts.add('length');
  if (!isOneEnded) {
    const stated = ends.map((end, side) => offDeg(end.headingTrueDeg, trueDegs[side] ?? 0));
    if (Math.max(...stated) > HEADING_OFF_DEG) doubts.add('heading');
  }
  const endOf = (side: 0 | 1): WorldEnd => {
    const end = ends[side];
    const isBeyond =
      end.elevationFt !== null && Math.abs(end.elevationFt - field.elevationFt) > ELEVATION_OFF_FT;
    if (isBeyond) doubts.add('elevation');
    const displacedFt = end.displacedFt ?? 0;
    if (displacedFt > of.lengthFt / 2) doubts.add('displaced');
    return {
      designator: numbers[side],
      at: placeOf(end),
      elevationFt: isBeyond ? null : end.elevationFt,
      displacedFt,
    };
  };
  const made: readonly [WorldEnd, WorldEnd] = [endOf(0), endOf(1)];
  return {
    runway: {
      ends: made,
      lengthFt: of.lengthFt,
      widthFt: of.widthFt || null,
      surface: WORLD_SURFACES.find((surface) => surface === of.surface) ?? 'unknown',
      isLit: of.lighted,
      doubts: WORLD_DOUBTS.filter((doubt) => doubts.has(doubt)),
    },
    numbers: fits.flatMap((fit) => fit ?? []),
  };
}

/** Fields of Canada's northern airspace number their runways to true north. TP 312, AIM RAC 1.2. */
const NUMBERS_TRUE = 'CA';

const saysTrue = ({ runways }: SourceField): boolean =>
  runways.some(({ ends }) => ends.some(({ ident }) => readIdent(ident).isTrue));

/** Whether the numbers of a field might be painted to true north. */
const mayBeTrue = (field: SourceField): boolean =>
  field.country === NUMBERS_TRUE || saysTrue(field);

/** Whether the numbers of a field are painted to true north: its ends say so, or they fit nothing else. */
function isNumberedTrue(field: SourceField, fits: readonly NumberFit[]): boolean {
  if (saysTrue(field)) return fits.every(({ fromTrue, fromMagnetic }) => fromTrue <= fromMagnetic);
  return (
    field.country === NUMBERS_TRUE &&
    fits.length > 0 &&
    fits.every(({ fromTrue, fromMagnetic }) => fromTrue <= 7 && fromMagnetic > 10)
  );
}

/** As long as a name may be in a document, characters. */
const LONGEST_NAME = 80;

/** What every other field is called too, and no one says on the radio. */
const KIND_OF_PLACE =
  /(?: (?:International|Regional|Municipal|National|Domestic|Intercontinental))* (?:Airport|Airfield|Aerodrome)$/i;

/** A field's name, as it is spoken. */
const spokenName = (name: string): string => {
  const plain = nameOf(name);
  return plain.replace(KIND_OF_PLACE, '') || plain;
};

const nameOf = (name: string): string => {
  // A soft hyphen has slipped into one, which a document may not have.
  const plain = name
    .replace(/\p{Default_Ignorable_Code_Point}/gu, '')
    .replace(/\s+/g, ' ')
    .trim();
  return plain.length <= LONGEST_NAME ? plain : plain.slice(0, LONGEST_NAME).replace(/\s+\S*$/, '');
};

/** Codes apart from the one it is listed by. */
function otherCodes({ code, otherCodes: codes }: SourceField): string {
  const others = codes.filter((one) => /^[A-Z0-9-]{2,8}$/.test(one) && one !== code);
  return [...new Set(others)].join(' ');
}

const KINDS: Readonly<Record<string, WorldKind>> = {
  heliport: 'heliport',
  seaplane_base: 'seaplane base',
};

const SIZES: Readonly<Record<string, WorldSize>> = {
  large_airport: 'large',
  medium_airport: 'medium',
};

/** Water is no runway of a field for aeroplanes on wheels. */
const isWater = ({ surface, ends }: SourceRunway): boolean =>
  surface === 'water' || ends.some(({ ident }) => /\dW$/.test(ident));

/** Makes the fields. */
export function madeWorld(source: readonly SourceField[], variationAt: VariationAt): MadeWorld {
  const open = source.filter(({ type }) => type !== 'closed');
  const runwaysOut = {
    helicopters: 0,
    'one-point': 0,
    'far-off': 0,
    'one-end': 0,
    'number-twice': 0,
  };
  let [numbered, agreeing, withoutRunway] = [0, 0, 0];
  const fields: WorldField[] = [];
  for (const field of open) {
    const variationDeg = variationAt(field);
    const runways: WorldRunway[] = [];
    const fits: NumberFit[] = [];
    // What is sure comes first, so that the doubtful one of two with one number goes.
    for (const of of [...field.runways].sort((a, b) => Number(isWater(a)) - Number(isWater(b)))) {
      const made = madeRunway(of, field, variationDeg);
      if ('out' in made) {
        runwaysOut[made.out] += 1;
        continue;
      }
      const names = runways.flatMap(({ ends }) => ends.map(({ designator }) => designator));
      if (made.runway.ends.some(({ designator }) => names.includes(designator))) {
        runwaysOut['number-twice'] += 1;
        continue;
      }
      runways.push(made.runway);
      fits.push(...made.numbers);
    }
    if (runways.length === 0) {
      withoutRunway += 1;
      continue;
    }
    numbered += fits.length;
    agreeing += fits.filter(({ fromMagnetic }) => fromMagnetic <= 10).length;
    const isSmall = SIZES[field.type] === undefined;
    fields.push({
      code: field.code,
      otherCodes: otherCodes(field),
      name: spokenName(field.name),
      town: nameOf(field.town),
      country: field.country,
      kind: KINDS[field.type] ?? 'aerodrome',
      size: SIZES[field.type] ?? 'small',
      place: { ...placeOf(field), elevationFt: field.elevationFt },
      isNumberedTrue: isNumberedTrue(field, fits),
      radio: {
        tower: frequency(field.tower),
        ground: frequency(field.ground),
        // At larger fields the set has towers in this column.
        traffic: isSmall ? frequency(field.unicom) : null,
      },
      runways,
    });
  }
  const all = fields.flatMap(({ runways }) => runways);
  const ends = all.flatMap((runway) => runway.ends);
  const countOf = <T extends string>(names: readonly T[], has: (name: T) => number) =>
    Object.fromEntries(names.map((name) => [name, has(name)])) as Record<T, number>;
  return {
    fields,
    table: {
      fields: fields.length,
      kinds: countOf(
        ['aerodrome', 'heliport', 'seaplane base'],
        (kind) => fields.filter((field) => field.kind === kind).length,
      ),
      runways: all.length,
      ends: ends.length,
      numbered,
      agreeing,
      doubts: countOf(
        WORLD_DOUBTS,
        (doubt) => all.filter((one) => one.doubts.includes(doubt)).length,
      ),
      unknown: {
        surface: all.filter(({ surface }) => surface === 'unknown').length,
        lights: all.filter(({ isLit }) => !isLit).length,
        width: all.filter(({ widthFt }) => widthFt === null).length,
        endElevation: ends.filter(({ elevationFt }) => elevationFt === null).length,
      },
      closed: source.length - open.length,
      runwaysOut,
      withoutRunway,
      numberedTrue: fields.filter((field) => field.isNumberedTrue).length,
    },
  };
}

/** A frequency as documents have it; null if it is none of the airband, 118 to 137 MHz. */
function frequency(mhz: string | null): string | null {
  if (mhz === null || !/^\d{3}(\.\d{1,3})?$/.test(mhz)) return null;
  const value = Number(mhz);
  if (value < 118 || value >= 137) return null;
  return mhz.includes('.') ? mhz : `${mhz}.0`;
}

/**
 * What differs between two fields or two aircraft, by what a pilot calls it: "Runway 10/28: TORA 10",
 * and no path into a file.
 */

import { type Aircraft, type Field, lineBetween } from '../core';
import { partsThatDiffer } from './differences';
import { canonicalJson } from './hash';

/** A quantity, a text, or a code that the words have a name for. */
export type FactValue =
  | {
      readonly value: number;
      readonly unit: 'm' | 'ft' | 'kg' | 'kt' | 'deg' | 'psi' | 'min' | '%' | 'rpm' | 'count';
    }
  | { readonly text: string }
  | { readonly code: string }
  | { readonly latDeg: number; readonly lonDeg: number };

/** Something a document says. */
interface Fact {
  /** What it is said of: a runway, a station, a frequency; empty for the document itself. */
  readonly of: string;
  readonly what: FactName;
  /** The end of a runway it is said of. */
  readonly end?: string;
  readonly value: FactValue | null;
}

/** A fact that differs; null on a side that doesn't say it. */
export interface FactDifference extends Omit<Fact, 'value'> {
  readonly before: FactValue | null;
  readonly after: FactValue | null;
  /** For a point: how far it moved, metres. */
  readonly movedM: number | null;
}

/** What facts there are, each with its name in the words. */
export type FactName =
  | (typeof FIELD_FACTS)[number]
  | (typeof AIRCRAFT_FACTS)[number][0]
  | 'stations'
  | 'stop';

const FIELD_FACTS = [
  'code',
  'name',
  'about',
  'at',
  'elevation',
  'numbersFrom',
  'calmWindEnd',
  'preferredEnds',
  'runway',
  'width',
  'surface',
  'lights',
  'declared',
  'tora',
  'toda',
  'asda',
  'lda',
  'displaced',
  'closed',
  'frequency',
  'taxiways',
  'stands',
  'holds',
  'hotSpots',
] as const;

const quantity = (value: unknown, unit: Extract<FactValue, { unit: unknown }>['unit']) =>
  typeof value === 'number' ? { value, unit } : null;
const text = (value: unknown) =>
  typeof value === 'string' && value !== '' ? { text: value } : null;
const code = (value: unknown) =>
  value === undefined || value === null ? null : { code: String(value) };

/** Everything a field says that a pilot would ask about. */
function factsOfField(field: Field): readonly Fact[] {
  const said = (what: FactName, value: FactValue | null, of = '') => ({ of, what, value });
  const { nodes, edges, hotSpots = [] } = field.taxi;
  const counted = (kind: string) =>
    quantity(nodes.filter((node) => node.kind === kind).length, 'count');
  const at = new Map(nodes.map((node) => [node.id, node]));
  const ways = edges.filter(({ on }) => on !== 'runway');
  const lengthM = ways.reduce((sum, { from, to }) => {
    const [one, other] = [at.get(from), at.get(to)];
    return one && other ? sum + Math.hypot(one.xM - other.xM, one.yM - other.yM) : sum;
  }, 0);
  return [
    said('code', text(field.code)),
    said('name', text(field.name)),
    said('about', text(field.about)),
    said('at', { latDeg: field.place.latDeg, lonDeg: field.place.lonDeg }),
    said('elevation', quantity(field.place.elevationFt, 'ft')),
    said('numbersFrom', code(field.numbersFrom)),
    said('calmWindEnd', text(field.calmWindEnd)),
    said('preferredEnds', text(field.preferredEnds?.join(', '))),
    ...field.runways.flatMap(factsOfRunway),
    ...field.radio.map(({ name, mhz }) => said('frequency', text(mhz), name)),
    said('taxiways', quantity(Math.round(lengthM), 'm')),
    said('stands', counted('stand')),
    said('holds', counted('hold')),
    said('hotSpots', quantity(hotSpots.length, 'count')),
  ];
}

function factsOfRunway({
  ends,
  widthM,
  surface,
  edgeLights,
  declared,
}: Field['runways'][number]): readonly Fact[] {
  const of = ends
    .map(({ designator }) => designator)
    .sort()
    .join('/');
  const said = (what: FactName, value: FactValue | null): Fact => ({ of, what, value });
  return [
    said('runway', { text: of }),
    said('width', quantity(widthM, 'm')),
    said('surface', code(surface)),
    said('lights', code(edgeLights)),
    said('declared', code(declared)),
    ...ends.flatMap((end): readonly Fact[] => {
      const atEnd = (what: FactName, value: FactValue | null) => ({
        of,
        what,
        end: end.designator,
        value,
      });
      return [
        atEnd('tora', quantity(end.toraM, 'm')),
        atEnd('toda', quantity(end.todaM, 'm')),
        atEnd('asda', quantity(end.asdaM, 'm')),
        atEnd('lda', quantity(end.ldaM, 'm')),
        atEnd('displaced', quantity(end.displacedM ?? 0, 'm')),
        atEnd('elevation', quantity(end.elevationFt, 'ft')),
        atEnd('at', { latDeg: end.at.latDeg, lonDeg: end.at.lonDeg }),
        atEnd('closed', text(end.closed)),
      ];
    }),
  ];
}

/** What an aircraft says: its name in the words, where it stands, and its unit. */
const AIRCRAFT_FACTS = [
  ['emptyMass', 'masses.emptyKg', 'kg'],
  ['usualTakeoffMass', 'masses.usualTakeoffKg', 'kg'],
  ['maxTakeoffMass', 'masses.maxTakeoffKg', 'kg'],
  ['usualLandingMass', 'masses.usualLandingKg', 'kg'],
  ['maxLandingMass', 'masses.maxLandingKg', 'kg'],
  ['fuel', 'load.fuel.maxKg', 'kg'],
  ['landingFuel', 'load.fuel.landingKg', 'kg'],
  ['crosswindDry', 'limits.crosswindKt.dry', 'kt'],
  ['crosswindWet', 'limits.crosswindKt.wet', 'kt'],
  ['crosswindContaminated', 'limits.crosswindKt.contaminated', 'kt'],
  ['crosswindShown', 'limits.demonstratedCrosswindKt', 'kt'],
  ['tailwindDry', 'limits.tailwindKt.dry', 'kt'],
  ['tailwindWet', 'limits.tailwindKt.wet', 'kt'],
  ['tailwindContaminated', 'limits.tailwindKt.contaminated', 'kt'],
  ['gearLimit', 'limits.gearKt', 'kt'],
  ['flapsLimit', 'limits.flapsKt', 'kt'],
  ['tyreLimit', 'limits.tyreKt', 'kt'],
  ['tyrePressure', 'limits.tyrePsi', 'psi'],
  ['brakesCool', 'limits.brakesCoolMin', 'min'],
  ['leastWidth', 'limits.leastWidthM', 'm'],
  ['taxiSpeed', 'taxi.maxKt', 'kt'],
  ['turnSpeed', 'taxi.turnKt', 'kt'],
  ['rotate', 'takeoff.rotateKt', 'kt'],
  ['liftOff', 'takeoff.liftOffKt', 'kt'],
  ['takeoffRun', 'takeoff.runM', 'm'],
  ['flapsUp', 'climb.flapsUpByKt', 'kt'],
  ['gearUp', 'climb.gearUpByKt', 'kt'],
  ['reheatOff', 'climb.reheatOffKt', 'kt'],
  ['climbLeast', 'climb.speedKt.0', 'kt'],
  ['climbMost', 'climb.speedKt.1', 'kt'],
  ['approach', 'landing.approachKt', 'kt'],
  ['landingRun', 'landing.runM', 'm'],
] as const;

const valueAt = (document: unknown, path: string): unknown =>
  path.split('.').reduce<unknown>((part, name) => {
    const held: Readonly<Record<string, unknown>> = Object(part);
    return Object.hasOwn(held, name) ? held[name] : undefined;
  }, document);

function factsOfAircraft(aircraft: Aircraft): readonly Fact[] {
  return [
    { of: '', what: 'code', value: text(aircraft.code) },
    { of: '', what: 'name', value: text(aircraft.name) },
    { of: '', what: 'about', value: text(aircraft.about) },
    ...AIRCRAFT_FACTS.map(([what, path, unit]) => ({
      of: '',
      what,
      value: quantity(valueAt(aircraft, path), unit),
    })),
    ...(aircraft.load?.stations ?? []).map(
      ({ name, maxKg }): Fact => ({ of: name, what: 'stations', value: quantity(maxKg, 'kg') }),
    ),
    { of: '', what: 'stop', value: text(aircraft.stop.join(', ')) },
  ];
}

/** How two documents of one kind differ. */
export interface DocumentDifference {
  readonly facts: readonly FactDifference[];
  /** Parts, by the names of their properties, that differ in more than the facts tell. */
  readonly parts: readonly string[];
}

/** What differs between two fields. */
export const fieldDifference = (before: Field, after: Field): DocumentDifference => ({
  facts: factDifferences(factsOfField(before), factsOfField(after)),
  parts: partsThatDiffer(before, after).filter((part) => !TOLD.field.includes(part)),
});

/** What differs between two aircraft. */
export const aircraftDifference = (before: Aircraft, after: Aircraft): DocumentDifference => ({
  facts: factDifferences(factsOfAircraft(before), factsOfAircraft(after)),
  parts: partsThatDiffer(before, after).filter((part) => !TOLD.aircraft.includes(part)),
});

/** The parts that the facts tell whole; any other may differ in more. */
const TOLD: Readonly<Record<'field' | 'aircraft', readonly string[]>> = {
  field: [
    'code',
    'name',
    'about',
    'place',
    'numbersFrom',
    'calmWindEnd',
    'preferredEnds',
    'runways',
  ],
  aircraft: ['code', 'name', 'about', 'masses', 'limits', 'landing', 'stop'],
};

const nameOf = ({ of, what, end = '' }: Fact) => [of, what, end].join('|');

function factDifferences(
  before: readonly Fact[],
  after: readonly Fact[],
): readonly FactDifference[] {
  const was = new Map(before.map((fact) => [nameOf(fact), fact]));
  const is = new Map(after.map((fact) => [nameOf(fact), fact]));
  const runwaysOf = (facts: readonly Fact[]) =>
    new Set(facts.flatMap(({ what, of }) => (what === 'runway' ? [of] : [])));
  const [old, fresh] = [runwaysOf(before), runwaysOf(after)];
  // Of a runway that only one has, it is enough to say that.
  const isWhole = ({ of, what }: Fact) => what === 'runway' || old.has(of) === fresh.has(of);
  return [...new Map([...is, ...was]).values()].filter(isWhole).flatMap((fact) => {
    const [one, other] = [
      was.get(nameOf(fact))?.value ?? null,
      is.get(nameOf(fact))?.value ?? null,
    ];
    if (canonicalJson(one) === canonicalJson(other)) return [];
    const movedM = distanceM(one, other);
    const { value: _, ...named } = fact;
    return movedM !== null && movedM < LEAST_MOVE_M
      ? []
      : [{ ...named, before: one, after: other, movedM }];
  });
}

/** A point written with fewer digits has not moved, metres. */
const LEAST_MOVE_M = 0.5;

function distanceM(one: FactValue | null, other: FactValue | null): number | null {
  if (one === null || other === null || !('latDeg' in one) || !('latDeg' in other)) return null;
  return lineBetween(one, other)?.distanceM ?? null;
}

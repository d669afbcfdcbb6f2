/** A field of the world as a document: what the set says, and nothing that it doesn't. */

import type { Field, Radio, Runway } from '../airfield/field';
import { lineBetween } from '../earth/geodesic';
import { M_PER_FT } from '../units';
import type { WorldEnd, WorldField, WorldRunway } from './worldField';

const metresOf = (feet: number): number => Math.floor(feet * M_PER_FT);

/**
 * The length that counts, whole metres, rounded down: as stated, or where that is doubtful the shorter
 * of it and what lies between the ends.
 */
function lengthM({ ends: [one, other], lengthFt, doubts }: WorldRunway): number {
  const stated = metresOf(lengthFt);
  if (!doubts.includes('length')) return stated;
  return Math.min(stated, Math.floor(lineBetween(one.at, other.at)?.distanceM ?? stated));
}

function runwayOf(runway: WorldRunway, { place }: WorldField): Runway {
  const runM = lengthM(runway);
  const endOf = ({
    designator,
    at,
    elevationFt,
    displacedFt,
  }: WorldEnd): Runway['ends'][number] => {
    const displacedM = Math.min(runM, Math.ceil(displacedFt * M_PER_FT));
    return {
      designator,
      at,
      elevationFt: elevationFt ?? place.elevationFt,
      displacedM,
      toraM: runM,
      todaM: runM,
      asdaM: runM,
      ldaM: runM - displacedM,
    };
  };
  const [one, other] = runway.ends;
  return {
    widthM: metresOf(runway.widthFt ?? 0),
    surface: runway.surface === 'unknown' ? 'asphalt' : runway.surface,
    edgeLights: runway.isLit,
    ends: [endOf(one), endOf(other)],
  };
}

function radioOf({ name, radio }: WorldField): Radio[] {
  const said = (service: 'ground' | 'tower' | 'traffic', mhz: string | null): Radio[] =>
    mhz === null ? [] : [{ name: `${name.slice(0, 70)} ${service}`, mhz, service }];
  return [
    ...said('ground', radio.ground),
    ...said('tower', radio.tower),
    ...said('traffic', radio.traffic),
  ];
}

/** What was assumed because the set doesn't say, and what it contradicts. */
function reservations({ runways }: WorldField): string {
  const named = (has: (runway: WorldRunway) => boolean) =>
    runways
      .filter(has)
      .map(({ ends }) => ends.map(({ designator }) => designator).join('/'))
      .join(', ');
  const said = (what: string, names: string) => (names === '' ? '' : ` ${what}: ${names}.`);
  return [
    said(
      'Asphalt assumed',
      named(({ surface }) => surface === 'unknown'),
    ),
    said(
      'Level assumed',
      named(({ ends }) => ends.some(({ elevationFt }) => elevationFt === null)),
    ),
    said(
      'Doubtful',
      named(({ doubts }) => doubts.length > 0),
    ),
  ].join('');
}

/** The document of a field; `date` is that of the set. */
export function worldDocument(field: WorldField, date: string): Field {
  return {
    lapstrip: 'field',
    version: 1,
    code: field.code,
    name: field.name,
    language: 'en',
    about: `From OurAirports, ${date}, ODbL 1.0. Not for navigation.${reservations(field)}`,
    place: field.place,
    numbersFrom: field.isNumberedTrue ? 'true' : 'magnetic',
    radio: radioOf(field),
    runways: field.runways.map((runway) => runwayOf(runway, field)),
    taxi: { nodes: [], edges: [] },
  };
}

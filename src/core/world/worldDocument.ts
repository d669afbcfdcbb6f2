/** A field of the world as a document: what the set says, and nothing that it doesn't. */

import type { Field, Radio, Runway } from '../airfield/field';
import { lineBetween } from '../earth/geodesic';
import { M_PER_FT } from '../units';
import { noticeOf } from './notice';
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

function runwayOf(runway: WorldRunway): Runway {
  const { widthFt, surface, isLit, doubts } = runway;
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
      ...(elevationFt !== null && { elevationFt }),
      displacedM,
      toraM: runM,
      todaM: runM,
      asdaM: runM,
      ldaM: runM - displacedM,
    };
  };
  const [one, other] = runway.ends;
  return {
    ...(widthFt !== null && { widthM: metresOf(widthFt) }),
    surface,
    // The set says of some that they are lit, and of none that it is not.
    ...(isLit && { edgeLights: true }),
    declared: false,
    ...(doubts.length > 0 && { doubts: [...doubts] }),
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

/** The document of a field; `date` is that of the set. */
export function worldDocument(field: WorldField, date: string): Field {
  const { en, de } = noticeOf(date);
  return {
    lapstrip: 'field',
    version: 2,
    code: field.code,
    name: field.name,
    language: 'en',
    about: en,
    translations: { de: { [en]: de } },
    place: field.place,
    numbersFrom: field.isNumberedTrue ? 'true' : 'magnetic',
    radio: radioOf(field),
    runways: field.runways.map(runwayOf),
    taxi: { nodes: [], edges: [] },
  };
}

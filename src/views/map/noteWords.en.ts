/** What the reader of maps tells by codes, as sentences. */

import type { MapExtract, MapNote } from '../../core';

/** Why nothing could be read, and what to do. */
export const problems: Readonly<Record<MapExtract['problems'][number]['code'], string>> = {
  'not-a-map':
    'The text is neither OSM XML, Overpass JSON nor GeoJSON. Save the aerodrome again in one of them.',
  'cut-short': 'The file is cut short or damaged. Save it again.',
  'too-many':
    'The file holds more than a million objects. Save a smaller piece of the map: the aerodrome alone will do.',
  'lines-without-points':
    'The file names lines without saying where they run. In the query, ask for the geometry too, or for all nodes of the lines.',
  'no-runway':
    'The file holds no aerodrome with a runway. Save a piece of the map that shows the whole aerodrome.',
};

const places = (n: number, one: string, several: string) => (n === 1 ? one : `${n} ${several}`);

/** What was assumed or is missing, `n` times; `length` is the bound. */
export const notes: Readonly<Record<MapNote['code'], (n: number, length: string) => string>> = {
  'code-assumed': () =>
    'The map has no location indicator. The field is called XMAP until you edit it.',
  'elevation-assumed': () => 'The map has no elevation: 0 ft. Edit it before you use the numbers.',
  'width-unknown': (n) => `${places(n, 'A runway has', 'runways have')} no width.`,
  'surface-unknown': (n) =>
    `${places(n, 'A runway has', 'runways have')} no surface: the numbers are those of asphalt, and say so.`,
  'slope-unknown': () => 'The map has no elevations of runway ends: no slope is counted.',
  'lights-unknown': () => 'The map does not say whether the runways have lights.',
  'number-doubtful': (n) =>
    `${places(n, "A runway's numbers don't", "runways have numbers that don't")} fit the direction.`,
  'hold-assumed': (n) =>
    `${places(n, 'A holding point', 'holding points')} put where none is mapped, at the usual distance from the runway.`,
  'hold-apart': (n) =>
    `${places(n, 'A holding point lies', 'holding points lie')} on no taxiway: left out.`,
  'lead-in-long': (n, length) =>
    `${places(n, 'A stand is', 'stands are')} joined by a straight line of more than ${length}.`,
  'stand-apart': (n) =>
    `${places(n, 'A stand lies', 'stands lie')} too far from any taxiway: left out.`,
};

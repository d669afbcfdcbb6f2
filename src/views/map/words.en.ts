/** The words for what an extract of a map holds. */

import type { FileKind } from '../../exchange/fileKind';
import type { MapOutcome } from '../../exchange/mapApart';

type Failure = Extract<MapOutcome, { kind: 'failed' }>['problem'];

const HOW =
  'Save the aerodrome from OpenStreetMap: its export page gives OSM XML (.osm), a query gives Overpass JSON, many tools give GeoJSON.';

/** Why a file isn't read at all, and what to do. */
export const refusals: Readonly<Record<Exclude<FileKind, 'map'> | Failure, string>> = {
  text: `The file holds no map. ${HOW}`,
  empty: `The file is empty. ${HOW}`,
  picture: `The file is a picture, not map data. ${HOW} You can trace a picture when you draw a field.`,
  pdf: `The file is a PDF, not map data. ${HOW}`,
  packed:
    'The file is compressed. Unpack it first, or save it as OSM XML, Overpass JSON or GeoJSON.',
  'web-page': `The file is a web page, not map data. ${HOW}`,
  'not-text': `The file is not text, so it is no map data that can be read. ${HOW}`,
  'too-large':
    'The file is larger than 50 MB. Save a smaller piece of the map: the aerodrome alone will do.',
  'too-slow':
    'Reading took longer than 30 seconds and was stopped. Save a smaller piece of the map: the aerodrome alone will do.',
  'not-read':
    'The file could not be read. Try again; the first time, the reader itself needs the network.',
  stopped: 'Reading was stopped.',
};

export const words = {
  title: 'Field from a map',
  close: 'Close',
  reading: 'Reading the map',
  stop: 'Stop',
  nothingKept: 'Nothing was kept.',
  which: 'The map holds several aerodromes. Which one?',
  aerodrome: (code: string, name: string) => (code === name ? code : `${code} ${name}`),
  found: 'Found',
  counts: {
    runways: (n: number) => (n === 1 ? '1 runway' : `${n} runways`),
    taxiways: (n: number) => (n === 1 ? '1 taxiway line' : `${n} taxiway lines`),
    holds: (n: number) => (n === 1 ? '1 holding point' : `${n} holding points`),
    stands: (n: number) => (n === 1 ? '1 stand' : `${n} stands`),
  },
  plan: (field: string) => `Plan of ${field} from the map`,
  planWords: {
    north: 'N',
    ahead: (runway: string) => `Runway ${runway}`,
    hold: (name: string) => name,
    whole: 'Fit',
  },
  notForReal:
    'Not for navigation. Check it against a chart before you rely on it in the simulator.',
  keep: 'Keep as a field',
  add: (code: string, name: string) => `Add the plan to ${code} ${name}`,
  addHint: (code: string) => `${code} keeps its own runways, lengths and frequencies.`,
  missingRunway: (code: string, runway: string) =>
    `The plan can't be added to ${code}: it has no runway ${runway}.`,
  besideRunway: (code: string, runway: string, off: string) =>
    `The plan can't be added to ${code}: its runway ${runway} lies ${off} beside the map's.`,
  kept: (code: string) => `${code} is in the Library as one of your own fields.`,
  notKept: 'It could not be kept:',
  use: (code: string) => `Use ${code}`,
  assumed: 'Assumed',
  assumedHint: 'The map does not say this. Tap one to see its place.',
  missing: 'Missing',
  missingHint: 'Tap one to see its place.',
  nothing: 'Nothing.',
  all: (n: number) => `Show all ${n}`,
  source: (name: string, licence: string) => `Map data: ${name}, ${licence}.`,
} as const;

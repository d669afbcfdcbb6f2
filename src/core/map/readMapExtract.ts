/** A field with its taxi plan from an extract of a map. */

import type { Field } from '../airfield/field';
import { turnDeg } from '../angle';
import { lineBetween } from '../earth/geodesic';
import type { Place } from '../earth/place';
import { stripsOf } from '../taxi/runwayStrip';
import { M_PER_FT } from '../units';
import { type MapObject, mapObjects, type UnreadMap } from './mapObjects';
import { planOf } from './plan';
import { runwaysOf } from './runways';

/** Something the map doesn't say, and where. */
export interface MapNote {
  readonly code:
    | 'code-assumed'
    | 'elevation-assumed'
    | 'width-unknown'
    | 'surface-unknown'
    | 'slope-unknown'
    | 'lights-unknown'
    | 'number-doubtful'
    | 'hold-assumed'
    | 'hold-apart'
    | 'lead-in-long'
    | 'stand-apart';
  readonly at: { readonly xM: number; readonly yM: number } | null;
  /** The letter, number or name of what it is about. */
  readonly what?: string;
}

/** A field as the map has it. */
export interface MapField {
  readonly field: Field;
  readonly found: Readonly<Record<'runways' | 'taxiways' | 'holds' | 'stands', number>>;
  readonly assumed: readonly MapNote[];
  readonly missing: readonly MapNote[];
}

/** What an extract holds. */
export interface MapExtract {
  readonly fields: readonly MapField[];
  readonly problems: readonly { readonly code: UnreadMap | 'no-runway' }[];
}

/** Runways this near to an aerodrome are its own, metres. */
const OWN_M = 6000;

/** The code of a field the map has none for. */
const NO_CODE = 'XMAP';

/** Reads an extract; `onProgress` gets the share done, 0 to 1. Never throws, whatever the text. */
export function readMapExtract(
  text: string,
  { onProgress = () => undefined }: { readonly onProgress?: (share: number) => void } = {},
): MapExtract {
  const objects = mapObjects(text);
  if (typeof objects === 'string') return { fields: [], problems: [{ code: objects }] };
  onProgress(0.4);
  const runways = objects.filter(
    ({ tags, points }) => tags.aeroway === 'runway' && points.length > 1,
  );
  const sites = sitesOf(objects, runways);
  const fields = sites.flatMap((site, index): MapField[] => {
    const made = fieldOf(site, objects);
    onProgress(0.4 + (0.6 * (index + 1)) / sites.length);
    return made === null ? [] : [made];
  });
  return { fields, problems: fields.length === 0 ? [{ code: 'no-runway' }] : [] };
}

interface Site {
  readonly place: Place;
  readonly tags: MapObject['tags'];
}

/** The middle, also of what lies on both sides of the antimeridian. */
const middleOf = (points: readonly Place[]): Place => {
  const from = points[0]?.lonDeg ?? 0;
  const sum = (values: readonly number[]) => values.reduce((all, value) => all + value, 0);
  const lonDeg = from + sum(points.map((point) => turnDeg(point.lonDeg - from))) / points.length;
  return {
    latDeg: sum(points.map(({ latDeg }) => latDeg)) / points.length,
    lonDeg: turnDeg(lonDeg),
  };
};

const apartM = (one: Place, other: Place): number =>
  lineBetween(one, other)?.distanceM ?? Number.POSITIVE_INFINITY;

/** The aerodromes that have a runway; without any, where the runways lie. */
function sitesOf(objects: readonly MapObject[], runways: readonly MapObject[]): readonly Site[] {
  const places = runways.map(({ points }) => middleOf(points));
  const named = objects
    .filter(({ tags }) => tags.aeroway === 'aerodrome')
    .map(({ tags, points }): Site => ({ tags, place: middleOf(points) }))
    .filter(({ place }) => places.some((runway) => apartM(runway, place) < OWN_M));
  if (named.length > 0 || places.length === 0) return named;
  return [{ tags: {}, place: middleOf(places) }];
}

function fieldOf({ place: about, tags }: Site, objects: readonly MapObject[]): MapField | null {
  const near = objects.filter(({ points }) => {
    const [point] = points;
    return point !== undefined && apartM(point, about) < OWN_M;
  });
  const place = { latDeg: rounded(about.latDeg), lonDeg: rounded(about.lonDeg) };
  const elevationM = Number.parseFloat(tags.ele ?? '');
  const elevationFt = Number.isNaN(elevationM) ? 0 : Math.round(elevationM / M_PER_FT);
  const runways = runwaysOf(near, place);
  if (runways.length === 0) return null;
  const code = [tags.icao, tags.ref, tags.local_ref].find((one) =>
    /^[A-Z][A-Z0-9]{2,3}$/.test(one ?? ''),
  );
  const bare: Field = {
    lapstrip: 'field',
    version: 2,
    code: code ?? NO_CODE,
    name: (tags['name:en'] ?? tags.name ?? 'Field on the map').slice(0, 80),
    about:
      'From a map: © OpenStreetMap contributors, ODbL 1.0 (opendatacommons.org/licenses/odbl).',
    place: { ...place, elevationFt },
    numbersFrom: 'magnetic',
    radio: [],
    runways: runways.map(({ runway }) => runway),
    taxi: { nodes: [], edges: [] },
  };
  const plan = planOf(near, place, stripsOf(bare));
  const general = (code: MapNote['code'], what?: string): MapNote => ({
    code,
    at: null,
    ...(what !== undefined && { what }),
  });
  return {
    field: { ...bare, taxi: plan.taxi },
    found: {
      runways: runways.length,
      taxiways: plan.lines,
      holds: plan.holds,
      stands: plan.stands,
    },
    assumed: [
      ...(code === undefined ? [general('code-assumed', NO_CODE)] : []),
      ...(Number.isNaN(elevationM) ? [general('elevation-assumed')] : []),
      ...plan.assumed,
    ],
    missing: [
      ...(runways.some(({ silent }) => silent.includes('lights'))
        ? [general('lights-unknown')]
        : []),
      general('slope-unknown'),
      ...runways.flatMap(({ name, silent }) => [
        ...(silent.includes('width') ? [general('width-unknown', name)] : []),
        ...(silent.includes('surface') ? [general('surface-unknown', name)] : []),
        ...(silent.includes('number') ? [general('number-doubtful', name)] : []),
      ]),
      ...plan.missing,
    ],
  };
}

const rounded = (deg: number): number => Math.round(deg * 1e6) / 1e6;

/**
 * What an extract of OpenStreetMap holds: points and lines with their tags, from OSM XML, Overpass
 * JSON or GeoJSON (RFC 7946).
 */

import { XMLParser } from 'fast-xml-parser';

export type Tags = Readonly<Partial<Record<string, string>>>;

export interface MapPoint {
  /** Lines that share a point share its id; null if the file gives none. */
  readonly id: string | null;
  readonly latDeg: number;
  readonly lonDeg: number;
}

/** A line, or a point alone. */
export interface MapObject {
  readonly tags: Tags;
  readonly points: readonly MapPoint[];
}

/** Why a text can't be read. */
export type UnreadMap =
  /** Neither XML nor JSON of a map. */
  | 'not-a-map'
  /** It breaks off, or isn't well formed. */
  | 'cut-short'
  /** More objects than any aerodrome has. */
  | 'too-many'
  /** Lines without their points: the query left them out. */
  | 'lines-without-points';

/** Reads a text. */
export function mapObjects(text: string): readonly MapObject[] | UnreadMap {
  const begins = text.trimStart().charAt(0);
  if (begins === '<') return fromXml(text);
  if (begins !== '{' && begins !== '[') return 'not-a-map';
  let value: unknown;
  try {
    value = JSON.parse(text);
  } catch {
    return 'cut-short';
  }
  if (!isRecord(value)) return 'not-a-map';
  if (Array.isArray(value.elements)) return fromElements(value.elements.filter(isRecord));
  if (Array.isArray(value.features)) return fromFeatures(value.features.filter(isRecord));
  return value.type === 'Feature' ? fromFeatures([value]) : 'not-a-map';
}

/** More objects than this are a country, not an aerodrome. */
const MOST_OBJECTS = 1_000_000;

type Loose = Readonly<Partial<Record<string, unknown>>>;

const isRecord = (value: unknown): value is Loose =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

const listOf = (value: unknown): readonly Loose[] =>
  Array.isArray(value) ? value.filter(isRecord) : [];

function tagsOf(value: unknown): Tags {
  if (!isRecord(value)) return {};
  return Object.fromEntries(
    Object.entries(value).flatMap(([key, one]) =>
      typeof one === 'string' || typeof one === 'number' ? [[key, String(one)]] : [],
    ),
  );
}

function pointOf(id: unknown, lat: unknown, lon: unknown): MapPoint | null {
  const [latDeg, lonDeg] = [Number(lat), Number(lon)];
  if (lat === undefined || lon === undefined || Number.isNaN(latDeg) || Number.isNaN(lonDeg))
    return null;
  if (Math.abs(latDeg) > 90 || Math.abs(lonDeg) > 180) return null;
  return { id: id === undefined ? null : String(id), latDeg, lonDeg };
}

function fromXml(text: string): readonly MapObject[] | UnreadMap {
  if (!/<osm[\s>]/.test(text.slice(0, 4000))) return 'not-a-map';
  // The parser takes what breaks off as if it were whole.
  if (!text.trimEnd().endsWith('</osm>')) return 'cut-short';
  // Counted first: parsing what is far too much would take half a minute to be refused.
  if (countOf(text, /<(?:node|way)\s/g) > MOST_OBJECTS) return 'too-many';
  if (!text.includes('aeroway')) return [];
  const parser = new XMLParser({
    ignoreAttributes: false,
    attributeNamePrefix: '',
    parseAttributeValue: false,
    // Entities from outside could grow without bound.
    processEntities: false,
    isArray: (name) => ['node', 'way', 'relation', 'member', 'nd', 'tag'].includes(name),
  });
  let parsed: unknown;
  try {
    parsed = parser.parse(text);
  } catch {
    return 'cut-short';
  }
  const osm = isRecord(parsed) ? parsed.osm : undefined;
  if (!isRecord(osm)) return 'not-a-map';
  const tags = (of: Loose) =>
    Object.fromEntries(listOf(of.tag).map(({ k, v }) => [String(k), String(v)]));
  const elements = [
    ...listOf(osm.node).map((node) => ({ ...node, type: 'node', tags: tags(node) })),
    ...listOf(osm.way).map((way) => ({
      type: 'way',
      id: way.id,
      nodes: listOf(way.nd).map(({ ref }) => ref),
      tags: tags(way),
    })),
    ...listOf(osm.relation).map((relation) => ({
      type: 'relation',
      members: listOf(relation.member),
      tags: tags(relation),
    })),
  ];
  return fromElements(elements);
}

function countOf(text: string, pattern: RegExp): number {
  let count = 0;
  for (const _ of text.matchAll(pattern)) count += 1;
  return count;
}

function fromElements(elements: readonly Loose[]): readonly MapObject[] | UnreadMap {
  if (elements.length > MOST_OBJECTS) return 'too-many';
  const points = new Map<string, MapPoint>();
  const tagged = new Map<string, Tags>();
  for (const { type, id, lat, lon, tags } of elements) {
    if (type !== 'node') continue;
    const point = pointOf(id, lat, lon);
    if (point === null) continue;
    points.set(String(id), point);
    // A node may come twice, once bare.
    tagged.set(String(id), { ...tagged.get(String(id)), ...tagsOf(tags) });
  }
  const ways = new Map(
    elements.flatMap(({ type, id, nodes }) =>
      type === 'way' && Array.isArray(nodes) ? [[String(id), nodes as readonly unknown[]]] : [],
    ),
  );
  const edgeOf = (relation: Loose): readonly MapPoint[] =>
    listOf(relation.members).flatMap(({ type, ref }) =>
      type === 'way'
        ? (ways.get(String(ref)) ?? []).flatMap((id) => points.get(String(id)) ?? [])
        : [],
    );
  let isEmptied = false;
  const lines = elements.flatMap((one): MapObject[] => {
    const tags = tagsOf(one.tags);
    if (one.type === 'relation' && tags.aeroway === 'aerodrome') {
      const extent = [...extentOf(one), ...edgeOf(one)];
      return extent.length === 0 ? [] : [{ tags, points: extent }];
    }
    if (one.type !== 'way' || tags.aeroway === undefined) return [];
    const ids = Array.isArray(one.nodes) ? one.nodes : [];
    const geometry = Array.isArray(one.geometry)
      ? one.geometry.flatMap((at: unknown, index) =>
          isRecord(at) ? (pointOf(ids[index], at.lat, at.lon) ?? []) : [],
        )
      : ids.flatMap((id) => points.get(String(id)) ?? []);
    isEmptied ||= geometry.length === 0;
    return geometry.length === 0 ? [] : [{ tags, points: geometry }];
  });
  if (isEmptied && lines.every(({ tags }) => tags.aeroway === 'aerodrome')) {
    return 'lines-without-points';
  }
  const alone = [...tagged].flatMap(([id, tags]): MapObject[] => {
    const point = points.get(id);
    return point === undefined || tags.aeroway === undefined ? [] : [{ tags, points: [point] }];
  });
  return [...lines, ...alone];
}

/** Where a relation lies, as far as Overpass says: its centre, or opposite corners around it. */
function extentOf({ center, bounds }: Loose): readonly MapPoint[] {
  if (isRecord(center)) return [pointOf(undefined, center.lat, center.lon) ?? []].flat();
  if (!isRecord(bounds)) return [];
  return [
    pointOf(undefined, bounds.minlat, bounds.minlon) ?? [],
    pointOf(undefined, bounds.maxlat, bounds.maxlon) ?? [],
  ].flat();
}

function fromFeatures(features: readonly Loose[]): readonly MapObject[] | UnreadMap {
  if (features.length > MOST_OBJECTS) return 'too-many';
  return features.flatMap(({ properties, geometry }): MapObject[] => {
    const tags = tagsOf(properties);
    if (tags.aeroway === undefined || !isRecord(geometry)) return [];
    return partsOf(geometry.type, geometry.coordinates).flatMap((part) => {
      const points = part.flatMap((at) =>
        Array.isArray(at) ? (pointOf(undefined, at[1], at[0]) ?? []) : [],
      );
      return points.length === 0 ? [] : [{ tags, points }];
    });
  });
}

/** The lines of a geometry; of a surface its edge. */
function partsOf(type: unknown, coordinates: unknown): readonly (readonly unknown[])[] {
  if (!Array.isArray(coordinates)) return [];
  const lists = (value: unknown): readonly unknown[][] =>
    Array.isArray(value) ? value.filter((one): one is unknown[] => Array.isArray(one)) : [];
  if (type === 'Point') return [[coordinates]];
  if (type === 'LineString') return [coordinates];
  if (type === 'MultiLineString' || type === 'Polygon') return lists(coordinates);
  return type === 'MultiPolygon' ? lists(coordinates).flatMap(lists) : [];
}

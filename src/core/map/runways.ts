/** The runways of a map: pieces joined, displaced thresholds told from pavement that isn't runway. */

import { oppositeOf, readDesignator } from '../airfield/designator';
import type { Field } from '../airfield/field';
import { turnDeg } from '../angle';
import type { Place } from '../earth/place';
import { planPoint } from '../earth/planPoint';
import { RADIANS_PER_DEGREE } from '../units';
import type { MapObject } from './mapObjects';

type Runway = Field['runways'][number];

/** A runway as the map has it, and what it doesn't say. */
export interface MappedRunway {
  readonly runway: Runway;
  readonly name: string;
  readonly silent: readonly ('width' | 'surface' | 'lights' | 'number')[];
}

/** Shorter ones are models' strips or scraps, metres. */
const SHORTEST_M = 150;

const SURFACES: Readonly<Record<string, Runway['surface']>> = {
  asphalt: 'asphalt',
  paved: 'asphalt',
  concrete: 'concrete',
  'concrete:plates': 'concrete',
  grass: 'grass',
  gravel: 'gravel',
  compacted: 'gravel',
};

const isPavement = ({ tags }: MapObject) =>
  tags.aeroway === 'runway' && !['blast_pad', 'stopway', 'closed'].includes(tags.runway ?? '');

/** `24/06` and `6/24` as `06/24`; null if it names no runway. */
function nameOf(ref: string | undefined): string | null {
  const parts = (ref ?? '').split(/[/-]/).map((part) => readDesignator(part));
  const [one, two = null] = parts;
  if (one == null || parts.length > 2) return null;
  const other = two ?? oppositeOf(one);
  return one < other ? `${one}/${other}` : `${other}/${one}`;
}

/** The runways among the objects; `around` is the field's reference point. */
export function runwaysOf(objects: readonly MapObject[], around: Place): readonly MappedRunway[] {
  const groups = new Map<string, MapObject[]>();
  for (const object of objects.filter(isPavement)) {
    const name = nameOf(object.tags.ref) ?? (object.tags.ref === undefined ? '' : null);
    if (name !== null && object.points.length > 1) {
      groups.set(name, [...(groups.get(name) ?? []), object]);
    }
  }
  const unnamed = groups.get('') ?? [];
  groups.delete('');
  const found = [...groups].flatMap(([name, pieces]) => {
    const extended = [...pieces, ...unnamed.filter((piece) => continues(pieces, piece, around))];
    return runwayOf(name, extended, around) ?? [];
  });
  return found;
}

function spread(pieces: readonly MapObject[], around: Place) {
  const all = pieces.flatMap(({ points }) =>
    points.flatMap((place) => {
      const at = planPoint(around, place);
      return at === null ? [] : [{ place, at }];
    }),
  );
  const farthestFrom = (from: (typeof all)[number] | undefined) => {
    let best = { lengthM: 0, from, to: from };
    for (const to of from === undefined ? [] : all) {
      const lengthM = from
        ? Math.hypot(to.at.eastM - from.at.eastM, to.at.northM - from.at.northM)
        : 0;
      if (lengthM > best.lengthM) best = { lengthM, from, to };
    }
    return best;
  };
  // What is farthest from any point of a straight line is an end of it; every pair would take long.
  return farthestFrom(farthestFrom(all[0]).to);
}

/** Whether a nameless piece lies on the line of a runway and next to it. */
function continues(pieces: readonly MapObject[], piece: MapObject, around: Place): boolean {
  const { lengthM, from, to } = spread(pieces, around);
  if (!from || !to || lengthM === 0) return false;
  return piece.points.every((place) => {
    const at = planPoint(around, place);
    if (at === null) return false;
    const [x, y] = [
      (to.at.eastM - from.at.eastM) / lengthM,
      (to.at.northM - from.at.northM) / lengthM,
    ];
    const [e, n] = [at.eastM - from.at.eastM, at.northM - from.at.northM];
    const alongM = e * x + n * y;
    return Math.abs(e * y - n * x) < 15 && alongM > -800 && alongM < lengthM + 800;
  });
}

function runwayOf(name: string, pieces: readonly MapObject[], around: Place): MappedRunway | null {
  const { lengthM, from, to } = spread(pieces, around);
  if (!from || !to || lengthM < SHORTEST_M) return null;
  const bearing =
    Math.atan2(to.at.eastM - from.at.eastM, to.at.northM - from.at.northM) / RADIANS_PER_DEGREE;
  const [one = '', other = ''] = name.split('/');
  const offDeg = (designator: string) =>
    Math.abs(turnDeg(Number.parseInt(designator, 10) * 10 - bearing));
  const [atFrom, atTo] = offDeg(one) <= offDeg(other) ? [one, other] : [other, one];
  const displaced = (end: typeof from) => {
    const lengths = pieces
      .filter(({ tags }) => tags.runway === 'displaced_threshold')
      .flatMap((piece) => {
        const own = spread([piece], around);
        const touches = [own.from, own.to].some(
          (at) => at && Math.hypot(at.at.eastM - end.at.eastM, at.at.northM - end.at.northM) < 5,
        );
        return touches ? [own.lengthM] : [];
      });
    return Math.round(Math.max(0, ...lengths));
  };
  const lengthWhole = Math.round(lengthM);
  const tags = pieces.map((piece) => piece.tags);
  const width = tags.map(({ width }) => Number.parseFloat(width ?? '')).find((w) => w >= 10);
  const surface = tags.map((one) => SURFACES[one.surface ?? '']).find((s) => s !== undefined);
  const lit = tags.map((one) => one.lit).find((one) => one === 'yes' || one === 'no');
  const isDoubtful = Math.min(offDeg(one), offDeg(other)) > 35;
  const end = (designator: string, at: typeof from) => ({
    designator,
    at: { latDeg: at.place.latDeg, lonDeg: at.place.lonDeg },
    displacedM: displaced(at),
    toraM: lengthWhole,
    todaM: lengthWhole,
    asdaM: lengthWhole,
    ldaM: lengthWhole - displaced(at),
  });
  return {
    name,
    runway: {
      ...(width !== undefined && { widthM: Math.round(width) }),
      surface: surface ?? 'unknown',
      ...(lit !== undefined && { edgeLights: lit === 'yes' }),
      declared: false,
      ...(isDoubtful && { doubts: ['number'] }),
      ends: [end(atFrom, from), end(atTo, to)],
    },
    silent: [
      ...(width === undefined ? (['width'] as const) : []),
      ...(surface === undefined ? (['surface'] as const) : []),
      ...(lit === undefined ? (['lights'] as const) : []),
      ...(isDoubtful ? (['number'] as const) : []),
    ],
  };
}

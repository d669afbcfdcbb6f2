/** Taxi plans drawn for tests: around one east-west runway, 09/27, 1000 m, its end 09 at the reference point. */

import geographiclib from 'geographiclib-geodesic';
import type { Field } from '../../../src/core/airfield/field';
import type { TaxiEdge, TaxiNode } from '../../../src/core/taxi/graph';
import type { Turn } from '../../../src/core/taxi/pace';
import type { Route } from '../../../src/core/taxi/route';
import type { Telling } from '../../../src/core/taxi/told';

const PLACE = { latDeg: 0, lonDeg: 0 };

/** A runway as these tests think of one: from a point, metres east and north, in a direction. */
export interface Laid {
  readonly ends: readonly [string, string];
  readonly from: readonly [number, number];
  readonly headingDeg: number;
  readonly lengthM: number;
}

const EAST_WEST: Laid = { ends: ['09', '27'], from: [0, 0], headingDeg: 90, lengthM: 1000 };

/** A place so far east and north of the reference point, by another library's geodesics. */
function placeAt([eastM, northM]: readonly [number, number]) {
  const azimuth = (Math.atan2(eastM, northM) * 180) / Math.PI;
  const distance = Math.hypot(eastM, northM);
  const { lat2 = 0, lon2 = 0 } = geographiclib.Geodesic.WGS84.Direct(0, 0, azimuth, distance);
  return { latDeg: lat2, lonDeg: lon2 };
}

/** A field of those nodes and edges, with those runways. */
export function drawn(
  nodes: readonly TaxiNode[],
  edges: readonly TaxiEdge[],
  runways: readonly Laid[] = [EAST_WEST],
): Field {
  return {
    lapstrip: 'field',
    version: 1,
    code: 'XTST',
    name: 'Drawn',
    about: 'Not a place.',
    place: { ...PLACE, elevationFt: 0 },
    numbersFrom: 'magnetic',
    radio: [],
    runways: runways.map(({ ends, from, headingDeg, lengthM }) => {
      const rad = (headingDeg * Math.PI) / 180;
      const far = [from[0] + lengthM * Math.sin(rad), from[1] + lengthM * Math.cos(rad)] as const;
      const end = (designator: string, at: readonly [number, number]) => ({
        designator,
        at: placeAt(at),
        elevationFt: 0,
        displacedM: 0,
        toraM: lengthM,
        todaM: lengthM,
        asdaM: lengthM,
        ldaM: lengthM,
      });
      return {
        widthM: 30,
        surface: 'asphalt' as const,
        edgeLights: true,
        ends: [end(ends[0], from), end(ends[1], far)] as [
          ReturnType<typeof end>,
          ReturnType<typeof end>,
        ],
      };
    }),
    taxi: { nodes: [...nodes], edges: [...edges] },
  };
}

export const node = (
  id: string,
  xM: number,
  yM: number,
  kind: TaxiNode['kind'] = 'junction',
  more: Partial<TaxiNode> = {},
): TaxiNode => ({ id, xM, yM, kind, ...more });

export const stretch = (
  name: string,
  from: string,
  to: string,
  more: Partial<TaxiEdge> = {},
): TaxiEdge => ({ from, to, name, on: 'taxiway', ...more });

/** A route with what it is told with, and no turn that can't be made. */
export const telling = (
  { taxi }: Pick<Field, 'taxi'>,
  route: Route | null,
  turns: readonly Turn[] = [],
): Telling => ({
  route,
  turns,
  nameOf: (id) => taxi.nodes.find((one) => one.id === id)?.name ?? null,
});

/** Everything is open, and any width will do. */
export const FREE = { closed: [], neededWidthM: null };

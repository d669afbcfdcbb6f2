/** Invented fields, winds and questions, to ask about the ends of runways that lie just so. */

import geographiclib from 'geographiclib-geodesic';
import { oppositeOf } from '../../../src/core/airfield/designator';
import type { Designator, Field } from '../../../src/core/airfield/field';
import type { EndsQuestion } from '../../../src/core/runway/question';
import type { Wind } from '../../../src/core/weather/report';

/** A runway as these tests think of one. Declared distances are the length unless given. */
export interface Strip {
  readonly designator: Designator;
  readonly headingDeg: number;
  readonly lengthM?: number;
  readonly lda?: readonly [number, number];
  readonly closed?: readonly [string | undefined, string | undefined];
}

const REFERENCE = { latDeg: 50, lonDeg: -3 };

/** A field whose runways have exactly the true headings asked for, by another library's geodesics. */
export function inventedField(strips: readonly Strip[], calmWindEnd?: Designator): Field {
  return {
    lapstrip: 'field',
    version: 1,
    code: 'XTST',
    name: 'Invented',
    about: 'Not a place.',
    place: { ...REFERENCE, elevationFt: 30 },
    numbersFrom: 'magnetic',
    ...(calmWindEnd === undefined ? {} : { calmWindEnd }),
    radio: [],
    runways: strips.map(runwayOf),
    taxi: { nodes: [], edges: [] },
  };
}

function runwayOf(strip: Strip, index: number): Field['runways'][number] {
  const lengthM = strip.lengthM ?? 1400;
  const start = { latDeg: REFERENCE.latDeg + index * 0.01, lonDeg: REFERENCE.lonDeg };
  const { lat2 = 0, lon2 = 0 } = geographiclib.Geodesic.WGS84.Direct(
    start.latDeg,
    start.lonDeg,
    strip.headingDeg,
    lengthM,
  );
  const far = { latDeg: lat2, lonDeg: lon2 };
  const end = (designator: Designator, at: typeof start, side: 0 | 1) => {
    const closed = strip.closed?.[side];
    return {
      designator,
      at,
      elevationFt: 30,
      displacedM: 0,
      toraM: lengthM,
      todaM: lengthM,
      asdaM: lengthM,
      ldaM: strip.lda?.[side] ?? lengthM,
      ...(closed === undefined ? {} : { closed }),
    };
  };
  return {
    widthM: 45,
    surface: 'asphalt',
    edgeLights: true,
    ends: [end(strip.designator, start, 0), end(oppositeOf(strip.designator), far, 1)],
  };
}

/** A plain wind, with whatever else is given. */
export function wind(
  fromDeg: number | null,
  speedKt: number | null,
  more: Partial<Wind> = {},
): Wind {
  return {
    fromDeg,
    speedKt,
    gustKt: null,
    sectorDeg: null,
    variable: false,
    speedIsMinimum: false,
    gustIsMinimum: false,
    ...more,
  };
}

/** The field most of these tests use: 10/28 and 01/19 with a variation of 14° west. */
export const CROSSED = inventedField([
  { designator: '10', headingDeg: 86 },
  { designator: '01', headingDeg: 356 },
]);

/** A question with wide limits, a true wind and nothing said of length or taxi. */
export function question(more: Partial<EndsQuestion> & Pick<EndsQuestion, 'wind'>): EndsQuestion {
  return {
    field: CROSSED,
    north: 'true',
    at: new Date('1987-04-05T18:50:00Z'),
    limits: { crosswindKt: 24, tailwindKt: 10 },
    surface: 'dry',
    purpose: 'take-off',
    variationDeg: -14,
    ...more,
  };
}

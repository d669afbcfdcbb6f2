/** Southern, high and hot: a long runway that the thin air makes short, and a closed one beside it. */

import { alongRunway, apron, board, end, taxiway } from '../plan.mjs';

const LAT_DEG = -19.3;
const LON_DEG = -16.6;
const b = board({ latDeg: LAT_DEG, lonDeg: LON_DEG, bearingDeg: 114, middleM: 1475 });

/** The old gravel runway, 06/24, from its south-western end, on the board of 14/32. */
const GRAVEL_M = 800;
const GRAVEL_START = { s: 560, t: 870 };
const GRAVEL_TURN_RAD = ((37.5 - 114) * Math.PI) / 180;
const GRAVEL_END = {
  s: GRAVEL_START.s + GRAVEL_M * Math.cos(GRAVEL_TURN_RAD),
  t: GRAVEL_START.t + GRAVEL_M * Math.sin(GRAVEL_TURN_RAD),
};
const washedOut = { tora: GRAVEL_M, closed: 'Washed out by the rains' };

const STANDS = [1, 2, 3, 4].map((number) => ({ number, s: 1220 + 80 * number }));

export default {
  code: 'XTUM',
  name: 'Tumbrel',
  about:
    'On the rim of an old crater, hot by ten in the morning. The runway looks long and is not: work the numbers out. 32 is reached by rolling back along the runway. The gravel runway is closed.',
  place: { latDeg: LAT_DEG, lonDeg: LON_DEG, elevationFt: 6268 },
  calmWindEnd: '14',
  radio: [{ name: 'Tumbrel tower', mhz: '119.9', service: 'tower' }],
  runways: [
    {
      widthM: 45,
      surface: 'concrete',
      edgeLights: true,
      ends: [
        end('14', b.place(0, 0), 6268, { tora: 2950, toda: 3250, asda: 3050 }),
        end('32', b.place(2950, 0), 6206, { tora: 2950, lda: 2800, displaced: 150 }),
      ],
    },
    {
      widthM: 23,
      surface: 'gravel',
      edgeLights: false,
      ends: [
        end('06', b.place(GRAVEL_START.s, GRAVEL_START.t), 6231, washedOut),
        end('24', b.place(GRAVEL_END.s, GRAVEL_END.t), 6247, washedOut),
      ],
    },
  ],
  taxi: {
    nodes: [
      b.runway('r14', 12, 0, '14'),
      b.runway('rB', 1900, 0),
      b.runway('r32', 2938, 0, '32'),
      b.hold('A1', 12, 90, '14'),
      b.hold('A2', 650, 230),
      b.hold('A3', 770, 230),
      b.hold('B1', 1900, 90, '32'),
      b.junction('a', 12, 230),
      b.junction('ap', 1420, 230),
      b.junction('ab', 1900, 230),
      ...STANDS.map(({ number, s }) => b.junction(`p${number}`, s, 290)),
      ...STANDS.map(({ number, s }) => b.stand(`s${number}`, s, 350, `Stand ${number}`)),
    ],
    edges: [
      ...STANDS.flatMap(({ number }) => apron(`s${number}`, `p${number}`)),
      ...apron('p1', 'p2', 'p3', 'p4'),
      ...apron('p2', 'ap'),
      ...apron('p3', 'ap'),
      ...taxiway('A', ['r14', 'A1', 'a', 'A2'], { widthM: 18 }),
      ...taxiway('A', ['A2', 'A3'], { widthM: 18, crosses: '06/24' }),
      ...taxiway('A', ['A3', 'ap', 'ab'], { widthM: 18 }),
      ...taxiway('B', ['ab', 'B1', 'rB'], { widthM: 18 }),
      ...alongRunway('14/32', 'r14', 'rB'),
      ...alongRunway('14/32', 'rB', 'r32'),
    ],
  },
};

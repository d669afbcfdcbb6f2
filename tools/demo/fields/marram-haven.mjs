/** Parallel runways with a tower and a ground controller; the far one is reached across the near. */

import { alongRunway, apron, board, end, taxiway } from '../plan.mjs';

const LAT_DEG = 38.2;
const LON_DEG = -19.4;
const b = board({ latDeg: LAT_DEG, lonDeg: LON_DEG, bearingDeg: 40.5, middleM: 1200 });

/** 05R/23L lies this far to the right of 05L/23R, and between these points along it, metres. */
const RIGHT = { t: 420, from: 400, to: 1900 };
const WIDE = { widthM: 23 };

const STANDS = [1, 2, 3, 4, 5, 6].map((number) => ({ number, s: 850 + 100 * number }));

export default {
  code: 'XMAR',
  name: 'Marram Haven',
  about:
    'The main field, at the capital. Parallel runways: the long one for the jets, the short one beside the apron for the rest. Crossing the short one takes a word from the ground controller.',
  place: { latDeg: LAT_DEG, lonDeg: LON_DEG, elevationFt: 187 },
  calmWindEnd: '23R',
  preferredEnds: ['23R', '23L'],
  radio: [
    { name: 'Marram ground', mhz: '121.85', service: 'ground' },
    { name: 'Marram tower', mhz: '118.35', service: 'tower' },
    { name: 'Marram information', mhz: '126.4', service: 'information' },
  ],
  runways: [
    {
      widthM: 45,
      surface: 'asphalt',
      edgeLights: true,
      ends: [
        end('05L', b.place(0, 0), 156, { tora: 2400, toda: 2600, asda: 2460 }),
        end('23R', b.place(2400, 0), 187, { tora: 2400, lda: 2200, displaced: 200 }),
      ],
    },
    {
      widthM: 30,
      surface: 'asphalt',
      edgeLights: true,
      ends: [
        end('05R', b.place(RIGHT.from, RIGHT.t), 160, { tora: 1500 }),
        end('23L', b.place(RIGHT.to, RIGHT.t), 178, {
          tora: 1500,
          toda: 1650,
          lda: 1380,
          displaced: 120,
        }),
      ],
    },
  ],
  taxi: {
    nodes: [
      b.runway('r05L', 12, 0, '05L'),
      b.runway('rF', 1000, 0),
      b.runway('rG', 1400, 0),
      b.runway('r23R', 2388, 0, '23R'),
      b.runway('r05R', 412, RIGHT.t, '05R'),
      b.runway('r23L', 1888, RIGHT.t, '23L'),
      b.hold('B1', 12, 100, '05L'),
      b.hold('B2', 2388, 100, '23R'),
      b.hold('A1', 412, 510, '05R'),
      b.hold('A2', 1888, 510, '23L'),
      b.hold('D1', 760, 510),
      b.hold('D2', 760, 330),
      b.hold('E1', 1540, 510),
      b.hold('E2', 1540, 330),
      b.junction('b1', 12, 190),
      b.junction('bd', 760, 190),
      b.junction('bm', 1200, 190),
      b.junction('be', 1540, 190),
      b.junction('b2', 2388, 190),
      b.junction('a1', 412, 560),
      b.junction('ad', 760, 560),
      b.junction('ap', 1200, 560),
      b.junction('ae', 1540, 560),
      b.junction('a2', 1888, 560),
      b.junction('p0', 1200, 620),
      ...STANDS.map(({ number, s }) => b.junction(`p${number}`, s, 620)),
      ...STANDS.map(({ number, s }) => b.stand(`s${number}`, s, 690, `Stand ${number}`)),
    ],
    edges: [
      ...STANDS.flatMap(({ number }) => apron(`s${number}`, `p${number}`)),
      ...apron('p1', 'p2', 'p3', 'p0', 'p4', 'p5', 'p6'),
      ...apron('p0', 'ap'),
      ...taxiway('A', ['r05R', 'A1', 'a1', 'ad', 'ap', 'ae', 'a2', 'A2', 'r23L'], WIDE),
      ...taxiway('D', ['ad', 'D1'], WIDE),
      ...taxiway('D', ['D1', 'D2'], { ...WIDE, crosses: '05R/23L' }),
      ...taxiway('D', ['D2', 'bd'], WIDE),
      ...taxiway('E', ['ae', 'E1'], WIDE),
      ...taxiway('E', ['E1', 'E2'], { ...WIDE, crosses: '05R/23L' }),
      ...taxiway('E', ['E2', 'be'], WIDE),
      ...taxiway('B', ['r05L', 'B1', 'b1', 'bd', 'bm', 'be', 'b2', 'B2', 'r23R'], WIDE),
      ...taxiway('F', ['rF', 'bm'], { oneWay: true }),
      ...taxiway('G', ['rG', 'bm'], { oneWay: true }),
      ...alongRunway('05L/23R', 'r05L', 'rF'),
      ...alongRunway('05L/23R', 'rF', 'rG'),
      ...alongRunway('05L/23R', 'rG', 'r23R'),
      ...alongRunway('05R/23L', 'r05R', 'r23L'),
    ],
  },
};

/** Parallel runways with tower and ground; the far one is reached across the near one. */

import { alongRunway, board, end, row, taxiway } from '../plan.mjs';

const LAT_DEG = 38.2;
const LON_DEG = -19.4;
const b = board({ latDeg: LAT_DEG, lonDeg: LON_DEG, bearingDeg: 40.5, middleM: 1200 });

/** How far 05R/23L lies to the right of 05L/23R, and from where to where along it, metres. */
const RIGHT = { t: 420, from: 400, to: 1900 };
const WIDE = { widthM: 23 };

/** Parallel taxiways and the holding points beside them, metres to the right of 05L/23R. */
const B = 183;
const A = RIGHT.t + 168;
const HOLD = 90;

/** High-speed exits leave the runway at 30° and meet B this far on, metres. */
const FAST_M = Math.round(B / Math.tan(Math.PI / 6));

const LANE = 640;
const terminal = row(b, [1, 2, 3, 4], { s: 1000, step: 100, lane: LANE, stand: 700 });
const freight = row(b, [11], { s: 1680, step: 90, lane: LANE, stand: 695 });
const light = row(b, [21, 22], { s: 545, step: 45, lane: LANE, stand: 675 });

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
      b.runway('rC', 400, 0),
      b.runway('rG', 900, 0),
      b.runway('rF', 1450, 0),
      b.runway('rH', 2000, 0),
      b.runway('r23R', 2388, 0, '23R'),
      b.runway('r05R', 412, RIGHT.t, '05R'),
      b.runway('r23L', 1888, RIGHT.t, '23L'),
      b.hold('B1', 12, HOLD, '05L'),
      b.hold('B2', 2388, HOLD, '23R'),
      b.hold('C1', 400, HOLD, '05L'),
      b.hold('H1', 2000, HOLD, '23R'),
      b.hold('A1', 412, RIGHT.t + HOLD, '05R'),
      b.hold('A2', 1888, RIGHT.t + HOLD, '23L'),
      b.hold('D1', 760, RIGHT.t + HOLD),
      b.hold('D2', 760, RIGHT.t - HOLD),
      b.hold('E1', 1540, RIGHT.t + HOLD),
      b.hold('E2', 1540, RIGHT.t - HOLD),
      b.junction('b1', 12, B),
      b.junction('bc', 400, B),
      b.junction('bg', 900 - FAST_M, B),
      b.junction('bd', 760, B),
      b.junction('be', 1540, B),
      b.junction('bf', 1450 + FAST_M, B),
      b.junction('bh', 2000, B),
      b.junction('b2', 2388, B),
      b.junction('a1', 412, A),
      b.junction('an', 590, A),
      b.junction('ad', 760, A),
      b.junction('al', 1100, A),
      b.junction('am', 1300, A),
      b.junction('ae', 1540, A),
      b.junction('aq', 1680, A),
      b.junction('a2', 1888, A),
      ...terminal.nodes,
      ...freight.nodes,
      ...light.nodes,
    ],
    edges: [
      ...terminal.edges,
      ...freight.edges,
      ...light.edges,
      ...taxiway('L', ['p2', 'al']),
      ...taxiway('M', ['p4', 'am']),
      ...taxiway('N', ['p22', 'an']),
      ...taxiway('Q', ['p11', 'aq']),
      ...taxiway('A', ['r05R', 'A1', 'a1', 'an', 'ad', 'al', 'am', 'ae', 'aq', 'a2', 'A2'], WIDE),
      ...taxiway('A', ['A2', 'r23L'], WIDE),
      ...taxiway('D', ['ad', 'D1'], WIDE),
      ...taxiway('D', ['D1', 'D2'], { ...WIDE, crosses: '05R/23L' }),
      ...taxiway('D', ['D2', 'bd'], WIDE),
      ...taxiway('E', ['ae', 'E1'], WIDE),
      ...taxiway('E', ['E1', 'E2'], { ...WIDE, crosses: '05R/23L' }),
      ...taxiway('E', ['E2', 'be'], WIDE),
      ...taxiway('B', ['r05L', 'B1', 'b1', 'bc', 'bg', 'bd', 'be', 'bf', 'bh', 'b2', 'B2'], WIDE),
      ...taxiway('B', ['B2', 'r23R'], WIDE),
      ...taxiway('C', ['rC', 'C1', 'bc'], WIDE),
      ...taxiway('H', ['rH', 'H1', 'bh'], WIDE),
      ...taxiway('F', ['rF', 'bf'], { ...WIDE, oneWay: true }),
      ...taxiway('G', ['rG', 'bg'], { ...WIDE, oneWay: true }),
      ...alongRunway('05L/23R', ['r05L', 'rC', 'rG', 'rF', 'rH', 'r23R']),
      ...alongRunway('05R/23L', ['r05R', 'r23L']),
    ],
    hotSpots: [
      b.hotSpot('HS 1', 760, RIGHT.t, 'D crosses 05R/23L.'),
      b.hotSpot('HS 2', 1540, RIGHT.t, 'E crosses 05R/23L.'),
      b.hotSpot('HS 3', 900 - FAST_M, B, 'G joins B fast.'),
    ],
  },
  translations: {
    de: {
      'The main field, at the capital. Parallel runways: the long one for the jets, the short one beside the apron for the rest. Crossing the short one takes a word from the ground controller.':
        'Der Hauptplatz, bei der Hauptstadt. Zwei parallele Pisten: die lange für die Jets, die kurze am Vorfeld für alle anderen. Über die kurze geht es nur auf ein Wort der Rollkontrolle.',
      'D crosses 05R/23L.': 'D kreuzt die 05R/23L.',
      'E crosses 05R/23L.': 'E kreuzt die 05R/23L.',
      'G joins B fast.': 'Von G kommt man schnell auf B.',
    },
  },
};

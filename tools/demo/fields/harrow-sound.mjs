/** Crossing runways, no tower, and a taxiway across one runway to the other. */

import { alongRunway, apron, board, end, row, taxiway } from '../plan.mjs';

const LAT_DEG = 62.95;
const LON_DEG = -10.55;
const b = board({ latDeg: LAT_DEG, lonDeg: LON_DEG, bearingDeg: 86, middleM: 700 });

/** Where 01/19 crosses 10/28, metres from the end of 10. */
const CROSSING = 860;
/** How far the parallel taxiway and its holding points lie south of 10/28, metres. */
const PARALLEL = 168;
const HOLD = 90;
/** Where F leaves the runway at an angle and where it meets K, metres from the end of 10. */
const F_FROM = 1200;
const K_AT = 1388;

/** The mail apron on the parallel taxiway, and the light aircraft's tie-downs off C. */
const mail = row(b, [1, 2, 3, 4, 5, 6], { s: 570, step: -70, lane: 250, stand: 305 });
const light = row(b, [7, 8, 9, 10], { s: 590, step: -32, lane: 440, stand: 470 });

export default {
  code: 'XHAR',
  name: 'Harrow Sound',
  about:
    'The mail strip of the northern isles, on a flat neck of land between two bays. No tower: the wind is read from the sock and from the harbour office. The way to 28 crosses 01/19.',
  place: { latDeg: LAT_DEG, lonDeg: LON_DEG, elevationFt: 46 },
  radio: [{ name: 'Harrow traffic', mhz: '118.7', service: 'traffic' }],
  runways: [
    {
      widthM: 45,
      surface: 'asphalt',
      edgeLights: true,
      ends: [
        end('10', b.place(0, 0), 34, { tora: 1400, asda: 1460, lda: 1310, displaced: 90 }),
        end('28', b.place(1400, 0), 46, { tora: 1400, toda: 1550 }),
      ],
    },
    {
      widthM: 30,
      surface: 'asphalt',
      edgeLights: false,
      ends: [
        end('01', b.place(CROSSING, 520), 38, { tora: 1340 }),
        end('19', b.place(CROSSING, -820), 45, { tora: 1340, lda: 1280, displaced: 60 }),
      ],
    },
  ],
  taxi: {
    nodes: [
      b.runway('r10', 12, 0, '10'),
      b.runway('rD', 290, 0),
      b.runway('rE', 560, 0),
      b.runway('rF', F_FROM, 0),
      b.runway('r28', 1388, 0, '28'),
      b.runway('r01', CROSSING, 508, '01'),
      b.runway('r19', CROSSING, -808, '19'),
      b.hold('A1', 12, HOLD, '10'),
      b.hold('D1', 290, HOLD, '10'),
      b.hold('F1', F_FROM + ((K_AT - F_FROM) * HOLD) / PARALLEL, HOLD, '28'),
      b.hold('K2', 1388, HOLD, '28'),
      b.hold('C1', 785, 508, '01', '19'),
      b.hold('B1', 785, PARALLEL),
      b.hold('K1', 935, PARALLEL),
      b.junction('a', 12, PARALLEL),
      b.junction('ab', 290, PARALLEL),
      b.junction('e', 560, PARALLEL),
      b.junction('k', K_AT, PARALLEL),
      b.junction('cg', 640, 440),
      b.junction('c', 640, 508),
      ...mail.nodes,
      ...light.nodes,
    ],
    edges: [
      ...mail.edges,
      ...light.edges,
      ...apron('p1', 'e'),
      ...apron('p5', 'ab'),
      ...apron('p6', 'ab'),
      ...apron('p7', 'cg'),
      ...taxiway('A', ['r10', 'A1', 'a', 'ab'], { widthM: 15 }),
      ...taxiway('B', ['ab', 'e', 'B1'], { widthM: 15 }),
      ...taxiway('B', ['B1', 'K1'], { widthM: 15, crosses: '01/19' }),
      ...taxiway('K', ['K1', 'k', 'K2', 'r28'], { widthM: 15 }),
      ...taxiway('C', ['p1', 'cg', 'c', 'C1', 'r01'], { widthM: 10.5 }),
      ...taxiway('D', ['rD', 'D1', 'ab'], { widthM: 15 }),
      ...taxiway('E', ['rE', 'e'], { widthM: 15, oneWay: true }),
      ...taxiway('F', ['rF', 'F1', 'k'], { widthM: 15 }),
      ...alongRunway('10/28', ['r10', 'rD', 'rE', 'rF', 'r28'], { rF: '01/19' }),
      ...alongRunway('01/19', ['r01', 'r19'], { r19: '10/28' }),
    ],
    hotSpots: [
      b.hotSpot('HS 1', CROSSING, PARALLEL, 'B crosses 01/19, and nobody in a tower looks out.'),
      b.hotSpot('HS 2', 290, PARALLEL, 'A, B, D and the apron meet: straight on is the runway.'),
    ],
  },
  translations: {
    de: {
      'The mail strip of the northern isles, on a flat neck of land between two bays. No tower: the wind is read from the sock and from the harbour office. The way to 28 crosses 01/19.':
        'Der Postplatz der nördlichen Inseln, auf einer flachen Landenge zwischen zwei Buchten. Kein Turm: Der Wind wird am Windsack und beim Hafenamt abgelesen. Der Weg zur 28 kreuzt die 01/19.',
      'B crosses 01/19, and nobody in a tower looks out.':
        'B kreuzt die 01/19, und kein Turm passt auf.',
      'A, B, D and the apron meet: straight on is the runway.':
        'A, B, D und das Vorfeld treffen sich: Geradeaus liegt die Piste.',
    },
  },
};

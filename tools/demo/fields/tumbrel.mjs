/** Southern, hot and high: a long runway that thin air makes short, beside a closed one. */

import { alongRunway, apron, board, end, row, taxiway } from '../plan.mjs';

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

/** How far the parallel taxiway and its holding points lie from 14/32, metres. */
const PARALLEL = 183;
const HOLD = 90;
const WIDE = { widthM: 23 };

const large = row(b, [1, 2, 3, 4], { s: 1330, step: 85, lane: 245, stand: 305 });
const light = row(b, [5, 6, 7, 8], { s: 1040, step: 45, lane: 245, stand: 285 });

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
      b.runway('rC', 900, 0),
      b.runway('rB', 1900, 0),
      b.runway('r32', 2938, 0, '32'),
      b.hold('A1', 12, HOLD, '14'),
      b.hold('C1', 900, HOLD, '14'),
      b.hold('B1', 1900, HOLD, '32'),
      b.hold('A2', 650, PARALLEL),
      b.hold('A3', 790, PARALLEL),
      b.junction('a', 12, PARALLEL),
      b.junction('ac', 900, PARALLEL),
      b.junction('al', 1107, PARALLEL),
      b.junction('ap', 1457, PARALLEL),
      b.junction('ab', 1900, PARALLEL),
      ...large.nodes,
      ...light.nodes,
    ],
    edges: [
      ...large.edges,
      ...light.edges,
      ...apron('p8', 'p1'),
      ...apron('p6', 'al'),
      ...apron('p7', 'al'),
      ...apron('p2', 'ap'),
      ...apron('p3', 'ap'),
      ...taxiway('A', ['r14', 'A1', 'a', 'A2'], WIDE),
      ...taxiway('A', ['A2', 'A3'], { ...WIDE, crosses: '06/24' }),
      ...taxiway('A', ['A3', 'ac', 'al', 'ap', 'ab'], WIDE),
      ...taxiway('B', ['ab', 'B1', 'rB'], WIDE),
      ...taxiway('C', ['ac', 'C1', 'rC'], WIDE),
      ...alongRunway('14/32', ['r14', 'rC', 'rB', 'r32']),
    ],
    hotSpots: [
      b.hotSpot('HS 1', 720, PARALLEL, 'A crosses the closed gravel runway; washouts at its edge.'),
      b.hotSpot('HS 2', 1900, 0, 'For 32 one rolls back 1 050 m against whoever lands.'),
    ],
  },
  translations: {
    de: {
      'On the rim of an old crater, hot by ten in the morning. The runway looks long and is not: work the numbers out. 32 is reached by rolling back along the runway. The gravel runway is closed.':
        'Am Rand eines alten Kraters, morgens um zehn schon heiß. Die Piste sieht lang aus und ist es nicht: Werte ausrechnen. Zur 32 geht es auf der Piste zurück. Die Schotterpiste ist gesperrt.',
      'Washed out by the rains': 'Vom Regen ausgewaschen',
      'A crosses the closed gravel runway; washouts at its edge.':
        'A kreuzt die gesperrte Schotterpiste; ihr Rand ist ausgewaschen.',
      'For 32 one rolls back 1 050 m against whoever lands.':
        'Zur 32 rollt man 1 050 m zurück, jedem entgegen, der landet.',
    },
  },
};

/** A short grass strip on a slope. */

import { alongRunway, apron, board, end, taxiway } from '../plan.mjs';

const LAT_DEG = 62.71;
const LON_DEG = -10.96;
const b = board({ latDeg: LAT_DEG, lonDeg: LON_DEG, bearingDeg: 9, middleM: 280 });

export default {
  code: 'XLIN',
  name: 'Linnet Hill',
  about:
    'A farm strip across the sound from Harrow. Grass, mown to the fence, rising to the north: land uphill on 02 and leave downhill on 20 when the wind lets you. Wet after any rain.',
  place: { latDeg: LAT_DEG, lonDeg: LON_DEG, elevationFt: 268 },
  calmWindEnd: '20',
  radio: [{ name: 'Linnet traffic', mhz: '123.15', service: 'traffic' }],
  runways: [
    {
      widthM: 18,
      surface: 'grass',
      edgeLights: false,
      ends: [
        end('02', b.place(0, 0), 212, { tora: 560, lda: 520, displaced: 40 }),
        end('20', b.place(560, 0), 268, { tora: 560, lda: 540, displaced: 20 }),
      ],
    },
  ],
  taxi: {
    nodes: [
      b.runway('r02', 10, 0, '02'),
      b.runway('r20', 550, 0, '20'),
      b.hold('G1', 10, 40, '02', '20'),
      b.hold('H1', 550, 40, '20'),
      b.junction('g', 30, 75),
      b.junction('h', 550, 75),
      b.stand('s1', 70, 95, 'Barn'),
      b.stand('s2', 30, 110, 'Gate'),
      b.stand('s3', -5, 95, 'Pump'),
    ],
    edges: [
      ...apron('s1', 'g'),
      ...apron('s2', 'g'),
      ...apron('s3', 'g'),
      ...taxiway('G', ['g', 'G1', 'r02']),
      ...taxiway('H', ['g', 'h', 'H1', 'r20']),
      ...alongRunway('02/20', ['r02', 'r20']),
    ],
    hotSpots: [
      b.hotSpot('HS 1', 300, 75, 'The lane to the upper field crosses H: sheep, and a tractor.'),
    ],
  },
  translations: {
    de: {
      'A farm strip across the sound from Harrow. Grass, mown to the fence, rising to the north: land uphill on 02 and leave downhill on 20 when the wind lets you. Wet after any rain.':
        'Der Grasplatz eines Hofs, Harrow gegenüber am anderen Ufer des Sunds. Gemäht bis zum Zaun und nach Norden ansteigend: Lässt der Wind es zu, bergauf auf der 02 landen und bergab auf der 20 starten. Nach jedem Regen nass.',
      'The lane to the upper field crosses H: sheep, and a tractor.':
        'Der Weg zur oberen Weide kreuzt H: Schafe und ein Traktor.',
    },
  },
};

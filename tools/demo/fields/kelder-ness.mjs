/** Far north, with the compass more than 20° off and no taxiway to either end. */

import { alongRunway, apron, board, end, taxiway } from '../plan.mjs';

const LAT_DEG = 71.4;
const LON_DEG = -16.8;
const b = board({ latDeg: LAT_DEG, lonDeg: LON_DEG, bearingDeg: 125, middleM: 825 });

export default {
  code: 'XKEL',
  name: 'Kelder Ness',
  about:
    'The weather station under the ice cap. One runway between scree and sea; both ends are reached by rolling back along it. In winter it is dark for weeks.',
  place: { latDeg: LAT_DEG, lonDeg: LON_DEG, elevationFt: 71 },
  radio: [{ name: 'Kelder information', mhz: '122.45', service: 'information' }],
  runways: [
    {
      widthM: 30,
      surface: 'asphalt',
      edgeLights: true,
      ends: [
        end('15', b.place(0, 0), 71, { tora: 1650, asda: 1710 }),
        end('33', b.place(1650, 0), 22, { tora: 1650, lda: 1530, displaced: 120 }),
      ],
    },
  ],
  taxi: {
    nodes: [
      b.runway('r15', 15, 0, '15'),
      b.runway('rA', 900, 0),
      b.runway('r33', 1635, 0, '33'),
      b.hold('A1', 900, 90, '15', '33'),
      b.junction('ap', 900, 170),
      b.junction('p1', 860, 210),
      b.junction('p3', 940, 210),
      b.stand('s1', 820, 250, 'Stand 1'),
      b.stand('s2', 900, 250, 'Stand 2'),
      b.stand('s3', 980, 250, 'Stand 3'),
    ],
    edges: [
      ...apron('s1', 'p1', 'ap', 'p3', 's3'),
      ...apron('s2', 'ap'),
      ...taxiway('A', ['ap', 'A1', 'rA'], { widthM: 15 }),
      ...alongRunway('15/33', 'r15', 'rA'),
      ...alongRunway('15/33', 'rA', 'r33'),
    ],
  },
};

/** Far north, with over 20° of variation and no taxiway to either end. */

import { alongRunway, apron, board, end, row, taxiway } from '../plan.mjs';

const LAT_DEG = 71.4;
const LON_DEG = -16.8;
const b = board({ latDeg: LAT_DEG, lonDeg: LON_DEG, bearingDeg: 125, middleM: 825 });

const stands = row(b, [1, 2, 3, 4, 5], { s: 790, step: 55, lane: 205, stand: 250 });

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
        end('15', b.place(0, 0), 71, { tora: 1650, asda: 1710, cables: [250, 1400] }),
        end('33', b.place(1650, 0), 22, {
          tora: 1650,
          lda: 1530,
          displaced: 120,
          cables: [250, 1400],
        }),
      ],
    },
  ],
  taxi: {
    nodes: [
      b.runway('r15', 15, 0, '15'),
      b.runway('rB', 700, 0),
      b.runway('rA', 900, 0),
      b.runway('r33', 1635, 0, '33'),
      b.hold('A1', 900, 90, '15', '33'),
      b.hold('B1', 700, 90, '15', '33'),
      b.junction('ap', 900, 160),
      b.junction('bp', 700, 160),
      ...stands.nodes,
    ],
    edges: [
      ...stands.edges,
      ...apron('p1', 'bp'),
      ...apron('p3', 'ap'),
      ...apron('bp', 'ap'),
      ...taxiway('A', ['ap', 'A1', 'rA'], { widthM: 15 }),
      ...taxiway('B', ['bp', 'B1', 'rB'], { widthM: 15 }),
      ...alongRunway('15/33', ['r15', 'rB', 'rA', 'r33']),
    ],
    hotSpots: [
      b.hotSpot('HS 1', 800, 0, 'Both ways back begin here: look up and down the runway first.'),
    ],
  },
  translations: {
    de: {
      'The weather station under the ice cap. One runway between scree and sea; both ends are reached by rolling back along it. In winter it is dark for weeks.':
        'Die Wetterstation unter der Eiskappe. Eine Piste zwischen Geröll und Meer; zu beiden Enden geht es nur auf der Piste zurück. Im Winter ist es wochenlang dunkel.',
      'Both ways back begin here: look up and down the runway first.':
        'Hier beginnen beide Wege zurück: erst die Piste hinauf und hinunter schauen.',
    },
  },
};

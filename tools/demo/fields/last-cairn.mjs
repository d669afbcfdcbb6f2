/** So far north that the runways are numbered by true north, and the radio stays silent. */

import { alongRunway, apron, board, end, taxiway } from '../plan.mjs';

const LAT_DEG = 83.9;
const LON_DEG = -9.5;
const b = board({ latDeg: LAT_DEG, lonDeg: LON_DEG, bearingDeg: 92, middleM: 600 });

export default {
  code: 'XCAI',
  name: 'Last Cairn',
  about:
    'A summer camp on gravel, further north than anyone lives. The numbers are painted to true north. No radio and no lights; look before you roll.',
  place: { latDeg: LAT_DEG, lonDeg: LON_DEG, elevationFt: 38 },
  numbersFrom: 'true',
  radio: [],
  runways: [
    {
      widthM: 30,
      surface: 'gravel',
      edgeLights: false,
      ends: [
        end('09', b.place(0, 0), 38, { tora: 1200 }),
        end('27', b.place(1200, 0), 31, { tora: 1200 }),
      ],
    },
  ],
  taxi: {
    nodes: [
      b.runway('r09', 12, 0, '09'),
      b.runway('rA', 420, 0),
      b.runway('r27', 1188, 0, '27'),
      b.hold('A1', 420, 80, '09', '27'),
      b.junction('p', 420, 130),
      b.junction('q', 480, 130),
      b.stand('s1', 390, 160, 'Camp west'),
      b.stand('s2', 450, 160, 'Camp east'),
      b.stand('s3', 510, 160, 'Fuel drums'),
    ],
    edges: [
      ...apron('s1', 'p', 'q', 's3'),
      ...apron('s2', 'q'),
      ...taxiway('A', ['p', 'A1', 'rA']),
      ...alongRunway('09/27', ['r09', 'rA', 'r27']),
    ],
    hotSpots: [b.hotSpot('HS 1', 420, 80, 'No line on the gravel: stop at the two oil drums.')],
  },
  translations: {
    de: {
      'A summer camp on gravel, further north than anyone lives. The numbers are painted to true north. No radio and no lights; look before you roll.':
        'Ein Sommerlager auf Schotter, weiter nördlich, als irgendwer wohnt. Die Pistennummern sind rechtweisend gemalt. Kein Funk und keine Lichter: erst schauen, dann rollen.',
      'No line on the gravel: stop at the two oil drums.':
        'Kein Strich auf dem Schotter: an den beiden Ölfässern halten.',
    },
  },
};

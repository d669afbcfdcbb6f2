/** Take-off tables of three handbooks, and the aircraft whose physics is fitted to them. */

import type { Aircraft } from '../../../src/core/aircraft/aircraft';
import { inventedAircraft } from '../../core/aircraft/invented';
import { lightSingle } from './lightSingle';

/** Pressure altitude, ft; then roll and way to 50 ft, ft, at 0, 10, 20, 30 and 40 °C. */
export type Row = readonly [number, ...(readonly [roll: number, to50ft: number])[]];

export interface Book {
  readonly name: string;
  readonly massKg: number;
  readonly rows: readonly Row[];
  readonly aircraft: Aircraft;
  /** Calibrated, flaps as for take-off. */
  readonly stallKt: number;
}

/** A light single of a wing and speeds; begun from textbook ranges. Thrust is the brake power × 0.75 / V, below static. */
function single(
  massKg: number,
  areaM2: number,
  powerW: number,
  staticN: number,
  rotateKt: number,
  liftOffKt: number,
  cleanCd = 0.033,
): Aircraft {
  const at = (kt: number): [number, number] => [
    kt,
    Math.min(staticN * (1 - kt / 260), (0.75 * powerW) / ((kt * 1852) / 3600)),
  ];
  return inventedAircraft(
    lightSingle([[0, staticN], at(30), at(50), at(65), at(80), at(110), at(140)], areaM2, cleanCd),
    {
      engine: 'piston',
      masses: {
        emptyKg: massKg / 2,
        usualTakeoffKg: massKg,
        maxTakeoffKg: massKg,
        usualLandingKg: massKg,
        maxLandingKg: massKg,
      },
      takeoff: { rotateKt, rotateTo: '', liftOffKt, runM: 0 },
      climb: { flapsUpByKt: 65, speedKt: [68, 80], pitchDeg: [0, 15] },
      landing: { approachKt: 60, runM: 150 },
    },
  );
}

const HP_W = 745.7;

export const BOOKS: readonly Book[] = [
  {
    // Cessna 172N, Pilot's Operating Handbook 1978, short field, 2 300 lb (values from memory).
    name: 'a four-seater of 160 hp',
    massKg: 1043,
    stallKt: 50,
    aircraft: single(1043, 16.2, 160 * HP_W, 2700, 54, 57),
    rows: [
      [0, [720, 1300], [775, 1390], [835, 1490], [895, 1590], [960, 1700]],
      [1000, [790, 1420], [850, 1525], [915, 1630], [980, 1745], [1050, 1865]],
      [2000, [865, 1555], [930, 1670], [1000, 1790], [1075, 1915], [1155, 2055]],
      [3000, [950, 1710], [1025, 1835], [1100, 1970], [1185, 2115], [1270, 2265]],
      [4000, [1045, 1880], [1125, 2025], [1210, 2175], [1300, 2335], [1400, 2510]],
    ],
  },
  {
    // Cessna 152, Pilot's Operating Handbook 1979, short field, 1 670 lb (values from memory).
    name: 'a two-seater of 110 hp',
    massKg: 757,
    stallKt: 45,
    aircraft: single(757, 14.9, 110 * HP_W, 2050, 50, 53, 0.042),
    rows: [
      [0, [640, 1190], [695, 1290], [755, 1390], [810, 1495], [875, 1605]],
      [1000, [705, 1310], [765, 1420], [825, 1530], [890, 1645], [960, 1770]],
      [2000, [775, 1445], [840, 1565], [910, 1690], [980, 1820], [1055, 1960]],
      [3000, [855, 1600], [925, 1730], [1000, 1870], [1080, 2020], [1165, 2185]],
    ],
  },
  {
    // Cessna 150M, Pilot's Operating Handbook 1976, flaps up, 1 600 lb (values from memory; 775 and 1 465
    // ft at 1 000 ft and 10 °C as quoted at humbleaviation.com, takeoffcharts.php).
    name: 'a two-seater of 100 hp',
    massKg: 726,
    stallKt: 47,
    aircraft: single(726, 14.6, 100 * HP_W, 2000, 50, 54, 0.042),
    rows: [
      [0, [655, 1245], [705, 1340], [760, 1435]],
      [1000, [720, 1365], [775, 1465], [835, 1570]],
    ],
  },
];

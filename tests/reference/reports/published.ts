/**
 * Reports as standards print them, with the wind that their source gives, in the source's own unit.
 *
 * Sources:
 * - annex: ICAO Annex 3, App. 3, examples A3-1 and A3-2, as encoded by WMO (github wmo-im/iwxxm,
 *   IWXXM/examples, commit 2c4db03).
 * - aim: FAA Aeronautical Information Manual, 7-1, key to METAR, as copied at faraim.org, aim-505.
 * - chart: NWS/FAA METAR reference chart, as copied at asiresource.com/metar.htm.
 * - suite: WMO translation suite (github wmo-im/iwxxm-translation, Amd79-80-2023/metar), wind from
 *   the XML beside each. Its README says: no official status, not reviewed.
 */

import { KT_PER_MPS } from '../../../src/core/units';

export interface PublishedReport {
  readonly text: string;
  readonly source: 'annex' | 'aim' | 'chart' | 'suite';
  /** `[from, speed, gust]`, knots; `from` is VRB where the source says variable, null unobserved. */
  readonly wind:
    | readonly [from: number | 'VRB' | null, speedKt: number, gustKt?: number]
    | 'not observable';
  readonly swing?: readonly [number, number];
  /** The speed, or the gust, is only known to be above its number. */
  readonly above?: 'speed' | 'gust';
}

const METRES_A_SECOND = (value: number) => value * KT_PER_MPS;

export const PUBLISHED: readonly PublishedReport[] = [
  {
    text: 'METAR YUDO 221630Z 24004MPS 0600 R12/1000U DZ FG SCT010 OVC020 17/16 Q1018 BECMG TL1700 0800 FG BECMG AT1800 9999 NSW',
    source: 'annex',
    wind: [240, METRES_A_SECOND(4)],
  },
  {
    text: 'SPECI YUDO 151115Z 05025G37KT 3000 1200NE +TSRA BKN005CB 25/22 Q1008 TEMPO TL1200 0600 BECMG AT1200 8000 NSW NSC',
    source: 'annex',
    wind: [50, 25, 37],
  },
  {
    text: 'METAR KPIT 091955Z COR 22015G25KT 3/4SM R28L/2600FT TSRA OVC010CB 18/16 A2992 RMK SLP045 T01820159',
    source: 'aim',
    wind: [220, 15, 25],
  },
  {
    text: 'METAR KABC 121755Z AUTO 21016G24KT 180V240 1SM R11/P6000FT -RA BR BKN015 OVC025 06/04 A2990 RMK AO2 PK WND 20032/25 WSHFT 1715 TSNO $',
    source: 'chart',
    wind: [210, 16, 24],
    swing: [180, 240],
  },
  {
    text: 'METAR BGBW 282350Z AUTO /////KT 9999NDV BKN190/// M03/M12 Q1023',
    source: 'suite',
    wind: 'not observable',
  },
  {
    text: 'METAR BGGH 282350Z 100P50KT 9999 SCT110 BKN130 M07/M11 Q1021',
    source: 'suite',
    wind: [100, 50],
    above: 'speed',
  },
  {
    text: 'METAR BGJN 282350Z 14035GP50KT 9999 SCT180 M19/M26 Q1024',
    source: 'suite',
    wind: [140, 35, 50],
    above: 'gust',
  },
  {
    text: 'METAR BGTL 290039Z AUTO 08009KT 6000 BR BKN010 ///// A3033',
    source: 'suite',
    wind: [80, 9],
  },
  {
    text: 'METAR CYEK 290000Z AUTO 29020G28KT M1/4SM +SN VV006 M24/M26 A2962',
    source: 'suite',
    wind: [290, 20, 28],
  },
  {
    text: 'SPECI COR EDDH 290020Z VRB02KT 1500 SN FEW003 BKN005 00/M00 Q0996 TEMPO NSW BKN004',
    source: 'suite',
    wind: ['VRB', 2],
  },
  {
    text: 'METAR EDDP 290020Z 21008KT 180V240 9999 FEW028 BKN060 07/06 Q0996 BECMG 25015G25KT',
    source: 'suite',
    wind: [210, 8],
    swing: [180, 240],
  },
  {
    text: 'METAR EKCH 282350Z 09018G28KT CAVOK 01/M03 Q1005 R04L/710166 R04R/710169 R12/710177 NOSIG',
    source: 'suite',
    wind: [90, 18, 28],
  },
  {
    text: 'METAR LCRA 282350Z 28026G41KT 8000 TSRA FEW018 BKN030CB BKN060 14/// Q1001 TEMPO 4000 +TSRA BKN025CB',
    source: 'suite',
    wind: [280, 26, 41],
  },
  {
    text: 'METAR LTCN 282350Z 11007KT 080V140 4500 SHRA BR SCT030 BKN090 13/11 Q1009 BECMG TL0050 6000 NSW',
    source: 'suite',
    wind: [110, 7],
    swing: [80, 140],
  },
  {
    text: 'METAR NTAA 290015Z 25004KT 9999 FEW026 SCT043 32/24 Q1012 WS ALL RWY NOSIG',
    source: 'suite',
    wind: [250, 4],
  },
  {
    text: 'METAR ZSPD 290000Z 13003MPS 0800 R17L/P2000 R16R/0600N 13/13 Q1018 BECMG TL0130 3000 BR',
    source: 'suite',
    wind: [130, METRES_A_SECOND(3)],
  },
];

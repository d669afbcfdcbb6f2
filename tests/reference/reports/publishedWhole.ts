/**
 * Whole reports as standards print them, with what their sources say that each group means.
 *
 * Sources:
 * - annex: ICAO Annex 3, App. 3, examples A3-1 and A3-2, as encoded by WMO with their plain language
 *   (github wmo-im/iwxxm, IWXXM/examples, metar-A3-1.txt, speci-A3-2.xml).
 * - aim: FAA Aeronautical Information Manual, 7-1, key to METAR, as copied at faraim.org, aim-505.
 * - chart: NWS/FAA METAR reference chart, as copied at asiresource.com/metar.htm.
 * - suite: WMO translation suite (github wmo-im/iwxxm-translation, Amd78-2018 to Amd81-2023, metar),
 *   values from the XML beside each text. Its README says: no official status, not reviewed.
 */

import type { Bound, Deposit } from '../../../src/core/weather/whole/groupTypes';

export interface PublishedWhole {
  readonly source: 'annex' | 'aim' | 'chart' | 'suite';
  readonly text: string;
  /** Metres, or statute miles, prevailing; null for not observable. */
  readonly visibility?: readonly [value: number, unit: 'm' | 'SM', bound?: Bound] | null;
  readonly least?: readonly [distanceM: number, towards: string];
  readonly ranges?: readonly (readonly [
    runway: string,
    value: number,
    unit: 'm' | 'ft',
    bound: Bound,
    tendency: 'rising' | 'falling' | 'steady' | null,
  ])[];
  readonly cavok?: true;
  /** As table 4678 writes them, moderate without a sign; `//` not observable. */
  readonly present?: readonly string[];
  readonly recent?: readonly string[];
  /** Amount, base in ft, kind; `?` where the source says not observable or not detected. */
  readonly clouds?: readonly (readonly [
    amount: string,
    baseFt: number | '?',
    kind?: 'CB' | 'TCU' | '?',
  ])[];
  readonly none?: 'NSC';
  readonly verticalFt?: number;
  /** °C; null for not observable. */
  readonly air: readonly [airC: number | null, dewPointC: number | null];
  readonly qnh: readonly [value: number, unit: 'hPa' | 'inHg'];
  readonly shear?: readonly string[];
  readonly sea?: readonly [waterC: number | null, wavesM: number | null];
  readonly states?: readonly {
    readonly runway: string;
    readonly cleared?: true;
    readonly deposit?: Deposit;
    readonly covered?: readonly [number, number];
    readonly depth?: readonly [number, Bound];
    readonly braking?: number | 'good';
  }[];
  readonly trends?: readonly string[];
}

/** BUFR 0-20-087, as FM 15's table 0519: 1 is 10 % or less, 9 is 51 to 100 %. */
const TENTH = [0, 10] as const;
const MOST = [51, 100] as const;

export const PUBLISHED_WHOLE: readonly PublishedWhole[] = [
  {
    source: 'annex',
    text: 'METAR YUDO 221630Z 24004MPS 0600 R12/1000U DZ FG SCT010 OVC020 17/16 Q1018 BECMG TL1700 0800 FG BECMG AT1800 9999 NSW',
    visibility: [600, 'm'],
    ranges: [['12', 1000, 'm', 'exact', 'rising']],
    present: ['DZ', 'FG'],
    clouds: [
      ['SCT', 1000],
      ['OVC', 2000],
    ],
    air: [17, 16],
    qnh: [1018, 'hPa'],
    trends: ['BECMG TL1700 0800 FG', 'BECMG AT1800 9999 NSW'],
  },
  {
    source: 'annex',
    text: 'SPECI YUDO 151115Z 05025G37KT 3000 1200NE +TSRA BKN005CB 25/22 Q1008 TEMPO TL1200 0600 BECMG AT1200 8000 NSW NSC',
    visibility: [3000, 'm'],
    least: [1200, 'NE'],
    present: ['+TSRA'],
    clouds: [['BKN', 500, 'CB']],
    air: [25, 22],
    qnh: [1008, 'hPa'],
    trends: ['TEMPO TL1200 0600', 'BECMG AT1200 8000 NSW NSC'],
  },
  {
    source: 'aim',
    // Temperature and dew point to the tenth: T01820159, "18.2 and 15.9".
    text: 'METAR KPIT 091955Z COR 22015G25KT 3/4SM R28L/2600FT TSRA OVC010CB 18/16 A2992 RMK SLP045 T01820159',
    visibility: [0.75, 'SM'],
    ranges: [['28L', 2600, 'ft', 'exact', null]],
    present: ['TSRA'],
    clouds: [['OVC', 1000, 'CB']],
    air: [18.2, 15.9],
    qnh: [29.92, 'inHg'],
  },
  {
    source: 'chart',
    text: 'METAR KABC 121755Z AUTO 21016G24KT 180V240 1SM R11/P6000FT -RA BR BKN015 OVC025 06/04 A2990 RMK AO2 PK WND 20032/25 WSHFT 1715 TSNO $',
    visibility: [1, 'SM'],
    ranges: [['11', 6000, 'ft', 'above', null]],
    present: ['-RA', 'BR'],
    clouds: [
      ['BKN', 1500],
      ['OVC', 2500],
    ],
    air: [6, 4],
    qnh: [29.9, 'inHg'],
  },
  {
    source: 'suite',
    text: 'SPECI EKCH 282350Z 09018G28KT CAVOK 01/M03 Q1005 R04L/710166 R04R/710169 R12/710177 NOSIG',
    visibility: [10_000, 'm', 'at-least'],
    cavok: true,
    air: [1, -3],
    qnh: [1005, 'hPa'],
    states: [
      { runway: '04L', deposit: 'ice', covered: TENTH, depth: [1, 'exact'], braking: 0.66 },
      { runway: '04R', deposit: 'ice', covered: TENTH, depth: [1, 'exact'], braking: 0.69 },
      { runway: '12', deposit: 'ice', covered: TENTH, depth: [1, 'exact'], braking: 0.77 },
    ],
    trends: ['NOSIG'],
  },
  {
    source: 'suite',
    // The XML has depth figure 00, which table 1079 (from memory) says is less than 1 mm.
    text: 'METAR URMT 290000Z 09006MPS 0400 0350NE R07/1000D FG VV004 05/05 Q1010 R07/010070 TEMPO 0200 FG OVC001',
    visibility: [400, 'm'],
    least: [350, 'NE'],
    ranges: [['07', 1000, 'm', 'exact', 'falling']],
    present: ['FG'],
    verticalFt: 400,
    air: [5, 5],
    qnh: [1010, 'hPa'],
    states: [
      { runway: '07', deposit: 'clear-and-dry', covered: TENTH, depth: [1, 'below'], braking: 0.7 },
    ],
    trends: ['TEMPO 0200 FG OVC001'],
  },
  {
    source: 'suite',
    text: 'SPECI EHJR 282355Z AUTO 29012KT //// // ///////// 05/02 Q1001 RE// W06/H12',
    visibility: null,
    present: ['//'],
    recent: ['//'],
    clouds: [['?', '?', '?']],
    air: [5, 2],
    qnh: [1001, 'hPa'],
    sea: [6, 1.2],
  },
  {
    source: 'suite',
    text: 'SPECI BGTL 290039Z AUTO 08009KT 6000 BR BKN010 ///// A3033',
    visibility: [6000, 'm'],
    present: ['BR'],
    clouds: [['BKN', 1000]],
    air: [null, null],
    qnh: [1027.1, 'hPa'],
  },
  {
    source: 'suite',
    text: 'METAR ZSPD 290000Z 13003MPS 0800 R17L/P2000 R16R/0600N R17R/1600U R16L/0900U FG BKN002 13/13 Q1018 BECMG TL0130 3000 BR SCT004 BKN020',
    visibility: [800, 'm'],
    ranges: [
      ['17L', 2000, 'm', 'above', null],
      ['16R', 600, 'm', 'exact', 'steady'],
      ['17R', 1600, 'm', 'exact', 'rising'],
      ['16L', 900, 'm', 'exact', 'rising'],
    ],
    present: ['FG'],
    clouds: [['BKN', 200]],
    air: [13, 13],
    qnh: [1018, 'hPa'],
    trends: ['BECMG TL0130 3000 BR SCT004 BKN020'],
  },
  {
    source: 'suite',
    text: 'SPECI EETN 290020Z 24006KT 9999 FEW019 M05/M07 Q1015 R08/0///95 NOSIG',
    visibility: [10_000, 'm', 'at-least'],
    clouds: [['FEW', 1900]],
    air: [-5, -7],
    qnh: [1015, 'hPa'],
    states: [{ runway: '08', deposit: 'clear-and-dry', braking: 'good' }],
    trends: ['NOSIG'],
  },
  {
    source: 'suite',
    text: 'SPECI NTAA 290015Z 25004KT 9999 FEW026 SCT043 32/24 Q1012 WS ALL RWY NOSIG',
    visibility: [10_000, 'm', 'at-least'],
    clouds: [
      ['FEW', 2600],
      ['SCT', 4300],
    ],
    air: [32, 24],
    qnh: [1012, 'hPa'],
    shear: ['all'],
    trends: ['NOSIG'],
  },
  {
    source: 'suite',
    text: 'METAR UBBB 290000Z 35009KT 9999 SCT004 OVC200 07/06 Q1014 R88/CLRD// NOSIG',
    visibility: [10_000, 'm', 'at-least'],
    clouds: [
      ['SCT', 400],
      ['OVC', 20_000],
    ],
    air: [7, 6],
    qnh: [1014, 'hPa'],
    states: [{ runway: 'all', cleared: true }],
    trends: ['NOSIG'],
  },
  {
    source: 'suite',
    text: 'SPECI EFHK 290020Z 32003KT 9999 R04R/0800N R15/P1500N R22L/P1500N R04L/P1500N MIFG NSC M08/M09 Q1015 NOSIG',
    visibility: [10_000, 'm', 'at-least'],
    ranges: [
      ['04R', 800, 'm', 'exact', 'steady'],
      ['15', 1500, 'm', 'above', 'steady'],
      ['22L', 1500, 'm', 'above', 'steady'],
      ['04L', 1500, 'm', 'above', 'steady'],
    ],
    present: ['MIFG'],
    none: 'NSC',
    air: [-8, -9],
    qnh: [1015, 'hPa'],
    trends: ['NOSIG'],
  },
  {
    source: 'suite',
    text: 'SPECI ESMS 290020Z 09022KT CAVOK 01/M03 Q1004 R88/09//95',
    visibility: [10_000, 'm', 'at-least'],
    cavok: true,
    air: [1, -3],
    qnh: [1004, 'hPa'],
    states: [{ runway: 'all', deposit: 'clear-and-dry', covered: MOST, braking: 'good' }],
  },
  {
    source: 'suite',
    text: 'SPECI FALE 290006Z VRB01KT 0200 R24/0275D R06/0650D FG VV002 19/18 Q1010 NOSIG',
    visibility: [200, 'm'],
    ranges: [
      ['24', 275, 'm', 'exact', 'falling'],
      ['06', 650, 'm', 'exact', 'falling'],
    ],
    present: ['FG'],
    verticalFt: 200,
    air: [19, 18],
    qnh: [1010, 'hPa'],
    trends: ['NOSIG'],
  },
  {
    source: 'suite',
    text: 'SPECI BGBW 282350Z AUTO /////KT 9999NDV BKN190/// M03/M12 Q1023',
    visibility: [10_000, 'm', 'at-least'],
    clouds: [['BKN', 19_000, '?']],
    air: [-3, -12],
    qnh: [1023, 'hPa'],
  },
];

/** More texts of the suite, whose every group must be known. */
export const MORE_OF_THE_SUITE: readonly string[] = [
  'METAR UIBB 290000Z 25005MPS 220V280 9999 SCT033 M01/M07 Q1018 R30/811050 NOSIG',
  'METAR USRR 290000Z 09008MPS 0900 R07/1000 BLSN VV019 M12/M14 Q1004 R07/451045 TEMPO 0700 +SN BLSN',
  'METAR CWFD 290000Z AUTO 20022KT ////SM // BKN003 BKN008 ///// A////',
  'SPECI USTR 290030Z 35001MPS 1100 0900N R21/1900 +SHSN VV003 M02/M03 Q0996 R21/590742 TEMPO 0500 +SHSN VV002',
  'SPECI EHAK 282355Z AUTO 33009KT 9999 DZ FEW006/// SCT011/// BKN025/// 04/02 Q0998 W///H///',
  'METAR SCCH 250000Z AUTO 19009KT 9999 ///////// 20/04 Q1014',
  'METAR UKHH 290000Z 07005MPS CAVOK M03/M06 Q1015 R07/0///66 NOSIG',
  'METAR UAAA 290000Z 13003MPS 4500 BR SCT050 BKN100 05/04 Q1016 R88/CLRD65 NOSIG',
  'METAR CYUX 290000Z 08027G33KT 1/8SM -SN +BLSN VV001 M13/M15 A2954',
  'SPECI EKRK 290020Z AUTO 09017G27KT 9999NDV OVC100/// 00/M03 Q1004 R99/210067 R99/210081',
  'METAR SBBR 250000Z 32003KT 290V350 9999 VCTS //////CB 20/19 Q1017',
  'METAR WSSS 290000Z VRB02KT 7000 FEW018TCU BKN150 27/26 Q1011 TEMPO FM0130 4500 RA',
  'METAR VTUO 290000Z 22003KT 190V360 2000 BR FEW035 25/25 Q1011 A2987 BECMG FM0100 3000 BR',
  'METAR BIAR 290000Z 33003KT 280V010 9999 OVC032 04/M00 Q////',
  'METAR ENFB 280000Z AUTO 12014KT //// FEW052/// 04/M08 Q1009 W///H52',
  'METAR NTAA 290000Z 25005KT 9999 FEW026 SCT043 32/24 Q1012 WS R04 NOSIG',
];

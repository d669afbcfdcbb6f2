/**
 * The groups of a report that say nothing about the present wind, in the order a report has them.
 *
 * They are recognised here, so that whatever is none of them can honestly be marked as unread;
 * whole/ reads their meaning from the same shapes' capture groups. To recognise another group, add
 * a row here and its reader there. Shapes follow WMO-No. 306 Vol. I.1, FM 15 and, where marked US,
 * the Federal Meteorological Handbook No. 1, ch. 12; those marked habit follow no standard. Section
 * numbers are from memory. Every shape is bounded, so that no text can make it slow.
 */

export const GROUPS = {
  /** 15.6; US statute miles; habit: kilometres. */
  visibility:
    '(CAVOK)|(\\d{4})(NDV|[NS]?[EW]?)|/{4}|(\\d\\d?)KM|([PM]?)(?:(\\d+)(?:/(\\d+))?|/{2,4})SM',
  /** 15.7; US feet. */
  runwayVisualRange:
    'R(\\d\\d[LCR]{0,2})/(?:([PM]?)(\\d{4})(?:V([PM]?)(\\d{4}))?|/{4})(FT)?/?([UDN]?)',
  /** 15.8 and, with RE, 15.13.2. */
  weather:
    '([+-]|VC|RE)?(?:(SH|TS)|(MI|PR|BC|DR|BL|SH|TS|FZ)?' +
    '((?:DZ|RA|SN|SG|IC|PL|GR|GS|UP|BR|FG|FU|VA|DU|SA|HZ|PY|PO|SQ|FC|SS|DS){1,3}))|(RE)?//|(NSW)',
  /** 15.9. */
  cloud: '(FEW|SCT|BKN|OVC|///)(\\d{3}|///)(CB|TCU|///)?|VV(\\d{3}|///)|(NSC|NCD|SKC|CLR)',
  /** 15.11. */
  temperature: '(M?\\d\\d|//)/(M?\\d\\d|//)?',
  /** 15.12; habit: the whole word, with its unit. */
  pressure: 'Q(?:NH)?(\\d{3,4}|/{4})(HPA|INS)?|A(\\d{4}|/{4})',
  /** 15.13.3; a shear group that strayed from a forecast, `WS010/31022KT`, is recognised with it. */
  windShear: 'WS|ALL|RWY(?:\\d\\d[LCR]?)?|R\\d\\d[LCR]?|TKOF|LDG|WS(\\d{3})/(\\d{3})(\\d{2,3})KT',
  /** 15.13.5. */
  sea: 'W(M?\\d\\d|//)/(?:S([\\d/])|H(\\d{1,3}|///))',
  /** 15.13.6, no longer in the code since 2021; eight figures before that. */
  runwayState:
    '(?:R(\\d\\d[LCR]?)/|(\\d\\d))(?:([\\d/])([\\d/])(\\d\\d|//)(\\d\\d|//)|CLRD(\\d\\d|//))' +
    '|(?:R(\\d\\d[LCR]?)?/?)?(SNOCLO)',
  /** Habit: the colour state of a military field. */
  colourState: 'BLACK|(BLACK)?(BLU|WHT|GRN|YLO[12]?|AMB|RED)\\+?',
  /** US: the station wants maintenance. */
  maintenance: '\\$',
} as const;

/** All shapes in one test, without captures. */
const KNOWN = new RegExp(
  `^(?:${Object.values(GROUPS)
    .join('|')
    .replace(/\((?!\?)/g, '(?:')})$`,
);

/** A whole number is part of a visibility only before its fraction: `1 1/2SM`. US. */
const WHOLE_MILES = /^\d\d?$/;
const FRACTION = /^\d\/\d+SM$/;

/** Whether a group of a report, given with the next one, is a known one other than wind. */
export const isKnownGroup = (text: string, next: string): boolean =>
  KNOWN.test(text) || isWholeMiles(text, next) || isSpokenPressure(text, next);

/** `QNH 1013`, `ALTIMETER 2992`: as spoken. FAA AIM 7-1; ICAO Doc 4444, 12.3.1. */
const PRESSURE_WORD = /^(?:QNH|ALTIMETER|ALTM)$/;
const SPOKEN_HPA = /^(?:8[5-9]\d|9\d\d|10\d\d)(?:HPA)?$/;
const SPOKEN_INCHES = /^(?:2[6-9]|3[01])\d\d(?:INS)?$/;

/** Whether a word announces a pressure, which comes next. */
export const isSpokenPressure = (text: string, next: string): boolean =>
  PRESSURE_WORD.test(text) && (SPOKEN_HPA.test(next) || SPOKEN_INCHES.test(next));

/** Whether a number is the whole miles of a visibility whose fraction comes next. */
export const isWholeMiles = (text: string, next: string): boolean =>
  WHOLE_MILES.test(text) && FRACTION.test(next);

/**
 * The groups of a report that say nothing about the wind now, in the order that a report has them.
 *
 * They are told apart, not read: what is none of them can then honestly be marked as not read. To
 * recognise another group, add a row. Shapes are those of WMO-No. 306 Vol. I.1, FM 15, and, where
 * marked US, of the Federal Meteorological Handbook No. 1, ch. 12; where marked habit, of no
 * standard. Section numbers are from memory. Every shape is bounded, so that no text can make it slow.
 */

const GROUPS = {
  /** 15.6; US statute miles; habit: kilometres. */
  visibility: 'CAVOK|\\d{4}(?:NDV|[NS]?[EW]?)|/{4}|\\d\\d?KM|[PM]?(?:\\d+(?:/\\d+)?|/{2,4})SM',
  /** 15.7; US feet. */
  runwayVisualRange: 'R\\d\\d[LCR]{0,2}/(?:[PM]?\\d{4}(?:V[PM]?\\d{4})?|/{4})(?:FT)?/?[UDN]?',
  /** 15.8 and, with RE, 15.13.2. */
  weather:
    '(?:[+-]|VC|RE)?(?:SH|TS|(?:MI|PR|BC|DR|BL|SH|TS|FZ)?' +
    '(?:DZ|RA|SN|SG|IC|PL|GR|GS|UP|BR|FG|FU|VA|DU|SA|HZ|PY|PO|SQ|FC|SS|DS){1,3})|(?:RE)?//|NSW',
  /** 15.9. */
  cloud: '(?:FEW|SCT|BKN|OVC|///)(?:\\d{3}|///)(?:CB|TCU|///)?|VV(?:\\d{3}|///)|NSC|NCD|SKC|CLR',
  /** 15.11. */
  temperature: '(?:M?\\d\\d|//)/(?:M?\\d\\d|//)?',
  /** 15.12. */
  pressure: '[QA](?:\\d{3,4}|/{4})',
  /** 15.13.3; a shear group that strayed from a forecast, `WS010/31022KT`, is recognised with it. */
  windShear: 'WS|ALL|RWY(?:\\d\\d[LCR]?)?|R\\d\\d[LCR]?|TKOF|LDG|WS\\d{3}/\\d{5}KT',
  /** 15.13.5. */
  sea: 'W(?:M?\\d\\d|//)/(?:S[\\d/]|H(?:\\d{1,3}|///))',
  /** 15.13.6, no longer in the code since 2021; eight digits before that. */
  runwayState: 'R\\d\\d[LCR]?/(?:[\\d/]{6}|CLRD(?:\\d\\d|//))|R?/?SNOCLO|\\d{8}',
  /** Habit: the colour state of a military field. */
  colourState: '(?:BLACK)?(?:BLU|WHT|GRN|YLO[12]?|AMB|RED)\\+?',
  /** US: the station wants maintenance. */
  maintenance: '\\$',
} as const;

/** One test instead of a dozen for each group of each report. */
const KNOWN = new RegExp(`^(?:${Object.values(GROUPS).join('|')})$`);

/** A whole number is part of a visibility only before its fraction: `1 1/2SM`. US. */
const WHOLE_MILES = /^\d\d?$/;
const FRACTION = /^\d\/\d+SM$/;

/** Longer than any group; what is longer need not be looked at. */
const LONGEST_GROUP = 24;

/** Whether a group of a report, given with the one after it, is a known one other than wind. */
export function isKnownGroup(text: string, next: string): boolean {
  if (text.length > LONGEST_GROUP) return false;
  return KNOWN.test(text) || (WHOLE_MILES.test(text) && FRACTION.test(next));
}

import { describe, expect, test } from 'vitest';
import { ourItems, theirItems } from './items';
import { PUBLISHED } from './published';
import { REAL_SHAPED } from './realShaped';
import { WHOLE_REPORTS } from './wholeReports';

interface Difference {
  /** A group; the rule holds for the reports that have it. */
  readonly group: string;
  /** What the rule gives, worked out by hand, which the other reader lacks. */
  readonly ruled?: readonly string[];
  /** What the other reader answers instead. */
  readonly theirs?: readonly string[];
  readonly rule: string;
}

/**
 * Where the two readers differ, group by group. FM 15 is in WMO-No. 306 Vol. I.1; its paragraph
 * numbers, and the numbers of its tables, are from memory.
 */
const DIFFERENCES: readonly Difference[] = [
  ...(
    [
      ['R32/0400', '32 400 m'],
      ['R12R/1700', '12R 1700 m'],
      ['R10/M0050', '10 <50 m'],
      ['R14L/P2000', '14L >2000 m'],
      ['R17L/P2000', '17L >2000 m'],
      ['R16C/0500', '16C 500 m'],
      ['R16R/0450', '16R 450 m'],
      ['R17L/0450', '17L 450 m'],
      ['R16/0375', '16 375 m'],
    ] as const
  ).map(([group, range]) => ({
    group,
    ruled: [`range ${range}`],
    rule: 'The tendency is left out where it cannot be told: FM 15, 15.7.5; Annex 3, table A3-2, R32/0400.',
  })),
  {
    group: ' NCD ',
    ruled: ['no cloud NCD'],
    rule: 'No cloud detected, by an automatic station: FM 15, 15.9.1.4.',
  },
  {
    group: ' CLR ',
    ruled: ['no cloud CLR'],
    rule: 'No cloud below 12 000 ft, by an automatic station: FMH-1, 12.6.9.',
  },
  ...(
    [
      ['///015', '/// 1500 '],
      ['//////CB', '/// /// CB'],
      ['//////', '/// /// '],
    ] as const
  ).map(([group, cloud]) => ({
    group: ` ${group} `,
    ruled: [`cloud ${cloud}`],
    rule: 'Slashes stand for what an automatic station cannot tell of a cloud that it sees: FM 15, 15.9.1.',
  })),
  {
    group: ' VV/// ',
    ruled: ['vertical visibility ///'],
    rule: 'The sky is hidden, and how far one sees into it is not known: FM 15, 15.9.2.',
  },
  ...[14, 30].map((air) => ({
    group: ` ${air}/// `,
    ruled: [`air ${air}`],
    rule: 'The dew point alone is missing; the temperature was reported: FM 15, 15.11.',
  })),
  {
    group: ' 0000 ',
    ruled: ['visibility <50 m'],
    theirs: ['visibility 0 m'],
    rule: '0000 is less than 50 m: FM 15, 15.6.1.',
  },
  {
    group: ' 10KM ',
    ruled: ['visibility 10 km'],
    rule: 'Visibility in kilometres is a habit of some nations; common practice, no published source.',
  },
  {
    group: ' CCA ',
    ruled: ['corrected'],
    rule: 'CCx marks a correction: WMO-No. 386, Part II, 2.3.2.',
  },
  {
    group: ' Q1010 A2983 ',
    ruled: ['pressure 1010 hPa'],
    rule: 'The pressure is given twice; the second does not undo the first. Common practice, no published source.',
  },
  {
    group: 'R88/290195',
    ruled: ['state all wet 51-100 1 good'],
    theirs: ['state 88 wet 51-100 1 good'],
    rule: '88 stands for all runways: FM 15, 15.13.6.1.',
  },
  {
    group: ' 88//////',
    ruled: ['state all / / // //'],
    rule: 'Eight figures are the state of a runway, before R came into the code; 88 is all: FM 15, 15.13.6.1.',
  },
  {
    group: ' 15490245 ',
    ruled: ['state 15 dry-snow 51-100 2 0.45'],
    rule: 'Eight figures are the state of a runway, before R came into the code: FM 15, 15.13.6.1.',
  },
  {
    group: 'R99/421594',
    ruled: ['state repeated dry-snow 11-25 15 medium-good'],
    theirs: ['state 99 dry-snow 11-25 15 medium-good'],
    rule: '99 repeats the message before, there being no new one: FM 15, 15.13.6.1.',
  },
  {
    group: 'R14L/CLRD//',
    ruled: ['state 14L cleared'],
    rule: 'Deposits have ceased to exist: FM 15, 15.13.6.1; Annex 3, table A3-2.',
  },
  {
    group: 'R20/CLRD70',
    ruled: ['state 20 cleared'],
    rule: 'Deposits have ceased to exist: FM 15, 15.13.6.1; Annex 3, table A3-2.',
  },
  ...[' R/SNOCLO', ' SNOCLO'].map((group) => ({
    group,
    ruled: ['closed by snow all'],
    rule: 'The aerodrome is closed by snow: FM 15, 15.13.6.2; Annex 3, table A3-2.',
  })),
  {
    group: 'FM1400 30020G35KT',
    ruled: ['trend FM1400 30020G35KT'],
    rule: 'What follows a change indicator is the trend, not the observation: FM 15, 15.14.',
  },
  {
    group: 'FM0000 31018G28KT',
    ruled: ['trend FM0000 31018G28KT 9999 FEW030'],
    theirs: ['cloud FEW 3000 '],
    rule: 'What follows a change indicator is the trend, not the observation: FM 15, 15.14.',
  },
  {
    group: ' 24P99KT ',
    theirs: ['visibility >=10000 m'],
    rule: 'No wind was read, so four digits at the very end may still become one. Our rule for typing.',
  },
  {
    group: ' 1200NE R16L/0650 ',
    ruled: [
      'station XHAR',
      'issued 15 16 30',
      'type METAR',
      'visibility 1200 NE',
      'range 16L 650 m',
      'weather BR',
      'cloud SCT 1000 ',
      'cloud OVC 2000 ',
      'air 12',
      'dew point 11',
      'pressure 987 hPa',
    ],
    theirs: ['refused'],
    rule: 'A visibility with a direction, of which no other stands before it, is no reason to refuse a report.',
  },
  {
    group: 'metar xhar',
    ruled: ['station XHAR', 'issued 1 12 50', 'type METAR', 'cloud FEW 3000 ', 'pressure 1013 hPa'],
    theirs: ['station metar'],
    rule: 'Capitals carry no meaning in FM 15.',
  },
];

const TEXTS = [...PUBLISHED.map(({ text }) => text), ...REAL_SHAPED, ...WHOLE_REPORTS];

describe('metar-taf-parser reads the same of every group that both know, but for a rule', () => {
  test.each(TEXTS)('%s', (text) => {
    const [ours, theirs] = [ourItems(text), theirItems(text)];
    const rules = DIFFERENCES.filter(({ group }) => text.includes(group));
    const onlyOurs = rules.flatMap(({ ruled = [] }) => ruled);
    const onlyTheirs = rules.flatMap(({ theirs: other = [] }) => other);
    // As lists and not as sets: two layers of the same cloud are two.
    expect([...ours, ...onlyTheirs].sort()).toEqual([...theirs, ...onlyOurs].sort());
  });

  test.each(DIFFERENCES)('$group: $rule', ({ group }) => {
    expect(TEXTS.some((text) => text.includes(group))).toBe(true);
  });
});

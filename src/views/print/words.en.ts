/** The words of Print, and of the printed cards. */

import { phaseWords } from '../../parts/procedure.en';

export const words = {
  title: (name: string) => `Print ${name}`,
  close: 'Close',
  hint: 'A set of A5 cards, black on white. Where the printer has no A5, choose two pages to a sheet of A4.',
  numbers: 'Numbers',
  filled: "Today's numbers",
  blank: 'Left blank',
  print: 'Print',
  failed: 'It is not available just now.',
  preview: 'The cards as they will be',
  phases: phaseWords,
  when: (condition: string) => `If ${condition}: `,
  /** A fact of a condition, as it holds and as it does not. */
  facts: {
    night: ['it is night', 'it is not night'],
    lights: ['the sun is down', 'the sun is up'],
    wet: ['the runway is not dry', 'the runway is dry'],
    controlled: ['the field is controlled', 'nobody controls the field'],
    lightWind: ['the wind is light', 'the wind is not light'],
    crossesRunway: ['the way crosses a runway', 'the way crosses no runway'],
    supersonic: ['supersonic flight is planned', 'no supersonic flight is planned'],
    stores: ['stores are carried', 'no stores are carried'],
    passengers: ['passengers are aboard', 'no passengers are aboard'],
    cable: ['a cable lies across the runway', 'no cable lies across the runway'],
  } as Readonly<Record<string, readonly [string, string]>>,
  windAbove: (kt: string) => `the wind is above ${kt} kt`,
  fitted: (option: string) => `fitted: ${option}`,
  and: ' and ',
  or: ' or ',
  not: (condition: string) => `not (${condition})`,
  expect: (time: string) => `about ${time}`,
  gust: 'gusts',
  runway: (end: string) => `Runway ${end}`,
  wind: (text: string) => `Wind ${text}`,
} as const;

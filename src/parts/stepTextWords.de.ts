/** The words for what a step is and when it applies, in German. */

import type { ConditionFact, Step } from '../core';
import type { stepWords as english } from './stepTextWords.en';
import type { Translated } from './translated';

const kinds: Readonly<Record<Step['kind'], string>> = {
  do: 'Tun',
  check: 'Prüfen',
  wait: 'Warten',
  say: 'Sagen',
  gate: 'Marke',
  note: 'Hinweis',
  barrier: 'Sperre',
};

/** Without a verb, so that they fit behind “falls” as well as alone. */
const facts: Readonly<Record<ConditionFact, readonly [yes: string, no: string]>> = {
  night: ['Nacht', 'keine Nacht'],
  lights: ['Sonne untergegangen', 'Sonne am Himmel'],
  wet: ['Piste nicht trocken', 'Piste trocken'],
  controlled: ['Platz kontrolliert', 'Platz unkontrolliert'],
  lightWind: ['Wind schwach', 'Wind 5 kt oder mehr'],
  crossesRunway: ['Rollweg über eine Piste', 'Rollweg über keine Piste'],
  supersonic: ['Überschallflug geplant', 'kein Überschallflug geplant'],
  stores: ['Außenlasten angehängt', 'keine Außenlasten angehängt'],
  passengers: ['Fluggäste an Bord', 'keine Fluggäste an Bord'],
};

export const stepWords: Translated<typeof english> = {
  kinds,
  facts,
  critical: 'kritisch',
  when: (condition) => `falls ${condition}`,
  expect: (seconds) => `etwa ${seconds} s`,
  wind: (kt) => [`Wind über ${kt} kt`, `Wind nicht über ${kt} kt`],
  option: (name) => [`mit „${name}“`, `ohne „${name}“`],
  and: ' und ',
  or: ' oder ',
  not: (condition) => `nicht (${condition})`,
};

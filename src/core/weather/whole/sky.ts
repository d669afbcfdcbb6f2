/** What falls, hides and hangs: weather, FM 15, 15.8, and cloud, 15.9. */

import { GROUPS } from '../groups';
import { figuresAt } from '../tokens';
import type {
  Cloud,
  Descriptor,
  NoCloud,
  NoSignificantWeather,
  Phenomenon,
  PresentWeather,
  VerticalVisibility,
} from './groupTypes';
import { hundredsOfFt, whole } from './written';

const CLOUD = whole(GROUPS.cloud);

/**
 * What each pair of letters is. A phenomenon that falls or storms has a strength also where none is
 * written, which is then moderate. 15.8.5; table 4678.
 */
type Pair = 'descriptor' | 'alone' | 'with-strength' | 'without';
const PAIRS = new Map<string, Pair>();
for (const [pair, letters] of [
  ['descriptor', 'MI PR BC DR BL FZ'],
  // Descriptors that also stand alone.
  ['alone', 'SH TS'],
  ['with-strength', 'DZ RA SN SG PL GR GS UP SS DS'],
  ['without', 'IC BR FG FU VA DU SA HZ PY PO SQ FC'],
] as const) {
  for (const two of letters.split(' ')) PAIRS.set(two, pair);
}
const MOST_PHENOMENA = 3;
const LONGEST_WEATHER = 2 + 2 * MOST_PHENOMENA;

/** Read pair by pair, several times as fast as by its shape, which has more choices than any other. */
export function weatherOf(text: string): PresentWeather | NoSignificantWeather | null {
  if (text === 'NSW') return { code: 'no-significant-weather' };
  const sign = signOf(text);
  const recent = sign === 'RE';
  const start = sign.length;
  if (text.length - start > LONGEST_WEATHER) return null;
  let descriptor: string | null = null;
  let standsAlone = false;
  let hasStrength = false;
  const phenomena: Phenomenon[] = [];
  for (let at = start; at < text.length; at += 2) {
    const letters = text.slice(at, at + 2);
    const pair = PAIRS.get(letters);
    if (pair === undefined) return text === '//' || text === 'RE//' ? unobserved(recent) : null;
    if (pair === 'descriptor' || pair === 'alone') {
      if (at > start) return null;
      descriptor = letters;
      standsAlone = pair === 'alone';
    } else {
      phenomena.push(letters as Phenomenon);
      hasStrength ||= pair === 'with-strength';
    }
  }
  if (phenomena.length > MOST_PHENOMENA || !(phenomena.length > 0 || standsAlone)) return null;
  const isRaised = descriptor === 'BL' || descriptor === 'DR';
  return {
    code: 'weather',
    recent,
    observed: true,
    vicinity: sign === 'VC',
    intensity: STRENGTHS[sign] ?? (sign === '' && hasStrength && !isRaised ? 'moderate' : null),
    descriptor: descriptor as Descriptor | null,
    phenomena,
  };
}

const STRENGTHS: Readonly<Record<string, PresentWeather['intensity']>> = {
  '-': 'light',
  '+': 'heavy',
};

/** `//` where there would be weather. 15.8.1. */
const unobserved = (recent: boolean): PresentWeather => ({
  code: 'weather',
  recent,
  observed: false,
  vicinity: false,
  intensity: null,
  descriptor: null,
  phenomena: [],
});

/** What stands before the pairs: a strength, in the vicinity, since the last report; or nothing. */
function signOf(text: string): '-' | '+' | 'VC' | 'RE' | '' {
  switch (text.charAt(0)) {
    case '-':
      return '-';
    case '+':
      return '+';
    case 'V':
      return text.startsWith('VC') ? 'VC' : '';
    case 'R':
      return text.startsWith('RE') ? 'RE' : '';
    default:
      return '';
  }
}

const CONVECTIVE = new Map<string | undefined, Cloud['convective']>([
  ['', null],
  ['CB', 'CB'],
  ['TCU', 'TCU'],
  ['///', 'not-observed'],
]);

const AMOUNTS = new Map<string, Cloud['amount']>([
  ['FEW', 'FEW'],
  ['SCT', 'SCT'],
  ['BKN', 'BKN'],
  ['OVC', 'OVC'],
]);

/** `BKN030`, `BKN030CB`, as nearly all are; null where the shape has to tell. */
function plainCloud(text: string): Cloud | null {
  // Never asked beyond its end: a text once read there is read slowly from then on.
  const hundreds = text.length < 6 ? -1 : figuresAt(text, 3, 6);
  const amount = hundreds < 0 ? undefined : AMOUNTS.get(text.slice(0, 3));
  const convective = amount && CONVECTIVE.get(text.slice(6));
  if (!amount || convective === undefined) return null;
  return { code: 'cloud', amount, baseFt: hundreds * 100, convective };
}

/** `VV002` is the shortest that is more than a word. */
const SHORTEST_CLOUD = 5;

export function cloudOf(text: string): Cloud | VerticalVisibility | NoCloud | null {
  if (text.length < SHORTEST_CLOUD) return noCloudOf(text);
  const cloud = plainCloud(text);
  if (cloud) return cloud;
  const parts = CLOUD.exec(text);
  if (!parts) return null;
  const [, amount, base, kind = '', into] = parts;
  if (into) return { code: 'vertical-visibility', heightFt: hundredsOfFt(into) };
  return {
    code: 'cloud',
    amount: amount === '///' ? null : (amount as Cloud['amount']),
    baseFt: hundredsOfFt(base),
    convective: CONVECTIVE.get(kind) ?? null,
  };
}

function noCloudOf(text: string): NoCloud | null {
  switch (text) {
    case 'NSC':
    case 'NCD':
    case 'SKC':
    case 'CLR':
      return { code: 'no-cloud', as: text };
    default:
      return null;
  }
}

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

const CLOUD = whole(GROUPS.cloud.shape);

/** Table 4678. */
const DESCRIPTORS = new Set(['MI', 'PR', 'BC', 'DR', 'BL', 'SH', 'TS', 'FZ']);
const STAND_ALONE = new Set(['SH', 'TS']);

/** What has a strength also where none is written, which is then moderate. 15.8.5; table 4678. */
const HAS_STRENGTH = new Set(['DZ', 'RA', 'SN', 'SG', 'PL', 'GR', 'GS', 'UP', 'SS', 'DS']);
const HAS_NONE = ['IC', 'BR', 'FG', 'FU', 'VA', 'DU', 'SA', 'HZ', 'PY', 'PO', 'SQ', 'FC'];
const PHENOMENA = new Set([...HAS_STRENGTH, ...HAS_NONE]);
const MOST_PHENOMENA = 3;

/** Read pair by pair: the shape has more choices than any other, and reading it takes a quarter of the time so. */
export function weatherOf(text: string): PresentWeather | NoSignificantWeather | null {
  if (text === 'NSW') return { code: 'no-significant-weather' };
  const sign = signOf(text);
  const recent = sign === 'RE';
  let at = sign.length;
  const first = text.slice(at, at + 2);
  const descriptor = DESCRIPTORS.has(first) ? first : null;
  if (descriptor) at += 2;
  const phenomena = phenomenaFrom(text, at);
  if (!phenomena) return text === '//' || text === 'RE//' ? { ...NOT_OBSERVED, recent } : null;
  if (phenomena.length === 0 && !STAND_ALONE.has(first)) return null;
  return {
    code: 'weather',
    recent,
    observed: true,
    vicinity: sign === 'VC',
    intensity: intensityOf(sign, descriptor, phenomena),
    descriptor: descriptor as Descriptor | null,
    phenomena,
  };
}

/** `//` where there would be weather. 15.8.1. */
const NOT_OBSERVED = {
  code: 'weather',
  observed: false,
  vicinity: false,
  intensity: null,
  descriptor: null,
  phenomena: [],
} as const;

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

/** The phenomena from a place to the end, two letters each; null where one of them is none. */
function phenomenaFrom(text: string, start: number): Phenomenon[] | null {
  const phenomena: Phenomenon[] = [];
  if (text.length - start > 2 * MOST_PHENOMENA) return null;
  for (let at = start; at < text.length; at += 2) {
    const pair = text.slice(at, at + 2);
    if (!PHENOMENA.has(pair)) return null;
    phenomena.push(pair as Phenomenon);
  }
  return phenomena;
}

function intensityOf(
  sign: string,
  descriptor: string | null,
  phenomena: readonly string[],
): PresentWeather['intensity'] {
  if (sign === '-') return 'light';
  if (sign === '+') return 'heavy';
  const isRaised = descriptor === 'BL' || descriptor === 'DR';
  if (sign !== '' || isRaised) return null;
  return phenomena.some((pair) => HAS_STRENGTH.has(pair)) ? 'moderate' : null;
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
  const hundreds = figuresAt(text, 3, 6);
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

/** What falls, hides and hangs: weather, FM 15, 15.8, and cloud, 15.9. */

import { GROUPS } from '../groups';
import type {
  Cloud,
  Descriptor,
  NoCloud,
  NoSignificantWeather,
  Phenomenon,
  PresentWeather,
  VerticalVisibility,
} from './groupTypes';
import { figuresAt, hundredsOfFt, whole } from './written';

const WEATHER = whole(GROUPS.weather.shape);
const CLOUD = whole(GROUPS.cloud.shape);

export function weatherOf(text: string): PresentWeather | NoSignificantWeather | null {
  const parts = WEATHER.exec(text);
  if (!parts) return null;
  const [, sign, alone, descriptor = alone, phenomena = '', recentUnseen, ended] = parts;
  if (ended) return { code: 'no-significant-weather' };
  const recent = sign === 'RE' || recentUnseen !== undefined;
  const vicinity = sign === 'VC';
  return {
    code: 'weather',
    recent,
    observed: descriptor !== undefined || phenomena !== '',
    vicinity,
    intensity: recent || vicinity ? null : intensityOf(sign, descriptor, phenomena),
    descriptor: (descriptor ?? null) as Descriptor | null,
    phenomena: pairsOf(phenomena),
  };
}

/** The phenomena, two letters each, that the shape of weather has found in a row. */
function pairsOf(phenomena: string): Phenomenon[] {
  const pairs: Phenomenon[] = [];
  for (let at = 0; at < phenomena.length; at += 2) {
    pairs.push(phenomena.slice(at, at + 2) as Phenomenon);
  }
  return pairs;
}

/** What has a strength also where none is written, which is then moderate. 15.8.5; table 4678. */
const HAS_STRENGTH = /^(?:..)*(?:DZ|RA|SN|SG|PL|GR|GS|UP|SS|DS)/;

function intensityOf(
  sign: string | undefined,
  descriptor: string | undefined,
  phenomena: string,
): PresentWeather['intensity'] {
  if (sign === '-') return 'light';
  if (sign === '+') return 'heavy';
  const isRaised = descriptor === 'BL' || descriptor === 'DR';
  return !isRaised && HAS_STRENGTH.test(phenomena) ? 'moderate' : null;
}

const CONVECTIVE = { CB: 'CB', TCU: 'TCU', '///': 'not-observed' } as const;

const AMOUNTS = new Map<string, Cloud['amount']>([
  ['FEW', 'FEW'],
  ['SCT', 'SCT'],
  ['BKN', 'BKN'],
  ['OVC', 'OVC'],
]);

/** `BKN030`, as nearly all are; null where the shape has to tell. */
function plainCloud(text: string): Cloud | null {
  if (text.length !== 6) return null;
  const hundreds = figuresAt(text, 3, 6);
  const amount = hundreds < 0 ? undefined : AMOUNTS.get(text.slice(0, 3));
  return amount ? { code: 'cloud', amount, baseFt: hundreds * 100, convective: null } : null;
}

export function cloudOf(text: string): Cloud | VerticalVisibility | NoCloud | null {
  const cloud = plainCloud(text);
  if (cloud) return cloud;
  const parts = CLOUD.exec(text);
  if (!parts) return null;
  const [, amount, base, kind, into, none] = parts;
  if (none) return { code: 'no-cloud', as: none as NoCloud['as'] };
  if (into) return { code: 'vertical-visibility', heightFt: hundredsOfFt(into) };
  return {
    code: 'cloud',
    amount: amount === '///' ? null : (amount as Cloud['amount']),
    baseFt: hundredsOfFt(base),
    convective: kind ? CONVECTIVE[kind as keyof typeof CONVECTIVE] : null,
  };
}

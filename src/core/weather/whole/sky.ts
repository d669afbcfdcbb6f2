/** Weather, FM 15, 15.8, and cloud, 15.9. */

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
import { hundredsOfFt, wholeGroup } from './written';

const CLOUD = wholeGroup(GROUPS.cloud);

const WEATHER = wholeGroup(GROUPS.weather);

/** What falls or storms has a strength, moderate if none is written. 15.8.5; table 4678. */
const HAS_STRENGTH = new Set('DZ RA SN SG PL GR GS UP SS DS'.split(' '));

export function weatherOf(text: string): PresentWeather | NoSignificantWeather | null {
  const parts = WEATHER.exec(text);
  if (!parts) return null;
  const [, sign = '', alone, before, letters = '', since, nothing] = parts;
  if (nothing) return { code: 'no-significant-weather' };
  if (!alone && letters === '') return unobserved(since !== undefined);
  const descriptor = alone ?? before ?? null;
  const phenomena = letters.match(/../g) ?? [];
  const hasStrength = phenomena.some((one) => HAS_STRENGTH.has(one));
  const isRaised = descriptor === 'BL' || descriptor === 'DR';
  return {
    code: 'weather',
    recent: sign === 'RE',
    observed: true,
    vicinity: sign === 'VC',
    intensity: STRENGTHS[sign] ?? (sign === '' && hasStrength && !isRaised ? 'moderate' : null),
    descriptor: descriptor as Descriptor | null,
    phenomena: phenomena as readonly Phenomenon[],
  };
}

const STRENGTHS: Readonly<Record<string, PresentWeather['intensity']>> = {
  '-': 'light',
  '+': 'heavy',
};

/** `//` in place of weather. 15.8.1. */
const unobserved = (recent: boolean): PresentWeather => ({
  code: 'weather',
  recent,
  observed: false,
  vicinity: false,
  intensity: null,
  descriptor: null,
  phenomena: [],
});

const CONVECTIVE = new Map<string, Cloud['convective']>([
  ['CB', 'CB'],
  ['TCU', 'TCU'],
  ['///', 'not-observed'],
]);

export function cloudOf(text: string): Cloud | VerticalVisibility | NoCloud | null {
  const parts = CLOUD.exec(text);
  if (!parts) return null;
  const [, amount, base, kind = '', into, none] = parts;
  if (none) return { code: 'no-cloud', as: none as NoCloud['as'] };
  if (into) return { code: 'vertical-visibility', heightFt: hundredsOfFt(into) };
  return {
    code: 'cloud',
    amount: amount === '///' ? null : (amount as Cloud['amount']),
    baseFt: hundredsOfFt(base),
    convective: CONVECTIVE.get(kind) ?? null,
  };
}

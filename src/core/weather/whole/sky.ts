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
import { hundredsOfFt, whole } from './written';

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
    phenomena: (phenomena.match(/../g) ?? []) as readonly string[] as readonly Phenomenon[],
  };
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

export function cloudOf(text: string): Cloud | VerticalVisibility | NoCloud | null {
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

/** Visibility, FM 15, 15.6, and runway visual range, 15.7. */

import { M_PER_FT } from '../../units';
import { GROUPS } from '../groups';
import type {
  Bound,
  Cavok,
  CompassPoint,
  Distance,
  RunwayVisualRange,
  Visibility,
} from './groupTypes';
import { wholeGroup } from './written';

/** Metres in one statute mile, 5 280 ft. */
const M_PER_SM = 5280 * M_PER_FT;

const VISIBILITY = wholeGroup(GROUPS.visibility);
const RANGE = wholeGroup(GROUPS.runwayVisualRange);

/** For a group of two words, `1 1/2SM`, the first is passed as `miles`. */
export function visibilityOf(text: string, miles = 0): Visibility | Cavok | null {
  const parts = VISIBILITY.exec(text);
  if (!parts) return null;
  const [, cavok, metres, after = '', km, sign, amount, denominator] = parts;
  if (cavok) return { code: 'cavok' };
  const seen = (distance: Distance | null): Visibility => ({
    code: 'visibility',
    distance,
    towards: after === 'NDV' || after === '' ? null : (after as CompassPoint),
    undirected: after === 'NDV',
  });
  if (metres) return seen(metresOf(Number(metres)));
  if (km)
    return seen({ distanceM: Number(km) * 1000, value: Number(km), unit: 'km', bound: 'exact' });
  if (!amount) return seen(null);
  const value = miles + (denominator ? fractionOf(amount, denominator) : Number(amount));
  if (!Number.isFinite(value)) return null;
  return seen({ distanceM: value * M_PER_SM, value, unit: 'SM', bound: boundOf(sign) });
}

/** `9999` is 10 km or more, `0000` less than 50 m. 15.6.1. */
function metresOf(metres: number): Distance {
  if (metres === 9999) return { distanceM: 10_000, value: 10_000, unit: 'm', bound: 'at-least' };
  if (metres === 0) return { distanceM: 50, value: 50, unit: 'm', bound: 'below' };
  return { distanceM: metres, value: metres, unit: 'm', bound: 'exact' };
}

/** FMH-1 has only proper fractions: `11/2SM` is `1 1/2SM` without its space. */
function fractionOf(amount: string, denominator: string): number {
  const below = Number(denominator);
  if (Number(amount) < below || amount.length < 2) return Number(amount) / below;
  return Number(amount.slice(0, -1)) + Number(amount.slice(-1)) / below;
}

const BOUNDS: Readonly<Record<string, Bound>> = { P: 'above', M: 'below' };

const boundOf = (sign = ''): Bound => BOUNDS[sign] ?? 'exact';

const TENDENCIES = { U: 'rising', D: 'falling', N: 'steady' } as const;

export function runwayVisualRangeOf(text: string): RunwayVisualRange | null {
  const parts = RANGE.exec(text);
  if (!parts) return null;
  const [, runway = '', sign, least, mostSign, most, feet, tendency] = parts;
  const distanceOf = (digits: string | undefined, bound: Bound): Distance | null => {
    if (!digits) return null;
    const value = Number(digits);
    return { distanceM: feet ? value * M_PER_FT : value, value, unit: feet ? 'ft' : 'm', bound };
  };
  return {
    code: 'runway-visual-range',
    runway,
    distance: distanceOf(least, boundOf(sign)),
    upTo: distanceOf(most, boundOf(mostSign)),
    tendency: tendency ? TENDENCIES[tendency as keyof typeof TENDENCIES] : null,
  };
}

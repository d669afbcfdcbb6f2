/** Going on outside the limits: which cautions the pilot has taken upon themselves. */

import type { Accepted } from '../sortie/fold';
import { type Caution, isStopping, type Verdict } from './verdict';

/** Cautions that stop and were not gone on with, or have got worse since; worst first. */
export function notAccepted(
  { cautions, end, purpose }: Verdict,
  accepted: readonly Accepted[],
): readonly Caution[] {
  return cautions.filter((caution) => {
    if (!isStopping(caution)) return false;
    const before = accepted.findLast(
      (one) => isAbout(one, caution) && one.end === end && one.purpose === purpose,
    );
    return before === undefined || isWorse(caution, before);
  });
}

/** Of the same kind, and about the same station where several may be overloaded. */
const isAbout = (before: Accepted, { code, limit }: Caution): boolean =>
  before.code === code && (code !== 'station-over' || before.limit === limit);

/** Beyond its limit by more than it was, by a whole knot, metre or kilogram. */
function isWorse(now: Caution, before: Accepted): boolean {
  if (now.value === null || before.value === null) return now.value !== before.value;
  if (typeof now.value === 'string') return now.value !== before.value;
  return typeof before.value !== 'number' || beyond(now) >= beyond(before) + 1;
}

/** How far it lies beyond its limit: above a greatest value, or below a least one. */
const beyond = ({ value, limit }: Pick<Caution, 'value' | 'limit'>): number =>
  Math.abs(Number(value) - (typeof limit === 'number' ? limit : 0));

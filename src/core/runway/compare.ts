/** Two ends side by side: which rule puts one above the other, and what came before it. */

import type { Designator } from '../airfield/field';
import {
  type Blow,
  blowFrom,
  crosswindShare,
  failsBy,
  headwindKt,
  keepsLimits,
  leftM,
  preferredPlace,
} from './judge';
import { canKeepLimits, failsLeast, inOrder, offDeg, type Sieve, sievesOf, sift } from './order';
import type { EndsQuestion, Reason } from './question';
import { type Candidate, situationOf } from './situation';

/** A rule, by its code as a reason; `alike` is the order of the designators. */
export type RuleCode = Exclude<Reason['code'], 'only-one-within-limits'>;

/** A rule, and what it says about two ends. */
export interface RuleApplied {
  readonly rule: RuleCode;
  /**
   * What the rule compares, for each: kt of headwind, share of the crosswind limit, metres, degrees
   * off the wind, place among the preferred, share by which limits fail, 1 for yes and 0 for no.
   * Null if unknown, or if the rule doesn't concern the end.
   */
  readonly a: number | null;
  readonly b: number | null;
  /** The best of all ends still in question, perhaps a third one; null if not applied. */
  readonly best: number | null;
  /** How much worse than `best` still counts as equal. */
  readonly slack: number;
  readonly better: 'greater' | 'less';
  /**
   * The only end that passed; `alike` if both are as good as the best; `not-applied` if an earlier
   * rule has decided, or there is nothing to compare for either end.
   */
  readonly verdict: 'a' | 'b' | 'alike' | 'not-applied';
  /** The one rule that puts one end above the other. */
  readonly decides: boolean;
}

/** Two ends side by side. */
export interface EndsCompared {
  readonly a: Designator;
  readonly b: Designator;
  /** The one that stands above the other. */
  readonly first: 'a' | 'b';
  /** All rules for this wind, in the order they apply. */
  readonly rules: readonly RuleApplied[];
}

/**
 * Which rule puts one end above the other in the order of {@link rankRunwayEnds}. Null if the field
 * has no such ends, or they are the same.
 *
 * Two numbers alone can't tell: a rule keeps all ends close to the best of those left, and that
 * best may be a third. So the rules are applied as they were in the round that the upper one won,
 * with every end that was left then.
 */
export function compareEnds(
  question: EndsQuestion,
  a: Designator,
  b: Designator,
): EndsCompared | null {
  const situation = situationOf(question);
  const blow = blowFrom(situation.from, situation);
  const ordered = inOrder(blow).map(({ end }) => end);
  const placeOf = (name: Designator) => ordered.findIndex((end) => end.designator === name);
  const [first, second] = placeOf(a) < placeOf(b) ? [a, b] : [b, a];
  const upper = ordered[placeOf(first)];
  const lower = ordered[placeOf(second)];
  if (!upper || !lower || a === b) return null;

  const before = new Set(ordered.slice(0, placeOf(first)));
  let left: readonly Candidate[] = situation.candidates.filter((end) => !before.has(end));
  let decided = false;
  const rules = rulesBetween(upper, lower, blow).map(({ rule, sieve }): RuleApplied => {
    const { better, of } = MEASURES[rule];
    const numbers = {
      a: of(a === first ? upper : lower, blow),
      b: of(a === first ? lower : upper, blow),
    };
    const { slack } = sieve;
    if (decided || (numbers.a === null && numbers.b === null)) {
      return {
        rule,
        ...numbers,
        best: null,
        slack,
        better,
        verdict: 'not-applied',
        decides: false,
      };
    }
    const best = bestOf(
      left.map((end) => of(end, blow)),
      better,
    );
    left = sift(left, sieve, blow);
    decided = !left.includes(lower);
    const verdict = !decided ? 'alike' : a === first ? 'a' : 'b';
    return { rule, ...numbers, best, slack, better, verdict, decides: decided };
  });
  return { a, b, first: a === first ? 'a' : 'b', rules };
}

type Applied = Pick<Sieve, 'worth' | 'slack'>;

/** The rules between two ends, in the order they apply. */
function rulesBetween(
  upper: Candidate,
  lower: Candidate,
  blow: Blow,
): readonly { readonly rule: RuleCode; readonly sieve: Applied }[] {
  const keeps = keepsLimits(upper, blow);
  const rules: { rule: RuleCode; sieve: Applied }[] = [];
  // In an unknown wind no end is within limits, but some already fail.
  if (canKeepLimits(blow.situation)) rules.push({ rule: 'within-limits', sieve: limitsKept });
  else if (keeps) rules.push({ rule: 'fails-least', sieve: limitsKept });
  if (!keeps) rules.push({ rule: 'fails-least', sieve: failsLeast });
  for (const sieve of sievesOf(blow.situation)) {
    const { code } = sieve.reason(upper, lower, blow);
    if (code !== 'only-one-within-limits') rules.push({ rule: code, sieve });
  }
  return [...rules, { rule: 'alike', sieve: byName }];
}

const limitsKept: Applied = { worth: (end, blow) => (keepsLimits(end, blow) ? 1 : 0), slack: 0 };

const nameOrder = (end: Candidate, { situation }: Blow): number =>
  situation.candidates.indexOf(end) + 1;

const byName: Applied = { worth: (end, blow) => -nameOrder(end, blow), slack: 0 };

/** What a rule compares, as a number for the pilot. */
interface Measure {
  readonly better: 'greater' | 'less';
  readonly of: (end: Candidate, blow: Blow) => number | null;
}

const finite = (value: number): number | null => (Number.isFinite(value) ? value : null);

const MEASURES: Readonly<Record<RuleCode, Measure>> = {
  'within-limits': { better: 'greater', of: limitsKept.worth },
  'fails-least': { better: 'less', of: (end, blow) => finite(failsBy(end, blow)) },
  preferred: { better: 'less', of: (end, blow) => finite(preferredPlace(end, blow)) },
  'calm-wind-end': { better: 'greater', of: (end) => (end.isCalmWindEnd ? 1 : 0) },
  'most-headwind': { better: 'greater', of: headwindKt },
  'least-crosswind-share': { better: 'less', of: crosswindShare },
  'most-runway-left': { better: 'greater', of: leftM },
  'longest-runway': {
    better: 'greater',
    of: (end, blow) => (leftM(end, blow) === null ? end.availableM : null),
  },
  'shortest-taxi': { better: 'less', of: ({ taxiM }) => taxiM },
  'most-aligned': { better: 'less', of: offDeg },
  alike: { better: 'less', of: nameOrder },
};

/** The best of the known numbers; null if none is. */
function bestOf(numbers: readonly (number | null)[], better: Measure['better']): number | null {
  const all = numbers.filter((number) => number !== null);
  return finite(better === 'greater' ? Math.max(...all) : Math.min(...all));
}

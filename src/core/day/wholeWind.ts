/** The wind's answer with its figures and ring. */

import type { Designator } from '../airfield/field';
import { type RunwayRing, runwayRing } from '../runway/ring';
import { type EndFigures, endFigures } from './endFigures';
import type { SettledFacts } from './settled';
import type { ReadWind, WindAnswer } from './wind';

/** A wind and its meaning, with all that is drawn and can be asked for. */
export interface WindBrief extends ReadWind, WindAnswer {
  /** The best end for a wind from each degree true. */
  readonly ring: RunwayRing | null;
  readonly figures: ReadonlyMap<Designator, EndFigures>;
}

/** Completes an answer; the app works these out only when they are drawn or asked for. */
export function wholeWind(read: ReadWind, answer: WindAnswer, settled: SettledFacts): WindBrief {
  const figures = new Map<Designator, EndFigures>();
  for (const end of answer.ranked?.ends ?? []) {
    const ofEnd = endFigures(end, answer, settled);
    if (ofEnd !== null) figures.set(end.designator, ofEnd);
  }
  const ring = answer.question && runwayRing(answer.question);
  return { ...read, ...answer, ring, figures };
}

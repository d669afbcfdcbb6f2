/** The wind's answer with its figures and its ring. */

import type { Designator } from '../airfield/field';
import { type RunwayRing, runwayRing } from '../runway/ring';
import { type EndFigures, endFigures } from './endFigures';
import type { SettledFacts } from './settled';
import type { ReadWind, WindAnswer } from './wind';

/** What the wind says and what it means, with all that is drawn and can be asked for. */
export interface WindBrief extends ReadWind, WindAnswer {
  /** For each degree true the wind might come from, which end would be best. */
  readonly ring: RunwayRing | null;
  readonly figures: ReadonlyMap<Designator, EndFigures>;
}

/** An answer with all that is drawn of it and can be asked for; the app works these out when they are. */
export function wholeWind(read: ReadWind, answer: WindAnswer, settled: SettledFacts): WindBrief {
  const figures = new Map<Designator, EndFigures>();
  for (const end of answer.ranked?.ends ?? []) {
    const ofEnd = endFigures(end, answer, settled);
    if (ofEnd !== null) figures.set(end.designator, ofEnd);
  }
  const ring = answer.question && runwayRing(answer.question);
  return { ...read, ...answer, ring, figures };
}

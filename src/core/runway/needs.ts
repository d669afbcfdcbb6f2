/** What is asked of a runway end: one judgement for whoever compares it with what is declared. */

import type { CannotCode } from '../aircraft/performance';

/** The lengths that are declared for a runway end. ICAO Annex 14, 2.8. */
export type Declared = 'tora' | 'toda' | 'asda' | 'lda';

/** What is asked of a runway end. */
export interface Needs {
  /** Metres, from where each declared length is counted; what nothing is asked of is left out. */
  readonly lengthsM: Readonly<Partial<Record<Declared, number>>>;
  /** Ground speed at lift-off and the most that the tyres take; left out where they have no limit. */
  readonly tyres?: { readonly groundKt: number; readonly limitKt: number };
  /** A twin's lowest speed to go on from, Infinity where there is none, and its last to stop from. */
  readonly goOn?: { readonly lowestKt: number; readonly stopKt: number };
}

/** Why no length is enough. */
export type NoLength = CannotCode | 'cannot-climb' | 'beyond-atmosphere';

/** No length is enough, and why. */
export interface NoNeeds {
  readonly cannot: NoLength;
}

/** Whether no length is enough. */
export const needsNothing = (needed: Needs | NoNeeds): needed is NoNeeds => 'cannot' in needed;

/** What an end must provide, judged once for all who compare it with the declared lengths. */

import type { CannotCode } from '../aircraft/performance';

/** The lengths that are declared for a runway end. ICAO Annex 14, 2.8. */
export type Declared = 'tora' | 'toda' | 'asda' | 'lda';

/** What a runway end must provide. */
export interface Needs {
  /** Metres, from where each declared length counts; absent if nothing is needed of it. */
  readonly lengthsM: Readonly<Partial<Record<Declared, number>>>;
  /** Ground speed at lift-off or touch-down, and the most the tyres allow; absent without a limit. */
  readonly tyres?: { readonly groundKt: number; readonly limitKt: number };
  /** What the brakes take up in a landing, and the most they may; absent without a limit. */
  readonly brakes?: { readonly energyMJ: number; readonly limitMJ: number };
  /** A twin's lowest speed to go on from, Infinity if none, and its last to stop from. */
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

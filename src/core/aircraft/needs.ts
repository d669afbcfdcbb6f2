/** What physics asks of a runway end for a take-off or a landing. */

import type { Needs, NoNeeds } from '../runway/needs';
import { isCannot } from './conditions';
import { landing } from './landing';
import type { LandingQuestion, TakeoffQuestion } from './performance';
import { takeoffLengths } from './takeoff';

/**
 * A take-off needs its run within TORA and its distance to 50 ft within TODA, both times `factor`,
 * from the start of the roll. A stop needs nothing of ASDA by itself, since the last speed to stop
 * from is chosen to fit; `goOn` tells whether a twin could then go on either.
 */
export function takeoffNeeds(question: TakeoffQuestion, factor: number): Needs | NoNeeds {
  const lengths = takeoffLengths(question);
  if (isCannot(lengths)) return { cannot: lengths.because };
  if (lengths.to50ftM === null) return { cannot: 'cannot-climb' };
  const { tyreKt } = question.aircraft.limits;
  const { rollsFromM } = question;
  const { goOn, lastStopKt } = lengths;
  return {
    lengthsM: {
      tora: rollsFromM + factor * lengths.runM,
      toda: rollsFromM + factor * lengths.to50ftM,
    },
    ...(tyreKt === undefined
      ? {}
      : { tyres: { groundKt: lengths.liftOffGroundKt, limitKt: tyreKt } }),
    ...(goOn === null
      ? {}
      : { goOn: { lowestKt: goOn.lowest.value ?? Number.POSITIVE_INFINITY, stopKt: lastStopKt } }),
  };
}

/**
 * A landing needs 50 ft to rest within LDA, times `factor`, and 1.15 more if not dry; tyres and
 * brakes allow what their limits say.
 */
export function landingNeeds(question: LandingQuestion): Needs | NoNeeds {
  const answer = landing(question);
  if (answer.kind === 'cannot') return { cannot: answer.because };
  const { tyreKt } = question.aircraft.limits;
  const limitMJ = question.aircraft.performance?.brakes.maxMJ;
  return {
    lengthsM: { lda: answer.plannedM },
    ...(tyreKt === undefined
      ? {}
      : { tyres: { groundKt: answer.speeds.touchdownGroundKt, limitKt: tyreKt } }),
    ...(limitMJ === undefined ? {} : { brakes: { energyMJ: answer.brakes.energyMJ, limitMJ } }),
  };
}

/** What a take-off or a landing asks of a runway end, by the physics. */

import type { Needs, NoNeeds } from '../runway/needs';
import { isCannot } from './conditions';
import { landing } from './landing';
import type { LandingQuestion, TakeoffQuestion } from './performance';
import { takeoffLengths } from './takeoff';

/**
 * What a take-off asks: its run of TORA, its way to 50 ft of TODA, both times `factor`, from where the
 * roll begins. A stop asks nothing of ASDA by itself, since the last speed to stop from is such that
 * it fits; that a twin may then not be able to go on either is told by `goOn`.
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

/** What a landing asks of LDA: the distance from 50 ft to rest times `factor`, and 1.15 more where it is not dry. */
export function landingNeeds(question: LandingQuestion): Needs | NoNeeds {
  const answer = landing(question);
  return answer.kind === 'cannot'
    ? { cannot: answer.because }
    : { lengthsM: { lda: answer.plannedM } };
}

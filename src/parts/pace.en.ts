/** The words of the taxi route that stand in several places. */

import type { Crossing, Mark, Passing, Turn } from '../core';
import { NO_BREAK_SPACE, wholeNumber } from './format';

/** Minutes and seconds: `2 min 05 s`, `40 s`. */
export function durationWords(seconds: number): string {
  const all = Math.round(seconds);
  const minutes = Math.floor(all / 60);
  const rest = all % 60;
  return minutes === 0
    ? `${rest}${NO_BREAK_SPACE}s`
    : `${minutes}${NO_BREAK_SPACE}min${NO_BREAK_SPACE}${String(rest).padStart(2, '0')}${NO_BREAK_SPACE}s`;
}

/** A point by its name, or by the taxiways that meet there. */
export function markWords({ name, between: [one, other] }: Mark): string {
  if (name !== null) return name;
  const said = (part: string) => (part === 'apron' ? 'the apron' : part);
  return one === other ? 'here' : `${said(one)} and ${said(other)}`;
}

/** The key for the next point. Beyond a hold lies a runway, and the key says which. */
export function passingWords(passing: Passing): string {
  const point = markWords(passing.mark);
  switch (passing.kind) {
    case 'leave':
      return `Leaving ${point}`;
    case 'pass':
      return `Passing ${point}`;
    case 'arrive':
      return `At ${point}`;
    case 'cross': {
      const { runway, alongM } = passing.crossing;
      return `${alongM > 0 ? 'Entering' : 'Crossing'} ${runway} at ${point}`;
    }
  }
}

/** What one waits for before a runway. */
export function holdWords({ runway, alongM, told }: Crossing, controlled: boolean): string {
  if (told) return `${runway}: told to cross; look both ways`;
  const todo = alongM > 0 ? 'enter' : 'cross';
  return controlled
    ? `${runway}: hold until told to ${todo}`
    : `${runway}: hold, look both ways, say that you ${todo}`;
}

/** The speed for a turn, if it can be made. Rounded down: it must not be exceeded either. */
export function turnWords({ maxKt, onto, turnDeg, canBeMade }: Turn): string {
  if (!canBeMade) {
    const hand = turnDeg > 0 ? 'right' : 'left';
    return `${Math.round(Math.abs(turnDeg))}° ${hand} onto ${onto}: too tight to make`;
  }
  const kt = wholeNumber(Math.floor(maxKt));
  return onto === 'apron' ? `${kt} kt in the next turn` : `${kt} kt turning onto ${onto}`;
}

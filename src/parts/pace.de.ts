/** Words about taxiing that several views share, in German. */

import { wholeNumber } from './format';
import type * as english from './pace.en';

/** Minutes and seconds have the same signs in German. */
export { durationWords } from './pace.en';

/** A taxiway or a runway by its name, the apron by its word. */
const part = (name: string) => (name === 'apron' ? 'Vorfeld' : name);

/** A point by its name, or by the taxiways that meet there. */
export const markWords: typeof english.markWords = ({ name, between: [one, other] }) => {
  if (name !== null) return name;
  return one === other ? 'hier' : `${part(one)} und ${part(other)}`;
};

/** The key for the next point. Beyond a hold lies a runway, and the key says which. */
export const passingWords: typeof english.passingWords = (passing) => {
  const { name, between } = passing.mark;
  const point = name === null && between[0] === between[1] ? 'Punkt' : markWords(passing.mark);
  switch (passing.kind) {
    case 'leave':
      return `${point} verlassen`;
    case 'pass':
      return `${point} passiert`;
    case 'arrive':
      return `Bei ${point}`;
    case 'cross': {
      const { runway, alongM } = passing.crossing;
      return alongM > 0 ? `Auf ${runway} bei ${point}` : `${runway} queren bei ${point}`;
    }
  }
};

/** What one waits for before a runway. */
export const holdWords: typeof english.holdWords = ({ runway, alongM, told }, controlled) => {
  if (told) return `${runway}: Querung angewiesen; nach beiden Seiten schauen`;
  const what = alongM > 0 ? 'Aufrollen' : 'Querung';
  return controlled
    ? `${runway}: warten, bis ${what} freigegeben`
    : `${runway}: halten, nach beiden Seiten schauen, ${what} ansagen`;
};

/** The speed for a turn, rounded down because it is a limit. */
export const turnWords: typeof english.turnWords = ({ maxKt, onto, turnDeg, canBeMade }) => {
  if (!canBeMade) {
    const hand = turnDeg > 0 ? 'rechts' : 'links';
    return `${Math.round(Math.abs(turnDeg))}° ${hand} auf ${onto}: zu eng für eine Kurve`;
  }
  const kt = wholeNumber(Math.floor(maxKt));
  return onto === 'apron' ? `${kt} kt in der nächsten Kurve` : `${kt} kt in der Kurve auf ${onto}`;
};

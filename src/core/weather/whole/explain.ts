/** Explains each group of a report while the reader goes through it. */

import type { Explainer, Read } from '../explainer';
import { toldApart } from '../readWind';
import type { SpanKind, Wind } from '../report';
import type { Issued } from '../statements';
import type { Token } from '../tokens';
import { readExpected } from './expected';
import type { Meaning, Modifier } from './meaning';
import { readGroup } from './readGroup';
import { readRemark } from './remarks';

/** The explainer the whole reader passes to the wind reader. */
export const EXPLAINED: Explainer = {
  word: meaningOf,
  observed: readObserved,
  expected: readExpected,
  remarks: readRemark,
};

/** A slip, such as an impossible pressure, leaves a group known but without a meaning. */
function readObserved(tokens: readonly Token[], at: number, end: number): Read | null {
  return readGroup(tokens, at, end) ?? toldApart(tokens, at);
}

/** One object for all, so that the words of a bulletin's heading form one stretch. */
const BULLETIN = { code: 'bulletin' } as const;
const END = { code: 'end' } as const;

/** The meaning of a word the wind reader has already recognised. */
function meaningOf(
  kind: SpanKind,
  text: string,
  issued: Issued | null,
  wind: Wind | null,
): Meaning | null {
  switch (kind) {
    case 'heading':
      return BULLETIN;
    case 'type':
      return { code: 'type', type: text === 'METAR' || text === 'SPECI' ? text : 'TAF' };
    case 'station':
      return { code: 'station', station: text };
    case 'time':
      return (
        issued && { code: 'issued', day: issued.day, hour: issued.hour, minute: issued.minute }
      );
    case 'modifier':
      return { code: 'modifier', modifier: modifierOf(text) };
    case 'wind':
      return wind && { code: 'wind', wind };
    case 'swing':
      return wind?.sectorDeg ? { code: 'swing', sectorDeg: wind.sectorDeg } : null;
    case 'end':
      return END;
    default:
      return null;
  }
}

/** FM 15, 15.4; WMO-No. 386, Part II, 2.3.2 for those of three letters. */
function modifierOf(text: string): Modifier {
  if (text === 'AUTO') return 'automatic';
  if (text === 'NIL') return 'missing';
  if (text === 'RTD' || text.startsWith('RR')) return 'late';
  return text.startsWith('C') ? 'corrected' : 'amended';
}

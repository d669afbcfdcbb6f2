/** Says what each group of a report means, while the reader goes through it. */

import type { Explainer, Read } from '../explainer';
import { toldApart } from '../readWind';
import type { SpanKind, Wind } from '../report';
import type { Issued } from '../statements';
import type { Token } from '../tokens';
import { readExpected } from './expected';
import type { Meaning, Modifier } from './meaning';
import { readGroup } from './readGroup';
import { readRemark } from './remarks';

/** What the whole reader hands to the reader of winds. */
export const EXPLAINED: Explainer = {
  word: meaningOf,
  observed: readObserved,
  expected: readExpected,
  remarks: readRemark,
};

/** A slip in a known group, such as a pressure that cannot be, leaves the group known and without a meaning. */
function readObserved(tokens: readonly Token[], at: number, end: number): Read | null {
  return readGroup(tokens, at, end) ?? toldApart(tokens, at);
}

/** One for all, so that the words of a bulletin's heading are one stretch. */
const BULLETIN = { code: 'bulletin' } as const;
const END = { code: 'end' } as const;

/** What a word means that the wind's reader has told apart already. */
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

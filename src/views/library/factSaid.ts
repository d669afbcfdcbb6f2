/** A fact that differs between two documents, as a line. */

import type { FactDifference, FactValue } from '../../exchange/facts';
import { wholeNumber } from '../../parts/format';
import { quoted } from '../../parts/quoted/Quoted';
import { aboutLength, length, mass } from '../../parts/units';
import { words } from './factWords';

/** What it is, what it was and what it is now: `TORA 10: 900 m → 1 100 m`. */
export function factSaid({ of, what, end, before, after, movedM }: FactDifference): string {
  const named = words.names[what];
  if (what === 'runway') return after === null ? words.runwayGone(of) : words.runwayNew(of);
  const isOfRunway = end !== undefined || /^\d\d[LCR]?\/\d\d[LCR]?$/.test(of);
  const name = isOfRunway
    ? words.ofRunway(end ?? of, named)
    : of === ''
      ? named
      : words.ofThing(named, quoted(of));
  if (movedM !== null) return words.moved(name, aboutLength(movedM, 'nearest'));
  return words.became(name, valueSaid(what, before), valueSaid(what, after));
}

function valueSaid(what: FactDifference['what'], value: FactValue | null): string {
  if (value === null) return words.notSaid;
  if ('text' in value) return quoted(value.text);
  if ('code' in value) return words.codes[`${what} ${value.code}`] ?? value.code;
  if ('latDeg' in value) return `${value.latDeg.toFixed(4)} ${value.lonDeg.toFixed(4)}`;
  if (value.unit === 'm') return length(value.value);
  if (value.unit === 'kg') return mass(value.value);
  return words.inUnit(wholeNumber(value.value), words.units[value.unit]);
}

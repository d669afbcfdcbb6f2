/** Reading one group of an observation: which it is, and what it says. */

import type { Read } from '../explainer';
import { GROUPS, isSpokenPressure, isWholeMiles } from '../groups';
import { phraseOf, type Token, textAt } from '../tokens';
import { pressureOf, seaOf, spokenPressureOf, temperatureOf } from './air';
import type { ColourState, Maintenance, ReportGroup, ShearAloft } from './groupTypes';
import { runwayStateOf } from './runwayState';
import { runwayVisualRangeOf, visibilityOf } from './seeing';
import { cloudOf, weatherOf } from './sky';
import { hundredsOfFt, wholeGroup } from './written';

type Reader = (text: string) => ReportGroup | null;

/** The reader of each group. No text is two of them. */
const READERS: readonly Reader[] = [
  cloudOf,
  temperatureOf,
  visibilityOf,
  pressureOf,
  weatherOf,
  runwayVisualRangeOf,
  runwayStateOf,
  colourStateOf,
  seaOf,
  shearAloftOf,
  maintenanceOf,
];

/** Reads the group that starts at a token and ends before another; null if none does. */
export function readGroup(tokens: readonly Token[], at: number, end: number): Read | null {
  const text = textAt(tokens, at);
  for (const reader of READERS) {
    const meaning = reader(text);
    if (meaning) return { meaning, end: at + 1 };
  }
  if (text === 'WS') return windShearAt(tokens, at, end);
  const next = at + 1 < end ? textAt(tokens, at + 1) : '';
  if (isSpokenPressure(text, next)) {
    const pressure = spokenPressureOf(next);
    return pressure && { meaning: pressure, end: at + 2 };
  }
  if (!isWholeMiles(text, next)) return null;
  const meaning = visibilityOf(next, Number(text));
  return meaning && { meaning, end: at + 2 };
}

/** `WS ALL RWY`, `WS R04`, `WS TKOF RWY04`. 15.13.3. */
const SHEAR = /^WS(?: (TKOF|LDG))?(?: (ALL) RWY| (?:RWY|R)(\d\d[LCR]?))?(?= |$)/;
const LONGEST_SHEAR = 4;

function windShearAt(tokens: readonly Token[], at: number, end: number): Read | null {
  const phrase = phraseOf(tokens, at, Math.min(end, at + LONGEST_SHEAR));
  const parts = SHEAR.exec(phrase);
  if (!parts) return null;
  const [all, phase, every, runway = null] = parts;
  const path = phase ? (phase === 'TKOF' ? 'take-off' : 'landing') : null;
  return {
    meaning: { code: 'wind-shear', runway: every ? 'all' : runway, path },
    end: at + all.split(' ').length,
  };
}

const SHEAR_ALOFT = wholeGroup(GROUPS.windShear);

function shearAloftOf(text: string): ShearAloft | null {
  const [, height, from, speed] = SHEAR_ALOFT.exec(text) ?? [];
  const heightFt = hundredsOfFt(height);
  if (heightFt === null) return null;
  return { code: 'shear-aloft', heightFt, fromDeg: Number(from), speedKt: Number(speed) };
}

const COLOUR = wholeGroup(GROUPS.colourState);

function colourStateOf(text: string): ColourState | null {
  const parts = COLOUR.exec(text);
  if (!parts) return null;
  const colour = (parts[2] ?? null) as ColourState['colour'];
  return { code: 'colour-state', colour, black: colour === null || parts[1] !== undefined };
}

function maintenanceOf(text: string): Maintenance | null {
  return text === '$' ? { code: 'maintenance' } : null;
}

/** What lies on a runway. FM 15, 15.13.6, until 2021; tables 0919, 0519, 1079 and 0366, from memory. */

import { GROUPS } from '../groups';
import type { Bound, BrakingAction, Deposit, RunwayState, SnowClosed } from './groupTypes';
import { numberWritten, wholeGroup } from './written';

const STATE = wholeGroup(GROUPS.runwayState);

/** Table 0919, by its figures. */
const DEPOSITS: readonly Deposit[] = [
  'clear-and-dry',
  'damp',
  'wet',
  'rime',
  'dry-snow',
  'wet-snow',
  'slush',
  'ice',
  'compacted-snow',
  'frozen-ruts',
];

/** Table 0519; its other figures are reserved. */
const COVERED: Readonly<Record<string, readonly [number, number]>> = {
  1: [0, 10],
  2: [11, 25],
  5: [26, 50],
  9: [51, 100],
};

/** Table 0366, from 91. */
const ACTIONS: readonly BrakingAction[] = ['poor', 'medium-poor', 'medium', 'medium-good', 'good'];

/** In both tables: out of use, or unreliable. */
const NINETY_NINE = 99;

export function runwayStateOf(text: string): RunwayState | SnowClosed | null {
  const parts = STATE.exec(text);
  if (!parts) return null;
  const [, named, numbered = '', deposit, covered = '', depth, braking, cleared, closed] = parts;
  if (parts[9]) return { code: 'snow-closed', runway: closed ? nameOf(closed) : 'all' };
  const depthFigure = numberWritten(depth);
  return {
    code: 'runway-state',
    runway: nameOf(named ?? withoutLetter(numbered)),
    cleared: cleared !== undefined,
    deposit: DEPOSITS[numberWritten(deposit) ?? -1] ?? null,
    coveredPercent: COVERED[covered] ?? null,
    depth: depthOf(depthFigure),
    closed: depthFigure === NINETY_NINE,
    braking: brakingOf(numberWritten(braking ?? cleared)),
  };
}

/** 88 is all runways, 99 the message before repeated. 15.13.6.1. */
const nameOf = (runway: string): string =>
  runway === '88' ? 'all' : runway === '99' ? 'repeated' : runway;

/** In eight figures the right one of two parallels has 50 added to its number. */
function withoutLetter(number: string): string {
  const figure = Number(number);
  return figure > 50 && figure < 88 ? `${String(figure - 50).padStart(2, '0')}R` : number;
}

/** Table 1079: millimetres up to 90, then steps of 5 cm; 91 is reserved. */
function depthOf(figure: number | null): { depthMm: number; bound: Bound } | null {
  if (figure === null || figure === 91 || figure === NINETY_NINE) return null;
  if (figure === 0) return { depthMm: 1, bound: 'below' };
  if (figure < 91) return { depthMm: figure, bound: 'exact' };
  return { depthMm: (figure - 90) * 50, bound: figure === 98 ? 'at-least' : 'exact' };
}

/** Table 0366: hundredths up to 90, then words. */
function brakingOf(figure: number | null): RunwayState['braking'] {
  if (figure === null) return null;
  if (figure <= 90) return figure / 100;
  return figure === NINETY_NINE ? 'unreliable' : (ACTIONS[figure - 91] ?? null);
}

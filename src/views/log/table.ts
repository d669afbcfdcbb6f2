/** The log as a table: a line for every sortie, oldest first, for a spreadsheet. */

import { isCautionCode, type LoggedSortie, type LogMoment, PHASES, type Seal } from '../../core';
import type { Cell } from '../../exchange/csv';
import { words as verdictWords } from '../../parts/verdict/words';
import { words } from './words';

/** What the table can't know about a sortie by itself. */
export interface LoggedTimes {
  readonly blockMinutes: number | null;
  readonly flightMinutes: number | null;
  readonly field: string;
  readonly aircraft: string;
}

const MOMENTS: readonly LogMoment[] = ['off chocks', 'airborne', 'landed', 'on chocks'];
const AIR = ['runway', 'wind', 'headwindKt', 'crosswindWorstKt', 'qnhHpa', 'temperatureC'];
const AT_TAKEOFF = [...AIR, 'massKg', 'rotateKt', 'liftOffKt', 'runM', 'lastStopKt'];
const AT_LANDING = [...AIR, 'landingMassKg', 'approachKt', 'landingM'];

/** The unit of a figure by the end of its name, longest first. */
const UNITS = [
  ['Hpa', 'hPa'],
  ['Kt', 'kt'],
  ['Kg', 'kg'],
  ['C', '°C'],
  ['M', 'm'],
] as const;

const figureName = (name: string): string => {
  const known = words.figures[name] ?? name;
  const [, unit] = UNITS.find(([end]) => name.endsWith(end)) ?? [];
  return unit === undefined ? known : words.csv.withUnit(known, unit);
};

/** The heading of the table. */
export const heading = (): readonly Cell[] => [
  words.csv.date,
  words.csv.callsign,
  words.csv.aircraft,
  words.csv.field,
  ...MOMENTS.map((moment) => words.moments[moment]),
  words.csv.blockMin,
  words.csv.flightMin,
  words.csv.landings,
  ...AT_TAKEOFF.map((name) => words.csv.takeoff(figureName(name))),
  ...AT_LANDING.map((name) => words.csv.landing(figureName(name))),
  ...PHASES.map((phase) => words.csv.phase(words.phases[phase])),
  words.csv.heldBack,
  words.csv.cannot,
  words.csv.lists,
  words.csv.begun,
  words.csv.outside,
  words.csv.notes,
  words.csv.sortie,
];

const day = (ms: number): string => new Date(ms).toISOString().slice(0, 10);
const time = (ms: number | null): Cell =>
  ms === null ? null : new Date(ms).toISOString().slice(11, 16);

/** The seal made with a moment: the last, if it happened twice. */
function sealAt({ stamps, seals }: LoggedSortie, what: 'brakes released' | 'landed'): Seal | null {
  const stamp = stamps.findLast((one) => one.what === what);
  return seals.findLast(({ at }) => at.wallMs === stamp?.at.wallMs) ?? null;
}

const figuresOf = (seal: Seal | null, names: readonly string[]): readonly Cell[] =>
  names.map((name) => {
    const value = seal?.figures[name]?.value ?? null;
    return typeof value === 'number' ? Math.round(value * 10) / 10 : value;
  });

/** What the pilot went on in spite of, and on which runway. */
const outsideOf = ({ code, value, limit, end }: LoggedSortie['accepted'][number]): string =>
  [end ?? '', isCautionCode(code) ? verdictWords.said({ code, value, limit }) : code]
    .filter((part) => part !== '')
    .join(' ');

export function lineOf(sortie: LoggedSortie, told: LoggedTimes): readonly Cell[] {
  const { times, heldBack, cannot, lists, begun, accepted, notes } = sortie;
  const first = times['off chocks'].sortieMs ?? times.airborne.sortieMs ?? sortie.beganAt.sortieMs;
  return [
    day(first),
    sortie.callsign,
    told.aircraft,
    told.field,
    ...MOMENTS.map((moment) => time(times[moment].sortieMs)),
    told.blockMinutes,
    told.flightMinutes,
    sortie.landings,
    ...figuresOf(sealAt(sortie, 'brakes released'), AT_TAKEOFF),
    ...figuresOf(sealAt(sortie, 'landed'), AT_LANDING),
    ...PHASES.map((phase) => {
      const took = sortie.phases.find((one) => one.phase === phase);
      return took === undefined ? null : Math.round(took.ms / 60_000);
    }),
    heldBack.map(({ item, step }) => item ?? step).join('; '),
    cannot.map(({ item, step, why }) => [item ?? step, why].filter(Boolean).join(': ')).join('; '),
    lists.map(({ title, list }) => title ?? list).join('; '),
    begun.map(({ phase }) => words.phases[phase]).join('; '),
    accepted.map(outsideOf).join('; '),
    notes.map(({ text }) => text).join('\n'),
    sortie.id,
  ];
}

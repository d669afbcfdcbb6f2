/**
 * The calls, in words. Asking a controller: ICAO Doc 9432 and Doc 4444, ch. 12. Telling traffic:
 * FAA AIM 4-1-9, the field's name first and last. A call asks, tells or reports; it never says that
 * something is allowed.
 */

import type { Call, CallFacts, CallKind, Compass, Manner } from '../../core';
import { saidCallsign, saidPoint, saidRunway, saidStand } from './spelling';

/** Where a departure turns, as said. */
export const saidCompass: Record<Compass, string> = {
  n: 'north',
  ne: 'north-east',
  e: 'east',
  se: 'south-east',
  s: 'south',
  sw: 'south-west',
  w: 'west',
  nw: 'north-west',
};

/** A placeholder for what only the pilot knows. */
const YOUR_CALLSIGN = '… your callsign …';
const YOUR_POSITION = '… your position and level …';

const runway = ({ end }: CallFacts) => (end === null ? 'the runway' : `runway ${saidRunway(end)}`);

const holding = ({ hold }: CallFacts) =>
  hold === null ? null : `holding point ${saidPoint(hold)}`;

const stand = ({ stand: name }: CallFacts) => (name === null ? null : saidStand(name));

const via = ({ via: names }: CallFacts) =>
  names.length === 0
    ? ''
    : ` via ${names.map((name) => (/\d\d/.test(name) ? `backtrack runway ${saidRunway(name)}` : saidPoint(name))).join(', ')}`;

/** Runways on the way to the holding point; null if there is none. */
const backtracks = ({ via: names }: CallFacts) => {
  const runways = names.filter((name) => /\d\d/.test(name));
  return runways.length === 0
    ? null
    : runways.map((name) => `backtrack runway ${saidRunway(name)}`).join(', ');
};

const towards = ({ departTo }: CallFacts) =>
  departTo === null ? '' : ` to the ${saidCompass[departTo]}`;

const crossed = ({ crossing }: CallFacts) =>
  crossing === null ? 'the runway' : `runway ${saidRunway(crossing.runway)}`;

const crossingPoint = ({ crossing }: CallFacts) => {
  if (crossing?.hold) return `holding point ${saidPoint(crossing.hold)}`;
  return crossing?.on ? saidPoint(crossing.on) : null;
};

type Message = (facts: CallFacts) => readonly (string | null)[];

const departing: Message = (facts) => [
  `${facts.intersection && facts.hold !== null ? `from ${saidPoint(facts.hold)}, ` : ''}departing${towards(facts)}`,
];

/** Everything between who is called, who calls and, to traffic, the field again. */
const MESSAGES: Record<CallKind, Record<Manner, Message>> = {
  taxi: {
    ask: (facts) => [
      stand(facts),
      facts.hold === null
        ? `request taxi for ${runway(facts)}`
        : `request taxi to ${holding(facts)}, ${runway(facts)}`,
      backtracks(facts) && `request ${backtracks(facts)}`,
    ],
    inform: (facts) => [stand(facts), `taxiing to ${runway(facts)}${via(facts)}`],
    tell: (facts) => [stand(facts), `taxiing to ${runway(facts)}${via(facts)}`],
  },
  crossing: {
    ask: (facts) => [
      crossingPoint(facts) && `approaching ${crossingPoint(facts)}`,
      facts.crossing?.along
        ? `request enter and backtrack ${crossed(facts)}`
        : `request cross ${crossed(facts)}`,
    ],
    inform: (facts) => [
      crossingPoint(facts),
      facts.crossing?.along
        ? `about to enter and backtrack ${crossed(facts)}`
        : `about to cross ${crossed(facts)}`,
    ],
    tell: (facts) => [
      `${facts.crossing?.along ? 'entering and backtracking' : 'crossing'} ${crossed(facts)}${facts.crossing?.on ? ` on ${saidPoint(facts.crossing.on)}` : ''}`,
    ],
  },
  'line-up': {
    ask: (facts) => [
      holding(facts),
      `${runway(facts)}${facts.backtrack ? ', request backtrack' : ''}`,
      'ready for departure',
    ],
    inform: (facts) => [
      `lining up ${runway(facts)}${facts.backtrack ? ' after backtrack' : ''}`,
      ...departing(facts),
    ],
    tell: (facts) => [
      `lining up ${runway(facts)}${facts.backtrack ? ' after backtrack' : ''}`,
      ...departing(facts),
    ],
  },
  departure: {
    ask: (facts) => [`airborne${facts.departTo === null ? '' : `, turning${towards(facts)}`}`],
    inform: (facts) => [`airborne ${runway(facts)}`, ...departing(facts)],
    tell: (facts) => [`departing ${runway(facts)}${towards(facts)}`],
  },
  inbound: {
    ask: () => [YOUR_POSITION, 'for landing'],
    inform: (facts) => [YOUR_POSITION, `inbound to land, ${runway(facts)}`],
    tell: (facts) => [YOUR_POSITION, `inbound to land, ${runway(facts)}`],
  },
  vacated: {
    ask: (facts) => [`${runway(facts)} vacated`, stand(facts) && `request taxi to ${stand(facts)}`],
    inform: (facts) => [`${runway(facts)} vacated`, stand(facts) && `taxiing to ${stand(facts)}`],
    tell: (facts) => [`${runway(facts)} vacated`, stand(facts) && `taxiing to ${stand(facts)}`],
  },
};

/** The names in braces that the pilot's own wording may contain, to be filled in. */
export const PLACEHOLDERS = [
  'station',
  'callsign',
  'stand',
  'runway',
  'route',
  'hold',
  'crossing',
  'direction',
  'field',
] as const;

function filledIn(text: string, { station, facts }: Call): string {
  const known: Record<(typeof PLACEHOLDERS)[number], string> = {
    station: station?.name ?? facts.field,
    callsign: facts.callsign === null ? YOUR_CALLSIGN : saidCallsign(facts.callsign),
    stand: stand(facts) ?? 'the stand',
    runway: runway(facts),
    route: via(facts).replace(/^ via /, ''),
    hold: holding(facts) ?? 'the holding point',
    crossing: crossed(facts),
    direction: towards(facts).trim(),
    field: facts.field,
  };
  return text.replace(/\{(\w+)\}/g, (whole, name: string) =>
    PLACEHOLDERS.some((one) => one === name) ? known[name as keyof typeof known] : whole,
  );
}

/** A call as said; `own` is the pilot's own wording of it. */
export function sayCall(call: Call, own?: string): string {
  if (own !== undefined && own.trim() !== '') return filledIn(own, call);
  const { station, facts, manner, kind } = call;
  const called = station?.name ?? `${facts.field} traffic`;
  const said = [
    called,
    facts.callsign === null ? YOUR_CALLSIGN : saidCallsign(facts.callsign),
    ...MESSAGES[kind][manner](facts),
    manner === 'tell' ? called.replace(/ traffic$/i, '') : null,
  ];
  return `${said.filter((part) => part !== null && part !== '').join(', ')}.`;
}

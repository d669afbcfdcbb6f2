/** Radio calls as facts and manner; the words are the view's. */

import type { Designator, Field } from '../airfield/field';

export type RadioStation = Field['radio'][number];

/** The calls from stand to stand. */
export const CALLS = ['taxi', 'crossing', 'line-up', 'departure', 'inbound', 'vacated'] as const;

/** A call from stand to stand. */
export type CallKind = (typeof CALLS)[number];

/** Where a departure turns, and where an arrival comes from. */
export const COMPASS = ['n', 'ne', 'e', 'se', 's', 'sw', 'w', 'nw'] as const;

/** One of eight directions. */
export type Compass = (typeof COMPASS)[number];

/**
 * How a station is addressed: a controller is asked, an information officer is told and may answer,
 * traffic is told by broadcasting to the field. FAA AIM 4-1-9; ICAO Annex 11, 2.6.
 */
export type CallManner = 'ask' | 'inform' | 'tell';

/** What the calls are made of; null if unknown, and left unsaid. */
export interface CallFacts {
  readonly callsign: string | null;
  readonly field: string;
  /** The stand left, or gone to. */
  readonly stand: string | null;
  /** The holding point before the runway. */
  readonly hold: string | null;
  /** The end in use. */
  readonly end: Designator | null;
  /** Taxiways in order; runways taxied along by their names. */
  readonly via: readonly string[];
  /** What the controller said of the route, to be read back; null if nothing was entered. */
  readonly told: readonly string[] | null;
  /** The next runway to cross or enter, and the taxiway and holding point it is entered from. */
  readonly crossing: {
    readonly runway: string;
    readonly on: string | null;
    readonly hold: string | null;
    /** The route goes along the runway, not across it. */
    readonly along: boolean;
  } | null;
  /** All runways to cross. */
  readonly crossed: readonly string[];
  readonly backtrack: boolean;
  /** The roll begins where the taxiway meets the runway. */
  readonly intersection: boolean;
  readonly departTo: Compass | null;
  /** The pressure set, hPa; null if nobody gave one. */
  readonly qnhHpa: number | null;
}

/** What must be read back of an answer. */
export type Readback =
  | { readonly code: 'runway'; readonly end: Designator }
  | { readonly code: 'holding-point'; readonly hold: string }
  | { readonly code: 'hold-short' | 'cross'; readonly runway: string }
  | { readonly code: 'backtrack' | 'line-up' | 'take-off' | 'land'; readonly end: Designator }
  | { readonly code: 'qnh'; readonly hPa: number | null }
  | { readonly code: 'via'; readonly via: readonly string[] };

export interface Call {
  readonly kind: CallKind;
  /** Null if the field has no radio, and so nobody to address. */
  readonly station: RadioStation | null;
  readonly manner: CallManner;
  readonly facts: CallFacts;
  /**
   * If a controller answers: what to read back. ICAO Annex 11, 3.7.3.1, with altimeter settings;
   * Doc 9432, 2.8.3.
   */
  readonly readback: readonly Readback[];
}

/** On the ground, ground comes first; at the runway and in the air, the tower. */
const ON_THE_GROUND = ['ground', 'tower', 'information', 'traffic'] as const;
const AT_THE_RUNWAY = ['tower', 'information', 'traffic', 'ground'] as const;

const FIRST_CALLED: Readonly<Record<CallKind, readonly RadioStation['service'][]>> = {
  taxi: ON_THE_GROUND,
  crossing: ON_THE_GROUND,
  'line-up': AT_THE_RUNWAY,
  departure: AT_THE_RUNWAY,
  inbound: AT_THE_RUNWAY,
  vacated: AT_THE_RUNWAY,
};

/** Whom to address for a call; null if the field has no radio. */
export function stationFor(kind: CallKind, radio: readonly RadioStation[]): RadioStation | null {
  for (const service of FIRST_CALLED[kind]) {
    const station = radio.find((one) => one.service === service);
    if (station !== undefined) return station;
  }
  return null;
}

const MANNERS: Readonly<Record<RadioStation['service'], CallManner>> = {
  ground: 'ask',
  tower: 'ask',
  information: 'inform',
  traffic: 'tell',
};

/** The name by which a field goes on the radio: its stations', without the service. */
export function fieldCalled({ name, radio }: Pick<Field, 'name' | 'radio'>): string {
  for (const { name: station, service } of radio) {
    if (!station.toLowerCase().endsWith(` ${service}`)) continue;
    return station.slice(0, -service.length - 1).trim();
  }
  return name;
}

/** A station as called: by its own name; without radio, the field's traffic. */
export const stationCalled = (kind: CallKind, field: Pick<Field, 'name' | 'radio'>): string =>
  stationFor(kind, field.radio)?.name ?? `${fieldCalled(field)} traffic`;

/** A call with its station, its manner, and what to read back of the answer. */
export function callFor(kind: CallKind, radio: readonly RadioStation[], facts: CallFacts): Call {
  const station = stationFor(kind, radio);
  const manner = station === null ? 'tell' : MANNERS[station.service];
  return {
    kind,
    station,
    manner,
    facts,
    readback: manner === 'ask' ? readbackOf(kind, facts) : [],
  };
}

function readbackOf(kind: CallKind, facts: CallFacts): readonly Readback[] {
  const { end, hold, crossed, crossing, backtrack } = facts;
  const qnh = { code: 'qnh', hPa: facts.qnhHpa } as const;
  const short = (runway: string) => ({ code: 'hold-short', runway }) as const;
  const ofEnd = (...codes: ('runway' | 'backtrack' | 'line-up' | 'take-off' | 'land')[]) =>
    end === null ? [] : codes.map((code) => ({ code, end }));
  switch (kind) {
    case 'taxi':
      return [
        ...(hold === null ? [] : [{ code: 'holding-point', hold } as const]),
        ...ofEnd('runway'),
        ...(facts.told === null ? [] : [{ code: 'via', via: facts.told } as const]),
        ...crossed.map(short),
        qnh,
      ];
    case 'crossing':
      return crossing === null
        ? []
        : [
            crossing.along
              ? { code: 'backtrack', end: crossing.runway }
              : { code: 'cross', runway: crossing.runway },
            short(crossing.runway),
          ];
    case 'line-up':
      return [...ofEnd('line-up'), ...(backtrack ? ofEnd('backtrack') : []), ...ofEnd('take-off')];
    case 'inbound':
      return [...ofEnd('runway', 'land'), qnh];
    // Airborne, what was crossed on the ground lies behind, and headings and levels are the pilot's.
    case 'departure':
      return [];
    case 'vacated':
      return crossed.map(short);
  }
}

/** Moments of a day, and the day worked out at one: the demo's fields and aircraft, any wind, any choices. */

import fc from 'fast-check';
import { settledSources } from '../../../src/core/day/askDay';
import { day } from '../../../src/core/day/day';
import { plainMemo } from '../../../src/core/day/memo';
import type { Documents, LateParts, Sources, WindText } from '../../../src/core/day/sources';
import { wholeWind } from '../../../src/core/day/wholeWind';
import * as sunlight from '../../../src/core/earth/sunlight';
import { variationTableFor } from '../../../src/core/earth/variationTable';
import { FRESH_INPUTS, type Inputs } from '../../../src/core/sortie/entry';
import { NO_SORTIE, type Run, type Sortie, type Stamp } from '../../../src/core/sortie/fold';
import { demoAircraft, demoField, demoFields, demoProcedures } from '../documents/demo';

/** When the invented sorties are flown. */
export const AT = new Date('1987-04-05T18:50:00Z');

/** The state of a moment. */
export interface AskedMoment {
  readonly inputs: Inputs;
  /** The wind in use; null before the first. */
  readonly wind: WindText | null;
  readonly run: Run | null;
  readonly list: Run | null;
  readonly stamps: readonly Stamp[];
  /** The sortie's own time, UTC. */
  readonly at: Date;
}

/** What is loaded because the date or the place asks for it; null while it is on its way. */
export interface Tables {
  readonly magnetic: LateParts['variation'] | null;
  readonly sun: LateParts['sun'] | null;
  /** Left out: the physics is at hand. */
  readonly physics?: 'loading';
}

/** What a pilot has by then: the magnetic model of the date, and the sun. */
export const TABLES: Tables = { magnetic: await variationTableFor(AT), sun: sunlight };

/** No tables yet: they are on their way, or there is none for the date. */
export const NO_TABLES: Tables = { magnetic: null, sun: null };

/** The sortie as it stands at a moment. */
export function sortieAt({ inputs, wind, run, list, stamps, at }: AskedMoment): Sortie {
  const ms = at.getTime();
  const entered = wind && {
    ...wind,
    id: 'wind',
    field: inputs.field,
    at: { wallMs: ms, sortieMs: ms },
  };
  const lists = list === null ? [] : [list];
  return { ...NO_SORTIE, inputs, winds: entered ? [entered] : [], run, list, lists, stamps };
}

/** The sources of a day at a moment, all code at hand. */
export function sourcesAt(moment: AskedMoment, documents: Documents, tables: Tables): Sources {
  const sources = settledSources(
    sortieAt(moment),
    documents,
    moment.at,
    tables.magnetic ?? 'loading',
  );
  const { parts } = sources;
  return {
    ...sources,
    parts: {
      ...parts,
      sun: () => tables.sun ?? 'loading',
      physics: () => tables.physics ?? parts.physics(),
    },
  };
}

/** The day at a moment: each stage is worked out when it is asked for. */
export function brief(moment: AskedMoment, documents: Documents, tables: Tables) {
  const asked = day(sourcesAt(moment, documents, tables), plainMemo);
  return {
    get settled() {
      return asked.settled();
    },
    get wind() {
      return wholeWind(asked.read(), asked.wind(), asked.settled());
    },
    get numbers() {
      return asked.numbers();
    },
    get today() {
      return asked.today();
    },
    get taxi() {
      return asked.taxi();
    },
    get purpose() {
      return asked.purpose();
    },
    get steps() {
      return asked.steps();
    },
    get verdict() {
      return asked.verdict();
    },
  };
}

/** The day at a moment. */
export type Brief = ReturnType<typeof brief>;

/** A demo aircraft with the procedure it is flown with, in English. */
export function flown(code: string): Pick<Documents, 'aircraft' | 'procedure'> {
  const aircraft = demoAircraft.find((one) => one.code === code) ?? null;
  const procedure = demoProcedures.find((one) => one.code === `${code}-usual`) ?? null;
  return { aircraft, procedure };
}

/** The jet of the demo at one of its fields. */
export const documentsAt = (field: string): Documents => ({
  field: demoField(field),
  ...flown('sleet'),
});

/** A moment with these choices and nothing else. */
export const moment = (
  text: string | null,
  inputs: Partial<Inputs> = {},
  more: Partial<AskedMoment> = {},
): AskedMoment => ({
  inputs: { ...FRESH_INPUTS, ...inputs },
  wind: text === null ? null : { text, north: inputs.typedNorth ?? 'true' },
  run: null,
  list: null,
  stamps: [],
  at: AT,
  ...more,
});

/** A moment that was stamped. */
export const stamped = (what: Stamp['what']): Stamp => ({
  id: what,
  what,
  pass: 1,
  at: { wallMs: 0, sortieMs: AT.getTime() },
});

const three = (number: number) => String(number).padStart(3, '0');
const two = (number: number) => String(number).padStart(2, '0');

/** A wind as typed or reported: with a gust, a swing, from anywhere, calm, or not all known. */
export const anyWindText: fc.Arbitrary<string> = fc.oneof(
  {
    weight: 8,
    arbitrary: fc
      .record({
        from: fc.integer({ min: 1, max: 360 }),
        speed: fc.integer({ min: 1, max: 45 }),
        gust: fc.option(fc.integer({ min: 0, max: 20 })),
        swing: fc.option(
          fc.tuple(fc.integer({ min: 1, max: 360 }), fc.integer({ min: 1, max: 360 })),
        ),
      })
      .map(({ from, speed, gust, swing }) => {
        const gusting = gust === null ? '' : `G${two(speed + gust)}`;
        const swinging = swing === null ? '' : ` ${three(swing[0])}V${three(swing[1])}`;
        return `${three(from)}${two(speed)}${gusting}KT${swinging}`;
      }),
  },
  fc.integer({ min: 1, max: 15 }).map((speed) => `VRB${two(speed)}KT`),
  fc.constantFrom(
    'calm',
    '00000KT',
    '00000G15KT',
    '27000G15KT',
    '270//KT',
    '///12KT',
    '270P49KT',
    '24006MPS',
    'XHAR 051850Z 28013G22KT 240V310 9999 FEW020 04/01 Q1008',
    'not a wind',
    '',
  ),
);

const anyLimit = fc.option(fc.integer({ min: 0, max: 30 }));

/** Any documents in hand: one of the demo's fields and aircraft, or none yet. */
export const anyDocuments: fc.Arbitrary<Documents> = fc
  .record({
    field: fc.option(fc.constantFrom(...demoFields), { freq: 12 }),
    aircraft: fc.option(fc.constantFrom(...demoAircraft.map(({ code }) => code)), { freq: 12 }),
  })
  .map(({ field, aircraft }) => ({ field, ...flown(aircraft ?? 'none') }));

/** Any moment of a sortie, as far as figures depend on it. */
export const anyMoment: fc.Arbitrary<AskedMoment> = fc
  .record({
    text: fc.option(anyWindText, { freq: 12 }),
    typedNorth: fc.constantFrom('true', 'magnetic'),
    surface: fc.constantFrom('dry', 'wet', 'contaminated'),
    ownCrosswindKt: anyLimit,
    ownTailwindKt: anyLimit,
    variationDeg: fc.option(fc.double({ min: -180, max: 180, noNaN: true })),
    purpose: fc.constantFrom(null, 'take-off', 'landing'),
    rollsFromM: fc.constantFrom(0, 60, 400),
    checkMarkM: fc.constantFrom(null, 150, 300),
    end: fc.option(fc.constantFrom('28', '05L', '14', '99')),
    stamps: fc.subarray([stamped('brakes released'), stamped('airborne'), stamped('landed')]),
    ms: fc.integer({ min: 0, max: 86_399_999 }),
  })
  .map(({ text, end, stamps, ms, ...inputs }) => {
    const chosen = end === null ? null : { end, purpose: inputs.purpose ?? ('take-off' as const) };
    const at = new Date(Date.UTC(1987, 3, 5) + ms);
    return moment(text, { ...inputs, chosen }, { stamps, at });
  });

/** Tables in hand, or still on their way. */
export const anyTables: fc.Arbitrary<Tables> = fc.constantFrom(TABLES, TABLES, NO_TABLES);

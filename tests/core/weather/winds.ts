/** What the tests of the reader share: a wind in one line, and winds made up by fast-check. */

import fc from 'fast-check';
import { readWind } from '../../../src/core/weather/readWind';
import type { Wind, WindReport } from '../../../src/core/weather/report';

/** A wind in knots to a tenth, as `240/12.0G20.0 200V280`; `none` where there is none. */
export function lineOf(wind: Wind | null): string {
  if (!wind) return 'none';
  const speed = (kt: number | null, above: boolean) =>
    (above ? '>' : '') + (kt === null ? '//' : Math.round(kt * 10) / 10);
  const gust = wind.gustKt === null ? '' : `G${speed(wind.gustKt, wind.gustIsMinimum)}`;
  const from = wind.variable ? 'VRB' : (wind.fromDeg ?? '///');
  const swing = wind.sectorDeg ? ` ${wind.sectorDeg[0]}V${wind.sectorDeg[1]}` : '';
  return `${from}/${speed(wind.speedKt, wind.speedIsMinimum)}${gust}${swing}`;
}

/** The wind of a text in one line. */
export const windOf = (text: string): string => lineOf(readWind(text).wind);

/** The codes of a report's problems. */
export const codesOf = ({ problems }: WindReport): string[] => problems.map(({ code }) => code);

/** The pieces of a text with what each was read as, as `wind 24012KT`. */
export const piecesOf = (text: string): string[] =>
  readWind(text).spans.map(({ kind, at }) => `${kind} ${text.slice(...at)}`);

const tens = fc.integer({ min: 1, max: 36 }).map((n) => n * 10);
const two = (n: number) => String(n).padStart(2, '0');
const three = (n: number) => String(n).padStart(3, '0');

/** Knots in a unit: 3600 / 1852 and 1 / 1.852, ICAO Annex 5. */
const UNITS = { KT: 1, MPS: 3600 / 1852, KMH: 1 / 1.852 } as const;

/** A valid group with its swing, and the wind it stands for. WMO-No. 306 Vol. I.1, FM 15, 15.5. */
export const validGroup: fc.Arbitrary<{ text: string; wind: Wind }> = fc
  .record({
    from: fc.option(tens),
    speed: fc.integer({ min: 1, max: 115 }),
    above: fc.boolean(),
    extra: fc.option(fc.integer({ min: 0, max: 12 })),
    gustAbove: fc.boolean(),
    unit: fc.constantFrom('KT' as const, 'MPS' as const, 'KMH' as const),
    around: fc.option(fc.tuple(fc.integer({ min: 0, max: 8 }), fc.integer({ min: 0, max: 8 }))),
  })
  .map(({ from, speed, above, extra, gustAbove, unit, around }) => {
    const gust = extra === null ? null : speed + extra;
    const swing =
      from !== null && around ? ([from - around[0] * 10, from + around[1] * 10] as const) : null;
    const onCompass = (deg: number) => ((deg + 359) % 360) + 1;
    const sectorDeg = swing ? ([onCompass(swing[0]), onCompass(swing[1])] as const) : null;
    const gustText = gust === null ? '' : `G${gustAbove ? 'P' : ''}${two(gust)}`;
    const swingText = sectorDeg ? ` ${three(sectorDeg[0])}V${three(sectorDeg[1])}` : '';
    const fromText = from === null ? 'VRB' : three(from);
    return {
      text: `${fromText}${above ? 'P' : ''}${two(speed)}${gustText}${unit}${swingText}`,
      wind: {
        fromDeg: from,
        speedKt: speed * UNITS[unit],
        gustKt: gust === null ? null : gust * UNITS[unit],
        sectorDeg,
        variable: from === null,
        speedIsMinimum: above,
        gustIsMinimum: gust !== null && gustAbove,
      },
    };
  });

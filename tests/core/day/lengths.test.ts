/** One judgement of length: who chooses a runway and who shows its numbers say the same. */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Aircraft } from '../../../src/core/aircraft/aircraft';
import type { Field } from '../../../src/core/airfield/field';
import { type Day, day } from '../../../src/core/day/day';
import { plainMemo } from '../../../src/core/day/memo';
import { type DayGiven, lengthsNeeded, todayStage } from '../../../src/core/day/today';
import { answerWind } from '../../../src/core/day/wind';
import { known } from '../../../src/core/figure';
import type { Purpose } from '../../../src/core/runway/question';
import type { Inputs } from '../../../src/core/sortie/entry';
import { demoAircraft, demoField, demoFields } from '../documents/demo';
import { AT, moment, sourcesAt, TABLES } from './moments';

const named = (code: string): Aircraft => {
  const found = demoAircraft.find((one) => one.code === code);
  if (found === undefined) throw new Error(`no aircraft ${code}`);
  return found;
};

function judged(
  aircraft: Aircraft,
  field: Field,
  windText: string,
  own: Partial<Inputs> = {},
  massKg: number | null = null,
) {
  const documents = { field, aircraft, procedure: null };
  const asked = day(sourcesAt(moment(windText, own), documents, TABLES), plainMemo);
  const given = asked.dayGiven();
  if (given === null) throw new Error('nothing to work out');
  const wind = massKg === null ? asked.wind() : windAtMass(asked, given, massKg);
  return { given, ranked: wind.ranked?.ends ?? [], best: wind.ranked?.best ?? null, wind };
}

/** The same answer at a mass that the load need not reach. */
function windAtMass(asked: Day, given: DayGiven, massKg: number) {
  const takeoffMassKg = known(massKg, 'kg', { formula: 'as-given', inputs: {}, source: 'pilot' });
  const lengthNeededM = lengthsNeeded({ ...given, load: { ...given.load, takeoffMassKg } });
  const { report, north } = asked.read();
  const settled = { ...asked.settled(), lengthNeededM };
  const { chosen } = asked.inputs();
  return answerWind(settled, report?.wind ?? null, north, asked.purpose(), chosen, AT);
}

const codes = (end: { shortfalls: readonly { code: string }[] } | undefined) =>
  end?.shortfalls.map(({ code }) => code) ?? [];

describe('nothing that cannot be worked out counts as fitting', () => {
  test('over its maximum mass an aircraft fits nowhere', () => {
    const { ranked, best } = judged(named('sleet'), demoField('XHAR'), '28010KT', {}, 10_490);
    expect(best).toBeNull();
    expect(ranked.length).toBeGreaterThan(1);
    for (const end of ranked) {
      expect(end.shortfalls).toContainEqual({ code: 'no-length', because: 'over-mass' });
      expect(end.leftM).toBeNull();
    }
  });

  test('where it never lifts off or climbs, it fits on no surface, and no worse surface fits better', () => {
    const raised = (field: Field, elevationFt: number): Field => ({
      ...field,
      place: { ...field.place, elevationFt },
    });
    const rank = { dry: 0, wet: 1, contaminated: 2 } as const;
    fc.assert(
      fc.property(
        fc.constantFrom(...demoAircraft),
        fc.constantFrom(...demoFields),
        fc.integer({ min: 0, max: 14_000 }),
        fc.constantFrom<Purpose>('take-off', 'landing'),
        (aircraft, field, elevationFt, purpose) => {
          const within = (surface: keyof typeof rank) => {
            const own = { surface, purpose };
            const { ranked } = judged(aircraft, raised(field, elevationFt), 'calm', own);
            return ranked.filter((end) => end.withinLimits).map(({ designator }) => designator);
          };
          const [dry, wet, worst] = [within('dry'), within('wet'), within('contaminated')];
          expect(dry).toEqual(expect.arrayContaining(wet));
          expect(wet).toEqual(expect.arrayContaining(worst));
        },
      ),
      { numRuns: 40 },
    );
    const high = raised(demoField('XLIN'), 13_000);
    const { best } = judged(named('tussock'), high, 'calm', {
      surface: 'contaminated',
      ownTemperatureC: 25,
    });
    expect(best).toBeNull();
  });
});

test('what is left of a runway when it is chosen is what its numbers say', {
  timeout: 30_000,
}, () => {
  const wind = fc
    .record({
      from: fc.integer({ min: 1, max: 36 }),
      speed: fc.integer({ min: 0, max: 30 }),
      gust: fc.constantFrom(0, 10, 15),
      swing: fc.boolean(),
    })
    .map(({ from, speed, gust, swing }) => {
      const three = (deg: number) => String(((deg + 359) % 360) + 1).padStart(3, '0');
      const two = (kt: number) => String(kt).padStart(2, '0');
      const gusting = gust > 0 && speed > 0 ? `G${two(speed + gust)}` : '';
      const swinging = swing ? ` ${three(from * 10 - 40)}V${three(from * 10 + 40)}` : '';
      return speed === 0 ? 'calm' : `${three(from * 10)}${two(speed)}${gusting}KT${swinging}`;
    });
  fc.assert(
    fc.property(
      fc.constantFrom(...demoAircraft),
      fc.constantFrom(...demoFields),
      wind,
      fc.constantFrom<Purpose>('take-off', 'landing'),
      fc.constantFrom('dry' as const, 'wet' as const),
      fc.integer({ min: -20, max: 42 }),
      (aircraft, field, text, purpose, surface, ownTemperatureC) => {
        const own = { purpose, surface, ownTemperatureC };
        const { given, ranked, wind: answered } = judged(aircraft, field, text, own);
        const { speedKt, gustKt } = answered.wind ?? { speedKt: null, gustKt: null };
        const spreadKt = (gustKt ?? speedKt ?? 0) - (speedKt ?? 0);
        for (const end of ranked.slice(0, 2)) {
          const { takeoff, landing } = todayStage(
            given,
            end.designator,
            end.headwindLeastKt,
            spreadKt,
            end.headwindKt ?? end.headwindLeastKt,
          );
          const numbers = purpose === 'take-off' ? takeoff.planned : landing.planned;
          if (numbers.because !== null) {
            expect(end.withinLimits).toBe(false);
            continue;
          }
          const left =
            'toraLeftM' in numbers.figures
              ? [numbers.figures.toraLeftM.value, numbers.figures.todaLeftM.value]
              : [numbers.figures.plannedLeftM.value];
          if (left.includes(null)) {
            expect(codes(end)).toContain('no-length');
            continue;
          }
          const least = Math.min(...left.map((m) => m ?? 0));
          if (end.leftM !== null) expect(Math.abs(end.leftM - least)).toBeLessThan(10);
          if (end.withinLimits) expect(least).toBeGreaterThan(-10);
        }
      },
    ),
    { numRuns: 60 },
  );
});

describe('what was seen to disagree', () => {
  test('a gust lengthens the landing in both: the twin at 28015G30KT', () => {
    const gusty = judged(named('turnstone'), demoField('XHAR'), '28015G30KT', {
      purpose: 'landing',
    });
    const steady = judged(named('turnstone'), demoField('XHAR'), '28015KT', { purpose: 'landing' });
    for (const end of gusty.ranked) {
      const without = steady.ranked.find(({ designator }) => designator === end.designator);
      expect(end.leftM ?? 0).toBeLessThan((without?.leftM ?? 0) - 100);
    }
  });

  test('an intersection shortens its own end only: 28 from 250 m in, wind 010/12', () => {
    const chosen = { end: '28', purpose: 'take-off' } as const;
    const of = (rollsFromM: number) =>
      judged(named('sleet'), demoField('XHAR'), '01012KT', { chosen, rollsFromM }).ranked;
    const whole = of(0);
    for (const end of of(250)) {
      const before = whole.find(({ designator }) => designator === end.designator)?.leftM ?? 0;
      expect(Math.round(before - (end.leftM ?? 0))).toBe(end.designator === '28' ? 250 : 0);
    }
  });

  test('tyres rule an end out, with the planned speed: 320/06 at 30 °C with 32 closed', () => {
    const { given, ranked } = judged(named('sleet'), demoField('XTUM'), '32006KT', {
      ownTemperatureC: 30,
      closedToday: ['32'],
      load: { fuelKg: 2900, stations: { 'wing-left': 260, 'wing-right': 260, belly: 220 } },
    } as Partial<Inputs>);
    const end = ranked.find(({ designator }) => designator === '14');
    const { planned } = todayStage(given, '14', end?.headwindLeastKt ?? 0, 0).takeoff;
    if (planned.because !== null) throw new Error(planned.because);
    const leftKt = planned.figures.tyreLeftKt.value ?? 0;
    expect(codes(end).includes('tyres')).toBe(leftKt < 0);
    expect(leftKt).toBeLessThan(0);
  });
});

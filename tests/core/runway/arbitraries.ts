/** Any field, wind and question, for the laws that hold for all of them. */

import fc from 'fast-check';
import type { Field } from '../../../src/core/airfield/field';
import type { EndsQuestion, PreferredEnds } from '../../../src/core/runway/question';
import type { Wind } from '../../../src/core/weather/report';
import { inventedField, question, wind } from './invented';

/** One to three runways anywhere on the compass, some of them closed or short. */
export const anyField: fc.Arbitrary<Field> = fc
  .array(
    fc.record({
      headingDeg: fc.double({ min: 0, max: 180, noNaN: true }),
      lengthM: fc.integer({ min: 600, max: 3000 }),
      closed: fc.constantFrom([undefined, undefined] as const, ['shut', undefined] as const),
    }),
    { minLength: 1, maxLength: 3 },
  )
  .chain((strips) => {
    // Numbers need not agree with headings; they only must be different.
    const numbered = strips.map((strip, index) => ({ ...strip, designator: `0${2 * index + 1}` }));
    return fc
      .constantFrom(undefined, ...numbered.map(({ designator }) => designator))
      .map((calm) => inventedField(numbered, calm));
  });

/** A wind with a direction: whole degrees, with or without a gust and a swing around it. */
export const anyDirectedWind: fc.Arbitrary<Wind> = fc
  .record({
    fromDeg: fc.integer({ min: 1, max: 360 }),
    speedKt: fc.integer({ min: 1, max: 30 }),
    gustMoreKt: fc.option(fc.integer({ min: 1, max: 12 })),
    swing: fc.option(fc.tuple(fc.integer({ min: -20, max: 60 }), fc.integer({ min: 0, max: 110 }))),
  })
  .map(({ fromDeg, speedKt, gustMoreKt, swing }) =>
    wind(fromDeg, speedKt, {
      gustKt: gustMoreKt === null ? null : speedKt + gustMoreKt,
      sectorDeg: swing && [compass(fromDeg - swing[0]), compass(fromDeg + swing[1])],
    }),
  );

/** What the pilot may add to a question: ends closed today or preferred, where to hold short, a gust limit. */
const anyRules = fc.record(
  {
    closedToday: fc.subarray(['01', '03', '19', '23']),
    preferred: fc.record<PreferredEnds>({
      ends: fc.shuffledSubarray(['01', '03', '05', '19', '21', '23'], { minLength: 1 }),
      maxCrosswindKt: fc.constantFrom(8, 15),
      maxTailwindKt: fc.constantFrom(0, 5),
      applies: fc.boolean(),
    }),
    holdShortM: fc.dictionary(
      fc.constantFrom('01', '19', '21'),
      fc.integer({ min: 300, max: 3000 }),
    ),
    gustSpreadKt: fc.integer({ min: 2, max: 12 }),
  },
  { requiredKeys: [] },
);

/** A question with limits, lengths that go with the headwind, and taxi distances. */
export const anyQuestion: fc.Arbitrary<EndsQuestion> = fc
  .record({
    field: anyField,
    wind: anyDirectedWind,
    north: fc.constantFrom('true', 'magnetic'),
    variationDeg: fc.double({ min: -30, max: 30, noNaN: true }),
    crosswindKt: fc.integer({ min: 10, max: 40 }),
    tailwindKt: fc.integer({ min: 0, max: 20 }),
    needM: fc.option(fc.integer({ min: 300, max: 1500 })),
    taxi: fc.boolean(),
    purpose: fc.constantFrom('take-off', 'landing'),
    rules: fc.option(anyRules),
  })
  .map(({ needM, taxi, crosswindKt, tailwindKt, rules, ...rest }) => {
    const { gustSpreadKt, ...others } = rules ?? {};
    return question({
      ...rest,
      ...others,
      limits: {
        crosswindKt,
        tailwindKt,
        ...(gustSpreadKt === undefined ? {} : { gustSpreadKt }),
      },
      ...(needM === null
        ? {}
        : { lengthNeededM: (_, headwindKt) => needM * (1 - (headwindKt ?? 0) / 100) }),
      ...(taxi ? { taxiDistanceM: (end) => 100 * Number.parseInt(end, 10) } : {}),
    });
  });

/** A number of degrees as a report writes a direction: above 0, up to 360. */
export const compass = (deg: number): number => ((deg % 360) + 360) % 360 || 360;

/** A wind turned clockwise, its swing with it. */
export const turned = (blowing: Wind, deg: number): Wind => ({
  ...blowing,
  fromDeg: blowing.fromDeg === null ? null : compass(blowing.fromDeg + deg),
  sectorDeg: blowing.sectorDeg && [
    compass(blowing.sectorDeg[0] + deg),
    compass(blowing.sectorDeg[1] + deg),
  ],
});

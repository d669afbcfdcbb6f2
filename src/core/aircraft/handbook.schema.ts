/** The figures of a handbook that physics is fitted to, and held against wherever it is shown. */

import * as v from 'valibot';
import { described, kilograms, knots, metres } from '../document.schema';

const between = (least: number, most: number) =>
  v.pipe(v.number(), v.minValue(least), v.maxValue(most));

const printedM = v.optional(metres);

const row = v.strictObject({
  massKg: described(v.optional(kilograms), 'The usual mass if left out.'),
  pressureAltitudeFt: described(v.optional(between(-1500, 20_000)), 'Sea level if left out.'),
  temperatureC: described(
    v.optional(between(-80, 60)),
    'Standard air at that altitude if left out.',
  ),
  headwindKt: described(v.optional(between(-80, 80)), 'None if left out; from behind negative.'),
  runM: printedM,
  to50ftM: described(printedM, 'From brake release to 50 ft.'),
  climbFtMin: v.optional(between(0, 50_000)),
  landingRunM: printedM,
  landingM: described(printedM, 'From 50 ft to a stop.'),
});

/** What stands in the handbook. */
export const handbookSchema = v.strictObject({
  rows: described(
    v.pipe(v.array(row), v.maxLength(60)),
    'Rows of its tables: dry, level, hard runway, without factors.',
  ),
  takeoffStallKt: described(v.optional(knots), 'Stall with take-off flaps, at the usual mass.'),
  wingAreaM2: v.optional(between(1, 1000)),
  powerKw: described(v.optional(between(1, 50_000)), 'Of all propeller engines together.'),
  thrustKn: described(v.optional(between(0.1, 3000)), 'Of all jets together, at rest, reheat off.'),
  reheatKn: described(v.optional(between(0.1, 3000)), 'The same with reheat.'),
  minimumControlKt: described(v.optional(knots), 'Of two engines, with one of them out.'),
});

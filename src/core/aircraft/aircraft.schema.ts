/** What an aircraft document is. The JSON Schema in public/schemas is generated from this. */

import * as v from 'valibot';
import {
  described,
  document,
  holdsTogether,
  kilograms,
  knots,
  languages,
  metres,
  shortText,
  text,
} from '../document.schema';
import { textFaults } from '../plainText';
import { AIRCRAFT_CLASSES } from './classNames';
import { aircraftFaults } from './faults';
import { handbookSchema } from './handbook.schema';
import { loadSchema } from './load.schema';
import { loadFaults } from './loadFaults';
import { performanceShape } from './performance.schema';
import { performanceFaults } from './performanceFaults';

/** A limit for each surface state, knots. */
const limitBySurface = v.strictObject({ dry: knots, wet: knots, contaminated: knots });

const power = v.pipe(v.number(), v.minValue(0), v.maxValue(10000));

const degrees = v.pipe(v.number(), v.minValue(-10), v.maxValue(90));

const aircraftShape = v.strictObject({
  ...document('aircraft'),
  code: described(
    v.pipe(v.string(), v.regex(/^[a-z0-9-]{2,24}$/, 'form-name')),
    'Short name used to find its procedure.',
  ),
  name: shortText,
  ...languages,
  about: described(text, 'What it is, in a sentence.'),
  madeFrom: described(
    v.optional(
      v.strictObject({
        class: v.picklist(AIRCRAFT_CLASSES),
        assumed: described(
          v.pipe(v.array(v.pipe(v.string(), v.maxLength(40))), v.maxLength(40)),
          'Paths of the figures that are starting values of the class still, and not the handbook’s.',
        ),
      }),
    ),
    'The class it was started from in the app.',
  ),
  engine: v.picklist(['jet', 'jet with reheat', 'piston', 'turboprop']),
  masses: v.strictObject({
    emptyKg: kilograms,
    usualTakeoffKg: described(kilograms, 'What it usually takes off at.'),
    maxTakeoffKg: kilograms,
    usualLandingKg: described(kilograms, 'What it usually lands at.'),
    maxLandingKg: kilograms,
  }),
  limits: v.strictObject({
    crosswindKt: described(limitBySurface, 'Greatest crosswind, gusts included.'),
    demonstratedCrosswindKt: described(
      v.optional(knots),
      'Greatest crosswind that the maker has demonstrated, if that is less than the limit.',
    ),
    tailwindKt: described(limitBySurface, 'Greatest tailwind, gusts included.'),
    gearKt: described(
      v.optional(knots),
      'Gear must be up (or stay down) below this; leave out for a fixed gear.',
    ),
    flapsKt: described(knots, 'Flaps must be up below this.'),
    tyreKt: described(v.optional(knots), 'Greatest ground speed of the tyres.'),
    tyrePsi: described(
      v.optional(v.pipe(v.number(), v.minValue(5), v.maxValue(500))),
      'Pressure of the main tyres, psi: from it comes the speed at which they may float on water.',
    ),
    brakesCoolMin: described(
      v.optional(v.pipe(v.number(), v.minValue(0), v.maxValue(600))),
      'How long the brakes cool after a landing or a rejected take-off before the next take-off, minutes.',
    ),
    leastWidthM: described(
      v.optional(v.pipe(v.number(), v.minValue(3), v.maxValue(100))),
      'Least width of a runway, metres.',
    ),
  }),
  taxi: v.strictObject({
    maxKt: described(knots, 'Do not exceed, straight.'),
    turnKt: described(knots, 'Do not exceed, in a sharp turn.'),
    power: v.optional(
      v.strictObject({
        unit: v.picklist(['%', 'rpm']),
        breakaway: described(power, 'What it takes to get rolling.'),
        keepRolling: described(
          v.strictTuple([power, power]),
          'Least and most that keeps it rolling.',
        ),
      }),
    ),
    afterBreakaway: described(v.optional(shortText), 'What to do once it rolls: "straight back".'),
    steering: described(v.optional(shortText), 'How it is steered: "pedals, brakes off".'),
  }),
  takeoff: described(
    v.strictObject({
      rotateKt: knots,
      rotateTo: described(v.optional(shortText), 'What to rotate to: "10° alpha, hold it".'),
      liftOffKt: knots,
      runM: described(
        v.optional(metres),
        'Ground run on a dry level runway, sea level, no wind, standard air.',
      ),
    }),
    'Plain figures at `usualTakeoffKg`; indicated speeds.',
  ),
  climb: v.strictObject({
    flapsUpByKt: described(knots, 'Flaps and slats in by this speed.'),
    gearUpByKt: v.optional(knots),
    reheatOffKt: described(v.optional(knots), 'Reheat off at about this speed.'),
    speedKt: described(
      v.strictTuple([knots, knots]),
      'Least and most climb speed, heavy to light or as set.',
    ),
    pitchDeg: v.optional(v.strictTuple([degrees, degrees])),
  }),
  landing: described(
    v.strictObject({ approachKt: knots, runM: v.optional(metres) }),
    'Plain figures at `usualLandingKg`; indicated speed; dry, level, no wind.',
  ),
  load: described(v.optional(loadSchema), 'What it can be loaded with.'),
  stop: described(
    v.pipe(v.array(shortText), v.minLength(1), v.maxLength(6)),
    'What to do to stop, in order.',
  ),
  handbook: described(
    v.optional(handbookSchema),
    'What its handbook prints, which physics is fitted to and held against.',
  ),
  performance: described(
    v.optional(performanceShape),
    "What physics needs to work out today's numbers. Without it the plain figures are shown as they are.",
  ),
});

/** An aircraft document of the right shape whose figures may still contradict each other. */
export type AircraftShape = v.InferOutput<typeof aircraftShape>;

/** An aircraft: masses, limits, taxi power and plain speeds, as its handbook gives them. */
export const aircraftSchema = v.pipe(
  aircraftShape,
  holdsTogether<AircraftShape>(textFaults),
  holdsTogether(aircraftFaults),
  // Report what does not add up once the masses themselves are in order.
  holdsTogether(loadFaults, { onceRight: true }),
  // And what physics makes of it once the rest holds together.
  holdsTogether(performanceFaults, { onceRight: true }),
);

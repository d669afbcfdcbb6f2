/** An aircraft's load sheet: fuel, crew, stations, and where the centre of gravity may lie. */

import * as v from 'valibot';
import { described, kilograms, shortText } from '../document.schema';

/** A distance from the datum, metres, positive aft. */
const arm = v.pipe(v.number(), v.minValue(-50), v.maxValue(100));

/** A mass, possibly none, kilograms. */
const noneOrMore = v.pipe(v.number(), v.minValue(0), v.maxValue(700000));

const armM = described(
  v.optional(arm),
  'How far aft of the datum it sits, metres. Every mass has an arm, or none has.',
);

const stationId = v.pipe(v.string(), v.regex(/^[a-z0-9-]{1,24}$/, 'form-name'));

const station = {
  id: described(stationId, 'Short name used by the presets.'),
  name: described(shortText, 'As on the panel.'),
  maxKg: described(kilograms, 'The most it carries.'),
  armM,
};

const stationSchema = v.variant('kind', [
  v.strictObject({
    ...station,
    kind: v.literal('stores'),
    choices: described(
      v.pipe(
        v.array(v.strictObject({ name: shortText, kg: kilograms })),
        v.minLength(1),
        v.maxLength(12),
      ),
      'What can hang or stand there; nothing can always.',
    ),
  }),
  v.strictObject({
    ...station,
    kind: v.literal('people'),
    eachKg: described(kilograms, 'What one person is taken to weigh.'),
  }),
  v.strictObject({ ...station, kind: v.literal('baggage') }),
]);

const presetSchema = v.strictObject({
  name: shortText,
  fuelKg: kilograms,
  stations: described(
    v.record(v.string(), noneOrMore),
    'Kilograms at each station, by its `id`; what is left out is empty.',
  ),
});

/** The load sheet of an aircraft. */
export const loadSchema = v.strictObject({
  emptyArmM: described(
    v.optional(arm),
    'Where the centre of gravity of the empty aircraft lies, metres aft of the datum.',
  ),
  fuel: v.strictObject({
    maxKg: described(kilograms, 'What the tanks hold.'),
    landingKg: described(kilograms, 'What it is to land with.'),
    densityKgPerL: described(
      v.optional(v.pipe(v.number(), v.minValue(0.5), v.maxValue(1.2))),
      'Kilograms in a litre, for pilots who think in litres.',
    ),
    armM,
  }),
  crew: described(
    v.pipe(
      v.array(v.strictObject({ name: shortText, kg: kilograms, armM })),
      v.minLength(1),
      v.maxLength(6),
    ),
    'Who is always aboard, with their gear.',
  ),
  stations: v.pipe(v.array(stationSchema), v.maxLength(12)),
  envelope: described(
    v.optional(v.pipe(v.array(v.strictTuple([arm, kilograms])), v.minLength(3), v.maxLength(24))),
    'Corners, in order, of what holds the centre of gravity: metres aft of the datum, and mass in kilograms.',
  ),
  presets: described(
    v.pipe(v.array(presetSchema), v.minLength(1), v.maxLength(8)),
    'Loads to begin from. The first is the usual one: it adds up to `masses.usualTakeoffKg`, and to `masses.usualLandingKg` with the fuel it is to land with.',
  ),
});

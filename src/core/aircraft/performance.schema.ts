/**
 * What physics needs of an aircraft beyond its plain figures. All of it can be taken from or fitted
 * to a handbook's few numbers; see "fitting a profile" in DEVELOPERS.md.
 */

import * as v from 'valibot';
import { described, knots } from '../document.schema';

const between = (least: number, most: number) =>
  v.pipe(v.number(), v.minValue(least), v.maxValue(most));

const newtons = between(0, 3_000_000);

/** Thrust of all engines together by true airspeed, linear between points. */
const thrustCurve = v.pipe(
  v.array(v.strictTuple([knots, newtons])),
  v.minLength(2),
  v.maxLength(12),
);

const jet = v.strictObject({
  kind: v.literal('jet'),
  dryN: described(
    thrustCurve,
    'Pairs of true airspeed, kt, and thrust of all engines, N, at sea level in standard air.',
  ),
  reheatN: described(v.optional(thrustCurve), 'The same with reheat lit.'),
  lightUpS: described(
    v.optional(between(0, 15)),
    'From brake release until reheat gives its thrust, s; 0 where it is lit on the brakes.',
  ),
  at20Hotter: described(
    v.optional(between(0.6, 0.94)),
    'Thrust 20 °C above standard over that in standard air at the same pressure; left out, it falls with density alone: 0.935.',
  ),
  idleN: described(newtons, 'Thrust left at idle, N.'),
});

const propeller = v.strictObject({
  kind: v.literal('propeller'),
  fullN: described(
    thrustCurve,
    'Pairs of true airspeed, kt, and thrust at full power, N, at sea level in standard air.',
  ),
  supercharged: described(v.optional(v.boolean()), 'Keeps its power where the air is thin.'),
  idleN: described(newtons, 'Thrust left at idle, N.'),
});

const coefficient = between(0, 5);
const dragCoefficient = between(0.001, 1);
const alphaDeg = between(-10, 30);

const wing = v.strictObject({
  areaM2: between(1, 1000),
  clMax: described(
    v.strictObject({ takeoff: between(0.3, 5), landing: between(0.3, 5) }),
    'Greatest lift coefficient with flaps for take-off and for landing; gives the stall.',
  ),
  ground: described(
    v.strictObject({ alphaDeg, cl: between(-0.5, 3), cd: dragCoefficient }),
    'On all wheels, flaps for take-off, near the ground.',
  ),
  rotated: described(
    v.strictObject({ alphaDeg, cd: dragCoefficient }),
    'As it leaves the ground, near it. Its lift coefficient follows from the lift-off speed.',
  ),
  rollout: described(
    v.strictObject({ cl: between(-0.5, 3), cd: dragCoefficient }),
    'Rolling out after landing: flaps for landing, lift dumped, nose where it is held.',
  ),
  cleanCd: described(dragCoefficient, 'Drag coefficient without lift, gear and flaps up.'),
  gearCd: described(v.optional(coefficient), 'What gear that can be raised adds to it.'),
  flapsCd: described(coefficient, 'What flaps for take-off add to it.'),
  flapsCl: described(between(0, 2), 'Lift coefficient that flaps for take-off add.'),
  induced: described(between(0.005, 1), 'Drag due to lift: cd = … + induced × cl².'),
});

const frictionBySurface = v.strictObject({
  dry: between(0, 1),
  wet: between(0, 1),
  contaminated: between(0, 1),
});

const brakes = v.strictObject({
  friction: described(frictionBySurface, 'Braking over the weight on all wheels, by surface.'),
  delayS: described(between(0, 10), 'From touch-down until the brakes bite, s.'),
  maxMJ: described(v.optional(between(0.01, 2000)), 'Greatest energy of one stop, MJ.'),
});

const parachute = v.strictObject({
  dragAreaM2: described(between(0.5, 200), 'Drag coefficient times area, m².'),
  maxKt: described(knots, 'Greatest indicated airspeed to open it at.'),
  option: described(
    v.optional(v.pipe(v.string(), v.minLength(1), v.maxLength(40))),
    'The option of its procedures that says whether it is packed.',
  ),
});

const twin = v.strictObject({
  dragAreaM2: described(
    between(0, 30),
    'Drag of the dead engine and of the rudder that holds it straight: coefficient times area, m².',
  ),
  minimumControlKt: described(
    knots,
    'Indicated airspeed below which the rudder cannot hold it straight.',
  ),
});

const landing = v.strictObject({
  reference: described(
    v.picklist([1.3, 1.23]),
    'Reference speed over the stall: 1.3 (former FAR 23.73) or 1.23 (CS 25.125).',
  ),
  additive: described(
    v.picklist(['half-gust', 'half-wind-and-gust']),
    'What the wind adds to it: half the gust over the wind (FAA-H-8083-3), or half the headwind and all of the gust over it, at most 20 kt.',
  ),
  pathDeg: described(v.optional(between(2, 7), 3), 'Angle of the path to the threshold, degrees.'),
  touchdownShare: described(between(0.7, 1), 'Speed at touch-down over the approach speed.'),
  ldaFactor: described(
    between(1, 3),
    'Planned landing distance over the one worked out, on a dry runway: 1.67 leaves it within 0.6 of the LDA (14 CFR 121.195).',
  ),
});

const gear = v.strictObject({
  trackM: described(between(0.5, 20), 'Between the main wheels, m.'),
  wheelbaseM: described(between(0.5, 50), 'From nose or tail wheel to the main axle, m.'),
  cgHeightM: described(between(0.2, 10), 'Centre of gravity above the ground, m.'),
  cgToMainM: described(between(0, 5), 'Centre of gravity from the main axle, m.'),
  tailWheel: v.boolean(),
});

/** The physics of an aircraft. */
export const performanceShape = v.strictObject({
  thrust: v.variant('kind', [jet, propeller]),
  wing,
  rolling: described(frictionBySurface, 'Rolling friction over the weight on wheels, by surface.'),
  brakes,
  parachute: v.optional(parachute),
  oneEngineOut: described(v.optional(twin), 'Of two engines; leave out for one.'),
  climbShare: described(
    between(0.05, 0.95),
    'The part of spare power that goes into height while it speeds up after lift-off; the rest goes into speed.',
  ),
  takeoffFactor: described(
    v.optional(between(1, 3)),
    'Planned take-off run and distance to 50 ft over those worked out; left out, 1.15 for jets (14 CFR 25.113) and 1.33 for pistons (UK CAA Safety Sense Leaflet 7c).',
  ),
  landing,
  gear,
});

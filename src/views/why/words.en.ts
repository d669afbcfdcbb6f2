/** The words of Why: formulas in one line, names of their inputs, sources, causes. */

import type { EndFigures, Purpose } from '../../core';

/** Formulas, in one line. Inputs appear by the names under {@link inputNames}. */
const formulas: Record<string, string> = {
  'as-given': 'as given',
  'as-set': 'as you set it',
  'smaller-limit': 'the smaller of the two limits',
  variation: 'angle from true to magnetic north in the model’s field, east positive',
  headwind: 'wind speed × cos (wind direction − runway direction)',
  'headwind-least': 'wind speed × cos (angle), at the angle in the swing farthest from the runway',
  crosswind: 'wind speed × sin (wind direction − runway direction)',
  'crosswind-worst': 'strongest wind × sin (angle), at the angle in the swing nearest to 90°',
  'tailwind-worst':
    'strongest wind × −cos (angle), at the angle in the swing farthest from the runway; not below 0',
  magnetic: 'runway direction − variation',
  'pressure-altitude': 'elevation + height of the pressure QNH in the standard atmosphere',
  'density-altitude': 'the height in the standard atmosphere that has the air’s density',
  'density-altitude-moist':
    'the height in the standard atmosphere that has the density of air so moist, by its dew point',
  'gust-spread': 'gust − steady wind',
  'smaller-spare': 'the smaller of the two sides',
  'limit-speed': 'wind speed × limit ÷ what it is now, the gust growing with the wind',
  'sun-height': 'height of the sun’s centre, refraction included',
  'zero-fuel-mass': 'empty aircraft + crew + what the stations carry',
  'mass-with-fuel': 'zero-fuel mass + fuel',
  'centre-of-gravity': 'sum of every mass × its arm, ÷ the mass',
  'standard-temperature': '15 °C − 6.5 °C a kilometre of pressure altitude',
  'root-of-mass': 'book speed × √(mass ÷ usual mass)',
  'safety-speed': 'the greater of lift-off speed and 1.2 × stall',
  'climb-speed':
    'the middle of the book’s two × √(mass ÷ usual mass), between the least and the most',
  run: 'mass × ground speed² ÷ (2 × (thrust − drag − friction − slope)): each force is its mean along the run; 1 kt is 0.5144 m/s',
  'run-and-climb': 'run + the way from lift-off to 50 ft',
  'left-over': 'available − where the roll begins − what is needed',
  'smallest-of': 'the smallest of what each allows',
  'accelerate-stop':
    'run to that speed + ground speed × time until the brakes bite + braking to rest; 1 kt is 0.5144 m/s',
  'speed-at-mark':
    '(√(2 × distance × (thrust − drag − friction − slope) ÷ mass) + headwind) × √(density ratio), as indicated: each force is its mean up to the mark; 1 m/s is 1.944 kt',
  'greatest-of': 'the greatest of them',
  'engine-out-run':
    '(√(2 × (what there is to lift-off − what one engine takes) × (thrust − drag − friction − slope) ÷ mass) + headwind) × √(density ratio), as indicated: what both engines reach by there; 1 m/s is 1.944 kt',
  'limit-less-speed': 'limit − ground speed at lift-off',
  'climb-gradient': '100 × (thrust − drag) ÷ (weight × the factor for gaining true airspeed)',
  'ground-gradient':
    'climb gradient × true airspeed ÷ ground speed: true airspeed along the way − headwind',
  pitch: 'angle of the climb, arcsin (gradient ÷ 100), + angle of attack',
  'climb-rate': 'true airspeed × sine of the climb, in ft/min: 101.27 for a knot',
  'reference-speed': 'factor × stall',
  'approach-half-gust': 'reference + half the gust over the wind',
  'approach-half-wind-and-gust':
    'reference + half the headwind + the gust over the wind, at most 20 kt added',
  'share-of-approach': 'share × approach speed',
  'landing-air':
    'radius of the flare R = its airspeed² ÷ (0.2 × 9.807 m/s²); down the path, (15.24 m − R × (1 − cos path)) ÷ tan path; flare, R × sin path, or if longer, mass × (airspeed on the path² − at touch-down²) ÷ (2 × (drag − thrust)); each × (1 − headwind ÷ its airspeed)',
  'landing-run':
    'ground speed × time until the brakes bite + mass × ground speed² ÷ (2 × (brakes + drag + slope − thrust)): each force is its mean from there to rest; 1 kt is 0.5144 m/s',
  sum: 'the sum of the two',
  'times-factor': 'needed × factor',
  'left-of-lda': 'available − needed',
  'left-of-end':
    'the declared length with the least to spare − what today needs of it, planned; the book’s run until that is worked out',
  'path-sink': 'ground speed on the approach × tan (path) × 101.27: on 3°, 5.3 ft/min a knot',
  'go-around':
    '100 × (thrust − drag) ÷ weight at the approach speed, gear down, flaps as for take-off',
  tora: 'take-off run available, as declared',
  toda: 'take-off distance available, as declared',
  asda: 'accelerate-stop distance available, as declared',
  lda: 'landing distance available, as declared',
};

const inputNames: Record<string, string> = {
  given: 'given',
  set: 'set',
  aircraftKt: 'aircraft’s limit',
  ownKt: 'your own limit',
  latDeg: 'latitude',
  lonDeg: 'longitude',
  elevationM: 'elevation',
  date: 'date',
  speedKt: 'wind speed',
  windTrueDeg: 'wind direction, true',
  runwayTrueDeg: 'runway direction, true',
  strongestKt: 'strongest wind, gust included',
  angleDeg: 'angle',
  variation: 'variation, east positive',
  qnhHpa: 'QNH',
  elevationFt: 'elevation',
  pressureAltitude: 'pressure altitude',
  temperatureC: 'temperature',
  dewPointC: 'dew point',
  gustKt: 'gust',
  spareLeftDeg: 'to spare when it backs',
  spareRightDeg: 'to spare when it veers',
  limitKt: 'limit',
  worstKt: 'now at worst',
  time: 'time, UTC',
  emptyKg: 'empty aircraft',
  crewKg: 'crew',
  carriedKg: 'carried at the stations',
  zeroFuelMass: 'zero-fuel mass',
  fuelKg: 'fuel',
  momentKgM: 'sum of every mass × its arm',
  mass: 'mass',
  bookKt: 'book speed',
  massKg: 'mass',
  usualMassKg: 'usual mass',
  stallKt: 'stall',
  liftOff: 'lift-off speed',
  leastKt: 'least',
  mostKt: 'most',
  groundKt: 'ground speed',
  run: 'run',
  airM: 'from lift-off to 50 ft',
  toraM: 'TORA',
  todaM: 'TODA',
  ldaM: 'LDA',
  availableM: 'available',
  rollsFromM: 'where the roll begins',
  needed: 'needed',
  neededM: 'needed',
  fieldAllowsKt: 'the runway allows',
  brakesAllowKt: 'brake energy allows',
  tyresAllowKt: 'the tyres allow',
  parachuteAllowsKt: 'the parachute allows',
  rotationKt: 'rotation',
  fromKt: 'stopped from',
  toSpeedM: 'run to that speed',
  heldS: 'until the brakes bite',
  brakingM: 'braking',
  distanceM: 'to the mark',
  headwindKt: 'headwind counted on',
  densityRatio: 'density over that at sea level',
  leastInWindKt: 'in today’s wind: 5 kt less than expected, or what still fits',
  leastForRunKt: 'so that the run still fits',
  leastForStopKt: 'so that the stop still fits',
  withinM: 'to lift-off, what TORA and TODA leave',
  onwardM: 'from the failure to lift-off on one engine',
  minimumControlKt: 'slowest that the rudder holds with an engine out',
  standingKt: 'shown by the wind alone',
  thrustN: 'thrust',
  dragN: 'drag',
  frictionN: 'friction of the wheels',
  slopeN: 'weight along the slope, uphill positive',
  brakesN: 'brakes',
  weightN: 'weight',
  gradient: 'climb gradient',
  accelerationFactor: 'factor for gaining true airspeed in the climb',
  alphaDeg: 'angle of attack',
  trueKt: 'true airspeed',
  factor: 'factor',
  reference: 'reference speed',
  pathDeg: 'angle of the path',
  gustSpreadKt: 'gust over the wind',
  approach: 'approach speed',
  share: 'share',
  air: 'in the air',
  approachTrueKt: 'on the path, true airspeed',
  flareTrueKt: 'in the flare, true airspeed',
  touchdownTrueKt: 'at touch-down, true airspeed',
};

const sources: Record<string, string> = {
  pilot: 'You, in Sortie.',
  aircraft: 'The aircraft’s document.',
  load: 'The aircraft’s document, and what you loaded.',
  'weight-and-balance':
    'FAA-H-8083-25, Pilot’s Handbook of Aeronautical Knowledge, ch. 10: weight and balance.',
  field: 'The field’s document.',
  report: 'The report in use.',
  'turned-by-degrees':
    'The wind turned a whole degree at a time, same strength and swing, until another runway is best.',
  'lift-equation': 'Lift at an angle of attack grows with speed²: speeds go with the root of mass.',
  '14-cfr-23-53': '14 CFR 23.53 as it was until 2017.',
  'equation-of-motion':
    'm dV/dt = thrust − drag − friction × (weight − lift) − weight along the slope, summed in small steps.',
  'equation-of-motion-by-density':
    'm dV/dt = thrust − drag − friction × (weight − lift) − weight along the slope, summed in small steps. The aircraft’s document does not say what heat takes of its thrust: it falls with density alone, which is too little on a hot day.',
  'accelerate-stop':
    '14 CFR 25.109: two seconds at the speed, then brakes. Thrust is idle from there on.',
  'takeoff-factor':
    'The factor of the aircraft’s document, or the one you chose: 1.15 for jets (14 CFR 25.113), 1.33 for light aircraft (UK CAA Safety Sense Leaflet 7c).',
  'landing-factor':
    'The factor of the aircraft’s document, or the one you chose: 1.43 for light aircraft (UK CAA Safety Sense Leaflet 7c), 1.67 for jets (14 CFR 121.195: within 0.6 of the LDA); 1.15 more where it is not dry (the same, from memory).',
  'scaled-thrust':
    'Thrust scaled down until the run just fits TORA, and until the stop just fits ASDA.',
  'arc-of-flare':
    'Anderson, Aircraft Performance and Design, 6.8.1 and 6.8.2: a straight path, and an arc flown at 1.2 g; m dV/dt = thrust − drag for the speed lost in it.',
  'far-23-73': 'Former FAR 23.73.',
  'cs-25-125': 'CS 25.125.',
  'faa-8083-3': 'FAA-H-8083-3, Airplane Flying Handbook, ch. 8.',
  'planned-length':
    'The field’s document, and today’s run with half of a headwind and one and a half times a tailwind: 14 CFR 25.105(d)(1).',
  practice: 'Common practice, no published source.',
  suncalc: 'suncalc, after Meeus, Astronomical Algorithms.',
  isa: 'ICAO Doc 7488, Manual of the ICAO Standard Atmosphere.',
  'wind-components':
    'FAA-H-8083-25, Pilot’s Handbook of Aeronautical Knowledge, ch. 11: wind components.',
  'IGRF-12': 'IGRF-12, International Geomagnetic Reference Field, IAGA.',
  WMM2015: 'World Magnetic Model 2015, NOAA and BGS.',
  WMM2015v2: 'World Magnetic Model 2015, version 2, NOAA and BGS.',
  WMM2020: 'World Magnetic Model 2020, NOAA and BGS.',
  WMM2025: 'World Magnetic Model 2025, NOAA and BGS.',
};

const causes: Record<string, string> = {
  'no-field': 'No field is chosen.',
  'no-aircraft': 'No aircraft is chosen.',
  'no-magnetic-model': 'No magnetic model covers the sortie’s date: 1900 to 2029.',
  'not-firm': 'Only the best runway in a wind with a direction has it.',
  'never-changes': 'It stays best from every direction.',
  'no-limit-reached': 'No strength of this wind reaches a limit.',
  'no-low-sun': 'No low sun is ahead.',
  'no-qnh': 'The report gives no QNH.',
  'no-temperature': 'The report gives no temperature.',
  'no-gust': 'The report gives no gust.',
  'beyond-atmosphere': 'It lies beyond what the standard atmosphere covers here.',
  'no-speed': 'The wind’s speed was not reported.',
  'no-direction': 'The wind has no direction.',
  'no-fuel': 'There is no fuel aboard.',
  'no-length-needed': 'What is needed is not known.',
  'no-end': 'No runway is selected.',
  'no-mark': 'No mark is set.',
  'mark-behind': 'The mark lies at or behind where the roll begins.',
  'mark-beyond-stop': 'The aircraft is above its max abort speed there.',
  'mark-beyond-run': 'The aircraft flies before the mark.',
  'runway-too-short': 'The runway is too short for it.',
  'cannot-climb': 'It cannot climb.',
  'one-engine': 'The aircraft has one engine.',
  'not-in-aircraft': 'The aircraft’s document does not give it.',
};

/** Titles of figures of a runway end, whose words the frame does without. */
const titles: Partial<Record<keyof EndFigures, string>> = {
  headingMagnetic: 'Runway heading, magnetic',
  left: 'Margin',
  spare: 'How far the wind can turn',
  tailwindWorst: 'Tailwind',
};

const title = (name: keyof EndFigures, purpose: Purpose): string =>
  name === 'available'
    ? purpose === 'take-off'
      ? 'Take-off run available'
      : 'Landing distance available'
    : (titles[name] ?? '');

export const words = {
  close: 'Close',
  title,
  formulas,
  inputNames,
  sources,
  causes,
  inputs: 'From',
  formula: 'Formula',
  source: 'Source',
  noValue: 'not known',
} as const;

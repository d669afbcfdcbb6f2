/** The words of Why: formulas in one line, names of their inputs, sources, causes. */

/** Formulas, in one line. Inputs appear by the names under {@link inputNames}. */
const formulas: Record<string, string> = {
  'as-given': 'as given',
  'as-set': 'as you set it',
  'smaller-limit': 'the smaller of the two limits',
  variation: 'angle from true to magnetic north in the model’s field, east positive',
  headwind: 'wind speed × cos (wind direction − runway direction)',
  crosswind: 'wind speed × sin (wind direction − runway direction)',
  'crosswind-worst': 'strongest wind × sin (angle), at the angle in the swing nearest to 90°',
  'tailwind-worst':
    'strongest wind × −cos (angle), at the angle in the swing farthest from the runway; not below 0',
  magnetic: 'runway direction − variation',
  'pressure-altitude': 'elevation + height of the pressure QNH in the standard atmosphere',
  'density-altitude': 'the height in the standard atmosphere that has the air’s density',
  'gust-spread': 'gust − steady wind',
  'smaller-spare': 'the smaller of the two sides',
  'limit-speed': 'wind speed × limit ÷ what it is now, the gust growing with the wind',
  'sun-height': 'height of the sun’s centre, refraction included',
  tora: 'take-off run available, as declared',
  lda: 'landing distance available, as declared',
};

const inputNames: Record<string, string> = {
  given: 'given',
  set: 'set',
  aircraftKt: 'aircraft’s limit, kt',
  ownKt: 'your own limit, kt',
  latDeg: 'latitude, °',
  lonDeg: 'longitude, °',
  elevationM: 'elevation, m',
  date: 'date',
  speedKt: 'wind speed, kt',
  windTrueDeg: 'wind direction, true, °',
  runwayTrueDeg: 'runway direction, true, °',
  strongestKt: 'strongest wind, gust included, kt',
  angleDeg: 'angle, °',
  variation: 'variation, east positive',
  qnhHpa: 'QNH, hPa',
  elevationFt: 'elevation, ft',
  pressureAltitude: 'pressure altitude',
  temperatureC: 'temperature, °C',
  gustKt: 'gust, kt',
  spareLeftDeg: 'to spare when it backs, °',
  spareRightDeg: 'to spare when it veers, °',
  limitKt: 'limit, kt',
  worstKt: 'now at worst, kt',
  time: 'time, UTC',
};

const sources: Record<string, string> = {
  pilot: 'You, in Sortie.',
  aircraft: 'The aircraft’s document.',
  field: 'The field’s document.',
  report: 'The report in use.',
  'turned-by-degrees':
    'The wind turned a whole degree at a time, same strength and swing, until another end is best.',
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
  'not-firm': 'Only the best end in a wind with a direction has it.',
  'never-changes': 'It stays best from every direction.',
  'no-limit-reached': 'No strength of this wind reaches a limit.',
  'no-low-sun': 'No low sun is ahead.',
  'no-qnh': 'The report gives no QNH.',
  'no-temperature': 'The report gives no temperature.',
  'no-gust': 'The report gives no gust.',
  'beyond-atmosphere': 'It lies beyond what the standard atmosphere covers here.',
  'no-speed': 'The wind’s speed was not reported.',
  'no-direction': 'The wind has no direction.',
  'not-in-aircraft': 'The aircraft’s document does not give it.',
};

export const words = {
  close: 'Close',
  formulas,
  inputNames,
  sources,
  causes,
  inputs: 'From',
  formula: 'Formula',
  source: 'Source',
  noValue: 'not known',
  units: { deg: '°', degC: '°C', kt: ' kt', m: ' m', '%': ' %' } as Partial<Record<string, string>>,
} as const;

/** The air over the field: the later of pilot and report, else the standard atmosphere's. */

import { isaTemperatureK, KELVIN_AT_0_C, pressureAltitudeFt } from '../earth/atmosphere';
import { type Figure, known, unknown } from '../figure';
import type { Inputs } from '../sortie/entry';
import { M_PER_FT } from '../units';
import type { WeatherBrief } from './weather';

/** What a take-off or a landing needs to know of the air. */
export interface AirBrief {
  readonly pressureAltitude: Figure<'ft'>;
  readonly temperature: Figure<'degC'>;
  /** °C; null if unknown, and the air counts as dry. */
  readonly dewPointC: number | null;
  /** What no one gave, so that the standard atmosphere stands in. */
  readonly standard: readonly Quantity[];
  /** What the pilot typed but a later report states too: the report's counts. */
  readonly overruled: readonly Quantity[];
}

type Quantity = 'qnh' | 'temperature';

/** Standard pressure at sea level, hPa. ICAO Doc 7488. */
const STANDARD_HPA = 1013.25;

/**
 * The air over a field of this elevation. What the pilot typed counts, except what is `older` than
 * the report and stated in it too.
 */
export function airOf(
  elevationFt: number,
  own: Pick<Inputs, 'ownQnhHpa' | 'ownTemperatureC'>,
  weather: Pick<WeatherBrief, 'qnhHpa' | 'temperature' | 'dewPointC'> | null,
  older: readonly Quantity[] = [],
): AirBrief {
  const reported = {
    qnh: weather?.qnhHpa.value ?? null,
    temperature: weather?.temperature.value ?? null,
  };
  const typed = { qnh: own.ownQnhHpa, temperature: own.ownTemperatureC };
  const overruled = older.filter((of) => typed[of] !== null && reported[of] !== null);
  const ownQnhHpa = overruled.includes('qnh') ? null : typed.qnh;
  const ownTemperatureC = overruled.includes('temperature') ? null : typed.temperature;
  const qnhHpa = ownQnhHpa ?? reported.qnh;
  const temperatureC = ownTemperatureC ?? reported.temperature;
  const pressureAltitude = atQnh(qnhHpa ?? STANDARD_HPA, elevationFt);
  return {
    pressureAltitude,
    temperature:
      temperatureC === null
        ? standardTemperature(pressureAltitude)
        : known(temperatureC, 'degC', {
            formula: ownTemperatureC === null ? 'as-given' : 'as-set',
            inputs: ownTemperatureC === null ? { given: temperatureC } : { set: temperatureC },
            source: ownTemperatureC === null ? 'report' : 'pilot',
          }),
    // A temperature typed by the pilot says nothing about moisture.
    dewPointC: ownTemperatureC === null ? (weather?.dewPointC ?? null) : null,
    standard: [
      ...(qnhHpa === null ? (['qnh'] as const) : []),
      ...(temperatureC === null ? (['temperature'] as const) : []),
    ],
    overruled,
  };
}

function atQnh(qnhHpa: number, elevationFt: number): Figure<'ft'> {
  const value = pressureAltitudeFt(qnhHpa, elevationFt);
  return value === null
    ? unknown('beyond-atmosphere')
    : known(value, 'ft', {
        formula: 'pressure-altitude',
        inputs: { qnhHpa, elevationFt },
        source: 'isa',
      });
}

/** 15 °C at sea level, less 6.5 °C per kilometre. ICAO Doc 7488. */
function standardTemperature(pressureAltitude: Figure<'ft'>): Figure<'degC'> {
  return pressureAltitude.value === null
    ? pressureAltitude
    : known(isaTemperatureK(pressureAltitude.value * M_PER_FT) - KELVIN_AT_0_C, 'degC', {
        formula: 'standard-temperature',
        inputs: { pressureAltitude },
        source: 'isa',
      });
}

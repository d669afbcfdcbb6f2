/** What a whole report means for the day: the air, and the questions it raises. */

import { densityAltitudeFt, inHgFromHpa, pressureAltitudeFt } from '../earth/atmosphere';
import { type Figure, known, unknown } from '../figure';
import { type Closure, closureOf } from '../weather/closure';
import { type WeatherNow, type WeatherQuestion, weatherQuestions } from '../weather/questions';
import { weatherNow } from '../weather/weatherNow';
import type { Report } from '../weather/whole/report';
import type { SettledFacts } from './settled';

export interface WeatherBrief {
  readonly report: Report;
  readonly now: WeatherNow;
  readonly qnhHpa: Figure<'hPa'>;
  readonly qnhInHg: Figure<'inHg'>;
  readonly temperature: Figure<'degC'>;
  readonly pressureAltitude: Figure<'ft'>;
  /** °C; null if the report has none. */
  readonly dewPointC: number | null;
  readonly densityAltitude: Figure<'ft'>;
  /** Gust above the steady wind. */
  readonly gustSpread: Figure<'kt'>;
  readonly questions: readonly WeatherQuestion[];
  /** What it says is closed. */
  readonly closure: Closure;
}

/** A report's weather at the field. */
export function weatherStage(
  report: Report,
  { field, surface }: Pick<SettledFacts, 'field' | 'surface'>,
): WeatherBrief {
  const { pressure, temperature } = report.weather;
  const now = weatherNow(report.weather);
  const qnh = pressure?.qnhHpa ?? null;
  const airC = temperature?.airC ?? null;
  const qnhHpa: Figure<'hPa'> = qnh === null ? unknown('no-qnh') : reported(qnh, 'hPa');
  const inches = pressure?.qnhInHg ?? (qnh === null ? null : inHgFromHpa(qnh));
  const elevationFt = field?.place.elevationFt ?? null;
  const pressureAltitude = pressureAltitudeOf(qnhHpa, elevationFt);
  const air: Figure<'degC'> = airC === null ? unknown('no-temperature') : reported(airC, 'degC');
  return {
    report,
    now,
    qnhHpa,
    qnhInHg: inches === null ? unknown('no-qnh') : reported(inches, 'inHg'),
    temperature: air,
    pressureAltitude,
    dewPointC: temperature?.dewPointC ?? null,
    densityAltitude: densityAltitudeOf(pressureAltitude, air, temperature?.dewPointC ?? null),
    gustSpread: gustSpreadOf(report),
    questions: weatherQuestions(now, surface),
    closure: closureOf(report.weather),
  };
}

const reported = <U extends 'hPa' | 'inHg' | 'degC'>(value: number, unit: U): Figure<U> =>
  known(value, unit, { formula: 'as-given', inputs: { given: value }, source: 'report' });

function pressureAltitudeOf(qnhHpa: Figure<'hPa'>, elevationFt: number | null): Figure<'ft'> {
  if (qnhHpa.value === null) return qnhHpa;
  if (elevationFt === null) return unknown('no-field');
  const value = pressureAltitudeFt(qnhHpa.value, elevationFt);
  return value === null
    ? unknown('beyond-atmosphere')
    : known(value, 'ft', {
        formula: 'pressure-altitude',
        inputs: { qnhHpa: qnhHpa.value, elevationFt },
        source: 'isa',
      });
}

function densityAltitudeOf(
  pressureAltitude: Figure<'ft'>,
  temperature: Figure<'degC'>,
  dewPointC: number | null,
): Figure<'ft'> {
  if (pressureAltitude.value === null) return pressureAltitude;
  if (temperature.value === null) return temperature;
  const value = densityAltitudeFt(pressureAltitude.value, temperature.value, dewPointC);
  return value === null
    ? unknown('beyond-atmosphere')
    : known(value, 'ft', {
        formula: dewPointC === null ? 'density-altitude' : 'density-altitude-moist',
        inputs: {
          pressureAltitude,
          temperatureC: temperature.value,
          ...(dewPointC === null ? {} : { dewPointC }),
        },
        source: 'isa',
      });
}

function gustSpreadOf({ wind }: Report): Figure<'kt'> {
  if (wind?.speedKt == null) return unknown('no-speed');
  if (wind.gustKt === null) return unknown('no-gust');
  return known(wind.gustKt - wind.speedKt, 'kt', {
    formula: 'gust-spread',
    inputs: { gustKt: wind.gustKt, speedKt: wind.speedKt },
    source: 'report',
  });
}

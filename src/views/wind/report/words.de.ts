/** The words of the weather under the answer, in German. */

import type { ReportNote, WeatherQuestion } from '../../../core';
import { wholeNumber } from '../../../parts/format';
import type { Translated } from '../../../parts/translated';
import { length } from '../../../parts/units';
import type { words as english } from './words.en';

function age(minutes: number): string {
  if (minutes < 120) return `${minutes} min`;
  const hours = Math.round(minutes / 60);
  return hours < 48 ? `${hours} h` : `${Math.round(hours / 24)} Tage`;
}

function note(of: ReportNote): string {
  switch (of.code) {
    case 'other-field':
      return `Die Meldung ist von ${of.station}, der Platz ist ${of.field}.`;
    case 'old':
      return `Nach der Uhr des Flugs ist die Meldung ${age(of.minutes)} alt.`;
    case 'ahead':
      return `Die Meldung ist der Uhr des Flugs um ${age(of.minutes)} voraus.`;
  }
}

const BECAUSE = {
  'runway-state': 'Der Pistenzustand ist gemeldet',
  precipitation: 'Regen oder Ähnliches',
  'recent-rain': 'Vor Kurzem hat es geregnet',
  'freezing-precipitation': 'Gefrierender Niederschlag',
  'frozen-precipitation': 'Schnee, Eis oder Hagel',
} as const;

function question(of: WeatherQuestion): string {
  switch (of.code) {
    case 'thunderstorm':
      return 'Gewitter in der Nähe: Der Wind kann plötzlich drehen und auffrischen.';
    case 'wind-shear':
      return 'Windscherung ist gemeldet.';
    case 'treat-as-wet':
      return `${BECAUSE[of.because]}: Piste als nass werten?`;
    case 'treat-as-contaminated':
      return `${BECAUSE[of.because]}: Piste als kontaminiert werten?`;
    case 'icing':
      return of.temperatureC === null
        ? 'Gefrierender Niederschlag: Vereisung an Zelle und Lufteinlauf?'
        : `Sichtbare Feuchte bei ${wholeNumber(of.temperatureC)} °C: Vereisung an Zelle und Lufteinlauf?`;
    case 'low-rvr':
      return `Pistensichtweite ${length(of.rvrM)}, unter ${length(of.belowM)}.`;
    case 'below-visual-minima': {
      const parts = [
        of.visibilityM === null
          ? null
          : `Sicht ${wholeNumber(of.visibilityM)} m, unter ${wholeNumber(5000)} m`,
        of.ceilingFt === null
          ? null
          : `Hauptwolkenuntergrenze ${wholeNumber(of.ceilingFt)} ft, unter ${wholeNumber(1500)} ft`,
      ].filter((part) => part !== null);
      return `Unter den Sichtflugminima: ${parts.join('; ')}.`;
    }
  }
}

export const words: Translated<typeof english> = {
  title: 'Wetter',
  note,
  question,
  treatAs: { wet: 'Als nass werten', contaminated: 'Als kontaminiert werten' },
  other: (station) => (station === null ? 'Weitere Meldung:' : `Auch ${station}:`),
  take: 'Nehmen',
  qnh: 'QNH',
  temperature: 'Temperatur',
  dewPoint: (celsius) => `Taupunkt ${celsius} °C`,
  pressureAltitude: 'Druckhöhe',
  densityAltitude: 'Dichtehöhe',
  gustSpread: 'Bö über dem mittleren Wind',
  absent: {
    'no-qnh': 'kein QNH gemeldet',
    'no-temperature': 'keine Temperatur gemeldet',
    'no-field': 'kein Platz',
    'beyond-atmosphere': 'außerhalb der Standardatmosphäre',
    'no-speed': 'keine Geschwindigkeit gemeldet',
    'no-gust': 'keine Bö',
  },
  ask: 'zeigt, woher dieser Wert kommt',
  sun: (rise, set) => `Sonnenaufgang ${rise}, Untergang ${set}.`,
  sunAllDay: {
    always: 'Die Sonne geht heute nicht unter.',
    never: 'Die Sonne geht heute nicht auf.',
  },
  civil: (from, until) => `Bürgerliche Dämmerung ${from} bis ${until}.`,
  butTheWind: (at) =>
    at === null
      ? 'Alles außer dem Wind stammt aus der letzten Meldung.'
      : `Alles außer dem Wind stammt aus der Meldung von ${at}.`,
  expected: {
    title: 'Vorhersage',
    trend: (until) => `Trend der Meldung, bis ${until}`,
    taf: (station, from, until) =>
      `Vorhersage${station === null ? '' : ` für ${station}`}, ${from} bis ${until}`,
    cancelled: (station) => `Vorhersage${station === null ? '' : ` für ${station}`} aufgehoben`,
    missing: (station) => `Keine Vorhersage${station === null ? '' : ` für ${station}`}`,
    kinds: {
      base: 'Zu Beginn',
      FM: 'Danach',
      BECMG: 'Übergang',
      TEMPO: 'Zeitweise',
      INTER: 'Kurzzeitig',
      PROB: 'Stattdessen',
    },
    chance: (percent) => `${percent} %`,
    when: (from, until) => `${from} bis ${until}`,
    windStays: 'Wind wie zuvor',
    variable: 'umlaufend',
    crosswind: (knots, limit) => `Seitenwind ${knots}, Grenze ${limit}`,
    tailwind: (knots, limit) => `Rückenwind ${knots}, Grenze ${limit}`,
    'gust-spread': (knots, limit) => `Bö ${knots} über dem Wind, Grenze ${limit}`,
    within: { trend: 'In dieser Meldung', taf: 'In dieser Vorhersage' },
    said: (within, wind, figure, from, until) =>
      `${within}: ${wind}, ${figure}, ${from === null ? '' : `ab ${from} `}bis ${until}`,
  },
  elsewhere: {
    typed: (place, age, wind) => `Eingegeben an ${place ?? 'einem anderen Platz'}, ${age}: ${wind}`,
    report: (place, time, wind) =>
      `Meldung von ${place ?? 'einem anderen Platz'}, ${time}: ${wind}`,
    take: 'Hier verwenden',
  },
  groupByGroup: 'Gruppe für Gruppe',
  trend: {
    turn: { veering: 'nach rechts gedreht', backing: 'nach links gedreht' },
    strength: { strengthening: 'stärker', easing: 'schwächer' },
    turned: (how, deg) => `${deg}° ${how}`,
    changed: (how, kt) => `${kt} kt ${how}`,
    and: ' und ',
    in: (what, minutes) => `${what} in ${minutes} min`,
    steady: (minutes) => `Gleichbleibend über ${minutes} min`,
    holds: (end, time) => `${end} hält bei diesem Trend bis nach ${time}`,
    none: (time) => `Bei diesem Trend bis nach ${time} keine Piste innerhalb der Grenzen`,
    changes: (end, time) => `${end} ist bei diesem Trend etwa ab ${time} besser`,
    breaks: (time) => `Bei diesem Trend etwa ab ${time} keine Piste innerhalb der Grenzen`,
    basis: (count) => `Aus ${count} Winden, geradlinig fortgeschrieben: keine Vorhersage.`,
  },
};

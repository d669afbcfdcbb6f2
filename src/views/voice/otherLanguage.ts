/**
 * How a step's numbers and signs are said if its procedure is in another language than the page. A
 * voice of that language reads them, so figures are left to it, except where the trade says them
 * digit by digit.
 */

import { primarySubtag, type Wind } from '../../core';

/** How numbers and signs of a step are said. */
export interface StepSpeech {
  readonly signs: (text: string) => string;
  readonly digits: (value: number) => string;
  readonly hundreds: (value: number) => string;
  readonly direction: (deg: number) => string;
  readonly runway: (name: string) => string;
  readonly callsign: (callsign: string) => string;
  readonly unknown: string;
  readonly yourCallsign: string;
  readonly calm: string;
  /** Where a wind comes from: as digits, from anywhere, and where nobody reported it. */
  readonly from: (deg: string) => string;
  readonly variable: string;
  readonly notReported: string;
  readonly wind: (from: string, speed: string, gust: string | null) => string;
}

type SaidWind = Pick<Wind, 'fromDeg' | 'speedKt' | 'gustKt' | 'variable'>;

/** A wind as said. A direction nobody reported must not be said as "variable". */
export function saidWind(
  { fromDeg, speedKt, gustKt, variable }: SaidWind,
  speech: StepSpeech,
): string {
  if (speedKt === null) return speech.unknown;
  if (speedKt === 0 && gustKt === null) return speech.calm;
  const nowhere = variable ? speech.variable : speech.notReported;
  return speech.wind(
    fromDeg === null ? nowhere : speech.from(speech.direction(fromDeg)),
    speech.digits(speedKt),
    gustKt === null ? null : speech.digits(gustKt),
  );
}

type Words = Pick<
  StepSpeech,
  'unknown' | 'yourCallsign' | 'calm' | 'from' | 'variable' | 'notReported' | 'wind'
> & {
  readonly signs: Readonly<Record<string, string>>;
  readonly sides: Readonly<Record<string, string>>;
};

/** What is said for unknown values, and for signs after a figure; by language. */
const WORDS: Readonly<Record<string, Words>> = {
  en: {
    signs: {
      ...{ '°': 'degrees', '%': 'percent', kt: 'knots', kg: 'kilograms', hPa: 'hectopascals' },
      ...{ lb: 'pounds', inHg: 'inches' },
      ...{ ft: 'feet', m: 'metres', '–': 'to' },
    },
    sides: { L: ' left', C: ' centre', R: ' right' },
    unknown: 'not known',
    yourCallsign: 'your callsign',
    calm: 'calm',
    from: (deg) => `${deg} degrees`,
    variable: 'variable',
    notReported: 'direction not reported',
    wind: (from, speed, gust) => `${from} ${speed} knots${gust === null ? '' : ` gusting ${gust}`}`,
  },
  de: {
    signs: {
      ...{ '°': 'Grad', '%': 'Prozent', kt: 'Knoten', kg: 'Kilogramm', hPa: 'Hektopascal' },
      ...{ lb: 'Pfund', inHg: 'Zoll' },
      ...{ ft: 'Fuß', m: 'Meter', '–': 'bis', 'U/min': 'Umdrehungen' },
    },
    sides: { L: ' links', C: ' Mitte', R: ' rechts' },
    unknown: 'nicht bekannt',
    yourCallsign: 'dein Rufzeichen',
    calm: 'windstill',
    from: (deg) => `${deg} Grad`,
    variable: 'umlaufend',
    notReported: 'Richtung nicht gemeldet',
    wind: (from, speed, gust) =>
      `${from} ${speed} Knoten${gust === null ? '' : ` in Böen ${gust}`}`,
  },
};

/** In an unknown language, everything is read as written. */
const NONE: Words = {
  signs: {},
  sides: {},
  unknown: '',
  yourCallsign: '',
  calm: '0',
  from: (deg) => deg,
  variable: '',
  notReported: '',
  wind: (...pieces) => pieces.filter(Boolean).join(' '),
};

/** Separate digits: `28` is read as two and eight. */
const apart = (text: string) => text.replace(/\d(?=\d)/g, '$& ');

/** The thousands separator is no word of its own; a sign after a figure is a word. */
const signs = (text: string, words: Words['signs']) =>
  text
    .replace(/(\d)[ \u00a0](?=\d{3}\b)/g, '$1')
    .replace(/(?<=\d)\s*(°|%|–|\p{L}+(?:\/min)?)/gu, (whole, sign: string) =>
      Object.hasOwn(words, sign) ? ` ${words[sign]} ` : whole,
    )
    .replace(/ +(?=[ ,.;:]|$)/g, '');

/** How a language says them. */
export function speechIn(language: string): StepSpeech {
  const words = WORDS[primarySubtag(language)] ?? NONE;
  return {
    ...words,
    signs: (text) => signs(text, words.signs),
    digits: (value) => apart(String(value)),
    hundreds: String,
    direction: (deg) => apart(String(((Math.round(deg) + 359) % 360) + 1).padStart(3, '0')),
    runway: (name) => apart(name).replace(/[LCR]/g, (side) => words.sides[side] ?? ` ${side}`),
    callsign: apart,
  };
}

/** Reading a latitude or a longitude as people write it. */

/** Which of the two. */
export type Axis = 'lat' | 'lon';

const MOST_DEG: Readonly<Record<Axis, number>> = { lat: 90, lon: 180 };

const LETTERS: Readonly<Record<Axis, Readonly<Record<string, 1 | -1>>>> = {
  lat: { N: 1, S: -1 },
  lon: { E: 1, W: -1 },
};

/**
 * Degrees, north and east positive, from `62.95`, `−10.55`, `62 57.0 N`, `N62°57'00"`, or the
 * closed form of aeronautical publications, `625700N` and `0103300W` (ICAO Annex 15, appendix 1;
 * ISO 6709 for the order of degrees, minutes and seconds). Null if it is none.
 */
export function readCoordinate(text: string, axis: Axis): number | null {
  const plain = text.trim().toUpperCase().replaceAll('−', '-').replaceAll(',', '.');
  const letters = plain.match(/[A-Z]/g) ?? [];
  const sign = letters.length === 0 ? 1 : LETTERS[axis][letters[0] ?? ''];
  if (letters.length > 1 || sign === undefined) return null;
  const numbers = plain.replace(/[A-Z]/, ' ').trim();
  const deg = letters.length === 1 ? (closed(numbers, axis) ?? open(numbers)) : open(numbers);
  if (deg === null || (letters.length === 1 && deg < 0)) return null;
  return Math.abs(deg) <= MOST_DEG[axis] ? sign * deg : null;
}

/** `625700`, `6257` or `0103300.5`: degrees of two digits for latitude and three for longitude, then minutes, then seconds. */
function closed(digits: string, axis: Axis): number | null {
  const form =
    axis === 'lat' ? /^(\d{2})(\d{2})(\d{2}(?:\.\d+)?)?$/ : /^(\d{3})(\d{2})(\d{2}(?:\.\d+)?)?$/;
  const [, deg, minutes, seconds = '0'] = form.exec(digits) ?? [];
  return deg === undefined ? null : sexagesimal(Number(deg), Number(minutes), Number(seconds));
}

/**
 * One to three numbers separated by anything that is no number; only the last may have decimals.
 */
function open(numbers: string): number | null {
  const form =
    /^(-?\d{1,3}(?:\.\d+)?)(?:[\s°:]+(\d{1,2}(?:\.\d+)?)(?:[\s'′:]+(\d{1,2}(?:\.\d+)?))?)?["″'′°\s]*$/;
  const [, deg, minutes, seconds] = form.exec(numbers) ?? [];
  if (deg === undefined) return null;
  if (minutes === undefined) return Number(deg);
  if (deg.includes('.') || (seconds !== undefined && minutes.includes('.'))) return null;
  const size = sexagesimal(Math.abs(Number(deg)), Number(minutes), Number(seconds ?? 0));
  return size === null ? null : deg.startsWith('-') ? -size : size;
}

const sexagesimal = (deg: number, minutes: number, seconds: number): number | null =>
  minutes < 60 && seconds < 60 ? deg + minutes / 60 + seconds / 3600 : null;

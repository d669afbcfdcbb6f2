/** How numbers are written, the same on every screen. */

import { localTime } from '../device/preferences';
import { dateWords, point } from './formatWords';

/** Between thousands, and between a number and its unit: it never breaks. */
export const NO_BREAK_SPACE = '\u00a0';

/** A direction in three digits: `005°`. North is 360. */
export function direction(deg: number): string {
  const whole = Math.round(deg) % 360;
  return `${String(whole === 0 ? 360 : whole).padStart(3, '0')}°`;
}

/** A whole number with thousands separated: `1 400`. A true minus sign. */
export function wholeNumber(value: number): string {
  const rounded = Math.round(value);
  const digits = String(Math.abs(rounded)).replace(/\B(?=(\d{3})+$)/g, NO_BREAK_SPACE);
  return rounded < 0 ? `−${digits}` : digits;
}

/** A number with a given number of decimals, and a true minus sign. */
export function decimal(value: number, places: number): string {
  const digits = value.toFixed(places);
  return asWritten(Number(digits) === 0 ? digits.replace('-', '') : digits);
}

/** The digits of a number as written here. */
export const asWritten = (digits: string): string => digits.replace('-', '−').replace('.', point);

/** As in the judgement itself, a value that only reaches its limit isn't over it. */
const ROUNDING = 1e-9;

/**
 * Knots against a limit: whole, but never rounded to the other side of the limit. 24.2 against a
 * limit of 24 becomes 25.
 */
export function againstLimit(value: number, limit: number): string {
  return wholeNumber(
    value > limit + ROUNDING && Math.round(value) <= limit ? Math.ceil(value) : value,
  );
}

/** UTC time of day: `1850Z`. */
export function zulu(ms: number): string {
  return `${new Date(ms).toISOString().slice(11, 16).replace(':', '')}Z`;
}

/** Time of day on the device's own clock: `2050`, with the letter that says it is local. */
export function localClock(ms: number): string {
  const date = new Date(ms);
  const two = (of: number) => String(of).padStart(2, '0');
  return `${two(date.getHours())}${two(date.getMinutes())}L`;
}

/** Time of day in UTC, with local time beside it if the pilot wants it: `1850Z 2050L`. */
export const timeOfDay = (ms: number): string =>
  localTime.value ? `${zulu(ms)}${NO_BREAK_SPACE}${localClock(ms)}` : zulu(ms);

/** UTC date: `5 Apr 1987`. */
export function utcDate(ms: number): string {
  const date = new Date(ms);
  return dateWords(date.getUTCDate(), date.getUTCMonth(), date.getUTCFullYear(), NO_BREAK_SPACE);
}

/** Elapsed minutes and seconds: `0:11`. */
export function stopwatch(ms: number): string {
  const seconds = Math.max(0, Math.floor(ms / 1000));
  return `${Math.floor(seconds / 60)}:${String(seconds % 60).padStart(2, '0')}`;
}

/** How long something takes, as one says it: `90 s`, `15 min`, `2 min 30 s`. */
export function lasting(seconds: number): string {
  const all = Math.round(seconds);
  if (all < 120) return `${all}${NO_BREAK_SPACE}s`;
  const minutes = `${Math.floor(all / 60)}${NO_BREAK_SPACE}min`;
  return all % 60 === 0 ? minutes : `${minutes} ${all % 60}${NO_BREAK_SPACE}s`;
}

/** What numbers and dates are written with. */

const MONTHS = ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec'];

/** The decimal separator. */
export const point: string = '.';

/** A date from its day, its month counted from zero, and its year; `space` never breaks. */
export const dateWords = (day: number, month: number, year: number, space: string) =>
  `${day}${space}${MONTHS[month]}${space}${year}`;

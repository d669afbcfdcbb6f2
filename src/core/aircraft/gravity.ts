/** Standard acceleration of free fall, m/s². ICAO Doc 7488, table A. */
export const GRAVITY = 9.80665;

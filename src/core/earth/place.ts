/** A point on the earth, WGS 84. */
export interface Place {
  /** Geodetic latitude, degrees, −90 to 90, north positive. */
  readonly latDeg: number;
  /** Longitude, degrees, east positive; any number of turns. */
  readonly lonDeg: number;
}

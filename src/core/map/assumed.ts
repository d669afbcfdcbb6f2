/** What is taken where a map says nothing. */

/** The width of a runway, metres: that of most which are long enough for jets. */
export const ASSUMED_WIDTH_M = 45;

/** A straight line to a stand that is longer than this, metres, is marked: it may cross anything. */
export const LONG_LEAD_IN_M = 60;

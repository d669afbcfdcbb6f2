/** What is taken where a map says nothing. */

/** A straight line to a stand that is longer than this, metres, is marked: it may cross anything. */
export const LONG_LEAD_IN_M = 60;

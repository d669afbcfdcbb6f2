/** The words that stand where a live number is not known, and in a wind. */

export const words = {
  unknown: '—',
  yourCallsign: '(callsign)',
  gust: 'gust',
} as const;

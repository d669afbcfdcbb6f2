/** The code of the log, loaded when the log is opened. */

export { logOf } from './log';
export { compareLines, SUMMARY_MAKE, summaryOf, totalsOf } from './logSummary';
export { blockMinutes, flightMinutes, LOG_MOMENTS, nearestAtMinute } from './logTimes';
export { isUnderstood } from './understood';

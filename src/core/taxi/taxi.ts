/** The taxi route, for the place that shows it. */

export { CALLS, COMPASS, callFor, fieldCalled, stationCalled } from '../radio/call';
export { routeKey } from './alternatives';
export { taxiGraph } from './graph';
export { progressOn, secondsAt, turnsOf } from './pace';
export { findRouteIn } from './routeIn';
export { findRouteOut, isEntry, taxiDistances } from './routeOut';
export { neededWidthM, stretchId } from './rules';
export { stripsOf } from './runwayStrip';
export { toldIn, toldOut } from './told';

/** The taxi route, for the place that shows it. */

export { CALLS, COMPASS, callFor, fieldCalled, stationCalled } from '../radio/call';
export { routeKey } from './alternatives';
export { layAsTold } from './asTold';
export { taxiGraph } from './graph';
export { taxiwaysOf } from './instruction';
export { mendedTexts } from './mended';
export { progressOn, secondsAt, turnsOf } from './pace';
export { findRouteIn, toldInQuestion } from './routeIn';
export { findRouteOut, isEntry, taxiDistances, toldOutQuestion } from './routeOut';
export { neededWidthM, stretchId } from './rules';
export { stripsOf } from './runwayStrip';
export { toldIn, toldOut } from './told';

/** All that is asked about the sun, to be loaded in one go. */

export { lowSunAhead } from './lowSun';
export { sunDay, sunFacts } from './sun';

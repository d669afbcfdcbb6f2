/** Everything about the sun, loaded in one go. */

export { lowSunAhead } from './lowSun';
export { sunDay, sunFacts } from './sun';

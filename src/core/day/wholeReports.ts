/** The code that reads and explains whole reports, loaded after the first answer. */

export { compareEnds } from '../runway/compare';
export { issuedAt, newestFor } from '../weather/issued';
export { readReport } from '../weather/readReport';
export { readTokens } from '../weather/readWind';
export { forecastsIn } from '../weather/whole/forecast';
export { expectedStage, forecastsHere, windForecast } from './expected';
export { outlookStage } from './outlook';
export { weatherStage } from './weather';

/** What reads whole reports and says what they mean, loaded once the first answer stands. */

export { compareEnds } from '../runway/compare';
export { issuedAt, newestFor } from '../weather/issued';
export { readReport } from '../weather/readReport';
export { readTokens } from '../weather/readWind';
export { outlookStage } from './outlook';
export { weatherStage } from './weather';

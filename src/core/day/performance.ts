/** The code behind today's numbers, loaded after the first answer. */

export { bookLeftOver } from '../aircraft/againstBook';
export { taxiTurn } from '../aircraft/taxiTurn';
export { airOf } from './air';
export { ladderOf } from './ladder';
export { crosswindTable, runTable, speedTable } from './lookUp';
export { lengthsNeeded, todayStage } from './today';

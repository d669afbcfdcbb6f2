/** What works out today's numbers, loaded once the first answer stands. */

export { taxiTurn } from '../aircraft/taxiTurn';
export { airOf } from './air';
export { ladderOf } from './ladder';
export { crosswindTable, runTable, speedTable } from './lookUp';
export { lengthsNeeded, todayStage } from './today';

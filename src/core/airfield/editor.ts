/** What draws and mends fields, for the screen that does it. */

import type { Place } from '../earth/place';
import type { Field } from './field';

export { readCoordinate } from '../earth/readCoordinate';
export { stretchId } from '../taxi/rules';
export { oppositeOf, readDesignator, runwayNumbers } from './designator';
export { draftOf, drawn, perform, redo, restored, stored, undo } from './editHistory';
export { snap } from './editSnap';
export { draftStrips } from './editStrips';
export { fieldFaults } from './faults';
export { routeGaps } from './routeGaps';
export { centreOf } from './runwayLine';

/** A field with nothing in it yet. Its code and name are empty, and so it is no document before they are given. */
export const emptyField = (place: Place): Field => ({
  lapstrip: 'field',
  version: 1,
  code: '',
  name: '',
  about: '',
  place: { latDeg: place.latDeg, lonDeg: place.lonDeg, elevationFt: 0 },
  numbersFrom: 'magnetic',
  radio: [],
  runways: [],
  taxi: { nodes: [], edges: [] },
});

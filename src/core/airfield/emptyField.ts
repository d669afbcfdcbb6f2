/** What drawing a field begins with. */

import type { Place } from '../earth/place';
import type { Field } from './field';

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

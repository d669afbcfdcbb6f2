/** What drawing a field starts from. */

import type { Place } from '../earth/place';
import type { Field } from './field';

/** An empty field. Its code and name are blank, so it is no valid document until they are given. */
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

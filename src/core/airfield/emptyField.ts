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

/** Whether it is known where a field lies: one that is begun lies at 0° N 0° E, in the sea. */
export const isPlaced = ({ place }: Field): boolean => place.latDeg !== 0 || place.lonDeg !== 0;

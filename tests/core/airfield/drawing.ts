/** A small invented field, drawn from nothing as a pilot would: for the tests of drawing. */

import { editedField, type FieldEdit } from '../../../src/core/airfield/edit';
import { type Snapped, snap } from '../../../src/core/airfield/editSnap';
import { emptyField } from '../../../src/core/airfield/emptyField';
import type { Field } from '../../../src/core/airfield/field';

/** The middle of the runway, which is the reference point too. */
export const MIDDLE = { latDeg: 60, lonDeg: -5 };

export const drawnBy = (field: Field, ...edits: readonly FieldEdit[]): Field =>
  edits.reduce(editedField, field);

/** A runway of 1 000 m that runs due east: 09 in the west, 27 in the east. */
export const RUNWAY: FieldEdit = {
  kind: 'runway-added',
  runway: {
    line: { by: 'centre', centre: MIDDLE, bearingTrueDeg: 90, lengthM: 1000 },
    designator: '09',
    widthM: 30,
    surface: 'asphalt',
    edgeLights: false,
  },
};

export const STRIP = drawnBy(
  emptyField(MIDDLE),
  { kind: 'head', set: { code: 'XTST', name: 'Teasel Flat' } },
  RUNWAY,
);

const spot = (xM: number, yM: number): Snapped => ({ on: 'ground', xM, yM });

/** Lays a taxiway through spots, each snapped as a tap there would be. */
export function led(
  field: Field,
  name: string,
  spots: readonly (readonly [number, number])[],
  on: 'taxiway' | 'apron' = 'taxiway',
): Field {
  let [now, from]: [Field, string | null] = [field, null];
  for (const [xM, yM] of spots) {
    const at = snap(now, { xM, yM });
    now = editedField(now, { kind: 'laid', from, at, on, name });
    const there = snap(now, { xM, yM });
    from = there.on === 'node' ? there.id : null;
  }
  return now;
}

/** Puts a holding point or a stand where a tap there would. */
export const put = (field: Field, what: 'stand' | 'hold', xM: number, yM: number): Field =>
  editedField(field, { kind: 'placed', what, at: snap(field, { xM, yM }) });

/**
 * A parallel taxiway 150 m south of the runway with a connector at each end and a holding point on
 * each, and one stand south of it.
 */
export function small(): Field {
  let field = led(STRIP, 'A', [
    [-490, 0],
    [-490, -150],
    [0, -150],
    [490, -150],
    [490, 0],
  ]);
  field = put(field, 'hold', -490, -75);
  field = put(field, 'hold', 490, -75);
  field = put(field, 'stand', 0, -220);
  return led(
    field,
    'apron',
    [
      [0, -150],
      [0, -220],
    ],
    'apron',
  );
}

export { spot };

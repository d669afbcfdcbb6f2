/** An airfield, as its document gives it. */

import type { InferOutput } from 'valibot';
import type { fieldSchema } from './field.schema';

/** An airfield: runways with declared distances, stands, taxiways and radio. */
export type Field = InferOutput<typeof fieldSchema>;

/** A strip of pavement with two ends. */
export type Runway = Field['runways'][number];

/** What the source of a runway contradicts, or does not say. */
export type Doubt = NonNullable<Runway['doubts']>[number];

/** One end of a runway, with its declared distances. */
export type RunwayEnd = Runway['ends'][number];

/** `01` to `36`, with L, C or R for parallels. */
export type Designator = RunwayEnd['designator'];

/** State of the runway surface, in the terms limits use. */
export type Surface = 'dry' | 'wet' | 'contaminated';

/** A hot spot, as charted. */
export type HotSpot = NonNullable<Field['taxi']['hotSpots']>[number];

/** A frequency, and who answers on it. */
export type Radio = Field['radio'][number];

/** An aircraft, as its document gives it. */

import type { InferOutput } from 'valibot';
import type { aircraftSchema } from './aircraft.schema';

/** An aircraft: masses, limits, taxi power and plain speeds. */
export type Aircraft = InferOutput<typeof aircraftSchema>;

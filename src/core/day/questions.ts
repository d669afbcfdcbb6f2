/** What a brief is worked out from: inputs of the moment, documents in hand, tables in hand. */

import type { Aircraft } from '../aircraft/aircraft';
import type { Field } from '../airfield/field';
import type { North } from '../angle';
import type { Place } from '../earth/place';
import type { SunFacts } from '../earth/sun';
import type { VariationTable } from '../earth/variationTable';
import type { Procedure } from '../procedure/procedure';
import type { EndsQuestion, LengthNeeded, Purpose } from '../runway/question';
import type { Inputs } from '../sortie/entry';
import type { Run, Stamp } from '../sortie/fold';

/** A wind as typed or pasted, and the north it was given to where the text does not say. */
export interface WindText {
  readonly text: string;
  readonly north: North;
}

/** The state of the moment. */
export interface BriefInputs {
  readonly inputs: Inputs;
  /** The wind in use; null before the first. */
  readonly wind: WindText | null;
  readonly run: Run | null;
  readonly list: Run | null;
  readonly stamps: readonly Stamp[];
  /** The sortie's own time, UTC. */
  readonly at: Date;
}

/** The documents in use; null while they are not chosen, or not loaded yet. */
export interface Documents {
  readonly field: Field | null;
  readonly aircraft: Aircraft | null;
  readonly procedure: Procedure | null;
}

/** What was loaded because the date or the place asks for it; null while it is on its way. */
export interface Tables {
  /** Null also for a date that no magnetic model covers. */
  readonly magnetic: VariationTable | null;
  readonly sun: ((place: Place, at: Date) => SunFacts) | null;
  /** Whether the weather lets a preferred-runway scheme count; left out: on a dry surface. */
  readonly preferenceApplies?: boolean;
  /** The length that today needs on each end; left out: what the aircraft's document gives. */
  readonly lengthNeededM?: Readonly<Record<Purpose, LengthNeeded>>;
  /** How far it is from the stand to an end; left out: not known, and nothing is settled by it. */
  readonly taxiDistanceM?: NonNullable<EndsQuestion['taxiDistanceM']>;
}

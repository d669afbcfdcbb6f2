/** What field, date, weather and the pilot's choices settle before there is a wind. */

import type { Aircraft } from '../aircraft/aircraft';
import type { Field } from '../airfield/field';
import { type Figure, known, unknown } from '../figure';
import { PREFERRED_CROSSWIND_KT, PREFERRED_TAILWIND_KT } from '../runway/preference';
import type { EndsQuestion, Purpose, WindLimits } from '../runway/question';
import type { Inputs } from '../sortie/entry';
import { isNotFlown, type Sortie } from '../sortie/fold';
import { type Closure, closes } from '../weather/closure';
import type { Conditions } from './conditions';
import type { LengthsNeeded } from './lengths';

export interface SettledFacts
  extends Pick<Conditions, 'surface' | 'variation' | 'sun' | 'controlled'> {
  readonly field: Field | null;
  readonly aircraft: Aircraft | null;
  /** The smaller of the aircraft's limit for the surface and the pilot's own. */
  readonly crosswindLimit: Figure<'kt'>;
  readonly tailwindLimit: Figure<'kt'>;
  /** The pilot's other settings: ends closed today, preference, holding short, gust limit. */
  readonly rules: Pick<
    EndsQuestion,
    'closedToday' | 'closedByReport' | 'preferred' | 'holdShortM' | 'leastWidthM' | 'night'
  > &
    Pick<WindLimits, 'gustSpreadKt'>;
  /** Length needed on an end: today's, else the book's; null without an aircraft. */
  readonly lengthNeededM: LengthsNeeded | null;
  /** Taxi distance to the start of an end's run; null while unknown. */
  readonly taxiDistanceM: NonNullable<EndsQuestion['taxiDistanceM']> | null;
}

export type LimitInputs = Pick<
  Inputs,
  'surface' | 'ownCrosswindKt' | 'ownTailwindKt' | 'ownWetCrosswindKt'
>;

/** Crosswind and tailwind limits: the smaller of the aircraft's and the pilot's. */
export function windLimits(
  aircraft: Aircraft | null,
  inputs: LimitInputs,
): Pick<SettledFacts, 'crosswindLimit' | 'tailwindLimit'> {
  const { surface } = inputs;
  return {
    crosswindLimit: limit(aircraft?.limits.crosswindKt[surface], ownCrosswindKt(inputs)),
    tailwindLimit: limit(aircraft?.limits.tailwindKt[surface], inputs.ownTailwindKt),
  };
}

/** On a surface that isn't dry, the pilot's own limit for it counts, if set. */
const ownCrosswindKt = ({ surface, ownCrosswindKt: dryKt, ownWetCrosswindKt }: LimitInputs) =>
  surface === 'dry' ? dryKt : (ownWetCrosswindKt ?? dryKt);

export type RuleInputs = Pick<
  Inputs,
  'closedToday' | 'preferred' | 'holdShortM' | 'ownGustSpreadKt'
>;

/** The day's rules; `applies` says whether all but the wind allows the field's preference. */
export function rulesOf(
  { closedToday, preferred, holdShortM, ownGustSpreadKt }: RuleInputs,
  field: Field | null,
  applies: boolean,
  closure: Closure = [],
  /** What aircraft and hour ask of a runway besides. */
  asked: Pick<EndsQuestion, 'leastWidthM' | 'night'> = {},
): SettledFacts['rules'] {
  const closedByReport = (field?.runways ?? []).flatMap((runway) => {
    const both = runway.ends.map(({ designator }) => designator);
    return closes(closure, both) ? both : [];
  });
  const ends = preferred ? (field?.preferredEnds ?? []) : [];
  return {
    ...asked,
    closedToday,
    ...(closedByReport.length === 0 ? {} : { closedByReport }),
    holdShortM,
    ...(ownGustSpreadKt === null ? {} : { gustSpreadKt: ownGustSpreadKt }),
    ...(ends.length === 0
      ? {}
      : {
          preferred: {
            ends,
            maxCrosswindKt: PREFERRED_CROSSWIND_KT,
            maxTailwindKt: PREFERRED_TAILWIND_KT,
            applies,
          },
        }),
  };
}

function limit(aircraftKt: number | undefined, ownKt: number | null): Figure<'kt'> {
  if (aircraftKt === undefined && ownKt === null) return unknown('no-aircraft');
  const value = Math.min(aircraftKt ?? Number.POSITIVE_INFINITY, ownKt ?? Number.POSITIVE_INFINITY);
  return known(value, 'kt', {
    formula: 'smaller-limit',
    inputs: {
      ...(aircraftKt === undefined ? {} : { aircraftKt }),
      ...(ownKt === null ? {} : { ownKt }),
    },
    source: aircraftKt === value ? 'aircraft' : 'pilot',
  });
}

/**
 * What Wind judges for: as set, else landing from lift-off, or a start in the air, to the next brake
 * release, else take-off.
 */
export function purposeOf(
  inputs: Pick<Inputs, 'purpose'>,
  { stamps, run }: Pick<Sortie, 'stamps' | 'run'>,
): Purpose {
  if (inputs.purpose !== null) return inputs.purpose;
  if (isNotFlown(run, 'roll')) return 'landing';
  const last = stamps.findLast(
    ({ what }) => what === 'brakes released' || what === 'airborne' || what === 'landed',
  );
  return last === undefined || last.what === 'brakes released' ? 'take-off' : 'landing';
}

/** The taxi reminder, which needs no route. */

import type { Aircraft } from '../aircraft/aircraft';
import type { Field } from '../airfield/field';
import type { Figure } from '../figure';
import type { Unit } from '../units';
import { fromAircraft } from './given';

export interface TaxiBrief {
  readonly doNotExceedKt: Figure<'kt'>;
  readonly inTurnsKt: Figure<'kt'>;
  /** In the aircraft's own unit of power. */
  readonly getRolling: Figure<Unit>;
  readonly keepRollingLeast: Figure<Unit>;
  readonly keepRollingMost: Figure<Unit>;
  readonly afterBreakaway: string;
  readonly steering: string;
  /** Whom to call: ground, else tower, else information, else the traffic frequency. */
  readonly radio: Field['radio'][number] | null;
}

const CALLED_FIRST = ['ground', 'tower', 'information', 'traffic'] as const;

export function taxiStage(aircraft: Aircraft | null, field: Field | null): TaxiBrief | null {
  if (aircraft === null) return null;
  const { taxi } = aircraft;
  const unit = taxi.power?.unit ?? '%';
  const radio = CALLED_FIRST.flatMap((service) =>
    (field?.radio ?? []).filter((station) => station.service === service),
  );
  return {
    doNotExceedKt: fromAircraft(taxi.maxKt, 'kt'),
    inTurnsKt: fromAircraft(taxi.turnKt, 'kt'),
    getRolling: fromAircraft(taxi.power?.breakaway, unit),
    keepRollingLeast: fromAircraft(taxi.power?.keepRolling[0], unit),
    keepRollingMost: fromAircraft(taxi.power?.keepRolling[1], unit),
    afterBreakaway: taxi.afterBreakaway ?? '',
    steering: taxi.steering ?? '',
    radio: radio[0] ?? null,
  };
}

/** The kinds of cockpit whose steps differ. */

import type { Aircraft } from '../aircraft/aircraft';
import type { AircraftClass } from '../aircraft/classNames';

export type CockpitKind = 'piston' | 'piston-twin' | 'turboprop' | 'jet' | 'twin-jet';

/** Which kind an aircraft has: by its class, else by its engine. */
export function cockpitOf({
  engine,
  madeFrom,
  performance,
}: Pick<Aircraft, 'engine' | 'madeFrom' | 'performance'>): CockpitKind {
  const isTwin = isTwinClass(madeFrom?.class) || performance?.oneEngineOut !== undefined;
  switch (engine) {
    case 'piston':
      return isTwin ? 'piston-twin' : 'piston';
    case 'turboprop':
      return 'turboprop';
    case 'jet':
    case 'jet with reheat':
      return isTwin ? 'twin-jet' : 'jet';
  }
}

const isTwinClass = (of: AircraftClass | undefined) => of === 'piston-twin' || of === 'twin-jet';

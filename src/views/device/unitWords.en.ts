/** The words for the choice of units. */

import type { LengthUnit, MassUnit, PressureUnit } from '../../device/preferences';

export const words = {
  title: 'Units',
  length: 'Runways and distances',
  lengths: { m: 'Metres', ft: 'Feet' } satisfies Record<LengthUnit, string>,
  pressure: 'QNH',
  pressures: { hPa: 'hPa', inHg: 'inHg' } satisfies Record<PressureUnit, string>,
  mass: 'Masses',
  masses: { kg: 'Kilograms', lb: 'Pounds' } satisfies Record<MassUnit, string>,
  localTime: 'Local time beside UTC',
  hint: 'Altitudes stay in feet, speeds in knots. Your documents keep their own units.',
} as const;

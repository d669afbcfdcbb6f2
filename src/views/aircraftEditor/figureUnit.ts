/** The units that a handbook has its figures in, as the pilot chose: hp and ft² go with lb and ft. */

import type { FigureUnit } from '../../core';
import { lengthUnit, massUnit } from '../../device/preferences';

interface ShownIn {
  readonly unit: string;
  /** How many of the document's make one of these. */
  readonly per: number;
}

const KW_PER_HP = 0.745_699_9;
const KN_PER_LBF = 0.004_448_222;
const M2_PER_FT2 = 0.092_903;
const M_PER_IN = 0.0254;

/** What a unit of documents is shown in, but for lengths and masses, which parts/units turns. */
export function figureUnit(unit: Exclude<FigureUnit, 'm' | 'kg'>, power: '%' | 'rpm'): ShownIn {
  const isPounds = massUnit.value === 'lb';
  switch (unit) {
    case 'kW':
      return isPounds ? { unit: 'hp', per: KW_PER_HP } : { unit, per: 1 };
    case 'kN':
      return isPounds ? { unit: 'lbf', per: KN_PER_LBF } : { unit, per: 1 };
    case 'm2':
      return lengthUnit.value === 'ft' ? { unit: 'ft²', per: M2_PER_FT2 } : { unit: 'm²', per: 1 };
    case 'deg':
      return { unit: '°', per: 1 };
    case 'power':
      return { unit: power, per: 1 };
    default:
      return { unit, per: 1 };
  }
}

/** What arms are typed in. */
export const armUnit = (): ShownIn =>
  lengthUnit.value === 'ft' ? { unit: 'in', per: M_PER_IN } : { unit: 'm', per: 1 };

/** The words for the choice of units, in German. */

import type { Translated } from '../../parts/translated';
import type { words as english } from './unitWords.en';

export const words: Translated<typeof english> = {
  title: 'Einheiten',
  length: 'Pisten und Strecken',
  lengths: { m: 'Meter', ft: 'Fuß' },
  pressure: 'QNH',
  pressures: { hPa: 'hPa', inHg: 'inHg' },
  mass: 'Massen',
  masses: { kg: 'Kilogramm', lb: 'Pfund (lb)' },
  localTime: 'Ortszeit neben UTC',
  hint: 'Höhen bleiben in Fuß, Geschwindigkeiten in Knoten. Dokumente behalten ihre Einheiten.',
};

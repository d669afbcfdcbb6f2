/** The words of the search for a field, in German. */

import type { Translated } from '../translated';
import type { words as english } from './words.en';

export const words: Translated<typeof english> = {
  label: 'Platz suchen',
  hint: 'Kennung, Name oder Ort',
  found: (fields) => (fields === 1 ? 'Ein Platz' : `${fields} Plätze`),
  none: 'Kein Platz hat eine solche Kennung, einen solchen Namen oder Ort.',
  more: (fields) => `Noch ${fields} zeigen`,
  details: (longest, elevation) => `Piste ${longest} · Höhe ${elevation}`,
  feet: (feet) => `${feet}\u00a0ft`,
  nearest: (code) => `Nahe ${code}`,
  away: (nm) => `${nm}\u00a0NM`,
  marks: { own: 'eigener', received: 'noch nicht in Gebrauch', world: 'Welt', demo: 'Demo' },
  world: 'Plätze der Welt',
  demo: 'Aus der Demo',
};

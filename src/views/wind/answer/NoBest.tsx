/** Why no end is best, and which fails by least. */

import type { JSX } from 'preact';
import { answered } from '../../../board/wind/answered';
import { leastFailingWords } from '../runways/shortfalls';
import { words } from '../runways/words';

/** In words; nothing while there is a best end. */
export function NoBest(): JSX.Element | null {
  const { ranked } = answered.value;
  if (ranked?.because == null) return null;
  return (
    <>
      <p>{words.noBest[ranked.because]}</p>
      {ranked.because === 'none-within-limits' && <p>{leastFailingWords(ranked.ends)}</p>}
    </>
  );
}

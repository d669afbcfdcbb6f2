/** How wide a runway is drawn. */

import type { Runway } from './field';

/** That of most runways which are long enough for jets, metres. */
const USUAL_WIDTH_M = 45;

/** Its width, metres; where nobody knows it, the usual one. */
export const drawnWidthM = ({ widthM }: Pick<Runway, 'widthM'>): number => widthM ?? USUAL_WIDTH_M;

/** How long ago something was, in words. */

import { ageText } from './age';
import { words } from './agoWords';

/**
 * `just now`, `6 min ago`, `2 h ago`, `3 days ago`. Unknown for a moment in the future: a clock was
 * set back.
 */
export const ago = (ms: number): string => ageText(ms, words);

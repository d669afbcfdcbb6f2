/** How long ago something was, in words. */

import { old } from './age';
import { words } from './agoWords';

/** `just now`, `6 min ago`, `2 h ago`, `3 days ago`. Of what is later than now it is not known: a clock was set back. */
export const ago = (ms: number): string => old(ms, words);

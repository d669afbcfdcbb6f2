/** How long ago something was, in words. */

import { old } from './age';
import { words } from './ago.en';

/** `just now`, `6 min ago`, `2 h ago`, `3 days ago`. A clock that was set back counts as just now. */
export const ago = (ms: number): string => old(ms, words);

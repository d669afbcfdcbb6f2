/** How text that isn't the app's own is quoted, in German. */

import type { Translated } from '../translated';
import type { words as english } from './words.en';

export const words: Translated<typeof english> = {
  quoted: (text) => `„${text}“`,
};

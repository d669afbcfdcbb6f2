/** Which hand presses the keys: rows of keys are mirrored for the left hand. */

import { effect } from '@preact/signals';
import { kept } from './kept';

/** The hand that presses. */
export type Hand = 'right' | 'left';

/** The hand the pilot presses keys with on this device. */
export const hand = kept('hand', (stored): Hand => (stored === 'left' ? 'left' : 'right'));

/** Passes it to the page's styles; call once. */
export function startSides(): void {
  effect(() => {
    document.documentElement.dataset.hand = hand.value;
  });
}

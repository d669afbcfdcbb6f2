/** Pressing a key that ticks without a pointer: by keyboard, or by a screen reader's click. */

import { useLayoutEffect, useRef } from 'preact/hooks';
import { HOLD_MS, SETTLE_MS } from '../../device/presses';
import { isByPointer } from './pointers';

interface Ticking {
  /** Names what is ticked: when it changes, presses are ignored for a moment. */
  readonly step: string;
  /** The key must be held. */
  readonly hold: boolean;
  /** Since when presses count, ms since the app started; otherwise, since the key was drawn. */
  readonly sinceMs?: (() => number) | undefined;
  readonly disabled: boolean;
  readonly onHolding: (holding: boolean) => void;
  readonly onPress: () => void;
}

/** The handlers of such a key, and when what it ticks last changed, ms since the app started. */
export function usePresses({ step, hold, sinceMs, disabled, onHolding, onPress }: Ticking) {
  const drawnMs = useRef(Number.NEGATIVE_INFINITY);
  const keyDownMs = useRef<number | null>(null);
  const asked = useRef(false);

  // A key just drawn counts as changed: it may stand where another was tapped.
  useLayoutEffect(() => {
    drawnMs.current = performance.now();
    asked.current = false;
    onHolding(false);
  }, [step]);

  const changedMs = sinceMs ?? (() => drawnMs.current);
  const settled = (ms: number) => ms >= changedMs() + SETTLE_MS;

  const onKeyDown = (event: KeyboardEvent) => {
    if (event.key !== 'Enter' && event.key !== ' ') return;
    // The browser would turn this into a click, even for a key held by accident.
    event.preventDefault();
    if (event.repeat || disabled) return;
    const now = performance.now();
    if (hold) {
      keyDownMs.current = now;
      onHolding(true);
    } else if (settled(now)) onPress();
  };
  const onKeyUp = (event: KeyboardEvent) => {
    if (event.key !== 'Enter' && event.key !== ' ') return;
    event.preventDefault();
    const began = keyDownMs.current;
    keyDownMs.current = null;
    onHolding(false);
    if (began === null || disabled || !settled(began)) return;
    if (performance.now() - began >= HOLD_MS) onPress();
  };

  /**
   * A click without a pointer comes from a screen reader or a switch, which can't hold: it must
   * come twice.
   */
  const onClick = (event: MouseEvent) => {
    if (isByPointer(event) || disabled || !settled(performance.now())) return;
    if (hold && !asked.current) {
      asked.current = true;
      return;
    }
    onPress();
  };

  return { changedMs, on: { onKeyDown, onKeyUp, onClick } };
}

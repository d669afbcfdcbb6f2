/**
 * The key that ticks a step: it accepts deliberate taps only, and must be held for a critical step.
 */

import type { JSX } from 'preact';
import { useEffect, useLayoutEffect, useRef, useState } from 'preact/hooks';
import { type PointerAt, type Refusal, refusalOf } from './deliberate';
import { type KeyProps, keyClass } from './Key';
import { followsPointer, isReader, isWaking, pointersSeen } from './pointers';
import styles from './TickKey.module.css';
import { usePresses } from './withoutPointer';

/** Why a tap didn't count, in words. */
export type Refusals = Readonly<Record<Refusal, string>> & { readonly hold: string };

interface TickKeyProps extends KeyProps {
  /** Names what is ticked: when it changes, taps are ignored for a moment. */
  readonly step: string;
  /** The key must be held. */
  readonly hold?: boolean | undefined;
  /**
   * It must act at once: every tap counts that began long enough after this, ms since the app
   * started, however late the key was drawn.
   */
  readonly urgentSinceMs?: (() => number) | undefined;
  /** Read to screen-reader users whose device can't hold a key. */
  readonly holdHint?: string | undefined;
  /** Why a tap didn't count, shown on the key for a moment. */
  readonly refusals: Refusals;
}

/** How long the key says why a tap didn't count, ms. */
const REFUSAL_SHOWN_MS = 1400;

export function TickKey(props: TickKeyProps): JSX.Element {
  const { step, hold = false, holdHint, refusals, disabled, label, onPress, children } = props;
  const { urgentSinceMs } = props;
  const [refused, setRefused] = useState<string | null>(null);
  const [holding, setHolding] = useState(false);
  const down = useRef<PointerAt | null>(null);
  const { changedMs, on } = usePresses({
    step,
    hold,
    sinceMs: urgentSinceMs,
    disabled: disabled ?? false,
    onHolding: setHolding,
    onPress,
  });

  useLayoutEffect(() => {
    down.current = null;
  }, [step]);

  useEffect(() => {
    if (refused === null) return;
    const timer = setTimeout(() => setRefused(null), REFUSAL_SHOWN_MS);
    return () => clearTimeout(timer);
  }, [refused]);

  const at = (event: PointerEvent): PointerAt => ({
    id: event.pointerId,
    x: event.clientX,
    y: event.clientY,
    ms: performance.now(),
  });

  const begin = (event: PointerEvent) => {
    if (event.button !== 0 || isReader(event)) return;
    down.current = at(event);
    setHolding(hold);
  };
  const end = (event: PointerEvent) => {
    const began = down.current;
    down.current = null;
    setHolding(false);
    if (began === null || began.id !== event.pointerId || disabled) return;
    const tap = {
      down: began,
      up: at(event),
      pointers: pointersSeen(),
      changedMs: changedMs(),
      waking: isWaking(),
      hold,
      urgent: urgentSinceMs !== undefined,
    };
    const refusal = refusalOf(tap);
    if (refusal === null) onPress();
    else setRefused(hold && refusal === 'too-short' ? refusals.hold : refusals[refusal]);
  };
  const cancel = () => {
    down.current = null;
    setHolding(false);
  };

  return (
    <button
      type="button"
      class={`${keyClass(props)} ${styles.tick} ${holding ? styles.holding : ''}`}
      disabled={disabled ?? false}
      aria-label={label}
      aria-description={hold ? holdHint : undefined}
      onPointerDown={begin}
      onPointerUp={end}
      onPointerLeave={cancel}
      onPointerCancel={cancel}
      // The tap is handled: a click made from it would press whatever comes here next. A touch
      // without pointers comes from a screen reader, and its click is all we get.
      onTouchEnd={(event) => event.cancelable && followsPointer(event) && event.preventDefault()}
      {...on}
      onContextMenu={(event) => event.preventDefault()}
    >
      <span class={refused === null ? styles.face : `${styles.face} ${styles.refused}`}>
        {refused ?? children}
      </span>
    </button>
  );
}

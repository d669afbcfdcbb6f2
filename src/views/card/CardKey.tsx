/** The key as large as the screen: deliberate taps, holds, swipes and two fingers. */

import type { ComponentChildren, JSX } from 'preact';
import { useEffect, useId, useLayoutEffect, useRef, useState } from 'preact/hooks';
import { HOLD_MS } from '../../device/presses';
import type { PointerAt, Refusal } from '../../parts/key/deliberate';
import { type Gesture, meantBy, type Stroke } from '../../parts/key/gesture';
import { followsPointer, isReader, isWaking, pointersSeen } from '../../parts/key/pointers';
import { usePresses } from '../../parts/key/withoutPointer';
import styles from './Card.module.css';
import { words } from './words';

interface CardKeyProps {
  /** Names what is ticked: when it changes, taps are ignored for a moment. */
  readonly step: string;
  /** What is due matters so much that it must be held. */
  readonly critical: boolean;
  /** What the key does, for those who can't see it. */
  readonly label: ComponentChildren;
  /** What each gesture does; absent ones do nothing. */
  readonly does: Readonly<Partial<Record<Gesture, () => void>>>;
  /** What a hold will have done, shown while it lasts; empty if it does nothing. */
  readonly held: string;
  readonly children: ComponentChildren;
}

/** How long the key says why a touch didn't count, ms. */
const REFUSAL_SHOWN_MS = 1400;

interface Finger {
  readonly down: PointerAt;
  widthPx: number;
}

const pointAt = (event: PointerEvent): PointerAt => ({
  id: event.pointerId,
  x: event.clientX,
  y: event.clientY,
  ms: performance.now(),
});

/**
 * The key, under everything on the card, which lets touches through. Its name is in it, invisibly,
 * because it may be in more than one language.
 */
export function CardKey({
  step,
  critical,
  label,
  does,
  held,
  children,
}: CardKeyProps): JSX.Element {
  const id = useId();
  const [said, setSaid] = useState<string | null>(null);
  const [holding, setHolding] = useState<'no' | 'begun' | 'long'>('no');
  const fingers = useRef(new Map<number, Finger>());
  const strokes = useRef<Stroke[]>([]);
  const press = critical ? does.hold : does.tap;
  const key = useRef<HTMLButtonElement>(null);
  const { changedMs, on } = usePresses({
    step,
    hold: critical,
    disabled: press === undefined,
    onHolding: (isHeld) => setHolding(isHeld ? 'begun' : 'no'),
    onPress: () => press?.(),
  });

  useLayoutEffect(() => key.current?.focus({ preventScroll: true }), []);
  useEffect(() => {
    if (said === null) return;
    const timer = setTimeout(() => setSaid(null), REFUSAL_SHOWN_MS);
    return () => clearTimeout(timer);
  }, [said]);
  useEffect(() => setSaid(null), [step]);
  useEffect(() => {
    if (holding !== 'begun') return;
    const timer = setTimeout(() => setHolding('long'), HOLD_MS);
    return () => clearTimeout(timer);
  }, [holding]);

  const begin = (event: PointerEvent) => {
    if (event.button !== 0 || isReader(event)) return;
    if (fingers.current.size === 0) strokes.current = [];
    // A release beside the key is still a release.
    key.current?.setPointerCapture(event.pointerId);
    fingers.current.set(event.pointerId, { down: pointAt(event), widthPx: widthOf(event) });
    setHolding(fingers.current.size === 1 && does.hold !== undefined ? 'begun' : 'no');
  };
  const move = (event: PointerEvent) => {
    const finger = fingers.current.get(event.pointerId);
    if (finger !== undefined) finger.widthPx = Math.max(finger.widthPx, widthOf(event));
  };
  const end = (event: PointerEvent) => {
    const finger = fingers.current.get(event.pointerId);
    fingers.current.delete(event.pointerId);
    setHolding('no');
    if (finger === undefined) return;
    strokes.current.push({ down: finger.down, up: pointAt(event), widthPx: finger.widthPx });
    if (fingers.current.size > 0) return;
    const meant = meantBy({
      strokes: strokes.current,
      pointers: pointersSeen(),
      changedMs: changedMs(),
      waking: isWaking(),
    });
    if ('refusal' in meant) setSaid(refusedWords(meant.refusal));
    else perform(meant.gesture);
  };
  const perform = (gesture: Gesture) => {
    const act = does[gesture];
    if (act !== undefined) act();
    else if (gesture === 'tap' && critical) setSaid(words.refused.hold);
    else if (gesture === 'hold') setSaid(words.refused['too-long']);
  };
  const cancel = (event: PointerEvent) => {
    fingers.current.delete(event.pointerId);
    setHolding('no');
  };

  const shown = said ?? (holding === 'long' && held !== '' ? held : null);
  return (
    <div class={`${styles.key} ${holding === 'no' ? '' : styles.holding}`}>
      {children}
      {shown !== null && <span class={styles.said}>{shown}</span>}
      <button
        ref={key}
        type="button"
        class={styles.surface}
        aria-labelledby={id}
        aria-description={critical ? words.holdHint : undefined}
        onPointerDown={begin}
        onPointerMove={move}
        onPointerUp={end}
        onPointerCancel={cancel}
        // The touch is handled: a click made from it would press whatever comes here next.
        onTouchEnd={(event) => event.cancelable && followsPointer(event) && event.preventDefault()}
        onContextMenu={(event) => event.preventDefault()}
        {...on}
      >
        <span id={id} class="spoken">
          {label}
        </span>
      </button>
    </div>
  );
}

/** A finger's contact width on the glass, px. */
const widthOf = ({ width, height }: PointerEvent) => Math.max(width, height);

const refusedWords = (refusal: Refusal) => words.refused[refusal];

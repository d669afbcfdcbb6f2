/**
 * Which part of the plan is seen. While it moves, the drawing as it stands is shifted and enlarged
 * as a picture, which costs the browser next to nothing; once it rests, it is drawn anew, with its
 * words where they find room.
 */

import type { RefObject } from 'preact';
import { useCallback, useEffect, useLayoutEffect, useRef, useState } from 'preact/hooks';
import { type Sight, type Size, shift } from './projection';

/** How long nothing moves before the plan is drawn anew, ms. */
const REST_MS = 120;

/** Further than this the picture no longer does: beyond its edge nothing is drawn, shares. */
const FAR = { moved: 0.45, grown: 1.7 };

/** The pilot's own look at the plan. */
export interface Looking {
  /** The sight that is drawn. */
  readonly sight: Sight;
  /** Whether the pilot has moved or zoomed it. */
  readonly isOwn: boolean;
  /** The sight that is seen now, in the middle of a movement too. */
  readonly now: () => Sight;
  /** Shows another part; `rests` if no further movement follows. */
  readonly look: (to: Sight, rests?: boolean) => void;
  /** Back to what the plan shows by itself. */
  readonly reset: () => void;
}

/**
 * The look at a plan drawn in `layer`. It shows `whole` until the pilot moves it, and again whenever
 * `layout` becomes another object.
 */
export function useSight(
  whole: Sight,
  layout: object,
  size: Size,
  layer: RefObject<HTMLElement | null>,
): Looking {
  const [own, setOwn] = useState<{ readonly sight: Sight; readonly layout: object } | null>(null);
  const sight = own?.layout === layout ? own.sight : whole;
  const live = useRef(sight);
  const resting = useRef<ReturnType<typeof setTimeout> | undefined>(undefined);

  useLayoutEffect(() => {
    live.current = sight;
    clearTimeout(resting.current);
    const element = layer.current;
    if (element === null) return;
    element.style.transform = '';
    element.style.willChange = '';
    delete element.dataset.zooming;
  }, [sight]);
  useEffect(() => () => clearTimeout(resting.current), []);

  const now = useCallback(() => live.current, []);
  const look = (to: Sight, rests = false) => {
    live.current = to;
    clearTimeout(resting.current);
    const settle = () => setOwn({ sight: live.current, layout });
    const element = layer.current;
    const { x, y, growth } = shift(sight, to, size);
    const isFar =
      Math.abs(x) > FAR.moved * size.width ||
      Math.abs(y) > FAR.moved * size.height ||
      growth > FAR.grown ||
      growth < 1 / FAR.grown;
    if (rests || isFar || element === null) return settle();
    element.style.willChange = 'transform';
    element.style.transform = `translate(${x}px, ${y}px) scale(${growth})`;
    if (growth !== 1) element.dataset.zooming = '';
    resting.current = setTimeout(settle, REST_MS);
  };
  return {
    sight,
    isOwn: own?.layout === layout,
    now,
    look,
    reset: () => setOwn(null),
  };
}

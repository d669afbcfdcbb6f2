/** Fingers on the plan: one moves it, two rotate and zoom it, a tap picks what lies there. */

import { useRef } from 'preact/hooks';
import type { Pixel } from './projection';

interface Gestures {
  /** Draw at `to` what was drawn at `from`, scaled by a factor. */
  readonly onMove: (from: Pixel, to: Pixel, growth: number) => void;
  readonly onTap: (at: Pixel) => void;
}

/** A finger that moves less than this, px, taps. */
const TAP_PX = 10;

/** One notch of a wheel. */
const WHEEL_GROWTH = 1.2;

const middleOf = (points: readonly Pixel[]): Pixel => ({
  x: points.reduce((sum, { x }) => sum + x, 0) / points.length,
  y: points.reduce((sum, { y }) => sum + y, 0) / points.length,
});

const spreadOf = ([one, other]: readonly Pixel[]): number =>
  one && other ? Math.hypot(one.x - other.x, one.y - other.y) : 0;

/** Handlers for the element that holds the plan. */
export function useGestures({ onMove, onTap }: Gestures) {
  const fingers = useRef(new Map<number, Pixel>());
  const tap = useRef<Pixel | null>(null);

  const at = (event: PointerEvent | WheelEvent): Pixel => {
    const { left, top } = (event.currentTarget as Element).getBoundingClientRect();
    return { x: event.clientX - left, y: event.clientY - top };
  };

  return {
    onPointerDown(event: PointerEvent) {
      const point = at(event);
      fingers.current.set(event.pointerId, point);
      tap.current = fingers.current.size === 1 ? point : null;
      (event.currentTarget as Element).setPointerCapture(event.pointerId);
    },
    onPointerMove(event: PointerEvent) {
      if (!fingers.current.has(event.pointerId)) return;
      const point = at(event);
      if (tap.current !== null && spreadOf([tap.current, point]) < TAP_PX) return;
      tap.current = null;
      const before = [...fingers.current.values()];
      fingers.current.set(event.pointerId, point);
      const after = [...fingers.current.values()];
      const spread = spreadOf(before);
      const growth = after.length === 2 && spread > 0 ? spreadOf(after) / spread : 1;
      onMove(middleOf(before), middleOf(after), growth);
    },
    onPointerUp(event: PointerEvent) {
      fingers.current.delete(event.pointerId);
      const tapped = tap.current;
      tap.current = null;
      if (tapped !== null) onTap(tapped);
    },
    onPointerCancel(event: PointerEvent) {
      fingers.current.delete(event.pointerId);
      tap.current = null;
    },
    onWheel(event: WheelEvent) {
      event.preventDefault();
      const point = at(event);
      onMove(point, point, event.deltaY < 0 ? WHEEL_GROWTH : 1 / WHEEL_GROWTH);
    },
  };
}

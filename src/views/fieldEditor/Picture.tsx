/** The picture under the plan, as it lies. */

import type { JSX } from 'preact';
import { useLayoutEffect, useRef } from 'preact/hooks';
import type { Picture as PictureInMemory } from '../../device/pictures';
import { matrix, toGround } from '../../parts/plan/projection';
import type { View } from '../../parts/plan/shapes';
import styles from './Board.module.css';
import { lie, strength } from './trace';

/** How much of the board a picture fills that isn't placed yet. */
const FILLS = 0.9;

/** The canvas itself, transformed: however large it is, moving it draws nothing anew. */
export function Picture({
  of: { canvas },
  view: { sight, size },
}: {
  readonly of: PictureInMemory;
  readonly view: View;
}): JSX.Element {
  const holder = useRef<HTMLDivElement>(null);
  useLayoutEffect(() => {
    holder.current?.replaceChildren(canvas);
  }, [canvas]);
  useLayoutEffect(() => {
    if (lie.value !== null) return;
    const pxPerPixel = FILLS * Math.min(size.width / canvas.width, size.height / canvas.height);
    const corner = {
      x: (size.width - canvas.width * pxPerPixel) / 2,
      y: (size.height - canvas.height * pxPerPixel) / 2,
    };
    const east = pxPerPixel / sight.pxPerM;
    lie.value = { corner: toGround(corner, sight, size), east, north: 0 };
  }, [canvas, lie.value]);
  const { value: now } = lie;
  const [a, b, c, d, right, down] = matrix(sight, size);
  const { corner, east, north } = now ?? { corner: sight.middle, east: 0, north: 0 };
  const transform = `matrix(${[
    a * east + c * north,
    b * east + d * north,
    a * north - c * east,
    b * north - d * east,
    a * corner.eastM + c * corner.northM + right,
    b * corner.eastM + d * corner.northM + down,
  ].join(',')})`;
  return (
    <div class={`${styles.picture} ${styles[strength.value]}`} aria-hidden="true">
      <div ref={holder} class={styles.laid} style={{ transform }} />
    </div>
  );
}

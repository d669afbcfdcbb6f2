/** The largest size that fits. */

/** Sizes closer than this count as one, px. */
const FINE_PX = 0.5;

/**
 * The largest size between `least` and `most` that `fits`, to half a pixel, by bisection: if a size
 * fits, smaller ones do. Returns `least` if nothing fits.
 */
export function largestThatFits(
  fits: (px: number) => boolean,
  least: number,
  most: number,
): number {
  if (fits(most)) return most;
  let [low, high] = [least, most];
  while (high - low > FINE_PX) {
    const middle = (low + high) / 2;
    if (fits(middle)) low = middle;
    else high = middle;
  }
  return low;
}

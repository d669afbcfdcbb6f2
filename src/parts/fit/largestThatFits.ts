/** The largest size that fits. */

/** Sizes nearer to each other than this are one, px. */
const FINE_PX = 0.5;

/**
 * The largest size between `least` and `most` that `fits`, to half a pixel, by halving: what fits
 * fits smaller too. `least` where nothing does.
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

/**
 * Compares two looks: notices what a pilot would see, and ignores how another machine smooths the
 * same letters.
 *
 * A look is a screenshot at half size, slightly blurred. A pixel has changed if, in either look,
 * its colour lies outside the range of its neighbourhood in the other; letters smoothed differently
 * or shifted by part of a pixel stay inside. Imports nothing, because it also runs in the page
 * where pictures are decoded.
 */

/** What passes as equal. */
export const TOLERANCE = {
  /** How far a channel may lie outside, of 255. */
  channel: 10,
  /** How many changed pixels a patch may hold: fewer than the smallest letter takes. */
  pixels: 4,
  /** The side of a patch, px of the look: 16 CSS px. */
  patchPx: 8,
};

/** A picture: `data` as red, green, blue and opacity of each pixel, row by row. */

/** Half the picture: each pixel the mean of four. Width and height must be even. */
export function halved({ width, height, data }) {
  const half = { width: width / 2, height: height / 2 };
  const mean = new Uint8ClampedArray(half.width * half.height * 4);
  for (let y = 0; y < half.height; y++) {
    for (let x = 0; x < half.width; x++) {
      const from = (y * 2 * width + x * 2) * 4;
      const to = (y * half.width + x) * 4;
      for (let channel = 0; channel < 4; channel++) {
        const at = from + channel;
        const below = at + width * 4;
        mean[to + channel] = (data[at] + data[at + 4] + data[below] + data[below + 4]) / 4;
      }
    }
  }
  return { ...half, data: mean };
}

/** Levels per channel when looks are compared: half the bytes, and nothing is missed. */
const LEVELS = 16;

/** The picture in few colours, as kept. */
export function coarse({ width, height, data }) {
  const step = 255 / (LEVELS - 1);
  return { width, height, data: data.map((value) => Math.round(value / step) * step) };
}

/** Joins each pixel of a channel with its neighbours across, then with those above and below. */
function joined(values, { width, height }, join) {
  const across = new Float32Array(width * height);
  const around = new Float32Array(width * height);
  for (let y = 0; y < height; y++) {
    const row = y * width;
    for (let x = 0; x < width; x++) {
      const left = values[row + Math.max(x - 1, 0)];
      const right = values[row + Math.min(x + 1, width - 1)];
      across[row + x] = join(left, values[row + x], right);
    }
  }
  for (let y = 0; y < height; y++) {
    const row = y * width;
    const above = Math.max(y - 1, 0) * width;
    const below = Math.min(y + 1, height - 1) * width;
    for (let x = 0; x < width; x++) {
      around[row + x] = join(across[above + x], across[row + x], across[below + x]);
    }
  }
  return around;
}

/** A blurred channel: a thin line weighs the same wherever it falls on the pixel grid. */
function blurred(picture, channel) {
  const values = new Float32Array(picture.width * picture.height);
  for (let pixel = 0; pixel < values.length; pixel++) {
    values[pixel] = picture.data[pixel * 4 + channel];
  }
  return joined(values, picture, (a, b, c) => (a + b + c) / 3);
}

/** Marks each pixel of one outside the range of its neighbourhood in the other. */
function markOutside(changed, one, other, size) {
  const least = joined(other, size, Math.min);
  const largest = joined(other, size, Math.max);
  for (let pixel = 0; pixel < changed.length; pixel++) {
    const outside = Math.max(least[pixel] - one[pixel], one[pixel] - largest[pixel]);
    if (outside > TOLERANCE.channel) changed[pixel] = 1;
  }
}

/**
 * The changed patches, by their top left corner in px of the look, and the share of the picture
 * they cover, 0 to 1. Patches overlap by half, so that nothing hides on an edge. Pictures of
 * different sizes differ entirely.
 */
export function compare(kept, present) {
  const { width, height } = present;
  if (kept.width !== width || kept.height !== height) return { patches: [], share: 1 };
  const changed = new Uint8Array(width * height);
  const few = coarse(present);
  for (let channel = 0; channel < 3; channel++) {
    const [one, other] = [blurred(kept, channel), blurred(few, channel)];
    markOutside(changed, one, other, kept);
    markOutside(changed, other, one, kept);
  }
  const { patchPx, pixels } = TOLERANCE;
  const patches = [];
  const covered = new Uint8Array(width * height);
  for (let top = 0; top < height; top += patchPx / 2) {
    for (let left = 0; left < width; left += patchPx / 2) {
      const bottom = Math.min(top + patchPx, height);
      const right = Math.min(left + patchPx, width);
      let count = 0;
      for (let y = top; y < bottom; y++) {
        for (let x = left; x < right; x++) count += changed[y * width + x];
      }
      if (count <= pixels) continue;
      patches.push({ left, top });
      for (let y = top; y < bottom; y++) covered.fill(1, y * width + left, y * width + right);
    }
  }
  let area = 0;
  for (const isCovered of covered) area += isCovered;
  return { patches, share: area / covered.length };
}

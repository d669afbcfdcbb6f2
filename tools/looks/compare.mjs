/**
 * Compares two looks, so that what a pilot would see to be different is noticed, and what another
 * machine's smoothing of the same letters does is not.
 *
 * A look is a screenshot at half its size. Both are blurred a little, and a pixel is changed where its
 * colour lies outside of all that stands within a pixel of the same place in the other look, in either
 * of the two: letters that are smoothed otherwise, or lie a part of a pixel aside, stay within. It
 * imports nothing, because it also runs in the page where pictures are decoded.
 */

/** What is let pass. */
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

/** Levels that a channel of a look has when it is compared: half the bytes, and nothing to be missed. */
const LEVELS = 16;

/** The picture in few colours, as it is kept. */
export function coarse({ width, height, data }) {
  const step = 255 / (LEVELS - 1);
  return { width, height, data: data.map((value) => Math.round(value / step) * step) };
}

/** Each pixel of a channel joined with those on both sides and then with those above and below. */
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

/** A channel of a picture, blurred: of a thin line the strength is kept, wherever it lies in its pixels. */
function blurred(picture, channel) {
  const values = new Float32Array(picture.width * picture.height);
  for (let pixel = 0; pixel < values.length; pixel++) {
    values[pixel] = picture.data[pixel * 4 + channel];
  }
  return joined(values, picture, (a, b, c) => (a + b + c) / 3);
}

/** Marks each pixel of the one that lies outside of what stands around its place in the other. */
function markOutside(changed, one, other, size) {
  const least = joined(other, size, Math.min);
  const largest = joined(other, size, Math.max);
  for (let pixel = 0; pixel < changed.length; pixel++) {
    const outside = Math.max(least[pixel] - one[pixel], one[pixel] - largest[pixel]);
    if (outside > TOLERANCE.channel) changed[pixel] = 1;
  }
}

/**
 * What is different: the changed patches by their left and upper corner, px of the look, and the share
 * of the picture that they cover, 0 to 1. Patches overlap by half, so that nothing is missed for lying
 * on the edge of two. Pictures of different sizes differ in all of it.
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

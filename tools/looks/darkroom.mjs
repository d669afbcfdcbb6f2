/**
 * Decodes, compares and encodes pictures in a page of the browser that took them, which saves a
 * library.
 */

import { readFileSync } from 'node:fs';

const COMPARE = readFileSync(new URL('./compare.mjs', import.meta.url), 'utf8');

/** Runs in the page. */
async function prepare(source) {
  const code = URL.createObjectURL(new Blob([source], { type: 'text/javascript' }));
  const { coarse, compare, halved, TOLERANCE } = await import(code);

  const canvasOf = (width, height) => {
    const canvas = new OffscreenCanvas(width, height);
    const pen = canvas.getContext('2d', { willReadFrequently: true });
    return { canvas, pen };
  };

  async function decoded(base64) {
    const bytes = await (await fetch(`data:application/octet-stream;base64,${base64}`)).blob();
    const bitmap = await createImageBitmap(bytes, { colorSpaceConversion: 'none' });
    const { pen } = canvasOf(bitmap.width, bitmap.height);
    pen.drawImage(bitmap, 0, 0);
    return pen.getImageData(0, 0, bitmap.width, bitmap.height);
  }

  async function encoded(canvas, type) {
    // WebP at quality 1 is lossless.
    const blob = await canvas.convertToBlob({ type, quality: 1 });
    const bytes = new Uint8Array(await blob.arrayBuffer());
    let text = '';
    for (const byte of bytes) text += String.fromCharCode(byte);
    return btoa(text);
  }

  const drawn = ({ width, height, data }) => {
    const { canvas, pen } = canvasOf(width, height);
    pen.putImageData(new ImageData(data, width, height), 0, 0);
    return canvas;
  };

  /** The kept look beside the present one, with every difference coloured. */
  function marked(kept, present, patches) {
    const { canvas, pen } = canvasOf(
      kept.width + present.width,
      Math.max(kept.height, present.height),
    );
    pen.drawImage(drawn(kept), 0, 0);
    pen.drawImage(drawn(present), kept.width, 0);
    const different = new Path2D();
    const side = TOLERANCE.patchPx;
    for (const { left, top } of patches) different.rect(kept.width + left, top, side, side);
    pen.fillStyle = '#f0f7';
    pen.fill(different);
    return canvas;
  }

  globalThis.darkroom = {
    look: async (png) => encoded(drawn(coarse(halved(await decoded(png)))), 'image/webp'),
    compare: async (keptWebp, png, isMarked) => {
      const kept = await decoded(keptWebp);
      const present = halved(await decoded(png));
      const { patches, share } = compare(kept, present);
      const isSame = patches.length === 0 && share === 0;
      const picture =
        isSame || !isMarked ? null : await encoded(marked(kept, present, patches), 'image/png');
      return { share, picture };
    },
  };
}

/**
 * Opens a darkroom in a browser. `look` turns a screenshot into the look to keep; `compare` returns
 * the share of a screenshot that differs from a kept look, 0 to 1, and on request, if that is above
 * 0, a picture of both with the difference marked.
 */
export async function openDarkroom(browser) {
  const page = await browser.newPage();
  await page.evaluate(prepare, COMPARE);
  const base64 = (bytes) => Buffer.from(bytes).toString('base64');
  return {
    look: async (png) =>
      Buffer.from(await page.evaluate((shot) => darkroom.look(shot), base64(png)), 'base64'),
    compare: async (look, png, isMarked = false) => {
      const { share, picture } = await page.evaluate(
        ([kept, shot, marks]) => darkroom.compare(kept, shot, marks),
        [base64(look), base64(png), isMarked],
      );
      return { share, picture: picture === null ? null : Buffer.from(picture, 'base64') };
    },
  };
}

/**
 * Pictures that the pilot brings, decoded by the browser. They are drawn from memory: neither a
 * `blob:` nor a `data:` address is made, so that no policy has to allow one.
 */

import { MOST_PICTURE_BYTES, type PictureProblem, readPictureHead } from '../core';

/** A picture in memory. */
export interface Picture {
  readonly name: string;
  readonly canvas: HTMLCanvasElement;
}

/** On its longer side a picture is kept no larger, px: some 40 MB of memory. */
const LONGEST_PX = 3200;

/** A picture from a file, made smaller if it is very large, or why it is none. Never rejects. */
export async function readPicture(file: File): Promise<Picture | PictureProblem> {
  if (file.size > MOST_PICTURE_BYTES) return 'too-many-bytes';
  try {
    const head = readPictureHead(new Uint8Array(await file.arrayBuffer()));
    if (typeof head === 'string') return head;
    const bitmap = await createImageBitmap(file);
    // As decoded: a camera's picture may be turned by what it says of itself.
    const shrunk = Math.min(1, LONGEST_PX / Math.max(bitmap.width, bitmap.height));
    const canvas = document.createElement('canvas');
    canvas.width = Math.max(1, Math.round(bitmap.width * shrunk));
    canvas.height = Math.max(1, Math.round(bitmap.height * shrunk));
    const context = canvas.getContext('2d');
    if (context === null) return 'broken';
    context.imageSmoothingQuality = 'high';
    context.drawImage(bitmap, 0, 0, canvas.width, canvas.height);
    bitmap.close();
    return { name: file.name, canvas };
  } catch {
    return 'broken';
  }
}

/** Gives the memory of a picture back at once, and not only when it is collected. */
export function forgetPicture({ canvas }: Picture): void {
  canvas.width = 0;
  canvas.height = 0;
}

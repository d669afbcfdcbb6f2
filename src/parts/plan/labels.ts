/** Where words stand on the plan, so that none lies on another. */

import type { Pixel, Size } from './projection';

/** A word to be placed: the more important ones come first. */
export interface Wanted {
  readonly key: string;
  readonly text: string;
  readonly kind: 'sign' | 'place' | 'stand' | 'warning';
  /** Where it may stand, best first. */
  readonly at: readonly Pixel[];
}

/** A word in its place: its centre. */
export interface PlacedLabel extends Pixel {
  readonly key: string;
  readonly text: string;
  readonly kind: Wanted['kind'];
  readonly width: number;
  readonly height: number;
}

/**
 * Widths are estimated from the letters, because nothing is drawn yet: em of an average bold
 * letter.
 */
const LETTER_EM = 0.58;

/** The size of each kind of word, px. */
export const LABEL_PX: Readonly<Record<Wanted['kind'], number>> = {
  sign: 19,
  place: 19,
  stand: 19,
  warning: 19,
};

/**
 * Places every word that has room; the others are left out. `taken` are boxes already used, such as
 * the compass. Words also keep off `lines` such as the route; the most important ones may lie on
 * them rather than be missing, and a sign belongs on its taxiway.
 */
export function placeWords(
  wanted: readonly Wanted[],
  size: Size,
  taken: readonly LabelBox[],
  lines: readonly LabelBox[],
): readonly PlacedLabel[] {
  const [used, drawn] = [groundTaken(taken), groundTaken(lines)];
  const placed: PlacedLabel[] = [];
  for (const { key, text, kind, at } of wanted) {
    const px = LABEL_PX[kind];
    const width = Math.max(text.length * LETTER_EM * px + (kind === 'sign' ? 14 : 6), px + 6);
    const height = px * 1.3;
    const isFree = (middle: Pixel) => {
      const box = boxAround(middle, width, height);
      const isInside =
        box.x >= 2 &&
        box.y >= 2 &&
        box.x + width <= size.width - 2 &&
        box.y + height <= size.height - 2;
      return isInside && used.isFree(box);
    };
    const isOff = (middle: Pixel) =>
      isFree(middle) && drawn.isFree(boxAround(middle, width, height));
    const off = kind === 'sign' ? undefined : at.find(isOff);
    const spot = kind === 'stand' ? off : (off ?? at.find(isFree));
    if (spot === undefined) continue;
    used.add(boxAround(spot, width, height));
    placed.push({ key, text, kind, width, height, ...spot });
  }
  return placed;
}

/** The side of the squares by which boxes are looked up, px: about a word's. */
const CELL_PX = 64;

/**
 * Boxes already used, looked up by the squares they lie in: a large field has hundreds of words,
 * each with a dozen places to try.
 */
function groundTaken(boxes: readonly LabelBox[]) {
  const cells = new Map<string, LabelBox[]>();
  const cellsOf = ({ x, y, width, height }: LabelBox): readonly string[] => {
    const keys: string[] = [];
    for (let column = Math.floor(x / CELL_PX); column * CELL_PX < x + width; column++) {
      for (let row = Math.floor(y / CELL_PX); row * CELL_PX < y + height; row++) {
        keys.push(`${column} ${row}`);
      }
    }
    return keys;
  };
  const add = (box: LabelBox) => {
    for (const key of cellsOf(box)) {
      const inCell = cells.get(key);
      if (inCell) inCell.push(box);
      else cells.set(key, [box]);
    }
  };
  for (const box of boxes) add(box);
  const isFree = (box: LabelBox) =>
    !cellsOf(box).some((key) => cells.get(key)?.some((other) => overlap(box, other)) ?? false);
  return { add, isFree };
}

/** A rectangle of the drawing, from its upper left corner. */
export interface LabelBox extends Pixel, Size {}

/** The rectangle around a centre. */
export const boxAround = ({ x, y }: Pixel, width: number, height: number): LabelBox => ({
  x: x - width / 2,
  y: y - height / 2,
  width,
  height,
});

const overlap = (a: LabelBox, b: LabelBox): boolean =>
  a.x < b.x + b.width && b.x < a.x + a.width && a.y < b.y + b.height && b.y < a.y + a.height;

/** Reads the places out of SVG path data made of M, L, A and Z. */

export interface Place {
  readonly x: number;
  readonly y: number;
}

/** The end of every stroke of a path; an arc's radii and flags are passed over. SVG 2, ch. 9. */
export function placesOf(path: string): readonly Place[] {
  return path
    .split(/(?=[MLAZ])/)
    .filter((stroke) => !stroke.startsWith('Z'))
    .map((stroke) => {
      const numbers = stroke
        .slice(1)
        .trim()
        .split(/[\s,]+/)
        .map(Number);
      const [x, y] = numbers.slice(-2);
      if (x === undefined || y === undefined || Number.isNaN(x + y))
        throw new Error(`Not a stroke: ${stroke}`);
      return { x, y };
    });
}

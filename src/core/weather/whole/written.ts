/** Numbers as groups write them. */

/** A shape of a group, made to match the whole of it. */
export const whole = (shape: string): RegExp => new RegExp(`^(?:${shape})$`);

const ZERO = '0'.charCodeAt(0);

/**
 * The number that the figures from one place of a text up to another make; -1 where one is no figure.
 * Most groups are a letter or two and figures: asked first, this spares nearly all searches by shape.
 */
export function figuresAt(text: string, from: number, to: number): number {
  let number = 0;
  for (let at = from; at < to; at++) {
    const figure = text.charCodeAt(at) - ZERO;
    if (!(figure >= 0 && figure <= 9)) return -1;
    number = number * 10 + figure;
  }
  return number;
}

/** A whole number, `M` for minus; null for slashes or nothing. `M00` is 0: what is lost is half a degree. */
export function numberOf(text: string | undefined): number | null {
  if (!text || text.startsWith('/')) return null;
  return text.startsWith('M') ? 0 - Number(text.slice(1)) : Number(text);
}

/** Heights are given in hundreds of feet. 15.9.1. */
export function hundredsOfFt(text: string | undefined): number | null {
  const hundreds = numberOf(text);
  return hundreds === null ? null : hundreds * 100;
}

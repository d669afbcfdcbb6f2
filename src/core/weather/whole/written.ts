/** Numbers as groups write them. */

/** A shape anchored to match a whole group. */
export const wholeGroup = (shape: string): RegExp => new RegExp(`^(?:${shape})$`);

/** A whole number, `M` for minus, so that `M00` becomes 0; null for slashes or nothing. */
export function numberWritten(text: string | undefined): number | null {
  if (!text || text.startsWith('/')) return null;
  return text.startsWith('M') ? 0 - Number(text.slice(1)) : Number(text);
}

/** Heights are given in hundreds of feet. 15.9.1. */
export function hundredsOfFt(text: string | undefined): number | null {
  const hundreds = numberWritten(text);
  return hundreds === null ? null : hundreds * 100;
}

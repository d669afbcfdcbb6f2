/** The moment that published tables call 2026.5: that part of the calendar year gone by, UTC. */
export function dateOf(decimalYear: number): Date {
  const year = Math.floor(decimalYear);
  const start = Date.UTC(year, 0, 1);
  return new Date(start + (decimalYear - year) * (Date.UTC(year + 1, 0, 1) - start));
}

/** How far apart two directions are, degrees, 0 to 180. */
export function apartDeg(a: number, b: number): number {
  const turn = Math.abs(a - b) % 360;
  return Math.min(turn, 360 - turn);
}

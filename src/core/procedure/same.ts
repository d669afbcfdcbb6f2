/** Whether two parts of documents say the same. */

/** The same text, number, list or object, whatever the order its names are in; undefined is left out. */
export function isSame(a: unknown, b: unknown): boolean {
  if (Object.is(a, b)) return true;
  if (typeof a !== 'object' || typeof b !== 'object' || a === null || b === null) return false;
  if (Array.isArray(a) !== Array.isArray(b)) return false;
  const others = new Map<string, unknown>(Object.entries(b));
  const names = new Set([...Object.keys(a), ...others.keys()]);
  const own = new Map<string, unknown>(Object.entries(a));
  return [...names].every((name) => isSame(own.get(name), others.get(name)));
}

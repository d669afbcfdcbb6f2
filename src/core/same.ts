/**
 * Whether two values say the same, so that what was computed from one still holds for the other.
 */

/**
 * Compares data deeply: numbers, strings, lists, sets, maps, dates and plain objects, regardless of
 * key order. A function equals only itself.
 */
export function sameData(a: unknown, b: unknown): boolean {
  if (Object.is(a, b)) return true;
  if (typeof a !== 'object' || typeof b !== 'object' || a === null || b === null) return false;
  if (Object.getPrototypeOf(a) !== Object.getPrototypeOf(b)) return false;
  if (a instanceof Date && b instanceof Date) return Object.is(a.getTime(), b.getTime());
  if (a instanceof Map && b instanceof Map) {
    return (
      a.size === b.size && [...a].every(([key, value]) => b.has(key) && sameData(value, b.get(key)))
    );
  }
  if (a instanceof Set && b instanceof Set) {
    return a.size === b.size && [...a].every((value) => b.has(value));
  }
  const others = new Map<string, unknown>(Object.entries(b));
  const own = Object.entries(a);
  return (
    own.length === others.size &&
    own.every(([name, value]) => others.has(name) && sameData(value, others.get(name)))
  );
}

/** Whether documents, or parts of them, say the same; an undefined property counts as absent. */
export function sameDocument(a: unknown, b: unknown): boolean {
  if (Object.is(a, b)) return true;
  if (typeof a !== 'object' || typeof b !== 'object' || a === null || b === null) return false;
  if (Array.isArray(a) !== Array.isArray(b)) return false;
  const others = new Map<string, unknown>(Object.entries(b));
  const own = new Map<string, unknown>(Object.entries(a));
  const names = new Set([...own.keys(), ...others.keys()]);
  return [...names].every((name) => sameDocument(own.get(name), others.get(name)));
}

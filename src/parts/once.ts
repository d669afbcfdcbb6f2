/** Working something out once. */

/**
 * Memoises a function of an object, once per object: for what is redrawn from something that never
 * changes, such as a field's runways.
 */
export function oncePerObject<K extends object, V>(work: (key: K) => V): (key: K) => V {
  const known = new WeakMap<K, V>();
  return (key) => {
    const value = known.get(key) ?? work(key);
    known.set(key, value);
    return value;
  };
}

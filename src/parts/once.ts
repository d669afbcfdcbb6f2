/** Working something out once. */

/**
 * A function of an object, worked out once for each object: for what is drawn again and again from
 * something that never changes, such as a field's runways.
 */
export function once<K extends object, V>(work: (key: K) => V): (key: K) => V {
  const known = new WeakMap<K, V>();
  return (key) => {
    const value = known.get(key) ?? work(key);
    known.set(key, value);
    return value;
  };
}

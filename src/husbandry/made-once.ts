/** What is costly and follows from one thing alone, made once for that very thing. */
export function madeOnce<K extends object, V>(make: (from: K) => V): (from: K) => V {
  const made = new WeakMap<K, V>();
  return (from) => {
    const known = made.get(from);
    if (known !== undefined) return known;
    const value = make(from);
    made.set(from, value);
    return value;
  };
}

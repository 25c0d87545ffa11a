/** Results kept by key, so that the same is not worked out twice. */

const MOST = 4096;

/** The result under a key, made if it is not there; a full store is emptied first. */
export function recall<K, V>(kept: Map<K, V>, key: K, make: () => V): V {
  const known = kept.get(key);
  if (known !== undefined) return known;
  if (kept.size >= MOST) kept.clear();
  const made = make();
  kept.set(key, made);
  return made;
}

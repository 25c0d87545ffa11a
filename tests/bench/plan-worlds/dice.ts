/**
 * Chance in the worlds: every draw belongs to a key and a number, never to a stream, so that two ways of buying meet the
 * same animals, parcels and evenings.
 */

/** Mixes the bits of a word (murmur's last step, Appleby, public domain). */
function mixed(word: number): number {
  let h = word | 0;
  h = Math.imul(h ^ (h >>> 16), 0x85ebca6b);
  h = Math.imul(h ^ (h >>> 13), 0xc2b2ae35);
  return (h ^ (h >>> 16)) >>> 0;
}

/** The key of something that belongs to a key: the animal of a world, the parcel of a day. */
export const keyOf = (key: number, part: number): number =>
  mixed(mixed(key ^ 0x27d4eb2f) ^ Math.imul(part + 1, 0x9e3779b1));

/** Strictly between 0 and 1. */
export const uniform = (key: number, n: number): number => (keyOf(key, n) + 0.5) / 4294967296;

export const exponential = (key: number, n: number): number => -Math.log(uniform(key, n));

/** Polar to plain (Box & Muller 1958); takes two draws of the key, kept apart from the others. */
export const normal = (key: number, n: number): number =>
  Math.sqrt(2 * exponential(key, 1000 + 2 * n)) * Math.cos(2 * Math.PI * uniform(key, 1001 + 2 * n));

/** Median 1. */
export const logNormal = (key: number, n: number, logSd: number): number => Math.exp(logSd * normal(key, n));

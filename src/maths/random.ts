/**
 * Random numbers by key: each draw is a hash of who, when and what for, so that no draw depends on the
 * order of a list and a changed plan shares every draw it did not touch.
 *
 * The mixer is the 32-bit finaliser of MurmurHash3 (Appleby 2011, public domain).
 */

const GOLDEN = 0x9e3779b1;
const DAY_STEP = 0x85ebca77;
const PURPOSE_STEP = 0xc2b2ae3d;
const FNV_OFFSET = 0x811c9dc5;
const FNV_PRIME = 0x01000193;
const TWO_TO_32 = 4294967296;

/** By its short name: what is called for every draw must be small enough to be compiled into the loops that draw. */
const { imul } = Math;

/** Mixes 32 bits so that each bit of the input moves about half of the output's. */
export function mix32(word: number): number {
  const first = imul(word ^ (word >>> 16), 0x85ebca6b);
  const second = imul(first ^ (first >>> 13), 0xc2b2ae35);
  return second ^ (second >>> 16);
}

/** One key out of two, in that order. */
export const joinKeys = (first: number, second: number): number =>
  mix32(imul(first, GOLDEN) ^ mix32(second + PURPOSE_STEP));

/** A key for a stable code such as 'A17' (FNV-1a, mixed). */
export function keyOfCode(code: string): number {
  let h = FNV_OFFSET;
  for (let i = 0; i < code.length; i++) h = imul(h ^ code.charCodeAt(i), FNV_PRIME);
  return mix32(h);
}

/** The key of one day within a stream. */
export const dayKey = (key: number, day: number): number => mix32(key + imul(day, DAY_STEP));

/** A uniform draw strictly between 0 and 1 for a purpose (a small whole number) under a key. */
export const uniform = (key: number, purpose: number): number =>
  ((mix32(key + imul(purpose, PURPOSE_STEP)) >>> 0) + 0.5) / TWO_TO_32;

/** A whole draw from 0 to n - 1, each as likely: floor(n u), n below 2^31. */
export const whole = (key: number, purpose: number, n: number): number => (uniform(key, purpose) * n) | 0;

/** Names for purposes, numbered from 1 in the order given. */
export const purposes = <const Names extends readonly string[]>(
  ...names: Names
): Record<Names[number], number> =>
  Object.fromEntries(names.map((name, i) => [name, i + 1])) as Record<Names[number], number>;

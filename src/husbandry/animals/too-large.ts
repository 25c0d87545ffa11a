/** Sizes no animal of a kind can have: most likely another unit, or another part of it was measured. */
import { type Problem, problem } from '../problems.ts';
import type { Mm } from '../units.ts';
import type { Kind } from './kind.ts';

/** A size may be so many times that of the largest on record; of a whole group's kind, whose members differ, twice as many. */
const TIMES = 2;

/** A species is named in two words, a group in its own. */
const isGroup = ({ name }: Kind): boolean => name === name.toLowerCase();

/** A Problem that quotes the size, in the quoted words it was written in where these are given; null where it can be. */
export function tooLarge(kind: Kind, gaugeMm: Mm, written = `"${gaugeMm} mm"`): Problem | null {
  const [least, most] = kind.adultGaugeMm.value;
  const times = isGroup(kind) ? TIMES * 2 : TIMES;
  if (gaugeMm <= times * most) return null;
  return problem(
    'size-beyond-kind',
    `${written} is far more than any ${kind.commonName} grows to: write its ${kind.gauge}, of a grown one ${least} to ${most} mm.`,
    'gaugeMm',
  );
}

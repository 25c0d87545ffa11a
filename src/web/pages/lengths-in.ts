/** How long the prey in a bin is now, where the keeper does not say. */

import { problem } from '../../husbandry/problems.ts';
import { err, ok, type Result } from '../../husbandry/result.ts';
import type { Snapshot } from '../../husbandry/snapshot.ts';
import { shelvesOf } from '../../husbandry/supply/index.ts';
import type { Lengths } from './choices.ts';

/** Least and greatest length of what is alive in a bin, at most `longestMm` where some of it is that short. */
export function lengthsIn(
  snapshot: Snapshot,
  code: string,
  { field, longestMm = Number.POSITIVE_INFINITY }: { readonly field: string; readonly longestMm?: number },
): Result<Lengths> {
  const shelves = shelvesOf(snapshot).filter(({ bin }) => bin.code === code);
  const slices = shelves.flatMap((shelf) => shelf.slices).filter(({ heads }) => heads > 0);
  const lengths = slices.map(({ lengthMm }) => lengthMm);
  const fitting = lengths.filter((length) => length <= longestMm);
  const chosen = fitting.length > 0 ? fitting : lengths;
  if (chosen.length > 0)
    return ok({ fromMm: rounded(Math.min(...chosen)), toMm: rounded(Math.max(...chosen)) });
  const name = snapshot.bins.find((bin) => bin.code === code)?.name ?? code;
  return err(
    problem('nothing-known', `"${name}" holds nothing alive as far as is known. Count it first.`, field),
  );
}

const TENTHS = 10;
const rounded = (mm: number): number => Math.round(mm * TENTHS) / TENTHS;

/** How long the prey in a bin is now, where the keeper does not say. */

import { problem } from '../../husbandry/problems.ts';
import { err, ok, type Result } from '../../husbandry/result.ts';
import type { Snapshot } from '../../husbandry/snapshot.ts';
import type { Lengths } from './choices.ts';
import { standingNow } from './evening-now.ts';
import type { House } from './house.ts';

interface Looked {
  /** Its code. */
  readonly bin: string;
  readonly field: string;
  readonly longestMm?: number;
}

/** Least and greatest length of what is alive in a bin, at most `longestMm` where some of it is that short. */
export async function lengthsIn(
  house: Pick<House, 'answering'>,
  snapshot: Snapshot,
  { bin: code, field, longestMm = Number.POSITIVE_INFINITY }: Looked,
): Promise<Result<Lengths>> {
  const standing = await standingNow(house, snapshot);
  const lengths = standing
    .filter(({ bin, heads }) => bin === code && heads > 0)
    .flatMap(({ lengthsMm }) => lengthsMm);
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

/** The last count, level by eye or weighing of a bin, against what was expected before it was known. */
import type { Bin } from '../husbandry/larder/index.ts';
import { type BinLearned, binToday } from '../husbandry/supply/index.ts';
import type { Context } from './context.ts';
import { loadSnapshot } from './load-snapshot.ts';

type Look = BinLearned['looks'][number];

/** Null where nobody looked, or nothing was known before. A count with lengths begins the record anew: what was expected then rests on the record to the day before. */
export async function lastLook(
  context: Context,
  bin: Bin,
  { looks }: Pick<BinLearned, 'looks'>,
): Promise<Look | null> {
  const last = looks.at(-1);
  if (last === undefined || last.expected.high >= 1) return last ?? null;
  const before = await loadSnapshot(context, last.day - 1);
  const earlier = before.bins.find(({ code }) => code === bin.code);
  if (earlier === undefined) return null;
  const { headsNow: expected } = binToday({ ...before, today: last.day }, earlier);
  return expected.high < 1 ? null : { ...last, expected };
}

/** Writes down what came into the demo room's larder and what was seen of it, day by day. */
import {
  type Context,
  countBin,
  cull,
  discard,
  foundDead,
  lookBin,
  move,
  quarantine,
  seeCup,
  seeSize,
  sexAdults,
  takeIn,
  weighBin,
} from '../src/actions/index.ts';
import { ok, type Result } from '../src/husbandry/result.ts';
import { type Codes, codeOf } from './codes.ts';
import { SEEN, type Seen } from './larder.ts';

export async function recordSeen(then: Context, codes: Codes, daysAgo: number): Promise<Result<null>> {
  for (const seen of SEEN.filter((each) => each.daysAgo === daysAgo)) {
    const done = await recordOne(then, codes, seen);
    if (!done.ok) return done;
  }
  return ok(null);
}

function recordOne(then: Context, codes: Codes, seen: Seen): Promise<Result<unknown>> {
  const bin = codeOf(codes.bins, seen.bin);
  switch (seen.what) {
    case 'came':
      return takeIn(then, { bin, ...lengths(seen.lot), dead: seen.dead ?? 0 });
    case 'counted':
      return countBin(then, { bin, ...lengths(seen.lot) });
    case 'moved':
      return move(then, { from: bin, to: codeOf(codes.bins, seen.to), ...lengths(seen.lot), sure: true });
    case 'looked':
      return lookBin(then, { bin, level: seen.level });
    case 'weighed':
      return weighBin(then, { bin, massMg: seen.massMg });
    case 'discarded':
      return discard(then, { bin, heads: seen.heads });
    case 'dead':
      return foundDead(then, { bin, heads: seen.heads });
    case 'frozen':
      return cull(then, { bin, ...lengths(seen.lot), how: 'frozen', sure: true });
    case 'sexed':
      return sexAdults(then, { bin, females: seen.females, males: seen.males });
    case 'size seen':
      return seeSize(then, { bin, fromMm: seen.fromMm, toMm: seen.toMm });
    case 'apart':
      return quarantine(then, { bin, days: seen.days });
    case 'cup looked':
      return seeCup(then, { bin, look: seen.look });
  }
}

const lengths = ([heads, fromMm, toMm]: readonly [number, number, number]) => ({ heads, fromMm, toMm });

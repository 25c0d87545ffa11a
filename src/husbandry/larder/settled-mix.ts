/** The mix of sizes in a colony that has bred for long: what a count without sizes is taken to be. */

import { growthOf } from '../../maths/growth-rate.ts';
import type { DayNumber } from '../calendar.ts';
import type { Chain } from './chain.ts';
import { scaleTo, totalHeads } from './lot.ts';
import { colonyRates } from './rates.ts';
import type { Life } from './state.ts';

const kept = new WeakMap<Chain, Map<string, Float64Array | null>>();

/** Heads by substage, eggs beside them in proportion, for so many heads; null where the species cannot breed here. */
export function settledMix({ chain, climate }: Life, heads: number, day: DayNumber): Float64Array | null {
  const temp = climate.on(day);
  const byTemp = kept.get(chain) ?? new Map<string, Float64Array | null>();
  kept.set(chain, byTemp);
  const key = `${temp.minC} ${temp.maxC}`;
  const known = byTemp.get(key);
  const shares = known === undefined ? (growthOf(colonyRates(chain, temp))?.stable ?? null) : known;
  byTemp.set(key, shares);
  const inHeads = shares ? totalHeads(shares, chain.firstHead) : 0;
  return shares && inHeads > 0 ? scaleTo(shares, heads / inHeads) : null;
}

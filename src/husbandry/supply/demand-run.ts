/** The daily engine run without a larder: what each group wants on each day, replicate by replicate. */
import { type FeedingDays, feedingDaysFrom, type Roster, rosterOf } from '../appetite/index.ts';
import type { Policy } from '../policy.ts';
import type { Snapshot } from '../snapshot.ts';
import { DAYS_PER_WEEK } from '../units.ts';
import type { Spread } from './answer.ts';
import { type Menu, menuOf } from './menu.ts';
import { runReplicates } from './run.ts';
import { spreadOf } from './summary.ts';
import { type Tally, tallyFor } from './tally.ts';

/** Items of the ideal size: mean, variance and 5, 50, 95 % quantiles over replicates. */
export interface Amount extends Spread {
  readonly mean: number;
  readonly variance: number;
}

export interface DemandRun {
  readonly roster: Roster;
  readonly feeding: FeedingDays;
  readonly menu: Menu;
  readonly tally: Tally;
  readonly policy: Policy;
}

/** Plays the snapshot's animals through so many weeks; the same snapshot and seed give the same bytes. */
export function demandRun(
  snapshot: Snapshot,
  { weeks, replicates }: { weeks: number; replicates: number },
): DemandRun {
  const { policy } = snapshot.facts;
  const days = weeks * DAYS_PER_WEEK;
  const roster = rosterOf(snapshot, policy.moultsAhead.value);
  const longest = roster.intervalMax.reduce((most, n) => Math.max(most, n), 1);
  const feeding = feedingDaysFrom(snapshot.calendar, snapshot.today, days + longest + 1);
  const tally = tallyFor({
    groups: roster.groups.length,
    animals: roster.animals,
    days,
    replicates,
    stockReplicates: 0,
    edgesMm: new Float64Array(0),
    keepDays: true,
  });
  const menu = menuOf(roster.groups, [], new Set());
  const run = { roster, feeding, policy, menu, larder: null, days, seed: snapshot.seed };
  runReplicates(run, tally, { from: 0, to: replicates });
  return { roster, feeding, menu, tally, policy };
}

/** Items a group wants on a day, by replicate. */
export function itemsOn(tally: Tally, g: number, day: number): Float64Array {
  const kept = tally.itemsByDay as Float32Array;
  const items = new Float64Array(tally.replicates);
  for (let r = 0; r < tally.replicates; r++)
    items[r] = kept[(r * tally.groups + g) * tally.days + day] as number;
  return items;
}

/** Sum of several spells, replicate by replicate. */
export function sumOver(spells: readonly Float64Array[]): Float64Array {
  const sum = new Float64Array(spells[0]?.length ?? 0);
  for (const items of spells)
    for (let r = 0; r < sum.length; r++) sum[r] = (sum[r] as number) + (items[r] as number);
  return sum;
}

export function amountOf(items: Float64Array): Amount {
  const mean = items.reduce((a, b) => a + b, 0) / items.length;
  const squares = items.reduce((sum, x) => sum + (x - mean) ** 2, 0);
  return { mean, variance: squares / Math.max(1, items.length - 1), ...spreadOf(items) };
}

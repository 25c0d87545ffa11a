/** Who eats, how much in each period, how long it may wait: demand as a plan sees it. */
import { meanOf } from '../../maths/mean.ts';
import type { DemandGroup, Roster } from '../appetite/index.ts';
import type { Snapshot } from '../snapshot.ts';
import { demandRun, itemsOn } from '../supply/index.ts';
import { DAYS_PER_WEEK } from '../units.ts';
import type { Period } from './answer.ts';

export interface Eating {
  readonly group: DemandGroup;
  /** Items wanted in each period: means, and by replicate at [period][replicate]. */
  readonly wanted: Float64Array;
  readonly byReplicate: readonly Float64Array[];
  readonly lateMost: Float64Array;
  /** Mean items of a meal of one head, as this keeper gives them. */
  readonly mealItems: number;
  /** Heads that are fed, late or missed as one: of singles 1, of animals alike as many as they are. */
  readonly headsEach: number;
}

/** Groups that want anything in the periods, in the order of their keys. */
export function eatingOf(snapshot: Snapshot, periods: readonly Period[]): Eating[] {
  const days = periods.reduce((sum, period) => sum + period.days, 0);
  const weeks = Math.ceil(days / DAYS_PER_WEEK);
  const run = demandRun(snapshot, { weeks, replicates: snapshot.facts.policy.planReplicates.value });
  return run.roster.groups
    .map((group, g): Eating => {
      const byReplicate = periods.map(({ from, days: long }) => {
        const sum = new Float64Array(run.tally.replicates);
        for (let day = from - snapshot.today; day < from - snapshot.today + long; day++)
          itemsOn(run.tally, g, day).forEach((items, r) => {
            sum[r] = (sum[r] as number) + items;
          });
        return sum;
      });
      const wanted = Float64Array.from(byReplicate, meanOf);
      const [few, many] = group.rule.mealItems.value;
      const mealItems = Math.max(Math.min(few, 1), ((few + many) / 2) * run.roster.generosity.mean);
      const headsEach = headsEachOf(run.roster, g);
      return { group, wanted, byReplicate, lateMost: lateMost(group, wanted), mealItems, headsEach };
    })
    .filter(({ wanted }) => wanted.some((items) => items > 0))
    .sort((a, b) => (a.group.key < b.group.key ? -1 : 1));
}

/** Mean heads of the rows that are in a group now or after a moult. */
function headsEachOf({ animals, steps, group, heads }: Roster, g: number): number {
  const rows = Array.from({ length: animals }, (_, i) => i).filter((i) =>
    group.subarray(i * steps, (i + 1) * steps).includes(g),
  );
  return rows.reduce((sum, i) => sum + (heads[i] as number), 0) / Math.max(1, rows.length);
}

/** Items of the last weeks that may still wait: meals wait for half their range and the grace, each week's in turn. */
function lateMost({ rule }: DemandGroup, wanted: Float64Array): Float64Array {
  const [least, most] = rule.intervalDays.value;
  const slackWeeks = ((most - least) / 2 + rule.graceDays.value) / DAYS_PER_WEEK;
  return wanted.map((_, t) => {
    let items = 0;
    for (let back = 0; back < Math.min(slackWeeks, t + 1); back++)
      items += (wanted[t - back] as number) * Math.min(1, slackWeeks - back);
    return items;
  });
}

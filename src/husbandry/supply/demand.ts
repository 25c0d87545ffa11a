/** Demand of the collection by group, week and day: the daily engine run without a larder, beside the closed form. */
import {
  type DemandGroup,
  type ExactDistribution,
  exactItems,
  exactMeans,
  exactSum,
  isSteady,
  type Roster,
} from '../appetite/index.ts';
import type { Snapshot } from '../snapshot.ts';
import { DAYS_PER_WEEK } from '../units.ts';
import { type Amount, amountOf, type DemandRun, demandRun, itemsOn, sumOver } from './demand-run.ts';
import { type GroupSaid, groupSaid, groupsShown } from './group-said.ts';

export interface DemandOptions {
  readonly weeks: number;
  readonly replicates?: number;
}

/** What the closed form says of the same group. */
export interface ExactDemand {
  /** Share of the heads that can be in this group which have a closed form: they moult no more, or are a group alike. */
  readonly share: number;
  /** Mean items wanted in each week; null unless the share is 1. */
  readonly weekMeans: readonly number[] | null;
  /** Distribution over the whole horizon; null unless the share is 1 and no cause is shared between animals. */
  readonly whole: ExactDistribution | null;
}

export type GroupDemand = GroupSaid & {
  readonly weeks: readonly Amount[];
  /** From tonight to the end of each week; quantiles of weeks do not add up to these. */
  readonly cumulative: readonly Amount[];
  /** The first two weeks, day by day. */
  readonly days: readonly Amount[];
  readonly exact: ExactDemand;
};

export interface DemandForecast {
  readonly day: number;
  readonly weeks: number;
  readonly seed: number;
  readonly replicates: number;
  readonly revision: number;
  readonly groups: readonly GroupDemand[];
  /** Share of all heads that have a closed form. */
  readonly exactShare: number;
}

/** What the collection will want, week by week; the same snapshot and seed give the same bytes. */
export function forecastDemand(snapshot: Snapshot, options: DemandOptions): DemandForecast {
  const { policy } = snapshot.facts;
  const { weeks, replicates = policy.replicates.value } = options;
  const forecast = demandRun(snapshot, { weeks, replicates });
  const { roster, menu, tally } = forecast;
  return {
    day: snapshot.today,
    weeks,
    seed: snapshot.seed,
    replicates,
    revision: snapshot.revision,
    groups: groupsShown(menu, tally).map((g) => groupDemand(forecast, g)),
    exactShare: shareOf(roster, everyRow(roster)),
  };
}

function groupDemand(forecast: DemandRun, g: number): GroupDemand {
  const { roster, tally } = forecast;
  const group = roster.groups[g] as DemandGroup;
  const days = Array.from({ length: tally.days }, (_, day) => itemsOn(tally, g, day));
  const weeks = Array.from({ length: tally.days / DAYS_PER_WEEK }, (_, week) =>
    sumOver(days.slice(week * DAYS_PER_WEEK, (week + 1) * DAYS_PER_WEEK)),
  );
  const sums: Float64Array[] = [];
  for (const week of weeks) sums.push(sumOver([...sums.slice(-1), week]));
  return {
    ...groupSaid(roster, group),
    weeks: weeks.map(amountOf),
    cumulative: sums.map(amountOf),
    days: days.slice(0, 2 * DAYS_PER_WEEK).map(amountOf),
    exact: exactDemand(forecast, g),
  };
}

const everyRow = ({ animals }: Roster): number[] => Array.from({ length: animals }, (_, i) => i);

/** Rows of the roster that are in a group now or after a moult. */
const rowsIn = (roster: Roster, g: number): number[] =>
  everyRow(roster).filter((i) => roster.group.subarray(i * roster.steps, (i + 1) * roster.steps).includes(g));

function exactDemand(forecast: DemandRun, g: number): ExactDemand {
  const { roster, tally, feeding, policy } = forecast;
  const rows = rowsIn(roster, g);
  const share = shareOf(roster, rows);
  if (share < 1) return { share, weekMeans: null, whole: null };
  const means = exactRows(forecast, rows);
  const weekMeans = Array.from({ length: tally.days / DAYS_PER_WEEK }, (_, week) =>
    means.reduce((sum, byDay) => sum + weekOf(byDay, week), 0),
  );
  const shared = policy.eveningSkippedChance.value > 0 || roster.generosity.variance > 0;
  const laws = shared ? [] : rows.map((i) => exactItems(roster, i, { feeding, days: tally.days }));
  return { share, weekMeans, whole: shared ? null : exactSum(laws.filter((law) => law !== null)) };
}

const weekOf = (byDay: Float64Array, week: number): number =>
  byDay.subarray(week * DAYS_PER_WEEK, (week + 1) * DAYS_PER_WEEK).reduce((a, b) => a + b, 0);

/** Mean items by day of rows that have a closed form. */
const exactRows = ({ roster, feeding, tally, policy }: DemandRun, rows: readonly number[]): Float64Array[] =>
  rows.flatMap(
    (i) =>
      exactMeans(roster, i, {
        feeding,
        days: tally.days,
        skipped: policy.eveningSkippedChance.value,
      }) ?? [],
  );

/** Share of the heads in these rows that have a closed form; 1 where nobody is. */
function shareOf(roster: Roster, rows: readonly number[]): number {
  const heads = (of: readonly number[]) => of.reduce((sum, i) => sum + (roster.heads[i] as number), 0);
  const all = heads(rows);
  return all > 0 ? heads(rows.filter((i) => isSteady(roster, i))) / all : 1;
}

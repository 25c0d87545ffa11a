/** Demand of the collection by group, week and day: the daily engine run without a larder, beside the closed form. */
import { type ExactDistribution, exactItems, exactMeans, exactSum } from '../appetite/exact.ts';
import { type FeedingDays, feedingDaysFrom } from '../appetite/feeding-days.ts';
import type { DemandGroup } from '../appetite/groups.ts';
import { type Roster, rosterOf } from '../appetite/roster.ts';
import type { Policy } from '../policy.ts';
import type { Snapshot } from '../snapshot.ts';
import { DAYS_PER_WEEK } from '../units.ts';
import type { GroupAnswer, Spread } from './answer.ts';
import { menuOf } from './menu.ts';
import { runReplicates } from './run.ts';
import { shownWindow, spreadOf } from './summary.ts';
import { type Tally, tallyFor } from './tally.ts';

export interface DemandOptions {
  readonly weeks: number;
  readonly replicates?: number;
}

/** Items of the ideal size: mean, variance and 5, 50, 95 % quantiles over replicates. */
export interface Amount extends Spread {
  readonly mean: number;
  readonly variance: number;
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

export type GroupDemand = Pick<
  GroupAnswer,
  'key' | 'name' | 'urgency' | 'window' | 'species' | 'animals' | 'heads'
> & {
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

interface Forecast {
  readonly roster: Roster;
  readonly feeding: FeedingDays;
  readonly tally: Tally;
  readonly policy: Policy;
}

/** What the collection will want, week by week; the same snapshot and seed give the same bytes. */
export function forecastDemand(snapshot: Snapshot, options: DemandOptions): DemandForecast {
  const { policy } = snapshot.facts;
  const { weeks, replicates = policy.replicates.value } = options;
  const days = weeks * DAYS_PER_WEEK;
  const roster = rosterOf(snapshot, policy.moultsAhead.value);
  const longest = roster.intervalMax.reduce((most, n) => Math.max(most, n), 1);
  const feeding = feedingDaysFrom(snapshot.calendar, snapshot.today, days + longest + 1);
  const groups = roster.groups.length;
  const tally = tallyFor({
    groups,
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
  const forecast: Forecast = { roster, feeding, tally, policy };
  return {
    day: snapshot.today,
    weeks,
    seed: snapshot.seed,
    replicates,
    revision: snapshot.revision,
    groups: Array.from(menu.order)
      .filter((g) => (tally.due[g] as number) > 0 || (roster.groups[g] as DemandGroup).animals.length > 0)
      .map((g) => groupDemand(forecast, g)),
    exactShare: shareOf(roster, everyRow(roster), exactRows(forecast, everyRow(roster))),
  };
}

function groupDemand(forecast: Forecast, g: number): GroupDemand {
  const { roster, tally } = forecast;
  const group = roster.groups[g] as DemandGroup;
  const weeks = Array.from({ length: tally.days / DAYS_PER_WEEK }, (_, week) => week * DAYS_PER_WEEK);
  const over = (from: number, to: number) => amountOf(itemsBetween(tally, g, { from, to }));
  return {
    key: group.key,
    name: group.name,
    urgency: group.rule.urgency,
    window: shownWindow(group),
    species: [...group.windows.keys()],
    animals: group.animals,
    heads: group.animals.reduce((sum, code) => sum + (roster.heads[roster.codes.indexOf(code)] as number), 0),
    weeks: weeks.map((from) => over(from, from + DAYS_PER_WEEK)),
    cumulative: weeks.map((from) => over(0, from + DAYS_PER_WEEK)),
    days: Array.from({ length: Math.min(tally.days, 2 * DAYS_PER_WEEK) }, (_, day) => over(day, day + 1)),
    exact: exactDemand(forecast, g),
  };
}

/** Items of a group in each replicate, from one day up to but not including another. */
function itemsBetween(tally: Tally, g: number, { from, to }: { from: number; to: number }): number[] {
  const kept = tally.itemsByDay as Float32Array;
  return Array.from({ length: tally.replicates }, (_, r) => {
    const row = (r * tally.groups + g) * tally.days;
    return kept.subarray(row + from, row + to).reduce((a, b) => a + b, 0);
  });
}

function amountOf(items: readonly number[]): Amount {
  const mean = items.reduce((a, b) => a + b, 0) / items.length;
  const squares = items.reduce((sum, x) => sum + (x - mean) ** 2, 0);
  return { mean, variance: squares / Math.max(1, items.length - 1), ...spreadOf(items) };
}

const everyRow = ({ animals }: Roster): number[] => Array.from({ length: animals }, (_, i) => i);

/** Rows of the roster that are in a group now or after a moult. */
const rowsIn = (roster: Roster, g: number): number[] =>
  everyRow(roster).filter((i) => roster.group.subarray(i * roster.steps, (i + 1) * roster.steps).includes(g));

function exactDemand(forecast: Forecast, g: number): ExactDemand {
  const { roster, tally, feeding, policy } = forecast;
  const rows = rowsIn(roster, g);
  const means = exactRows(forecast, rows);
  const share = shareOf(roster, rows, means);
  if (share < 1) return { share, weekMeans: null, whole: null };
  const weekMeans = Array.from({ length: tally.days / DAYS_PER_WEEK }, (_, week) =>
    means.reduce((sum, byDay) => sum + weekOf(byDay as Float64Array, week), 0),
  );
  const shared = policy.eveningSkippedChance.value > 0 || policy.generosityCv.value > 0;
  const laws = shared ? [] : rows.map((i) => exactItems(roster, i, { feeding, days: tally.days }));
  return { share, weekMeans, whole: shared ? null : exactSum(laws.filter((law) => law !== null)) };
}

const weekOf = (byDay: Float64Array, week: number): number =>
  byDay.subarray(week * DAYS_PER_WEEK, (week + 1) * DAYS_PER_WEEK).reduce((a, b) => a + b, 0);

const exactRows = ({ roster, feeding, tally, policy }: Forecast, rows: readonly number[]) =>
  rows.map((i) =>
    exactMeans(roster, i, {
      feeding,
      days: tally.days,
      skipped: policy.eveningSkippedChance.value,
      generosityCv: policy.generosityCv.value,
    }),
  );

function shareOf(roster: Roster, rows: readonly number[], means: readonly (Float64Array | null)[]): number {
  const heads = (keep: (at: number) => boolean) =>
    rows.reduce((sum, i, at) => sum + (keep(at) ? (roster.heads[i] as number) : 0), 0);
  const all = heads(() => true);
  return all > 0 ? heads((at) => means[at] !== null) / all : 1;
}

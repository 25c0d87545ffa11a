/** The wave of a hatching sac: what the groups its young belong to want week by week, with it and without it. */
import { headsKept, type Roster, rosterOf } from '../appetite/index.ts';
import type { DayNumber } from '../calendar.ts';
import type { PlannedChange, Snapshot } from '../snapshot.ts';
import { DAYS_PER_WEEK } from '../units.ts';
import { type Amount, amountOf, type DemandRun, demandRun, itemsOn, sumOver } from './demand-run.ts';
import { type GroupSaid, groupSaid } from './group-said.ts';

export interface HatchWave {
  readonly change: string;
  readonly firstDay: DayNumber;
  readonly replicates: number;
  /** The group the young are fed with. */
  readonly group: GroupSaid;
  /** Items of the ideal size wanted by that group in each week, without the sac, and if it comes off. */
  readonly without: readonly Amount[];
  readonly with: readonly Amount[];
  /** Mean items a week once all the young eat, with the sac and in the same weeks without it, and this week. */
  readonly peak: number;
  readonly peakWithout: number;
  readonly now: number;
  /** Standard error of the peak by the number of replicates. */
  readonly peakError: number;
}

/** The wave of one expected sac as if it were certain; null when nothing of it stays here. */
export function hatchWave(snapshot: Snapshot, change: PlannedChange): HatchWave | null {
  const { policy } = snapshot.facts;
  if (headsKept(change) === 0) return null;
  const changes = snapshot.changes.map((each) => (each.code === change.code ? { ...each, chance: 1 } : each));
  const sure = { ...snapshot, changes };
  const roster = rosterOf(sure, policy.moultsAhead.value);
  const keys = keysOf(roster, change.code);
  const concerned = onlyThose(sure, roster, keys);
  const weeks = weeksFor(snapshot, change);
  const replicates = replicatesFor(snapshot, concerned, weeks);
  const others = { ...concerned, changes: concerned.changes.filter(({ code }) => code !== change.code) };
  const run = demandRun(concerned, { weeks, replicates });
  const withIt = weekly(run, keys);
  const without = weekly(demandRun(others, { weeks, replicates }), keys);
  const first = firstFullWeek(snapshot, change, weeks);
  const peak = withIt.slice(first);
  const meanOf = (of: readonly Amount[]) => of.reduce((sum, { mean }) => sum + mean, 0) / of.length;
  const group = run.roster.groups.find(({ key }) => keys.has(key));
  if (!group) return null;
  return {
    change: change.code,
    firstDay: snapshot.today,
    replicates,
    group: groupSaid(run.roster, group),
    without,
    with: withIt,
    peak: meanOf(peak),
    peakWithout: meanOf(without.slice(first)),
    now: without[0]?.mean ?? 0,
    peakError: Math.sqrt(meanVariance(peak) / replicates),
  };
}

const meanVariance = (of: readonly Amount[]): number =>
  of.reduce((sum, { variance }) => sum + variance, 0) / of.length;

/** Groups its young are in: as they hatch; a single one also as it grows. */
function keysOf(roster: Roster, code: string): ReadonlySet<string> {
  const at = roster.codes.indexOf(code);
  const steps = (roster.heads[at] as number) > 1 ? 1 : roster.steps;
  const groups = roster.group.subarray(at * roster.steps, at * roster.steps + steps);
  return new Set(Array.from(groups, (g) => roster.groups[g]?.key as string));
}

/** The same room with none but those that are in one of the groups now or after a moult; their draws stay the same. */
function onlyThose(snapshot: Snapshot, roster: Roster, keys: ReadonlySet<string>): Snapshot {
  const codes = new Set(
    roster.codes.filter((_, i) =>
      Array.from(roster.group.subarray(i * roster.steps, (i + 1) * roster.steps)).some((g) =>
        keys.has(roster.groups[g]?.key as string),
      ),
    ),
  );
  const sold = (animal: string | null): boolean => animal !== null && codes.has(animal);
  return {
    ...snapshot,
    animals: snapshot.animals.filter(({ code }) => codes.has(code)),
    changes: snapshot.changes.filter(
      (each) => codes.has(each.code) || (each.kind === 'sale' && sold(each.animal)),
    ),
  };
}

function weeksFor({ today, facts }: Snapshot, { to }: PlannedChange): number {
  const { waveWeeksAfter, waveWeeksMost } = facts.policy;
  const until = Math.ceil(Math.max(0, to + 1 - today) / DAYS_PER_WEEK);
  return Math.min(waveWeeksMost.value, until + waveWeeksAfter.value);
}

/** The first week in which all the young have been there from its first day; the last at the latest. */
const firstFullWeek = ({ today }: Snapshot, { to }: PlannedChange, weeks: number): number =>
  Math.min(weeks - 1, Math.ceil(Math.max(0, to - today) / DAYS_PER_WEEK));

function replicatesFor({ facts }: Snapshot, { animals, changes }: Snapshot, weeks: number): number {
  const { waveReplicates, waveReplicatesLeast, waveWork } = facts.policy;
  const rowDays = (animals.length + changes.length) * weeks * DAYS_PER_WEEK;
  const most = Math.floor(waveWork.value / rowDays);
  return Math.max(waveReplicatesLeast.value, Math.min(waveReplicates.value, most));
}

function weekly({ roster, tally }: DemandRun, keys: ReadonlySet<string>): readonly Amount[] {
  const groups = roster.groups.flatMap(({ key }, g) => (keys.has(key) ? [g] : []));
  const none = new Float64Array(tally.replicates);
  return Array.from({ length: tally.days / DAYS_PER_WEEK }, (_, week) => {
    const days = Array.from({ length: DAYS_PER_WEEK }, (_, day) => week * DAYS_PER_WEEK + day);
    return amountOf(sumOver([none, ...groups.flatMap((g) => days.map((day) => itemsOn(tally, g, day)))]));
  });
}

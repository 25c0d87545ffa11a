/** The demand loop set up for a room, from compiled code or from source: a roster, its feeding days, and the run itself. */
import type { FeedingDays } from '../../src/husbandry/appetite/feeding-days.ts';
import type { Roster } from '../../src/husbandry/appetite/roster.ts';
import type { Snapshot } from '../../src/husbandry/snapshot.ts';
import type { Tally } from '../../src/husbandry/supply/tally.ts';

export type Core = Pick<typeof import('../../src/husbandry/appetite/roster.ts'), 'rosterOf'> &
  Pick<typeof import('../../src/husbandry/appetite/feeding-days.ts'), 'feedingDaysFrom'> &
  Pick<typeof import('../../src/husbandry/supply/menu.ts'), 'menuOf'> &
  Pick<typeof import('../../src/husbandry/supply/run.ts'), 'runReplicates'> &
  Pick<typeof import('../../src/husbandry/supply/tally.ts'), 'tallyFor'>;

export interface Length {
  readonly days: number;
  readonly replicates: number;
}

export interface DemandLoop extends Length {
  readonly snapshot: Snapshot;
  readonly roster: Roster;
  readonly feeding: FeedingDays;
  /** Plays all replicates into a fresh tally. */
  readonly play: () => Tally;
}

export function demandLoop(core: Core, snapshot: Snapshot, { days, replicates }: Length): DemandLoop {
  const { policy } = snapshot.facts;
  const roster = core.rosterOf(snapshot, policy.moultsAhead.value);
  const longest = roster.intervalMax.reduce((most, n) => Math.max(most, n), 1);
  const feeding = core.feedingDaysFrom(snapshot.calendar, snapshot.today, days + longest + 1);
  const menu = core.menuOf(roster.groups, [], new Set());
  const size = { groups: roster.groups.length, animals: roster.animals, days, replicates };
  const play = (): Tally => {
    const tally = core.tallyFor({ ...size, stockReplicates: 0, edgesMm: new Float64Array(0) });
    const run = { roster, feeding, policy, menu, larder: null, days, seed: snapshot.seed };
    core.runReplicates(run, tally, { from: 0, to: replicates });
    return tally;
  };
  return { snapshot, roster, feeding, days, replicates, play };
}

export interface Sums {
  readonly due: number;
  readonly wanted: number;
  readonly late: number;
  readonly missed: number;
  readonly dangers: number;
}

const sum = (values: Float64Array): number => values.reduce((a, b) => a + b, 0);

/** What two ways through the same room must agree on; missed and dangerous whatever the cause. */
export const sumsOf = (tally: Tally): Sums => ({
  due: sum(tally.due),
  wanted: sum(tally.wanted),
  late: sum(tally.late),
  missed: sum(tally.missedOf) + sum(tally.unfedMissedOf),
  dangers: sum(tally.dangersOf) + sum(tally.unfedDangersOf),
});

/** Cover: will the feeders last? The run of the daily engine for a snapshot, and its answer without the acts. */
import { feedingDaysFrom, type Roster, rosterOf } from '../appetite/index.ts';
import type { Snapshot } from '../snapshot.ts';
import type { Laid } from './laid.ts';
import { type Larder, larderFor } from './larder.ts';
import { type Menu, menuOf } from './menu.ts';
import { runReplicates } from './run.ts';
import { rulerEdges } from './spectrum.ts';
import { type Stock, stockOf } from './stock.ts';
import { type Tally, tallyFor } from './tally.ts';
import { weekTally } from './week-tally.ts';
import type { Run } from './working.ts';

export interface CoverOptions {
  /** Days to look ahead, tonight included; default: until the next expected delivery is in. */
  readonly days?: number;
  readonly replicates?: number;
  /** Groups for whom larger prey is cut into portions. */
  readonly cut?: ReadonlySet<string>;
  /** Robust adults wait for the end of their range. */
  readonly stretchRobust?: boolean;
  /** Whether the stock by day is noted for the cover lines; default: it is. */
  readonly notesStock?: boolean;
  /** Whether the act that helps most is looked for; default: it is. */
  readonly seeksAct?: boolean;
  /** Whether what is alive and eaten is noted week by week; default: it is not. */
  readonly notesWeeks?: boolean;
  /** What a run on the same animals, day and horizon has laid out already. */
  readonly kept?: Kept;
}

export interface Kept {
  readonly roster: Roster;
  readonly laid: Laid;
}

/** Everything one judged run was made of. */
export interface Judged {
  readonly roster: Roster;
  readonly menu: Menu;
  readonly stock: Stock;
  readonly larder: Larder;
  readonly tally: Tally;
  readonly days: number;
}

export interface Horizon {
  readonly days: number;
  readonly untilDelivery: string | null;
}

/** Until the next delivery expected after today is in, that day included; else the policy's days. */
export function horizonOf(snapshot: Snapshot, days?: number): Horizon {
  const coming = snapshot.deliveries
    .filter(({ day }) => day > snapshot.today)
    .sort((a, b) => a.day - b.day || (a.code < b.code ? -1 : 1));
  const next = coming[0];
  if (days !== undefined) return { days, untilDelivery: null };
  if (!next) return { days: snapshot.facts.policy.horizonDays.value, untilDelivery: null };
  return { days: next.day - snapshot.today + 1, untilDelivery: next.code };
}

/** Runs the daily engine on a snapshot. */
export function judge(snapshot: Snapshot, options: CoverOptions = {}): Judged {
  const { policy } = snapshot.facts;
  const { days } = horizonOf(snapshot, options.days);
  const usual = options.kept?.roster ?? rosterOf(snapshot, policy.moultsAhead.value);
  const roster = options.stretchRobust ? stretched(usual) : usual;
  const stock = stockOf(snapshot, days, options.kept?.laid);
  const menu = menuOf(roster.groups, stock.species, options.cut ?? new Set());
  const larder = larderFor(stock, policy);
  const longest = roster.intervalMax.reduce((most, n) => Math.max(most, n), 1);
  const feeding = feedingDaysFrom(snapshot.calendar, snapshot.today, days + longest + 1);
  const replicates = options.replicates ?? policy.replicates.value;
  const edgesMm = rulerEdges(policy);
  const tally = tallyFor({
    groups: roster.groups.length,
    animals: roster.animals,
    days,
    replicates,
    stockReplicates: options.notesStock === false ? 0 : Math.min(replicates, policy.stockReplicates.value),
    edgesMm,
    weekly: options.notesWeeks
      ? weekTally({ days, bands: edgesMm.length - 1, species: stock.species.length })
      : null,
  });
  const run: Run = { roster, feeding, policy, menu, larder, days, seed: snapshot.seed };
  runReplicates(run, tally, { from: 0, to: replicates });
  return { roster, menu, stock, larder, tally, days };
}

/** Robust animals are fed at the end of their range. */
function stretched(roster: Roster): Roster {
  const isRobust = (at: number) => roster.rules.rules[roster.rule[at] as number]?.urgency === 'robust';
  return {
    ...roster,
    intervalMin: roster.intervalMin.map((min, at) =>
      isRobust(at) ? (roster.intervalMax[at] as number) : min,
    ),
  };
}

/** After a crash or die-off: who goes short from when, what they can take tonight, which bins to look at, what to start. */
import type { DemandGroup } from '../appetite/index.ts';
import type { DayNumber } from '../calendar.ts';
import type { Bin } from '../larder/index.ts';
import { isLost } from '../larder/index.ts';
import { takesDead } from '../prey/index.ts';
import type { Snapshot } from '../snapshot.ts';
import { DAYS_PER_WEEK } from '../units.ts';
import type { GroupAnswer } from './answer.ts';
import { type Judged, judge } from './cover.ts';
import { type AtRisk, atRisk } from './crash-neighbours.ts';
import { type StartNow, startNow } from './crash-starts.ts';
import { shelvesOf } from './shelf-stock.ts';
import { groupAnswers } from './summary.ts';

/** Heads of a bin that fit a group tonight. */
export interface InsteadOf {
  readonly bin: string;
  readonly species: string;
  readonly heads: number;
}

export interface ShortAfter
  extends Pick<GroupAnswer, 'key' | 'name' | 'urgency' | 'window' | 'animals' | 'heads'> {
  /** First day on which a due meal finds nothing that fits, the middle of those replicates in which one does. */
  readonly from: DayNumber;
  /** Chance that one finds nothing within the days looked at, and what it was without the loss. */
  readonly chance: number;
  readonly chanceBefore: number;
  readonly instead: readonly InsteadOf[];
  readonly start: readonly StartNow[];
}

export interface CrashAnswer {
  readonly bin: string;
  readonly revision: number;
  /** Days looked ahead. */
  readonly days: number;
  readonly replicates: number;
  /** Groups that the loss leaves shorter than they were, the soonest first. */
  readonly short: readonly ShortAfter[];
  readonly atRisk: readonly AtRisk[];
}

/** What the last loss written down of a bin means; null where there is none. */
export function afterCrash(snapshot: Snapshot, code: string): CrashAnswer | null {
  const bin = snapshot.bins.find((each) => each.code === code);
  const at = bin?.events.findLastIndex(isLost) ?? -1;
  if (!bin || at < 0) return null;
  const unhurt: Bin = { ...bin, events: bin.events.filter((_, i) => i !== at) };
  const before = { ...snapshot, bins: snapshot.bins.map((each) => (each === bin ? unhurt : each)) };
  const { crashDays, crashRise, actReplicates } = snapshot.facts.policy;
  const options = { days: crashDays.value, replicates: actReplicates.value, notesStock: false };
  const [was, is] = [judge(before, options), judge(snapshot, options)];
  const chanceBefore = new Map(
    groupAnswers(was, snapshot.facts.policy).map(({ key, runOut }) => [key, runOut.chance]),
  );
  const short = groupAnswers(is, snapshot.facts.policy).flatMap((answer): ShortAfter[] => {
    const known = chanceBefore.get(answer.key) ?? 0;
    const { day, chance } = answer.runOut;
    if (day === null || chance - known < crashRise.value) return [];
    return [
      shortAfter(snapshot, { judged: is, answer, bin, chanceBefore: known, from: snapshot.today + day.mid }),
    ];
  });
  return {
    bin: code,
    revision: snapshot.revision,
    days: options.days,
    replicates: options.replicates,
    short: short.sort((a, b) => a.from - b.from || b.chance - a.chance || (a.key < b.key ? -1 : 1)),
    atRisk: atRisk(snapshot, bin),
  };
}

interface Short {
  readonly judged: Judged;
  readonly answer: GroupAnswer;
  readonly bin: Bin;
  readonly chanceBefore: number;
  readonly from: DayNumber;
}

function shortAfter(snapshot: Snapshot, { judged, answer, bin, chanceBefore, from }: Short): ShortAfter {
  const { key, name, urgency, window, animals, heads, runOut, itemsWantedMean } = answer;
  const group = judged.menu.groups.find((each) => each.key === key) as DemandGroup;
  const weekly = (itemsWantedMean * DAYS_PER_WEEK) / judged.days;
  return {
    ...{ key, name, urgency, window, animals, heads },
    from: Math.round(from),
    chance: runOut.chance,
    chanceBefore,
    instead: insteadFor(snapshot, group).filter((other) => other.bin !== bin.code),
    start: startNow(snapshot, { group, bin, weekly }),
  };
}

/** Bins with something that fits the group now, the most first. */
function insteadFor(snapshot: Snapshot, { rule, windows }: DemandGroup): InsteadOf[] {
  const byBin = new Map<string, InsteadOf>();
  for (const { bin, species, slices } of shelvesOf(snapshot)) {
    const window = windows.get(species.code);
    if (!window || (bin.role === 'frozen' && !takesDead(rule))) continue;
    const heads = slices
      .filter(({ lengthMm }) => window.minMm <= lengthMm && lengthMm <= window.maxMm)
      .reduce((sum, slice) => sum + slice.heads, byBin.get(bin.code)?.heads ?? 0);
    if (heads >= 1) byBin.set(bin.code, { bin: bin.code, species: species.code, heads });
  }
  return [...byBin.values()].sort((a, b) => b.heads - a.heads || (a.bin < b.bin ? -1 : 1));
}

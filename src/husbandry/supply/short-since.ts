/** Who goes short in a room that lost something, against the room as it was to be. */
import type { DemandGroup } from '../appetite/index.ts';
import type { DayNumber } from '../calendar.ts';
import { takesDead } from '../prey/index.ts';
import type { Snapshot } from '../snapshot.ts';
import type { GroupAnswer } from './answer.ts';
import { type Judged, judge } from './cover.ts';
import { shelvesOf } from './shelf-stock.ts';
import { groupAnswers } from './summary.ts';

/** Heads of a bin that fit a group tonight. */
export interface InsteadOf {
  readonly bin: string;
  readonly species: string;
  readonly heads: number;
}

export interface ShortGroup
  extends Pick<GroupAnswer, 'key' | 'name' | 'urgency' | 'window' | 'animals' | 'heads'> {
  /** First day on which a due meal finds nothing that fits, the middle of those replicates in which one does. */
  readonly from: DayNumber;
  /** Chance that one finds nothing within the days looked at, and what it was to be. */
  readonly chance: number;
  readonly chanceBefore: number;
  readonly instead: readonly InsteadOf[];
}

export interface ShortSince {
  /** Days looked ahead. */
  readonly days: number;
  readonly replicates: number;
  readonly judged: Judged;
  /** Groups whose chance to run out rose by what is worth telling, the soonest first. */
  readonly groups: readonly { readonly answer: GroupAnswer; readonly short: ShortGroup }[];
}

/** The room as it is against the room as it was to be, on the same random numbers. */
export function shortSince(before: Snapshot, snapshot: Snapshot): ShortSince {
  const { policy } = snapshot.facts;
  const options = { days: policy.crashDays.value, replicates: policy.actReplicates.value, notesStock: false };
  const [was, judged] = [judge(before, options), judge(snapshot, options)];
  const chanceBefore = new Map(groupAnswers(was, policy).map(({ key, runOut }) => [key, runOut.chance]));
  const groups = groupAnswers(judged, policy).flatMap((answer) => {
    const known = chanceBefore.get(answer.key) ?? 0;
    const { day, chance } = answer.runOut;
    if (day === null || chance - known < policy.crashRise.value) return [];
    const { key, name, urgency, window, animals, heads } = answer;
    const group = judged.menu.groups.find((each) => each.key === key) as DemandGroup;
    const short: ShortGroup = {
      ...{ key, name, urgency, window, animals, heads, chance },
      from: Math.round(snapshot.today + day.mid),
      chanceBefore: known,
      instead: insteadFor(snapshot, group),
    };
    return [{ answer, short }];
  });
  const { days, replicates } = options;
  return { days, replicates, judged, groups: groups.sort((a, b) => sooner(a.short, b.short)) };
}

const sooner = (a: ShortGroup, b: ShortGroup): number =>
  a.from - b.from || b.chance - a.chance || (a.key < b.key ? -1 : 1);

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

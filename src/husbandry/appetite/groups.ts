/** Demand groups: animals that share a window, the prey they accept and their meal. */
import type { Eater, Kind, StageRule } from '../animals/index.ts';
import { type LengthWindow, windowFor } from '../prey/index.ts';
import type { Facts } from '../snapshot.ts';
import { plural } from '../words.ts';

export interface GroupMember {
  readonly animal: string;
  /** Whether the animal is in the group today, not only after a moult. */
  readonly now: boolean;
  readonly kind: Kind;
  readonly rule: StageRule;
  readonly eater: Eater;
}

export interface DemandGroup {
  readonly key: string;
  readonly name: string;
  readonly rule: StageRule;
  /** Animals that are in it today. */
  readonly animals: readonly string[];
  /** Window by species code: within that of every member; species without one are refused. */
  readonly windows: ReadonlyMap<string, LengthWindow>;
}

/** Groups the members; group i of the answer is groupOfMember's i. */
export function groupsOf(
  members: readonly GroupMember[],
  facts: Facts,
): { groups: DemandGroup[]; groupOfMember: Int32Array } {
  const keys = members.map((member) => groupKey(member, facts.policy.groupBandRatio.value));
  const order = [...new Set(keys)].sort();
  const index = new Map(order.map((key, i) => [key, i]));
  const byGroup: GroupMember[][] = order.map(() => []);
  members.forEach((member, i) => {
    byGroup[index.get(keys[i] as string) as number]?.push(member);
  });
  const groups = byGroup.map((group, i) => groupFrom(order[i] as string, group, facts));
  return { groups, groupOfMember: Int32Array.from(keys, (key) => index.get(key) as number) };
}

/** Same group, stage words, meal, window shares, prey, its caps and portions, and urgency; reference lengths within one band of a fixed ratio. */
function groupKey({ kind, rule, eater }: GroupMember, bandRatio: number): string {
  const band = Math.floor(Math.log(eater.referenceMm) / Math.log(bandRatio));
  const { min, ideal, max, killFirstAbove } = rule.window.value;
  const meal = rule.mealItems.value.join('-');
  return [
    kind.group,
    rule.words[0],
    band,
    meal,
    min,
    ideal,
    killFirstAbove,
    max,
    rule.accepts.join('+'),
    rule.gape?.headWidthShare.value ?? '',
    rule.refusesHard,
    rule.urgency,
    rule.portions.value,
    Object.entries(rule.shareCaps.value).sort().join('+'),
  ].join('|');
}

function groupFrom(key: string, members: readonly GroupMember[], facts: Facts): DemandGroup {
  const first = members[0] as GroupMember;
  const windows = new Map<string, LengthWindow>();
  for (const species of facts.species.values()) {
    const each = members.map(({ rule, eater }) => windowFor(rule, eater, species));
    if (each.every((window) => window !== null)) windows.set(species.code, common(each as LengthWindow[]));
  }
  const animals = [...new Set(members.filter(({ now }) => now).map(({ animal }) => animal))].sort();
  return { key, name: groupName(first), rule: first.rule, animals, windows };
}

/** What fits every member: the greatest minimum, the least maximum, the middle ideal. */
function common(windows: readonly LengthWindow[]): LengthWindow {
  const maxMm = Math.min(...windows.map((window) => window.maxMm));
  return {
    minMm: Math.max(...windows.map((window) => window.minMm)),
    idealMm: Math.min(maxMm, windows.reduce((sum, window) => sum + window.idealMm, 0) / windows.length),
    liveMaxMm: Math.min(maxMm, ...windows.map((window) => window.liveMaxMm)),
    maxMm,
  };
}

/** 'tarantula spiderlings', 'adult tarantulas', 'mantid nymphs', 'froglets'. */
function groupName({ kind, rule }: GroupMember): string {
  const word = rule.words[0] ?? rule.stage;
  const isNoun = rule.stage === 'young' || rule.stage === 'juvenile';
  if (word.startsWith(kind.group)) return plural(word);
  return isNoun ? `${kind.group} ${plural(word)}` : `${word} ${plural(kind.group)}`;
}

/** What is counted over replicates: meals, shortages, run-out days, prey eaten by length. */
import { bandOf, type WeekTally } from './week-tally.ts';

export interface Tally {
  readonly groups: number;
  readonly days: number;
  readonly replicates: number;
  /** Sums over replicates by group: meals due and late; missed for want of prey; animals so past their safe gap. */
  readonly due: Float64Array;
  readonly late: Float64Array;
  readonly missed: Float64Array;
  readonly dangers: Float64Array;
  /** Replicates in which the group missed a meal. */
  readonly replicatesMissed: Float64Array;
  /** Sums over replicates at [group * days + day], items of the ideal size: wanted, and not found on that day. */
  readonly wanted: Float64Array;
  readonly unmet: Float64Array;
  /** By replicate at [replicate * groups + group]: items wanted, meals missed, and day of run-out (`days` when none). */
  readonly itemsOf: Float64Array;
  readonly missedIn: Float64Array;
  readonly runOutOf: Int16Array;
  /** Items wanted at [(replicate * groups + group) * days + day]; null unless asked for. */
  readonly itemsByDay: Float32Array | null;
  /** Missed meals of each animal, summed over replicates; late, missed and dangerous meals of each replicate. */
  readonly missedByAnimal: Float64Array;
  readonly lateOf: Float64Array;
  readonly missedOf: Float64Array;
  readonly dangersOf: Float64Array;
  /** Of each replicate: meals missed and safe gaps passed though no evening found too little prey: nobody fed. */
  readonly unfedMissedOf: Float64Array;
  readonly unfedDangersOf: Float64Array;
  /** Heads eaten by band of prey length, summed over replicates, and the bands' edges. */
  readonly eatenByBand: Float64Array;
  readonly edgesMm: Float64Array;
  /** What is alive and eaten by week; null unless asked for. */
  readonly weekly: WeekTally | null;
  /** Heads a group could eat at [(replicate * groups + group) * days + day], of the first few replicates. */
  readonly stockOf: Float32Array;
  readonly stockReplicates: number;
  /** The replicate under way. */
  readonly now: {
    readonly items: Float64Array;
    readonly missed: Float64Array;
    readonly askedInVain: Uint8Array;
    replicate: number;
  };
}

export interface TallySize {
  readonly groups: number;
  readonly animals: number;
  readonly days: number;
  readonly replicates: number;
  readonly stockReplicates: number;
  readonly edgesMm: Float64Array;
  /** Whether the items of every day of every replicate are kept. */
  readonly keepDays?: boolean;
  readonly weekly?: WeekTally | null;
}

/** An empty tally. */
export function tallyFor(size: TallySize): Tally {
  const { groups, animals, days, replicates, stockReplicates, edgesMm } = size;
  const floats = (n: number) => new Float64Array(n);
  return {
    groups,
    days,
    replicates,
    due: floats(groups),
    late: floats(groups),
    missed: floats(groups),
    dangers: floats(groups),
    replicatesMissed: floats(groups),
    wanted: floats(groups * days),
    unmet: floats(groups * days),
    itemsOf: floats(groups * replicates),
    missedIn: floats(groups * replicates),
    runOutOf: new Int16Array(groups * replicates).fill(days),
    itemsByDay: size.keepDays ? new Float32Array(groups * replicates * days) : null,
    missedByAnimal: floats(animals),
    lateOf: floats(replicates),
    missedOf: floats(replicates),
    dangersOf: floats(replicates),
    unfedMissedOf: floats(replicates),
    unfedDangersOf: floats(replicates),
    eatenByBand: floats(Math.max(0, edgesMm.length - 1)),
    edgesMm,
    weekly: size.weekly ?? null,
    stockOf: new Float32Array(stockReplicates * groups * days),
    stockReplicates,
    now: {
      items: floats(groups),
      missed: floats(groups),
      askedInVain: new Uint8Array(animals),
      replicate: 0,
    },
  };
}

const add = (sums: Float64Array | Float32Array, at: number, amount: number): void => {
  sums[at] = (sums[at] as number) + amount;
};

/** Begins a replicate. */
export function openReplicate(tally: Tally, replicate: number): void {
  tally.now.replicate = replicate;
  tally.now.items.fill(0);
  tally.now.missed.fill(0);
  tally.now.askedInVain.fill(0);
}

/** A meal came due and wants items. */
export function countDue(
  tally: Tally,
  { group, day, items }: { group: number; day: number; items: number },
): void {
  add(tally.due, group, 1);
  add(tally.wanted, group * tally.days + day, items);
  add(tally.now.items, group, items);
  if (tally.itemsByDay) {
    const row = tally.now.replicate * tally.groups + group;
    add(tally.itemsByDay, row * tally.days + day, items);
  }
}

/** Several meals of a group came due, whose items are counted by day already. */
export function countMany(
  tally: Tally,
  group: number,
  { meals, items }: { meals: number; items: number },
): void {
  add(tally.due, group, meals);
  add(tally.now.items, group, items);
}

/** A meal found no prey today; counted on the first day that happens, once until the animal is served. */
export function countInVain(
  tally: Tally,
  { group, day, animal, items }: { group: number; day: number; animal: number; items: number },
): void {
  const at = tally.now.replicate * tally.groups + group;
  tally.runOutOf[at] = Math.min(tally.runOutOf[at] as number, day);
  if (tally.now.askedInVain[animal]) return;
  tally.now.askedInVain[animal] = 1;
  add(tally.unmet, group * tally.days + day, items);
}

/** Meals of one animal that are late, missed and dangerous since they were last counted. */
interface Overdue {
  readonly group: number;
  readonly animal: number;
  readonly late: number;
  readonly missed: number;
  readonly danger: number;
  /** How many of those missed were counted when they came due: of an animal that goes without, only the first. */
  readonly cameDue: number;
}

/** For want of prey, or because nobody fed. */
export function countOverdue(tally: Tally, { group, animal, late, missed, danger, cameDue }: Overdue): void {
  const r = tally.now.replicate;
  add(tally.late, group, late);
  add(tally.lateOf, r, late);
  if (!tally.now.askedInVain[animal]) {
    add(tally.unfedMissedOf, r, missed);
    add(tally.unfedDangersOf, r, danger);
    return;
  }
  add(tally.dangers, group, danger);
  add(tally.dangersOf, r, danger);
  add(tally.due, group, Math.max(0, missed - cameDue));
  add(tally.missed, group, missed);
  add(tally.missedOf, r, missed);
  add(tally.missedByAnimal, animal, missed);
  add(tally.now.missed, group, missed);
}

/** Prey of this length was eaten on a day. */
export function countEaten(tally: Tally, day: number, { lengthMm, heads }: Eaten): void {
  const { edgesMm, eatenByBand, weekly } = tally;
  if (edgesMm.length < 2) return;
  const band = bandOf(edgesMm, lengthMm);
  add(eatenByBand, band, heads);
  if (weekly) add(weekly.eaten, (weekly.weekOf[day] as number) * weekly.bands + band, heads);
}

interface Eaten {
  readonly lengthMm: number;
  readonly heads: number;
}

/** Ends a replicate. */
export function closeReplicate(tally: Tally): void {
  const { now, groups } = tally;
  for (let g = 0; g < groups; g++) {
    tally.itemsOf[now.replicate * groups + g] = now.items[g] as number;
    tally.missedIn[now.replicate * groups + g] = now.missed[g] as number;
    if ((now.missed[g] as number) > 0) add(tally.replicatesMissed, g, 1);
  }
}

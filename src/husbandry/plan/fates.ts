/**
 * Fates: what may become of the larder and of everything a plan could buy, each drawn as the daily engine draws it. The
 * engine's own larder is lived through without anybody eating; heads and lengths are noted at the middle of each period.
 * A bin that grows fast outgrows the small and one that grows slowly starves the large: no mean shows either.
 */
import { keyOfCode } from '../../maths/random.ts';
import { grouped } from '../grouped.ts';
import { KEPT_MM } from '../larder/index.ts';
import { larderFor, larderThrough, type Stock, stockOf } from '../supply/index.ts';
import { DAYS_PER_WEEK } from '../units.ts';
import { binsLaid } from './bins-laid.ts';
import { type Made, withPlan } from './deliver.ts';
import type { LaidOut } from './lay-out.ts';
import type { Nodes } from './nodes.ts';
import { middleOf } from './periods.ts';
import type { PlanProblem } from './problem.ts';
import type { Decisions } from './proposal.ts';

/** Heads that are there in any case, or come with each pack or cup of a decision. */
export interface Lot {
  readonly first: number;
  readonly slices: number;
  /** First period in which it is there in any fate. */
  readonly from: number;
  /** What brings it: a pack of a parcel, or a start with pack -1; null: nothing that is decided. */
  readonly by: { readonly at: number; readonly pack: number } | null;
}

export interface Fates {
  readonly periods: number;
  readonly eaters: number;
  readonly count: number;
  readonly slices: number;
  readonly lots: readonly Lot[];
  /** Heads if nobody eats, at [(fate * periods + period) * slices + slice]; and their fine node, -1 where nobody could eat. */
  readonly heads: Float64Array;
  readonly node: Int16Array;
  /** Items each eater wants, at [(fate * periods + period) * eaters + eater]. */
  readonly wanted: Float64Array;
}

/** The first fates of a room: those of the engine's first replicates. */
export function fatesOf(laid: LaidOut, problem: PlanProblem): Fates {
  const { facts, seed, today } = laid.snapshot;
  const count = facts.policy.planFates.value;
  const { periods } = laid;
  const days = periods.reduce((sum, period) => sum + period.days, 0);
  const made: Made = new Map();
  const room = withPlan(coarse(laid), oneOfEach(problem), made);
  const stock = stockOf(room, days, binsLaid(laid));
  const size = periods.length * stock.totalSlices;
  const heads = new Float64Array(count * size);
  const node = new Int16Array(count * size).fill(-1);
  const periodOn = new Map(periods.map((period, t) => [middleOf(period) - today, t]));
  const nodeAt = nodeFinder(laid, stock);
  const larder = larderFor(stock, room.facts.policy);
  const times = weeklyHatches(stock);
  for (let fate = 0; fate < count; fate++) {
    larderThrough(larder, { seed, replicate: fate, days }, (day) => {
      const t = periodOn.get(day);
      if (t === undefined) return;
      const at = fate * size + t * stock.totalSlices;
      for (let q = 0; q < stock.totalSlices; q++) {
        heads[at + q] = (larder.heads[q] as number) * (times[q] as number);
        node[at + q] = nodeAt(q, larder.lengthMm[q] as number);
      }
    });
  }
  return {
    periods: periods.length,
    eaters: laid.fine.eating.length,
    count,
    slices: stock.totalSlices,
    lots: lotsOf(stock, { problem, made, heads, count }).filter(({ from }) => from < periods.length),
    heads,
    node,
    wanted: wantedIn(laid, count),
  };
}

/** The room with fewer slices to each cohort. */
function coarse(laid: LaidOut): LaidOut {
  const { facts } = laid.snapshot;
  const slices = { ...facts.policy.slices, value: facts.policy.planFateSlices.value };
  return {
    ...laid,
    snapshot: { ...laid.snapshot, facts: { ...facts, policy: { ...facts.policy, slices } } },
  };
}

const oneOfEach = ({ parcels, starts }: PlanProblem): Decisions => ({
  packs: parcels.map(({ packs }) => packs.map(() => 1)),
  cups: starts.map(() => 1),
});

/** Finds the node of all places a slice of some length belongs to; -1: nobody is to be fed it. */
function nodeFinder(
  { places, fine: { nodes, placeOf: fineOf } }: LaidOut,
  stock: Stock,
): (slice: number, mm: number) => number {
  const first = nodes.map((_, p) => nodes.slice(0, p).reduce((sum, { all }) => sum + all.length, 0));
  const placeOfBin = stock.bins.map(({ bin }) =>
    places.findIndex(
      (place) =>
        place.bins.some((each) => each.bin.code === bin.code) || (place.into ?? place.bin.code) === bin.code,
    ),
  );
  const buying = new Map(places.map((place, p) => [`${place.into ?? place.bin.code}`, p]));
  const placeOf = new Int16Array(stock.totalSlices);
  for (const { bin, kind, firstSlice, slices } of stock.cohorts) {
    const code = stock.bins[bin]?.bin.code ?? '';
    const p = kind === 'delivered' ? (buying.get(code) ?? placeOfBin[bin]) : placeOfBin[bin];
    placeOf.fill(fineOf[p ?? -1] ?? -1, firstSlice, firstSlice + slices);
  }
  return (slice, mm) => {
    const p = placeOf[slice] as number;
    if (p < 0 || mm <= 0 || mm >= KEPT_MM) return -1;
    const n = nodeOfLength(nodes[p] as Nodes, mm);
    return n < 0 ? -1 : (first[p] as number) + n;
  };
}

/** Adults where it is as long as they are, else the band. */
function nodeOfLength({ all }: Nodes, mm: number): number {
  const adult = all.findIndex((node) => node.kind === 'adult' && mm >= node.fromMm);
  if (adult >= 0) return adult;
  return all.findIndex(({ kind, fromMm, toMm }) => kind === 'band' && fromMm <= mm && mm < toMm);
}

interface Lotting {
  readonly problem: PlanProblem;
  readonly made: Made;
  readonly heads: Float64Array;
  readonly count: number;
}

function lotsOf(stock: Stock, { problem, made, heads, count }: Lotting): Lot[] {
  const byCode = new Map<string, Lot['by']>();
  problem.parcels.forEach(({ packs }, at) => {
    for (const [pack, { key }] of packs.entries()) byCode.set(key, { at, pack });
  });
  for (const [at, { key }] of problem.starts.entries()) byCode.set(key, { at, pack: -1 });
  const byKey = new Map(
    [...made.values()].map(({ code }) => [keyOfCode(code), byCode.get(code.split('+')[0] ?? '')]),
  );
  const periods = heads.length / count / Math.max(1, stock.totalSlices);
  return stock.cohorts.map(({ firstSlice, slices, kind, key }) => ({
    first: firstSlice,
    slices,
    from: firstPeriod({ heads, count, periods, slices: stock.totalSlices }, firstSlice),
    by: kind === 'delivered' ? (byKey.get(key) ?? null) : null,
  }));
}

/**
 * Heads by slice as a multiple of what the engine has: what hatches in a bin within a week is counted with the middle
 * of its days, the other days are left out.
 */
function weeklyHatches({ cohorts, totalSlices }: Stock): Float64Array {
  const times = new Float64Array(totalSlices).fill(1);
  const headsOf = (c: Stock['cohorts'][number]) => c.nodes[Math.floor(c.nodes.length / 2)]?.heads ?? 0;
  const byWeek = grouped(
    cohorts.filter(({ kind }) => kind === 'hatched'),
    ({ bin, arrives }) => `${bin} ${Math.floor(arrives / DAYS_PER_WEEK)}`,
  );
  for (const days of byWeek.values()) {
    const middle = days[Math.floor(days.length / 2)] as Stock['cohorts'][number];
    const all = days.reduce((sum, day) => sum + headsOf(day), 0);
    for (const day of days) {
      const factor = day === middle && headsOf(middle) > 0 ? all / headsOf(middle) : 0;
      times.fill(factor, day.firstSlice, day.firstSlice + day.slices);
    }
  }
  return times;
}

function firstPeriod(
  { heads, count, periods, slices }: { heads: Float64Array; count: number; periods: number; slices: number },
  slice: number,
): number {
  for (let t = 0; t < periods; t++)
    for (let fate = 0; fate < count; fate++)
      if ((heads[(fate * periods + t) * slices + slice] as number) > 0) return t;
  return periods;
}

function wantedIn({ fine: { eating }, periods }: LaidOut, count: number): Float64Array {
  const wanted = new Float64Array(count * periods.length * eating.length);
  for (let fate = 0; fate < count; fate++)
    periods.forEach((_, t) => {
      eating.forEach(({ byReplicate }, e) => {
        wanted[(fate * periods.length + t) * eating.length + e] = byReplicate[t]?.[fate] ?? 0;
      });
    });
  return wanted;
}

/**
 * Fates: what may become of the larder and of everything a plan could buy, each drawn as the daily engine draws it. The
 * engine's own larder is lived through without anybody eating; heads and lengths are noted at the middle of each period.
 * A bin that grows fast outgrows the small and one that grows slowly starves the large: no mean shows either.
 */
import { keyOfCode } from '../../maths/random.ts';
import { grouped } from '../grouped.ts';
import type { Policy } from '../policy.ts';
import { larderFor, larderThrough, type Stock, stockOf } from '../supply/index.ts';
import { DAYS_PER_WEEK } from '../units.ts';
import { binsLaid } from './bins-laid.ts';
import { type Made, withPlan } from './deliver.ts';
import type { LaidOut } from './lay-out.ts';
import { countedOn, type Nodes } from './nodes.ts';
import { middleOf } from './periods.ts';
import type { PlanProblem } from './problem.ts';
import type { Decisions } from './proposal.ts';

/** What brings a lot: a pack of a parcel, or a start with pack -1; null: nothing that is decided. */
export type BroughtBy = { readonly at: number; readonly pack: number } | null;

export interface Fates {
  readonly periods: number;
  readonly eaters: number;
  readonly count: number;
  readonly slices: number;
  readonly lots: readonly BroughtBy[];
  /** Where what there is of a lot begins, at [(fate * periods + period) * lots + lot]; it ends where the next begins. */
  readonly from: Int32Array;
  /** Of each slice that somebody could eat of, or that breeds: which it is, its fine node, and its heads if nobody eats. */
  readonly slice: Int32Array;
  readonly node: Int32Array;
  readonly heads: Float64Array;
  /** Items each eater wants, at [(fate * periods + period) * eaters + eater]. */
  readonly wanted: Float64Array;
}

/** The first fates of a room: those of the engine's first replicates. */
export function fatesOf(laid: LaidOut, problem: PlanProblem): Fates {
  const { facts, seed, today } = laid.snapshot;
  const { periods } = laid;
  const count = countFor(periods.length, facts.policy);
  const days = periods.reduce((sum, period) => sum + period.days, 0);
  const made: Made = new Map();
  const room = withPlan(coarse(laid), oneOfEach(problem), made);
  const stock = stockOf(room, days, binsLaid(laid));
  const [from, slice, node, heads]: [number[], number[], number[], number[]] = [[], [], [], []];
  const middles = new Set(periods.map((period) => middleOf(period) - today));
  const nodeAt = nodeFinder(laid, stock);
  const larder = larderFor(stock, room.facts.policy);
  const times = weeklyHatches(stock);
  for (let fate = 0; fate < count; fate++) {
    larderThrough(larder, { seed, replicate: fate, days }, (day) => {
      if (!middles.has(day)) return;
      for (const { firstSlice, slices } of stock.cohorts) {
        from.push(slice.length);
        for (let q = firstSlice; q < firstSlice + slices; q++) {
          const n = nodeAt(q, larder.lengthMm[q] as number);
          const there = (larder.heads[q] as number) * (times[q] as number);
          if (n < 0 || there <= 0) continue;
          slice.push(q);
          node.push(n);
          heads.push(there);
        }
      }
    });
  }
  return {
    periods: periods.length,
    eaters: laid.fine.eating.length,
    count,
    slices: stock.totalSlices,
    lots: broughtBy(stock, problem, made),
    from: Int32Array.from([...from, slice.length]),
    slice: Int32Array.from(slice),
    node: Int32Array.from(node),
    heads: Float64Array.from(heads),
    wanted: wantedIn(laid, count),
  };
}

function countFor(periods: number, { planFates, planFatesLeast, planFateWeeks }: Policy): number {
  const bearable = Math.max(planFatesLeast.value, planFateWeeks.value / periods);
  return Math.round(Math.min(planFates.value, bearable));
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

const oneOfEach = ({ parcels, starts, rests }: PlanProblem): Decisions => ({
  packs: parcels.map(({ packs }) => packs.map(() => 1)),
  cups: starts.map(() => 1),
  rests: rests.map(() => 0),
});

/** Finds the node of all places a slice of some length belongs to; -1: none. */
function nodeFinder(
  { places, fine: { nodes, placeOf: fineOf } }: LaidOut,
  stock: Stock,
): (slice: number, mm: number) => number {
  const { first } = countedOn(nodes);
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
    if (p < 0 || mm <= 0) return -1;
    const n = nodeOfLength(nodes[p] as Nodes, mm);
    return n < 0 ? -1 : (first[p] as number) + n;
  };
}

/** Adults where it is as long as they are, or kept to breed, which is longer than all; else the band. */
function nodeOfLength({ all }: Nodes, mm: number): number {
  const adult = all.findIndex((node) => node.kind === 'adult' && mm >= node.fromMm);
  if (adult >= 0) return adult;
  return all.findIndex(({ kind, fromMm, toMm }) => kind === 'band' && fromMm <= mm && mm < toMm);
}

/** What brings each cohort of the stock. */
function broughtBy({ cohorts }: Stock, { parcels, starts }: PlanProblem, made: Made): BroughtBy[] {
  const byCode = new Map<string, BroughtBy>();
  parcels.forEach(({ packs }, at) => {
    for (const [pack, { key }] of packs.entries()) byCode.set(key, { at, pack });
  });
  for (const [at, { key }] of starts.entries()) byCode.set(key, { at, pack: -1 });
  const byKey = new Map(
    [...made.values()].map(({ code }) => [keyOfCode(code), byCode.get(code.split('+')[0] ?? '')]),
  );
  return cohorts.map(({ kind, key }) => (kind === 'delivered' ? (byKey.get(key) ?? null) : null));
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

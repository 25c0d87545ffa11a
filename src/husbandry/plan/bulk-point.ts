/** What becomes of a box of so many packs that is ordered alone: eaten, dead, outgrown or left, and what it costs. */
import type { Offer } from '../orders/index.ts';
import type { BulkEnd, BulkPoint, BulkWeek } from './bulk-answer.ts';
import type { LaidOut } from './lay-out.ts';
import { flowsOf } from './lived.ts';
import { type Living, livingOf } from './living.ts';
import { parcelCost } from './parcel-cost.ts';
import type { PlanParcel, PlanPlace } from './problem.ts';
import type { Decisions } from './proposal.ts';
import { type Traced, traced } from './traced.ts';

/** One offer in one parcel of a room that is laid out. */
export interface Line {
  readonly laid: LaidOut;
  readonly living: Living;
  readonly i: number;
  readonly j: number;
  readonly pack: PlanParcel['packs'][number];
  /** By node, whether a head there may still be eaten some day. */
  readonly mayFeed: readonly boolean[];
}

/** The line of an offer in the first parcel it can come in; null where there is none. */
export function lineOf(laid: LaidOut, offer: string): Line | null {
  const isOf = ({ key }: { key: string }) => key.startsWith(`order:${offer}@`);
  const i = laid.problem.parcels.findIndex(({ packs }) => packs.some(isOf));
  const packs = laid.problem.parcels[i]?.packs ?? [];
  const j = packs.findIndex(isOf);
  const pack = packs[j];
  if (!pack) return null;
  return { laid, living: livingOf(laid.problem), i, j, pack, mayFeed: mayFeedIn(laid, pack.place) };
}

/** Nodes of a place that somebody eats, and all that grow into one. */
function mayFeedIn({ problem }: LaidOut, at: number): boolean[] {
  const { nodes, passes } = problem.places[at] as PlanPlace;
  const may = Array<boolean>(nodes).fill(false);
  for (const { fare } of problem.eaters)
    for (const { place, node } of fare) if (place === at) may[node] = true;
  const [pass = []] = passes;
  const grows = (from: number) => pass.some((row, to) => may[to] && (row[from] as number) > LEAST);
  for (let round = 0; round < nodes; round++)
    for (let from = 0; from < nodes; from++) may[from] ||= grows(from);
  return may;
}

/** Less than this of a head is nobody. */
const LEAST = Math.sqrt(Number.EPSILON);

/** Every count of packs the supplier sends alone, up to where a head that is eaten costs twice the least. */
export function pointsOf(line: Line): BulkPoint[] {
  const { laid, pack } = line;
  const most = Math.min(Math.floor(pack.most), laid.snapshot.facts.policy.bulkPacksMost.value);
  const points: BulkPoint[] = [];
  let cheapest = Number.POSITIVE_INFINITY;
  let before = { cents: 0, eaten: 0 };
  for (let count = 1; count <= most; count++) {
    if (isTooSmall(line, count)) continue;
    const point = pointAt(line, count);
    const more = point.eaten - before.eaten;
    points.push({
      ...point,
      centsPerMoreEaten: more > LEAST ? (point.cents - before.cents) / more : null,
    });
    before = point;
    cheapest = Math.min(cheapest, point.centsPerEaten ?? cheapest);
    const isPast = (point.centsPerEaten ?? 0) > 2 * cheapest;
    if (isPast && count >= (pack.breaks[pack.breaks.length - 1]?.fromPacks ?? 1)) break;
  }
  return points;
}

/** Why there is no point beyond the last. */
export function endOf({ laid, pack }: Line, offer: Pick<Offer, 'mostPacks'>, last: number): BulkEnd {
  if (last < Math.min(Math.floor(pack.most), laid.snapshot.facts.policy.bulkPacksMost.value)) return 'dear';
  if (last < Math.floor(pack.most)) return 'not worked out';
  return offer.mostPacks !== null && last >= offer.mostPacks ? 'no more' : 'no use';
}

/** Whether the supplier does not send so little by itself. */
function isTooSmall({ laid, i, j }: Line, count: number): boolean {
  const parcel = laid.problem.parcels[i] as PlanParcel;
  return parcelCost(parcel, alone(j, count)).goods < parcel.minimumCents;
}

const alone = (j: number, count: number): number[] =>
  Array.from({ length: j + 1 }, (_, k) => (k === j ? count : 0));

function pointAt(line: Line, count: number): Omit<BulkPoint, 'centsPerMoreEaten'> {
  const { laid, i, j, pack } = line;
  const { goods, postage } = parcelCost(laid.problem.parcels[i] as PlanParcel, alone(j, count));
  const { eatenHeads: eaten, stays, leftHeads } = followed(line, count);
  const heads = count * sumOf(pack.brings);
  const left = sumOf(leftHeads, line.mayFeed);
  const outgrown = outgrownOf(line, count, stays);
  return {
    packs: count,
    heads,
    cents: goods + postage,
    eaten,
    died: Math.max(0, heads - eaten - left - outgrown),
    outgrown,
    left,
    centsPerEaten: eaten > LEAST ? (goods + postage) / eaten : null,
  };
}

const sumOf = (heads: Float64Array, counted?: readonly boolean[]): number =>
  heads.reduce((sum, n, node) => (counted === undefined || counted[node] ? sum + n : sum), 0);

/** So many packs and no other order. */
export const decidedOf = ({ laid: { problem }, i, j }: Line, count: number): Decisions => ({
  packs: problem.parcels.map(({ packs }, at) => packs.map((_, k) => (at === i && k === j ? count : 0))),
  cups: problem.starts.map(() => 0),
  rests: problem.rests.map(({ least }) => least),
});

/** Who eats of them, and what stays. */
function followed(line: Line, count: number): Traced {
  const { laid, living, pack } = line;
  const flows = flowsOf(living, decidedOf(line, count));
  return traced(laid.problem, flows, { place: pack.place, comes: comesOf(line, count) });
}

const comesOf = ({ laid: { periods, problem }, i, pack }: Line, count: number) =>
  periods.map((_, t) =>
    t === problem.parcels[i]?.period
      ? pack.brings.map((heads) => heads * count)
      : new Float64Array(pack.brings.length),
  );

/** Heads that came, or grew, past everything that is ever eaten here, alive or dead by now. */
function outgrownOf({ laid, pack, mayFeed }: Line, count: number, stays: Traced['stays']): number {
  const { passes } = laid.problem.places[pack.place] as PlanPlace;
  const tooLarge = mayFeed.map((may) => !may);
  const grown = passes.reduce((sum, pass, t) => {
    const from = (stays[t] as Float64Array).map((heads, node) => (mayFeed[node] ? heads : 0));
    const now = Float64Array.from(pass, (row) =>
      row.reduce((all, share, node) => all + share * (from[node] ?? 0), 0),
    );
    return sum + sumOf(now, tooLarge);
  }, 0);
  return grown + count * sumOf(pack.brings, tooLarge);
}

/** Where the heads of so many packs are week by week, after the meals, by length; adults last. */
export function weeksOf(line: Line, count: number): BulkWeek[] {
  const { laid, i, pack } = line;
  const nodes = laid.nodes[pack.place]?.all ?? [];
  const first = laid.problem.parcels[i]?.period ?? 0;
  const { stays } = followed(line, count);
  return laid.periods.flatMap(({ from }, t) =>
    t < first
      ? []
      : [
          {
            day: from,
            bands: nodes.flatMap(({ kind, fromMm, toMm }, n) =>
              kind === 'unfed' ? [] : [{ fromMm, toMm, heads: stays[t]?.[n] ?? 0 }],
            ),
          },
        ],
  );
}

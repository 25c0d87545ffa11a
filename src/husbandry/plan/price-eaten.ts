/** What one head that is eaten costs: of its line's goods and its share of the postage. */
import type { Cents } from '../orders/index.ts';
import type { PlanLine } from './answer.ts';
import { parcelCost } from './parcel-cost.ts';
import type { PlanProblem } from './problem.ts';
import type { Decisions } from './proposal.ts';
import type { Traced } from './traced.ts';

type Bought = Extract<PlanLine, { what: 'order' | 'start' }>;

interface Priced {
  readonly problem: PlanProblem;
  readonly proposal: Pick<Decisions, 'packs'>;
  readonly place: number;
  readonly trace: Pick<Traced, 'eatenHeads' | 'leftHeads'>;
}

/**
 * What is left at the end of the plan and still fits somebody counts as eaten; null where that is more than was eaten,
 * since nobody knows yet what becomes of it, and where nothing is eaten at all.
 */
export function centsPerEaten(line: Bought, { problem, proposal, place, trace }: Priced): Cents | null {
  const { eatenHeads, leftHeads } = trace;
  const fits = new Set(
    problem.eaters.flatMap(({ end }) => end.fare.flatMap((each) => (each.place === place ? each.node : []))),
  );
  const left = leftHeads.reduce((sum, heads, node) => sum + (fits.has(node) ? heads : 0), 0);
  if (eatenHeads <= left) return null;
  return (line.cents + postageOf(line, problem, proposal)) / (eatenHeads + left);
}

/** The postage of a parcel falls on its lines by their price. */
function postageOf(line: Bought, { parcels }: PlanProblem, { packs }: Pick<Decisions, 'packs'>): Cents {
  const at = parcels.findIndex((parcel) => parcel.packs.some(({ key }) => key === line.key));
  const parcel = parcels[at];
  if (!parcel) return 0;
  const { goods, postage } = parcelCost(parcel, packs[at] ?? []);
  return goods > 0 ? (postage * line.cents) / goods : 0;
}

/** What the parcels and cups of a plan cost, told again from their packs. */
import type { Cents } from '../orders/index.ts';
import type { PlanPack, PlanParcel, PlanProblem } from './problem.ts';
import type { Decisions } from './proposal.ts';

export interface ParcelCost {
  readonly goods: Cents;
  readonly postage: Cents;
  /** The keeper's time. */
  readonly labour: Cents;
}

/** Price of one pack when so many are bought. */
export function breakCents({ breaks }: Pick<PlanPack, 'breaks'>, packs: number): Cents {
  const reached = breaks.filter(({ fromPacks }) => fromPacks <= packs);
  return (reached[reached.length - 1] ?? breaks[0])?.cents ?? 0;
}

/** An empty parcel is not sent. */
export function parcelCost(parcel: PlanParcel, packs: readonly number[]): ParcelCost {
  if (!packs.some((count) => count > 0)) return { goods: 0, postage: 0, labour: 0 };
  let goods = 0;
  let weight = 0;
  let lines = 0;
  parcel.packs.forEach((pack, j) => {
    const count = packs[j] ?? 0;
    if (count <= 0) return;
    goods += count * breakCents(pack, count);
    weight += count * pack.weightCents;
    lines += pack.lineCents;
  });
  const isFree = parcel.freeFromCents !== null && goods >= parcel.freeFromCents;
  return {
    goods,
    postage: isFree ? 0 : parcel.postageCents + weight,
    labour: parcel.labourCents + lines,
  };
}

/** What all decisions cost. */
export const decisionsCost = (
  { parcels, starts, rests: alone }: PlanProblem,
  { packs, cups, rests }: Decisions,
): Cents =>
  parcels.reduce((sum, parcel, i) => {
    const { goods, postage, labour } = parcelCost(parcel, packs[i] ?? []);
    return sum + goods + postage + labour;
  }, 0) +
  starts.reduce((sum, { cents }, i) => sum + cents * (cups[i] ?? 0), 0) +
  alone.reduce((sum, { cents, least }, i) => sum + cents * ((rests[i] ?? least) - least), 0);

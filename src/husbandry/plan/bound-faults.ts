/** Decisions outside of their bounds, whatever comes of them: packs, cups, and periods in which a place is left alone. */
import { exceeds, type Fault } from './fault.ts';
import { parcelCost } from './parcel-cost.ts';
import type { PlanParcel, PlanProblem } from './problem.ts';
import type { Proposal } from './proposal.ts';

export function parcelFaults(parcel: PlanParcel, packs: readonly number[], slack: number): Fault[] {
  const each = parcel.packs.flatMap((pack, j) => countFaults(pack, packs[j] ?? 0, 'packs'));
  const { goods } = parcelCost(parcel, packs);
  const short = goods > 0 && exceeds(parcel.minimumCents, goods, slack);
  return short
    ? [
        ...each,
        { what: 'minimum', sentence: `${parcel.key}: goods of ${goods}, at least ${parcel.minimumCents}.` },
      ]
    : each;
}

export const startFaults = ({ starts }: PlanProblem, { cups }: Proposal): Fault[] =>
  starts.flatMap((start, i) => countFaults(start, cups[i] ?? 0, 'cups'));

export const restFaults = ({ rests }: PlanProblem, { rests: counts }: Proposal): Fault[] =>
  rests.flatMap((rest, i) => countFaults(rest, counts[i] ?? 0, 'periods'));

interface Bounded {
  readonly key: string;
  readonly least: number;
  readonly most: number;
}

function countFaults({ key, least, most }: Bounded, count: number, unit: string): Fault[] {
  if (!Number.isInteger(count)) return [{ what: 'whole', sentence: `${key}: ${count} ${unit}.` }];
  return count < least || count > most
    ? [{ what: 'bounds', sentence: `${key}: ${count} ${unit}, from ${least} to ${most} can be.` }]
    : [];
}

/** Decisions outside of their bounds, whatever comes of them: packs, cups, and periods in which a place is left alone. */
import { exceeds, type Fault } from './fault.ts';
import { parcelCost } from './parcel-cost.ts';
import type { PlanParcel, PlanProblem } from './problem.ts';
import type { Proposal } from './proposal.ts';

export function parcelFaults(parcel: PlanParcel, packs: readonly number[], slack: number): Fault[] {
  const each = parcel.packs.flatMap(({ key, least, most }, j): Fault[] => {
    const count = packs[j] ?? 0;
    if (!Number.isInteger(count)) return [{ what: 'whole', sentence: `${key}: ${count} packs.` }];
    return count < least || count > most
      ? [{ what: 'bounds', sentence: `${key}: ${count} packs, from ${least} to ${most} can be had.` }]
      : [];
  });
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
  starts.flatMap(({ key, least, most }, i): Fault[] => {
    const count = cups[i] ?? 0;
    if (!Number.isInteger(count)) return [{ what: 'whole', sentence: `${key}: ${count} cups.` }];
    return count < least || count > most
      ? [{ what: 'bounds', sentence: `${key}: ${count} cups, from ${least} to ${most} can be.` }]
      : [];
  });

export const restFaults = ({ rests }: PlanProblem, { rests: counts }: Proposal): Fault[] =>
  rests.flatMap(({ key, least, most }, i): Fault[] => {
    const count = counts[i] ?? 0;
    if (!Number.isInteger(count)) return [{ what: 'whole', sentence: `${key}: ${count} periods.` }];
    return count < least || count > most
      ? [{ what: 'bounds', sentence: `${key}: ${count} periods, from ${least} to ${most} can be.` }]
      : [];
  });

/** Pins and starts a plan can meet: the last word before it is made; what stands against what is told by `wish-trouble`. */
import { parcelCost } from './parcel-cost.ts';
import type { PlanPack, PlanParcel, PlanProblem } from './problem.ts';
import type { Decisions } from './proposal.ts';

/** The problem without those pins that no plan can meet: they pass the budget, or their parcel cannot reach its minimum. */
export function meetable(problem: PlanProblem): PlanProblem {
  const spent = new Float64Array(problem.budget.length);
  const fits = (week: number, cents: number): boolean => {
    const sum = (spent[week] as number) + cents;
    if (sum > (problem.budget[week] ?? Number.POSITIVE_INFINITY)) return false;
    spent[week] = sum;
    return true;
  };
  const parcels = problem.parcels.map((parcel): PlanParcel => {
    const row = insisted(parcel);
    if (parcelCost(parcel, row).goods >= parcel.minimumCents && fits(parcel.paid, paidFor(parcel, row)))
      return parcel;
    if (!row.some((count) => count > 0)) return parcel;
    return { ...parcel, packs: parcel.packs.map((pack): PlanPack => ({ ...pack, least: 0 })) };
  });
  const starts = problem.starts.map((start) =>
    fits(start.paid, start.least * start.cents) ? start : { ...start, least: 0 },
  );
  return { ...problem, parcels, starts };
}

const paidFor = (parcel: PlanParcel, row: readonly number[]): number => {
  const { goods, postage } = parcelCost(parcel, row);
  return goods + postage;
};

/** What is insisted on, and what must be bought with it. */
const insisted = (parcel: PlanParcel): number[] => {
  const row = parcel.packs.map(({ least }) => least);
  return filled(parcel, row);
};

/** Packs added up to the minimum, or to all there are; an empty parcel stays empty. */
function filled(parcel: PlanParcel, row: readonly number[]): number[] {
  const more = [...row];
  if (!row.some((count) => count > 0)) return more;
  const order = [...row.keys()].sort((a, b) => Number(row[a] === 0) - Number(row[b] === 0) || a - b);
  for (const j of order) {
    const most = Math.floor(parcel.packs[j]?.most ?? 0);
    while ((more[j] as number) < most && parcelCost(parcel, more).goods < parcel.minimumCents)
      more[j] = (more[j] as number) + 1;
  }
  return more;
}

/** Whether somewhere the budget of a week is all that forbids another pack, with what its parcel must hold besides. */
export const isSpent = (problem: PlanProblem, decided: Decisions): boolean =>
  problem.parcels.some((parcel, i) => {
    const row = decided.packs[i] ?? [];
    const others = spentIn(problem, decided, parcel.paid) - paidFor(parcel, row);
    const most = problem.budget[parcel.paid] ?? Number.POSITIVE_INFINITY;
    return parcel.packs.some(({ most: there }, j) => {
      const more = row.map((count, k) => (k === j ? count + 1 : count));
      return (row[j] ?? 0) < Math.floor(there) && others + paidFor(parcel, filled(parcel, more)) > most;
    });
  });

function spentIn({ parcels, starts }: PlanProblem, { packs, cups }: Decisions, t: number): number {
  const bought = parcels.reduce(
    (sum, parcel, i) => sum + (parcel.paid === t ? paidFor(parcel, packs[i] ?? []) : 0),
    0,
  );
  return starts.reduce((sum, { paid, cents }, i) => sum + (paid === t ? cents * (cups[i] ?? 0) : 0), bought);
}

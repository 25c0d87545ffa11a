/** Which decisions can be carried out: whole numbers within bounds, minimum orders, budgets; and the nearest that can. */
import { breakCents, parcelCost } from './parcel-cost.ts';
import type { PlanParcel, PlanProblem } from './problem.ts';
import type { Decisions } from './proposal.ts';

interface Draft {
  readonly packs: number[][];
  readonly cups: number[];
  readonly rests: readonly number[];
}

/** Whether whole packs, cups and rests keep their bounds, every parcel its minimum and every week its budget. */
export function isAllowed(problem: PlanProblem, decided: Decisions): boolean {
  const { parcels, starts, rests } = problem;
  return (
    parcels.every((parcel, i) => isSendable(parcel, decided.packs[i] as readonly number[])) &&
    starts.every((start, i) => isWithin(start, decided.cups[i] as number)) &&
    rests.every((rest, i) => isWithin(rest, decided.rests[i] as number)) &&
    overspentIn(problem, decided) < 0
  );
}

const isWithin = ({ least, most }: { least: number; most: number }, count: number): boolean =>
  count >= least && count <= most;

/** Within the bounds of its packs and not below its minimum. */
function isSendable(parcel: PlanParcel, row: readonly number[]): boolean {
  if (!parcel.packs.every((pack, j) => isWithin(pack, row[j] as number))) return false;
  const { goods } = parcelCost(parcel, row);
  return goods <= 0 || goods >= parcel.minimumCents;
}

/** The first week in which more is paid than may be; -1: none. */
function overspentIn(
  { parcels, starts, budget }: PlanProblem,
  { packs, cups }: Pick<Decisions, 'packs' | 'cups'>,
): number {
  const spent = new Float64Array(budget.length);
  parcels.forEach((parcel, i) => {
    const { goods, postage } = parcelCost(parcel, packs[i] as readonly number[]);
    spent[parcel.paid] = (spent[parcel.paid] as number) + goods + postage;
  });
  starts.forEach(({ cents, paid }, i) => {
    spent[paid] = (spent[paid] as number) + (cups[i] as number) * cents;
  });
  return spent.findIndex((cents, t) => cents > (budget[t] as number));
}

/**
 * Decisions brought to what can be carried out: rounded into their bounds, parcels below their minimum filled up or left
 * out, and where a budget is passed the last parcels paid from it cut down to what they must hold. Pins that no
 * supplier or budget allows stay as they are.
 */
export function allowedFrom(problem: PlanProblem, { packs, cups, rests }: Decisions): Decisions {
  const { parcels, starts } = problem;
  const draft: Draft = {
    packs: parcels.map((parcel, i) =>
      sendable(
        parcel,
        parcel.packs.map((pack, j) => into(pack, packs[i]?.[j] ?? 0)),
      ),
    ),
    cups: starts.map((start, i) => into(start, cups[i] ?? 0)),
    rests: problem.rests.map((rest, i) => into(rest, rests[i] ?? 0)),
  };
  for (let t = overspentIn(problem, draft); t >= 0 && cutDown(problem, draft, t); )
    t = overspentIn(problem, draft);
  return draft;
}

const into = ({ least, most }: { least: number; most: number }, count: number): number =>
  Math.max(least, Math.min(Math.floor(most), Math.round(count)));

/** Cuts the last parcel paid in a week, or else its cups, down to the least; false where none can be. */
function cutDown({ parcels, starts }: PlanProblem, draft: Draft, t: number): boolean {
  for (let i = parcels.length - 1; i >= 0; i--) {
    const parcel = parcels[i] as PlanParcel;
    if (parcel.paid !== t) continue;
    const row = draft.packs[i] as number[];
    const least = sendable(parcel, leastOf(parcel));
    if (row.every((count, j) => count === least[j])) continue;
    draft.packs[i] = least;
    return true;
  }
  const started = starts.findIndex(({ paid, least }, i) => paid === t && (draft.cups[i] as number) > least);
  if (started < 0) return false;
  draft.cups[started] = starts[started]?.least ?? 0;
  return true;
}

const leastOf = ({ packs }: PlanParcel): number[] => packs.map(({ least }) => least);

/** A row that reaches the parcel's minimum: filled up with what is in it already, then with the rest; else the least. */
function sendable(parcel: PlanParcel, row: readonly number[]): number[] {
  const goods = parcelCost(parcel, row).goods;
  if (goods <= 0 || goods >= parcel.minimumCents) return [...row];
  const order = [...row.keys()].sort(
    (a, b) => Number((row[b] ?? 0) > 0) - Number((row[a] ?? 0) > 0) || a - b,
  );
  const filled = [...row];
  for (const j of order) if (fillUp(parcel, filled, j)) return filled;
  const least = leastOf(parcel);
  return least.some((count) => count > 0) && row.some((count, j) => count > (least[j] as number))
    ? sendable(parcel, least)
    : least;
}

/** Adds packs of one line until the minimum is reached; whether it is. */
function fillUp(parcel: PlanParcel, row: number[], j: number): boolean {
  const pack = parcel.packs[j] as PlanParcel['packs'][number];
  const missing = () => parcel.minimumCents - parcelCost(parcel, row).goods;
  for (let rest = missing(); rest > 0 && (row[j] as number) < Math.floor(pack.most); rest = missing()) {
    const had = row[j] as number;
    const more = Math.max(1, Math.floor(rest / Math.max(1, breakCents(pack, had + 1))));
    row[j] = Math.min(Math.floor(pack.most), had + more);
  }
  return missing() <= 0;
}

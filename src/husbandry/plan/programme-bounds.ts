/** Rows of the programme that bound it: room, breeders, what the end is worth, what may be spent. */
import type { Row } from '../../maths/linear-programme.ts';
import type { Columns } from './columns.ts';
import type { PlanPlace, PlanProblem } from './problem.ts';
import type { Laid } from './programme.ts';

interface Building {
  readonly columns: Columns;
  readonly rows: Row[];
}

/** Room for what is left, and breeders that stay. */
export function boundRows(
  { room, floor, nodes }: PlanPlace,
  left: readonly number[],
  { columns, rows }: Building,
): void {
  left.forEach((first, t) => {
    const all = Array.from({ length: nodes }, (_, n) => first + n);
    if (room)
      rows.push({
        least: Number.NEGATIVE_INFINITY,
        most: room.most,
        columns: all,
        factors: Array.from(room.footprint),
      });
    const least = floor?.least[t] ?? 0;
    if (floor && least > 0) {
      const missing = columns.one({ worth: floor.cents, most: least });
      rows.push({
        least,
        most: Number.POSITIVE_INFINITY,
        columns: [...all, missing],
        factors: [...floor.counts, 1],
      });
    }
  });
}

/** What is left at the end is worth what it will save, up to what will still be wanted while it lasts. */
export function endRows(
  { eaters, places, periods }: PlanProblem,
  { left }: Pick<Laid, 'left'>,
  { columns, rows }: Building,
): void {
  const drawn = places.map(({ nodes }) => Array.from({ length: nodes }, (): number[] => []));
  for (const { end } of eaters) {
    if (end.weekly <= 0 || end.cents <= 0) continue;
    const terms = end.fare.map(({ place, node, items, span, until }) => {
      const column = columns.one({ worth: -end.cents * items, most: (end.weekly * span) / items });
      drawn[place]?.[node]?.push(column);
      return { column, items, until };
    });
    for (const week of new Set(terms.map(({ until }) => until))) {
      const past = terms.filter(({ until }) => until <= week);
      rows.push({
        least: Number.NEGATIVE_INFINITY,
        most: end.weekly * week,
        columns: past.map(({ column }) => column),
        factors: past.map(({ items }) => items),
      });
    }
  }
  drawn.forEach((nodes, p) => {
    nodes.forEach((terms, n) => {
      if (terms.length === 0) return;
      const end = (left[p]?.[periods - 1] as number) + n;
      rows.push({
        least: Number.NEGATIVE_INFINITY,
        most: 0,
        columns: [...terms, end],
        factors: [...terms.map(() => 1), -1],
      });
    });
  });
}

type Paid = Pick<Laid, 'sent' | 'packs' | 'free' | 'weighed' | 'cups'>;

/** What is paid in a week is at most what may be spent. */
export function budgetRows({ budget, parcels, starts }: PlanProblem, paid: Paid, rows: Row[]): void {
  for (const [t, most] of budget.entries()) {
    if (!Number.isFinite(most)) continue;
    const terms: { column: number; cents: number }[] = [];
    parcels.forEach((parcel, i) => {
      if (parcel.paid !== t) return;
      terms.push({ column: paid.sent[i] as number, cents: parcel.postageCents });
      const free = paid.free[i];
      if (free != null) terms.push({ column: free, cents: -parcel.postageCents });
      const weighed = paid.weighed[i] ?? null;
      if (weighed !== null) terms.push({ column: weighed, cents: 1 });
      parcel.packs.forEach(({ breaks, weightCents }, j) => {
        breaks.forEach(({ cents }, b) => {
          terms.push({
            column: paid.packs[i]?.[j]?.[b] as number,
            cents: cents + (weighed === null ? weightCents : 0),
          });
        });
      });
    });
    starts.forEach((start, i) => {
      if (start.paid === t) terms.push({ column: paid.cups[i] as number, cents: start.cents });
    });
    if (terms.length > 0)
      rows.push({
        least: Number.NEGATIVE_INFINITY,
        most,
        columns: terms.map(({ column }) => column),
        factors: terms.map(({ cents }) => cents),
      });
  }
}

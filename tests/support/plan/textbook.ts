/** A textbook's lot sizing written as a plan's problem: one product that neither grows nor dies. */
import type { PlanEater, PlanPlace, PlanProblem } from '../../../src/husbandry/plan/problem.ts';

export interface Textbook {
  /** By product and period. */
  readonly demand: readonly (readonly number[])[];
  /** Paid once for all products ordered together; by period where it changes. */
  readonly jointSetup: number | readonly number[];
  readonly itemSetup?: readonly number[];
  readonly unitCost?: number;
  readonly holding: readonly number[];
  readonly backorder?: number;
  readonly lostSale?: number;
  /** Periods in which a unit can be sold after it came: the last and those before; absent: for ever. */
  readonly life?: number;
  readonly capacity?: number;
  readonly packSize?: number;
  readonly breaks?: readonly { readonly fromPacks: number; readonly cents: number }[];
}

const NEVER_CENTS = 1e6;

/** Nodes are ages: one for goods that keep for ever. */
export function textbookProblem(book: Textbook): PlanProblem {
  const periods = book.demand[0]?.length as number;
  const ages = book.life ?? 1;
  const step = Array.from({ length: ages }, (_, to) =>
    Float64Array.from({ length: ages }, (_, from) => Number(book.life ? to === from + 1 : to === from)),
  );
  const place = (item: number): PlanPlace => ({
    key: `item ${item}`,
    nodes: ages,
    passes: Array.from({ length: periods - 1 }, () => step),
    comes: Array.from({ length: periods }, () => new Float64Array(ages)),
    keepCents: book.holding[item] as number,
    room: null,
    floor: null,
  });
  const eater = (item: number): PlanEater => ({
    key: `item ${item}`,
    urgency: 'ordinary',
    wanted: Float64Array.from(book.demand[item] as readonly number[]),
    lateMost: Float64Array.from({ length: periods }, (_, t) =>
      book.backorder !== undefined && t < periods - 1 ? Number.POSITIVE_INFINITY : 0,
    ),
    lateCents: book.backorder ?? 0,
    missedCents: book.lostSale ?? NEVER_CENTS,
    fare: Array.from({ length: ages }, (_, node) => ({
      place: item,
      node,
      items: 1,
      cents: 0,
      cap: -1,
      ripeness: node,
    })),
    caps: [],
    end: { cents: 0, weekly: 0, fare: [] },
  });
  const all = book.demand.map((weeks) => weeks.reduce((a, b) => a + b, 0));
  const size = book.packSize ?? 1;
  const breaks = book.breaks ?? [{ fromPacks: 1, cents: (book.unitCost ?? 0) * size }];
  return {
    periods,
    places: book.demand.map((_, item) => place(item)),
    eaters: book.demand.map((_, item) => eater(item)),
    parcels: Array.from({ length: periods }, (_, period) => ({
      key: `period ${period}`,
      period,
      paid: period,
      postageCents:
        typeof book.jointSetup === 'number' ? book.jointSetup : (book.jointSetup[period] as number),
      labourCents: 0,
      minimumCents: 0,
      freeFromCents: null,
      packs: book.demand.map((_, item) => ({
        key: `item ${item}`,
        place: item,
        breaks,
        least: 0,
        most: book.capacity ?? Math.ceil((all[item] as number) / size),
        lineCents: book.itemSetup?.[item] ?? 0,
        weightCents: 0,
        brings: Float64Array.from({ length: ages }, (_, age) => (age === 0 ? size : 0)),
      })),
    })),
    starts: [],
    rests: [],
    pools: [],
    budget: new Float64Array(periods).fill(Number.POSITIVE_INFINITY),
    wholeUntil: periods,
  };
}

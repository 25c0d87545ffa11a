/** Orders as their rows and the journal have them: those on their way, and those that came. */
import type { CameOrder, ComingOrder } from '../../../views/pages/orders-shown.ts';
import { grouped } from '../../husbandry/grouped.ts';
import { type ArrivedLine, arrivedLines, rowsOf, type Store, type SupplierRow } from '../../store/index.ts';

const IN_ORDER = 'cast(substr(code, 2) as integer)';

const questions = {
  purchases: rowsOf('purchase', { where: "state <> 'cancelled'", order: IN_ORDER }),
  deliveries: rowsOf('delivery', { where: "purchase is not null and state <> 'cancelled'", order: IN_ORDER }),
  suppliers: rowsOf('supplier'),
  bins: rowsOf('bin'),
  arrived: arrivedLines,
};

export const orderRows = (store: Store) => store.askAll(questions);
export type OrderRows = Awaited<ReturnType<typeof orderRows>>;

export const supplierNamed = ({ suppliers }: OrderRows, code: string): SupplierRow | undefined =>
  suppliers.find((each) => each.code === code);
const nameIn = (rows: OrderRows, code: string): string => supplierNamed(rows, code)?.name ?? code;

/** The soonest first. */
export function comingOrders(rows: OrderRows): readonly ComingOrder[] {
  const linesOf = grouped(rows.deliveries, ({ purchase }) => purchase ?? '');
  return rows.purchases
    .filter(({ state }) => state === 'placed')
    .map(({ code, supplier, sentDay, dueDay, postageCents }) => {
      const lines = linesOf.get(code) ?? [];
      const day = lines[0]?.day ?? dueDay;
      const { kind = 'parcel' } = supplierNamed(rows, supplier) ?? {};
      return { code, from: nameIn(rows, supplier), kind, sentDay, dueDay, day, postageCents, lines };
    })
    .toSorted((a, b) => a.day - b.day);
}

/** The latest first. */
export function cameOrders(rows: OrderRows): readonly CameOrder[] {
  const arrivedOf = grouped(rows.arrived, ({ purchase }) => purchase);
  return rows.purchases
    .flatMap(({ code, supplier, dueDay, state }) => {
      const lines = arrivedOf.get(code) ?? [];
      const [first] = lines;
      if (state !== 'arrived' || first === undefined) return [];
      const shown = lines.map((line) => cameLine(rows, line));
      return [{ code, from: nameIn(rows, supplier), due: dueDay, came: first.day, lines: shown }];
    })
    .toSorted((a, b) => b.came - a.came || Number(b.code.slice(1)) - Number(a.code.slice(1)));
}

function cameLine({ deliveries, bins }: OrderRows, line: ArrivedLine): CameOrder['lines'][number] {
  const { delivery, bin, alive, dead, fromMm, toMm, counted, give } = line;
  const row = deliveries.find(({ code }) => code === delivery);
  const species = bins.find(({ code }) => code === bin)?.species ?? row?.species ?? '';
  return {
    species: row?.species ?? species,
    ordered: row?.heads ?? 0,
    fromMm: row?.fromMm ?? fromMm,
    toMm: row?.toMm ?? toMm,
    came: { species, bin, alive, dead, fromMm, toMm, counted, give },
  };
}

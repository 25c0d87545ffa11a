/** Boxes of the last days that were not as ordered: whose dead to look at again, until when to claim, who cannot wait. */
import type { BoxShown } from '../../../views/pages/orders-shown.ts';
import { askBox, askCover } from '../../actions/index.ts';
import type { DayNumber } from '../../husbandry/calendar.ts';
import { grouped } from '../../husbandry/grouped.ts';
import { claimBy, orderAgain } from '../../husbandry/orders/index.ts';
import type { BoxAnswer, BoxLine } from '../../husbandry/supply/index.ts';
import type { ArrivedLine, PurchaseRow } from '../../store/index.ts';
import type { House } from './house.ts';
import { type OrderRows, supplierNamed } from './order-rows.ts';
import { marketIn } from './supplier-views.ts';
import type { Visit } from './visit.ts';

/** Days for which a page tells what a box means. */
const TOLD_DAYS = 7;

interface Asked {
  readonly rows: OrderRows;
  /** Only the box of this order; default: all. */
  readonly order?: string;
  /** Whether what is not kept is worked out now. */
  readonly waits: boolean;
}

interface Box {
  readonly purchase: PurchaseRow;
  readonly lines: readonly ArrivedLine[];
}

/** The latest first. */
export const boxesShown = (house: House, here: Visit, asked: Asked): Promise<BoxShown[]> =>
  Promise.all(
    boxesAmiss(asked.rows, here.snapshot.today)
      .filter(({ purchase }) => purchase.code === (asked.order ?? purchase.code))
      .map((box) => boxShown(house, here, asked, box)),
  );

async function boxShown(house: House, here: Visit, { rows, waits }: Asked, box: Box): Promise<BoxShown> {
  const { snapshot } = here;
  const asking = { purchase: box.purchase.code, lines: boxLines(rows, box), waits };
  const found = await askBox(house.context, { ...asking, snapshot, answering: house.answering });
  const answer = found.ok ? found.value : null;
  const [first] = box.lines;
  return {
    order: box.purchase.code,
    from: supplierNamed(rows, box.purchase.supplier)?.name ?? '',
    came: first?.day ?? snapshot.today,
    claim: claimOf(rows, box, snapshot.today),
    dead: box.lines
      .filter(({ dead, again }) => dead > 0 && !again)
      .map(({ delivery, bin, dead, warmed }) => ({ delivery, bin, dead, cold: warmed === false })),
    answer,
    again: againFor(here, box.purchase, answer),
    act: answer === null || answer.short.length === 0 ? null : await actOf(house, here),
  };
}

/** Boxes that came in the last days and were not as ordered. */
function boxesAmiss(rows: OrderRows, today: DayNumber): Box[] {
  const late = rows.arrived.filter(({ day }) => today - day <= TOLD_DAYS);
  return [...grouped(late, ({ purchase }) => purchase)].flatMap(([code, lines]) => {
    const purchase = rows.purchases.find((row) => row.code === code);
    return purchase && lines.some((line) => isAmiss(rows, line)) ? [{ purchase, lines }] : [];
  });
}

function isAmiss({ deliveries, bins }: OrderRows, line: ArrivedLine): boolean {
  const row = deliveries.find(({ code }) => code === line.delivery);
  if (row === undefined || row.heads === 0) return false;
  const species = bins.find(({ code }) => code === line.bin)?.species;
  const isOther = species !== row.species || line.fromMm !== row.fromMm || line.toMm !== row.toMm;
  return isOther || line.dead > 0 || line.alive < row.heads;
}

const boxLines = ({ deliveries }: OrderRows, { lines }: Box): readonly BoxLine[] =>
  lines.flatMap(({ delivery, bin, day, first, fromMm, toMm }) => {
    const row = deliveries.find(({ code }) => code === delivery);
    if (row === undefined || row.heads === 0) return [];
    const ordered = { bin: row.bin, lot: { heads: row.heads, fromMm: row.fromMm, toMm: row.toMm } };
    const lot = { heads: first.alive, fromMm, toMm };
    return [{ ordered, came: { bin, day, lot, dead: first.dead } }];
  });

/** Until when the dead can be claimed; null when there are none or it is too late. */
function claimOf(rows: OrderRows, { purchase, lines }: Box, today: DayNumber): BoxShown['claim'] {
  const hours = supplierNamed(rows, purchase.supplier)?.claimHours ?? null;
  const [line] = lines.filter(({ dead }) => dead > 0);
  if (hours === null || line === undefined) return null;
  const until = claimBy(line.day, line.at, hours);
  return until.day < today ? null : { ...until, hours };
}

function againFor(
  { snapshot }: Visit,
  { supplier }: PurchaseRow,
  answer: BoxAnswer | null,
): BoxShown['again'] {
  const [first] = answer?.short ?? [];
  if (first === undefined) return [];
  const offered = marketIn(snapshot).offers.filter((offer) =>
    (answer?.short ?? []).some(({ window }) => offer.fromMm <= window.maxMm && window.minMm <= offer.toMm),
  );
  const species = new Set(offered.map((offer) => offer.species));
  return orderAgain(marketIn(snapshot), { supplier, species, today: snapshot.today, before: first.from });
}

/** The act that helps most, where Sunday's check has been asked for it already. */
async function actOf({ context, answering }: House, { snapshot }: Visit): Promise<string | null> {
  const cover = await askCover(context, { snapshot, answering });
  return cover.ok ? (cover.value.answer.act?.sentence ?? null) : null;
}

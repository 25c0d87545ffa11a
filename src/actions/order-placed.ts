/** An order with a supplier as it is written down: what is in it, where each line goes, what it costs and when it is to come. */
import { z } from 'zod';
import type { DayNumber } from '../husbandry/calendar.ts';
import { moneyWords, shortOfMinimum } from '../husbandry/orders/index.ts';
import { problem } from '../husbandry/problems.ts';
import { err, ok, type Result } from '../husbandry/result.ts';
import { spokenDay } from '../husbandry/supply/index.ts';
import { listed } from '../husbandry/words.ts';
import {
  type DeliveryRow,
  nextCodes,
  type PurchaseRow,
  rowsNamed,
  type SupplierRow,
  settings,
} from '../store/index.ts';
import type { Made } from './bin-for.ts';
import { civilDay, flag, longText, someText } from './fields.ts';
import { findSupplier } from './find.ts';
import { notSentOn } from './order-day.ts';
import { goodsCents, type OrderLine, orderLine, orderLines, postageOf } from './order-lines.ts';
import type { Body, Scene } from './perform.ts';

const MOST_LINES = 50;

export const order = {
  supplier: someText,
  /** Day the parcel leaves, or the shop is gone to. */
  sentDay: civilDay,
  /** Day it was ordered; by default today. */
  placedDay: civilDay.optional(),
  lines: z
    .array(orderLine)
    .min(1, { error: 'An order needs a line: say of something how many packs.' })
    .max(MOST_LINES, { error: `At most ${MOST_LINES} lines go into one order.` }),
  notes: longText.default(''),
  demo: flag.default(false),
};
const orderShape = z.strictObject(order);
export type OrderGiven = z.output<typeof orderShape>;

interface Placed {
  readonly purchase: string;
  readonly due: DayNumber;
}

/** What was made before in the same act is made no second time. */
export async function placed(
  scene: Scene,
  given: OrderGiven,
  made: Made = new Map(),
): Promise<Result<Body<Placed>>> {
  const supplier = await findSupplier(scene.tx, given.supplier);
  if (!supplier.ok) return supplier;
  const { sentDay, placedDay = scene.now.today, notes } = given;
  const demo = given.demo || (await isPlay(scene, supplier.value, given.lines));
  const wrongDay = notSentOn(supplier.value, sentDay, placedDay);
  if (wrongDay !== null) return err(wrongDay);
  const lines = await orderLines(scene, { supplier: supplier.value, lines: given.lines, demo, made });
  if (!lines.ok) return lines;
  const reached = await reachesMinimum(scene, supplier.value, lines.value);
  if (!reached.ok) return reached;
  const [code] = await nextCodes(scene.tx, 'O', 1);
  const purchase: PurchaseRow = {
    ...{ code: code!, supplier: supplier.value.code, placedDay, sentDay, notes, demo },
    dueDay: sentDay + supplier.value.transitDays,
    postageCents: postageOf(scene, supplier.value, lines.value),
    state: 'placed',
  };
  const delivery = await deliveriesOf(scene, purchase, lines.value);
  const said = listed(delivery.map(({ heads, species }) => `${heads} ${species}`));
  return ok({
    summary: `Ordered from “${supplier.value.name}”: ${said}, due ${spokenDay(purchase.dueDay)}`,
    puts: { bin: lines.value.flatMap(({ made }) => made), purchase: [purchase], delivery },
    reply: { purchase: code!, due: purchase.dueDay },
  });
}

/** An order to the demo room's supplier of what came with it goes with the demo room. */
async function isPlay({ tx }: Scene, { demo }: SupplierRow, lines: OrderGiven['lines']): Promise<boolean> {
  const offers = await tx.ask(
    rowsNamed(
      'offer',
      lines.map(({ offer }) => offer),
    ),
  );
  return demo && offers.every((offer) => offer.demo);
}

async function reachesMinimum(
  { tx }: Scene,
  supplier: SupplierRow,
  lines: readonly OrderLine[],
): Promise<Result<null>> {
  const goods = goodsCents(lines);
  const short = shortOfMinimum(supplier, goods);
  if (short === 0) return ok(null);
  const { currency } = (await tx.ask(settings)).purse;
  const sum = (cents: number) => moneyWords(cents, currency);
  return err(
    problem(
      'below-minimum',
      `${sum(goods)} of goods is ${sum(short)} short of the least order of “${supplier.name}”, ${sum(supplier.minimumCents)}.`,
      'lines',
    ),
  );
}

async function deliveriesOf(
  { tx }: Scene,
  { code: purchase, dueDay: day, demo }: PurchaseRow,
  lines: readonly OrderLine[],
): Promise<readonly DeliveryRow[]> {
  const codes = await nextCodes(tx, 'D', lines.length);
  return lines.map(({ offer, packs, cents, bin }, i) => ({
    ...{ code: codes[i]!, purchase, day, demo, packs, cents, bin: bin.code, state: 'expected' },
    offer: offer.code,
    species: offer.species,
    heads: packs * offer.packHeads,
    fromMm: offer.fromMm,
    toMm: offer.toMm,
  }));
}

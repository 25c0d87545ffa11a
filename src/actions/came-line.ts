/** One line of a box that came: how many, of which size and species, and into which bin. */
import { z } from 'zod';
import type { DayNumber } from '../husbandry/calendar.ts';
import type { Lot, Sender } from '../husbandry/larder/index.ts';
import { problem } from '../husbandry/problems.ts';
import { err, ok, type Result } from '../husbandry/result.ts';
import type { DeliveryRow } from '../store/index.ts';
import { type BinFound, binFor, into, type Made } from './bin-for.ts';
import { headsOrNone, preyMm, someText, text } from './fields.ts';
import type { PlacedOrder } from './find-order.ts';
import { aliveOf, type Came, headsCame } from './heads-came.ts';
import { inOrder } from './lot-fields.ts';
import type { Scene } from './perform.ts';

export const cameLine = z.strictObject({
  delivery: someText,
  came: headsCame,
  dead: headsOrNone.default(0),
  /** Lengths as they came; by default as ordered. */
  fromMm: preyMm.optional(),
  toMm: preyMm.optional(),
  /** Another species than ordered; '' for the same. */
  species: text.default(''),
  ...into,
});

export const extraLine = z.strictObject({
  species: someText,
  alive: headsOrNone,
  dead: headsOrNone.default(0),
  fromMm: preyMm,
  toMm: preyMm,
  ...into,
});

/** A box that is being taken in. */
export interface Opened {
  readonly scene: Scene;
  readonly order: PlacedOrder;
  readonly day: DayNumber;
  readonly at: string | null;
  readonly warmed: boolean;
  readonly apart: boolean;
  readonly sender: Sender;
  readonly made: Made;
}

export interface CameLine extends BinFound, Pick<Came, 'counted' | 'give'> {
  /** Its row as it now is; its code is '' where nobody had ordered it. */
  readonly row: DeliveryRow;
  readonly lot: Lot;
  readonly dead: number;
}

export async function lineCame(
  opened: Opened,
  line: z.output<typeof cameLine>,
  at: string,
): Promise<Result<CameLine>> {
  const { order, scene, sender } = opened;
  const row = order.lines.find(({ code }) => code === line.delivery);
  if (row === undefined)
    return err(
      problem('not-in-order', `"${line.delivery}" is not on its way in this order.`, `${at}delivery`),
    );
  const { fromMm = row.fromMm, toMm = row.toMm, dead } = line;
  const species = line.species === '' ? row.species : line.species;
  const sized = inOrder({ heads: 0, fromMm, toMm });
  if (!sized.ok) return err({ ...sized.problem, field: `${at}fromMm` });
  const onLabel = row.heads * (1 + sender.overCountShare);
  const came = aliveOf(line.came, { facts: scene.facts, species, fromMm, toMm, onLabel, dead });
  if (!came.ok) return err({ ...came.problem, field: `${at}came.${came.problem.field ?? ''}` });
  const goes = await placeOf(opened, { line, row, species, at });
  if (!goes.ok) return goes;
  const { alive, counted, give } = came.value;
  const lot = { heads: alive, fromMm, toMm };
  return ok({ ...goes.value, row: { ...row, state: 'arrived' }, lot, dead, counted, give });
}

interface Placing {
  readonly line: z.output<typeof cameLine>;
  readonly row: DeliveryRow;
  readonly species: string;
  readonly at: string;
}

/** Where it was to go, unless the keeper says otherwise; another species must be told where. */
function placeOf(
  { order, scene, made }: Opened,
  { line, row, species, at }: Placing,
): Promise<Result<BinFound>> {
  const { bin, room, name } = line;
  const asOrdered = bin === '' && room === '' && species === row.species;
  const wanted = { bin: asOrdered ? row.bin : bin, room, name, species, at };
  return binFor(scene, { ...wanted, origin: order.supplier.name, demo: order.purchase.demo }, made);
}

/** What nobody had ordered: a row of its own, of no heads ordered and no price. */
export async function extraCame(
  { order, scene, made, day }: Opened,
  { alive, dead, species, fromMm, toMm, ...where }: z.output<typeof extraLine>,
  at: string,
): Promise<Result<CameLine>> {
  const lot = inOrder({ heads: alive, fromMm, toMm });
  if (!lot.ok) return err({ ...lot.problem, field: `${at}fromMm` });
  const { code: purchase, demo } = order.purchase;
  const goes = await binFor(scene, { ...where, species, origin: order.supplier.name, demo, at }, made);
  if (!goes.ok) return goes;
  const row: DeliveryRow = {
    ...{ code: '', species, bin: goes.value.bin.code, heads: 0, fromMm, toMm, day, state: 'arrived', demo },
    ...{ purchase, offer: null, packs: null, cents: null },
  };
  return ok({ ...goes.value, row, lot: lot.value, dead, counted: 'whole', give: null });
}

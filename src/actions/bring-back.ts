/** Brings back what is gone, with its code and its record: an animal, heads of a group, a bin, a room, an order, a plan. */
import { z } from 'zod';
import { civilDate } from '../husbandry/calendar.ts';
import { problem } from '../husbandry/problems.ts';
import { err, ok, type Result } from '../husbandry/result.ts';
import { type AnimalRow, deathsOnRecord, type EntryInput, type Noun } from '../store/index.ts';
import { formId, heads, oneOf, someText } from './fields.ts';
import { findBin, findRoom, findRow } from './find.ts';
import { orderBack } from './order-back.ts';
import { action, type Body, type Scene } from './perform.ts';

export const CAN_COME_BACK = ['animal', 'bin', 'room', 'delivery', 'purchase', 'planned_change'] as const;

export const bringBack = action({
  verb: 'bring-back',
  schema: z.strictObject({
    what: oneOf(CAN_COME_BACK),
    code: someText,
    /** How many of a group that is still here. */
    heads: heads.optional(),
    formId,
  }),
  body: (scene, { what, code, heads: many }) => {
    if (what === 'animal') return animalBack(scene, code, many);
    return what === 'bin' ? binBack(scene, code) : BACK[what](scene, code);
  },
});

type Back = Promise<Result<Body<{ readonly code: string }>>>;

const isHere = (said: string, noun: Noun): Result<never> =>
  err(problem('is-here', `${said} is not gone.`, noun));

async function animalBack(scene: Scene, code: string, many: number | undefined): Back {
  const animal = await findRow(scene.tx, 'animal', code);
  if (!animal.ok) return animal;
  if (animal.value.leftReason === 'lent') return err(lentOut(animal.value));
  const room = await findRoom(scene.tx, animal.value.room);
  if (!room.ok)
    return err(problem('room-gone', `The room of ${code} was removed; bring it back first.`, 'room'));
  if (animal.value.leftDay === null) return headsBack(scene, animal.value, many);
  const row: AnimalRow = { ...animal.value, leftReason: null, leftDay: null };
  const { leftReason, leftDay } = animal.value;
  const entry = backOf(scene, row, row.count);
  const was = `${leftReason} on ${civilDate(leftDay)}`;
  return ok({
    summary: `Brought ${code} back (${was})`,
    puts: { animal: [row] },
    entries: [entry],
    reply: { code },
  });
}

/** Whoever is lent comes back on a page of its own, with what it ate meanwhile. */
const lentOut = ({ code, lentTo }: AnimalRow) =>
  problem('is-lent', `${code} is lent to “${lentTo}”: write down on its page that it came back.`, 'animal');

/** No more come back to a group than died in it. */
async function headsBack(scene: Scene, row: AnimalRow, many: number | undefined): Back {
  const died = await scene.tx.ask(deathsOnRecord(row.code));
  if (died === 0 || many === undefined) return isHere(row.code, 'animal');
  if (many > died)
    return err(problem('too-many', `"${many}" is more than the ${died} that died in ${row.code}.`, 'heads'));
  return ok({
    summary: `Brought ${many} of ${row.code} back`,
    puts: { animal: [{ ...row, count: row.count + many }] },
    entries: [backOf(scene, row, many)],
    reply: { code: row.code },
  });
}

const backOf = ({ now }: Scene, { code }: AnimalRow, many: number): EntryInput => ({
  day: now.today,
  kind: 'came back',
  animal: code,
  heads: many,
});

async function binBack({ tx }: Scene, code: string): Back {
  const bin = await findRow(tx, 'bin', code);
  if (!bin.ok) return bin;
  const { name, closed, room: place } = bin.value;
  if (!closed) return isHere(name, 'bin');
  const room = await findRoom(tx, place);
  if (!room.ok)
    return err(problem('room-gone', `The room of ${name} was removed; bring it back first.`, 'room'));
  return ok({
    summary: `Brought bin ${name} (${code}) back`,
    puts: { bin: [{ ...bin.value, closed: false }] },
    reply: { code },
  });
}

const ofAnOrder = (code: string, order: string) =>
  problem('in-an-order', `Delivery ${code} is part of order ${order}: bring the order back.`, 'delivery');

const BACK = {
  purchase: orderBack,
  room: async ({ tx }: Scene, code: string): Back => {
    const room = await findRow(tx, 'room', code);
    if (!room.ok) return room;
    if (!room.value.closed) return isHere(room.value.name, 'room');
    const summary = `Brought room ${room.value.name} (${code}) back`;
    return ok({ summary, puts: { room: [{ ...room.value, closed: false }] }, reply: { code } });
  },
  delivery: async ({ tx }: Scene, code: string): Back => {
    const order = await findRow(tx, 'delivery', code);
    if (!order.ok) return order;
    if (order.value.state !== 'cancelled') return isHere(`Delivery ${code}`, 'delivery');
    if (order.value.purchase !== null) return err(ofAnOrder(code, order.value.purchase));
    const bin = await findBin(tx, order.value.bin);
    if (!bin.ok) return bin;
    const summary = `Expected again: ${order.value.heads} ${order.value.species}`;
    return ok({ summary, puts: { delivery: [{ ...order.value, state: 'expected' }] }, reply: { code } });
  },
  planned_change: async ({ tx }: Scene, code: string): Back => {
    const change = await findRow(tx, 'planned_change', code);
    if (!change.ok) return change;
    if (!change.value.cancelled) return isHere(`Plan ${code}`, 'planned_change');
    const room = await findRoom(tx, change.value.room);
    if (!room.ok) return room;
    const summary = `Planned again: ${change.value.kind} of ${change.value.count}`;
    return ok({
      summary,
      puts: { planned_change: [{ ...change.value, cancelled: false }] },
      reply: { code },
    });
  },
} as const;

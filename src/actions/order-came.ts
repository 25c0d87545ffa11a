/** Takes in a whole box as it came: each line short or over, dead, of another size or species, and what nobody had ordered. */
import { z } from 'zod';
import type { DayNumber } from '../husbandry/calendar.ts';
import { problem } from '../husbandry/problems.ts';
import { err, ok } from '../husbandry/result.ts';
import { type BinRow, type DeliveryRow, type EntryInput, nextCodes } from '../store/index.ts';
import { cameTooEarly } from './came-early.ts';
import { type CameLine, cameLine, extraCame, extraLine, lineCame, type Opened } from './came-line.ts';
import { civilDay, flag, formId, someText } from './fields.ts';
import { type PlacedOrder, placedOrder } from './find-order.ts';
import { action, type Scene } from './perform.ts';
import { senderNow } from './senders.ts';

const MOST_LINES = 50;
const clockTime = z
  .string()
  .trim()
  .regex(/^([01]\d|2[0-3]):[0-5]\d$/, {
    error: ({ input }) => `"${String(input)}" is not a time such as 14:30.`,
  });

export const orderCame = action({
  verb: 'order-came',
  schema: z.strictObject({
    purchase: someText,
    day: civilDay.optional(),
    /** 'HH:MM' at the door, by which dead prey is to be claimed in time. */
    at: clockTime.optional(),
    /** The box had stood warm for an hour or more before its dead were counted: chilled is not dead. */
    warmed: flag.default(true),
    /** Keeps the bins it goes into apart, as long as new stock is. */
    apart: flag.default(false),
    lines: z.array(cameLine).max(MOST_LINES),
    /** What was in the box and not ordered. */
    extra: z.array(extraLine).max(MOST_LINES).default([]),
    formId,
  }),
  pastDays: ['day'],
  body: async (scene, given) => {
    const order = await placedOrder(scene.tx, given.purchase);
    if (!order.ok) return order;
    const early = cameTooEarly(order.value, given.day ?? scene.now.today);
    if (early !== null) return err(early);
    const untold = order.value.lines.find(
      ({ code }) => !given.lines.some(({ delivery }) => delivery === code),
    );
    if (untold !== undefined)
      return err(
        problem(
          'line-untold',
          `Say how the ${untold.heads} ${untold.species} (${untold.code}) came: 0 where they did not.`,
          'lines',
        ),
      );
    const twice = given.lines.findIndex(
      ({ delivery }, i) => given.lines.findIndex((line) => line.delivery === delivery) < i,
    );
    if (twice >= 0)
      return err(
        problem(
          'line-twice',
          `"${given.lines[twice]?.delivery}" is told twice: say each line once.`,
          `lines.${twice}.delivery`,
        ),
      );
    const opened = await openedBox(scene, order.value, given);
    const came: CameLine[] = [];
    for (const [i, line] of given.lines.entries()) {
      const found = await lineCame(opened, line, `lines.${i}.`);
      if (!found.ok) return found;
      came.push(found.value);
    }
    for (const [i, line] of given.extra.entries()) {
      const found = await extraCame(opened, line, `extra.${i}.`);
      if (!found.ok) return found;
      came.push(found.value);
    }
    return ok(await takenIn(opened, came));
  },
});

interface Said {
  readonly day?: DayNumber | undefined;
  readonly at?: string | undefined;
  readonly warmed: boolean;
  readonly apart: boolean;
}

async function openedBox(
  scene: Scene,
  order: PlacedOrder,
  { day, at, warmed, apart }: Said,
): Promise<Opened> {
  const sender = await senderNow(scene, order.supplier);
  return {
    scene,
    order,
    day: day ?? scene.now.today,
    at: at ?? null,
    warmed,
    apart,
    sender,
    made: new Map(),
  };
}

/** One act: the order has come, each line with its entry; extra lines get a row of their own. */
async function takenIn(opened: Opened, came: readonly CameLine[]) {
  const { scene, order, day, at, warmed } = opened;
  const { purchase, supplier } = order;
  const codes = await nextCodes(scene.tx, 'D', came.filter(({ row }) => row.code === '').length);
  let next = 0;
  const rows = came.map(({ row }): DeliveryRow => (row.code === '' ? { ...row, code: codes[next++]! } : row));
  const entries = came.map(({ bin, lot, dead, counted, give }, i): EntryInput => {
    const details = { dead, delivery: rows[i]!.code, counted, ...(give === null ? {} : { give }) };
    const seen = { ...(at === null ? {} : { at }), ...(dead > 0 ? { warmed } : {}) };
    return { day, kind: 'delivered', bin: bin.code, ...lot, details: { ...details, ...seen } };
  });
  const sum = (of: (line: CameLine) => number) => came.reduce((total, line) => total + of(line), 0);
  const dead = sum((line) => line.dead);
  const bin = binsOf(opened, came);
  return {
    summary: `The order from “${supplier.name}” came: ${sum(({ lot }) => lot.heads)} alive, ${dead} dead`,
    puts: { bin, purchase: [{ ...purchase, state: 'arrived' as const }], delivery: rows },
    entries,
    reply: { purchase: purchase.code, lookAgain: dead > 0 && !warmed },
  };
}

/** The bins made for it; where they are kept apart, all it goes into. */
function binsOf({ scene, day, apart }: Opened, came: readonly CameLine[]): readonly BinRow[] {
  if (!apart) return came.flatMap(({ made }) => made);
  const until = day + scene.facts.policy.quarantineDays.value;
  const bins = new Map(came.map(({ bin }) => [bin.code, bin]));
  return [...bins.values()].map((bin) => ({
    ...bin,
    quarantineUntil: Math.max(bin.quarantineUntil ?? until, until),
  }));
}

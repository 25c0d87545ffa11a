/** Empties the demo room in one act; rooms, bins and suppliers put to use and settings changed by the keeper stay. */
import { z } from 'zod';
import { ok } from '../husbandry/result.ts';
import { type Noun, nameOf, rowsOf, type Tx } from '../store/index.ts';
import { formId } from './fields.ts';
import { action } from './perform.ts';

const UNUSED: { readonly [N in Noun]?: string } = {
  planned_change: 'demo = 1',
  animal: `demo = 1 and not exists (select 1 from planned_change p where p.animal = animal.code and p.demo = 0)`,
  delivery: 'demo = 1',
  purchase: `demo = 1 and not exists (select 1 from delivery d where d.purchase = purchase.code and d.demo = 0)`,
  offer: `demo = 1 and not exists (select 1 from delivery d where d.offer = offer.code and d.demo = 0)`,
  supplier: `demo = 1
    and not exists (select 1 from offer o where o.supplier = supplier.code and (o.demo = 0 or exists (
      select 1 from delivery d where d.offer = o.code and d.demo = 0)))
    and not exists (select 1 from purchase p where p.supplier = supplier.code and (p.demo = 0 or exists (
      select 1 from delivery d where d.purchase = p.code and d.demo = 0)))`,
  bin: `demo = 1 and not exists (select 1 from delivery d where d.bin = bin.code and d.demo = 0)`,
  room: `demo = 1
    and not exists (select 1 from animal a where a.room = room.code and a.demo = 0)
    and not exists (select 1 from bin b where b.room = room.code and b.demo = 0)
    and not exists (select 1 from planned_change p where p.room = room.code and p.demo = 0)`,
  setting: `key = 'ofDemo' or key in (
    select j.value from setting made join json_each(made.value) j where made.key = 'ofDemo')`,
};

export const emptyDemo = action({
  verb: 'empty-demo',
  schema: z.strictObject({ formId }),
  body: async ({ tx }) => {
    const drops: { [N in Noun]?: readonly string[] } = {};
    for (const noun of Object.keys(UNUSED) as Noun[]) drops[noun] = await unused(tx, noun);
    return ok({ summary: 'Emptied the demo room', drops, reply: { animals: drops.animal?.length ?? 0 } });
  },
});

const unused = async (tx: Tx, noun: Noun): Promise<readonly string[]> =>
  (await tx.ask(rowsOf(noun, { where: UNUSED[noun] ?? 'false' }))).map(nameOf);

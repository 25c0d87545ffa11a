/** Writes down a change the keeper plans or expects: a sac, arrivals, a sale. */
import { z } from 'zod';
import { ok, type Result } from '../husbandry/result.ts';
import { spokenDay } from '../husbandry/supply/index.ts';
import { nextCodes } from '../store/index.ts';
import { chance, civilDay, flag, formId, gaugeMm, heads, oneOf, someText } from './fields.ts';
import { findAnimal, findKind, findRoom } from './find.ts';
import { action, type Scene } from './perform.ts';
import { forwards, noSacDates } from './sac-dates.ts';

const schema = z.strictObject({
  kind: oneOf(['sac', 'arrival', 'sale']),
  animalKind: someText,
  from: civilDay,
  to: civilDay,
  chance: chance.default(1),
  count: heads,
  gaugeMm,
  room: someText,
  animal: someText.optional(),
  demo: flag.default(false),
  formId,
});
type Given = z.output<typeof schema>;

export const planChange = action({
  verb: 'plan-change',
  schema,
  body: async (scene, given) => {
    const room = await findRoom(scene.tx, given.room);
    if (!room.ok) return room;
    const wrong = await whatIsWrong(scene, given);
    if (!wrong.ok) return wrong;
    const [code] = await nextCodes(scene.tx, 'P', 1);
    const { from, to, formId: _, animal = null, ...others } = given;
    const row = {
      ...others,
      code: code!,
      fromDay: from,
      toDay: to,
      room: room.value.code,
      animal,
      cancelled: false,
      sac: given.kind === 'sac' ? noSacDates : null,
    };
    return ok({
      summary: `Planned: ${given.kind} of ${given.count} between ${spokenDay(from)} and ${spokenDay(to)}`,
      puts: { planned_change: [row] },
      reply: { change: code! },
    });
  },
});

async function whatIsWrong({ tx, facts }: Scene, given: Given): Promise<Result<unknown>> {
  const inOrder = forwards(given);
  if (!inOrder.ok) return inOrder;
  const kind = findKind(facts, given.animalKind);
  if (!kind.ok || given.animal === undefined) return kind;
  return findAnimal(tx, given.animal);
}

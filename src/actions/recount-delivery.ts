/** Corrects the dead of a box that was looked at again once it had warmed: who seemed dead may only have been chilled. */
import { z } from 'zod';
import { civilDate } from '../husbandry/calendar.ts';
import { problem } from '../husbandry/problems.ts';
import { err, ok, type Result } from '../husbandry/result.ts';
import { type ArrivedLine, arrivedLines, type EntryInput } from '../store/index.ts';
import { civilDay, formId, headsOrNone, someText } from './fields.ts';
import { findBin, findRow } from './find.ts';
import { action, type Scene } from './perform.ts';

export const recountDelivery = action({
  verb: 'recount-delivery',
  schema: z.strictObject({
    delivery: someText,
    /** How many are dead after all. */
    dead: headsOrNone,
    day: civilDay.optional(),
    formId,
  }),
  pastDays: ['day'],
  body: async (scene, { delivery, dead, day = scene.now.today }) => {
    const line = await arrivedLine(scene, delivery);
    if (!line.ok) return line;
    const bin = await findBin(scene.tx, line.value.bin);
    if (!bin.ok) return bin;
    const possible = unlessImpossible(line.value, dead, day);
    if (!possible.ok) return possible;
    const alive = line.value.alive + line.value.dead - dead;
    return ok({
      summary: `Looked again for ${bin.value.code}: ${alive} alive, ${dead} dead`,
      entries: [correction(line.value, dead, day)],
      reply: { bin: bin.value.code, alive },
    });
  },
});

async function arrivedLine({ tx }: Scene, code: string): Promise<Result<ArrivedLine>> {
  const row = await findRow(tx, 'delivery', code);
  if (!row.ok) return row;
  const line = (await tx.ask(arrivedLines)).find(({ delivery }) => delivery === code);
  return line === undefined
    ? err(problem('not-arrived', `Delivery "${code}" has not come in an order.`, 'delivery'))
    : ok(line);
}

function unlessImpossible(line: ArrivedLine, dead: number, day: number): Result<null> {
  const came = line.alive + line.dead;
  if (dead > came)
    return err(problem('too-many-dead', `"${dead}" dead are more than the ${came} that came.`, 'dead'));
  if (dead === line.dead)
    return err(problem('no-change', `"${dead}" dead are written down already.`, 'dead'));
  if (day >= line.day) return ok(null);
  const date = civilDate(day);
  return err(problem('before-arrival', `"${date}" is before it came (${civilDate(line.day)}).`, 'day'));
}

/** Those who moved after all go into the bin; those who did not come out of it. */
function correction(
  { delivery, bin, fromMm, toMm, dead: was, entry }: ArrivedLine,
  dead: number,
  day: number,
): EntryInput {
  const woke = was - dead;
  const kind = woke > 0 ? 'moved in' : 'moved out';
  const details = { delivery, dead: -woke };
  return { day, kind, bin, about: entry, heads: Math.abs(woke), fromMm, toMm, details };
}

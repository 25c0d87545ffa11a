/** Prey that goes from one bin into another, old or new, its lengths kept: harvests, moves, splits and the retired. */
import type { DayNumber } from '../husbandry/calendar.ts';
import type { BinRole } from '../husbandry/larder/index.ts';
import { ok, type Result } from '../husbandry/result.ts';
import type { BinRow } from '../store/index.ts';
import { civilDay, flag, formId, someText, text } from './fields.ts';
import { findBin } from './find.ts';
import { movedIn, placeFor } from './going-in.ts';
import type { Body, Scene } from './perform.ts';
import { allAsked, type Out, takeOut, unlessApart } from './taking-out.ts';

/** Fields of every such act. */
export const transferFields = {
  bin: someText,
  /** '' for a new bin. */
  to: text.default(''),
  /** Of a new bin; '' calls it by its prey. */
  name: text.default(''),
  day: civilDay.optional(),
  sure: flag.default(false),
  formId,
};

interface Transfer extends Pick<Out, 'heads' | 'lengths' | 'sure'> {
  readonly from: string;
  readonly to: string;
  readonly name: string;
  /** Role of a new bin; what is frozen stays frozen. */
  readonly role: (from: BinRow) => BinRole;
  readonly day: DayNumber | undefined;
  /** 'Harvested', 'Moved'. */
  readonly did: string;
}

/** Takes prey out of a bin in use and puts it where it goes; the reply names that bin. */
export async function transfer(scene: Scene, given: Transfer): Promise<Result<Body<{ bin: string }>>> {
  const from = await findBin(scene.tx, given.from);
  if (!from.ok) return from;
  const { name, day = scene.now.today, sure } = given;
  const into = await placeFor(scene, {
    from: from.value,
    to: given.to,
    name,
    role: from.value.role === 'frozen' ? 'frozen' : given.role(from.value),
  });
  if (!into.ok) return into;
  const taken = await takeOut(scene, { ...given, bin: from.value, day, kind: 'moved out' });
  const asked = allAsked(unlessApart(from.value, day, sure), taken);
  if (!asked.ok) return asked;
  const { bin, made } = into.value;
  return ok({
    summary: `${given.did} ${asked.value.heads} from ${from.value.code} to ${bin.code}`,
    puts: { bin: made },
    entries: [...asked.value.entries, ...movedIn(bin.code, day, asked.value.lots)],
    reply: { bin: bin.code },
  });
}

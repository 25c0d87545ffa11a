/** What may be done with many animals: the fields of each act, what it will change in words, and the act itself. */
import { z } from 'zod';
import type { HerdAct } from '../../../views/paths.ts';
import { civilDay } from '../../actions/fields.ts';
import type { Context } from '../../actions/index.ts';
import { type Done, editAnimals, lend } from '../../actions/index.ts';
import type { Result } from '../../husbandry/result.ts';
import { anyText, maybe, needed, typed } from './typed.ts';

const STAGES = ['by size', 'young', 'juvenile', 'subadult', 'adult'] as const;
const REASONS = ['sold', 'given away', 'lost'] as const;

/** Fields of each act beside who is chosen. */
export const actFields = {
  move: { room: anyText, shelf: anyText },
  stage: { stage: z.enum(STAGES, { error: 'Choose a stage.' }) },
  kind: { kind: z.string({ error: 'Choose a kind.' }).trim().min(1, { error: 'Choose a kind.' }) },
  gone: { reason: z.enum(REASONS, { error: 'Choose why.' }), day: typed(civilDay) },
  lend: { to: needed, day: typed(civilDay), back: maybe(civilDay) },
  died: { day: typed(civilDay) },
} as const satisfies Record<HerdAct, z.ZodRawShape>;

/** What was filled in for an act. */
export type Filled = {
  readonly [A in HerdAct]: { readonly act: A } & z.output<z.ZodObject<(typeof actFields)[A]>>;
}[HerdAct];

interface Told {
  readonly animals: readonly string[];
  readonly asOf: number | undefined;
  readonly formId: string | undefined;
}
type Changed = Promise<Result<Done<{ changed: number }>>>;

/** Does it. */
export function perform(context: Context, filled: Filled, told: Told): Changed {
  const who = { ...told, animals: [...told.animals] };
  switch (filled.act) {
    case 'move':
      return editAnimals(context, { ...who, ...placeOf(filled) });
    case 'stage':
      return editAnimals(context, {
        ...who,
        stageOverride: filled.stage === 'by size' ? null : filled.stage,
      });
    case 'kind':
      return editAnimals(context, { ...who, kind: filled.kind });
    case 'gone':
      return editAnimals(context, { ...who, leftReason: filled.reason, day: filled.day });
    case 'died':
      return editAnimals(context, { ...who, leftReason: 'died', day: filled.day });
    case 'lend':
      return lend(context, { ...who, to: filled.to, day: filled.day, back: filled.back });
  }
}

/** Into another room without a shelf: on none; on a shelf without a room: within each one's own. */
const placeOf = ({ room, shelf }: { readonly room: string; readonly shelf: string }) =>
  room === '' ? { shelf } : { room, shelf };

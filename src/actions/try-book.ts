/** What the room would be if the Book were changed so: nothing is written. */
import type { z } from 'zod';
import { factsTrying } from '../facts/own/facts-with.ts';
import type { ChangedKind } from '../husbandry/animals/index.ts';
import { ok, type Result } from '../husbandry/result.ts';
import type { Snapshot } from '../husbandry/snapshot.ts';
import { rowNamed } from '../store/index.ts';
import type { Context } from './context.ts';
import { kindEdit, kindEdited } from './kind-edited.ts';
import { loadSnapshot } from './load-snapshot.ts';
import { unchanged } from './own-values.ts';
import { parse } from './parse.ts';
import { type Desk, ruleEdit, ruleEdited } from './rule-edited.ts';

/** The room before and after. */
export interface Tried {
  readonly before: Snapshot;
  readonly after: Snapshot;
}

const trying =
  <S extends z.ZodType<{ readonly kind: string }>>(
    schema: S,
    edited: (given: z.output<S>, desk: Desk) => Result<ChangedKind>,
  ) =>
  async (context: Context, input: z.input<S>): Promise<Result<Tried>> => {
    const given = parse(schema, input);
    if (!given.ok) return given;
    const { facts: book } = context;
    const { kind } = given.value;
    const row = (await context.store.ask(rowNamed('kind', kind))) ?? unchanged(kind);
    const after = edited(given.value, { book, row, now: context.clock() });
    if (!after.ok) return after;
    const before = await loadSnapshot(context);
    const facts = factsTrying({ book, facts: before.facts }, after.value);
    return ok({ before, after: { ...before, facts } });
  };

export const tryRule = trying(ruleEdit, ruleEdited);
export const tryKind = trying(kindEdit, kindEdited);

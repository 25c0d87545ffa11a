/** A list sent and not yet written down: its bytes, and what the keeper has answered about it so far. */

import { randomUUID } from 'node:crypto';
import { type Imported, importAnimals, importStock, type ListGiven } from '../../actions/index.ts';
import { ok, type Result } from '../../husbandry/result.ts';
import { draftNamed, keepDraft } from '../../store/index.ts';
import type { House } from './house.ts';

export type ListOf = 'animals' | 'stock';
type Options = NonNullable<ListGiven['options']>;

export interface KeptDraft {
  readonly id: string;
  readonly what: ListOf;
  readonly bytes: Uint8Array;
  readonly options: Options;
}

export const newDraft = (what: ListOf, bytes: Uint8Array): KeptDraft => ({
  id: randomUUID(),
  what,
  bytes,
  options: {},
});

export function keep({ context }: House, { id, what, bytes, options }: KeptDraft): Promise<Result<null>> {
  const text = Buffer.from(bytes).toString('base64');
  return keepDraft(context.store, id, JSON.stringify({ what, text, options }));
}

export async function draftOf({ context }: House, id: string): Promise<KeptDraft | null> {
  const body = await context.store.ask(draftNamed(id));
  if (body === null) return null;
  const { what, text, options } = JSON.parse(body) as { what: ListOf; text: string; options: Options };
  return { id, what, bytes: new Uint8Array(Buffer.from(text, 'base64')), options };
}

type Running = Pick<ListGiven, 'dryRun' | 'formId'>;

/** Reads the list again with all answers, and writes it unless it is a dry run. */
export async function run(
  { context }: House,
  { what, bytes, options }: KeptDraft,
  running: Running,
): Promise<Result<Imported<unknown>>> {
  const given = { bytes, options, ...running };
  const done = what === 'animals' ? await importAnimals(context, given) : await importStock(context, given);
  return done.ok ? ok(done.value) : done;
}

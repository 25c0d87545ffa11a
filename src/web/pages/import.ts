/** Bringing in a list: sent, read line by line, questions answered, and written down when the keeper says so. */

import type { Context, Hono } from 'hono';
import { sentenceCase } from '../../../views/format.ts';
import { ImportPage } from '../../../views/pages/import.tsx';
import type { Draft } from '../../../views/pages/import-check.tsx';
import type { Refused } from '../../../views/partials/form.tsx';
import { paths } from '../../../views/paths.ts';
import { ANIMAL_COLUMNS, type Reading, STOCK_COLUMNS } from '../../intake/index.ts';
import type { DoorEnv } from '../door.ts';
import { kindOptions, speciesOptions } from './choices.ts';
import { sayNext } from './cookies.ts';
import { draftOf, type KeptDraft, keep, newDraft, run } from './drafts.ts';
import type { House } from './house.ts';
import { answered } from './import-answers.ts';
import { sentList } from './import-sent.ts';
import { page, statusOf, type Visit, visit } from './visit.ts';

export function importRoutes(app: Hono<DoorEnv>, house: House): void {
  app.get(paths.import, (c) => showImport(house, c));
  app.post(paths.import, (c) => receive(house, c));
  app.post(paths.importCheck, (c) => readAgain(house, c));
  app.post(paths.importConfirm, (c) => confirm(house, c));
}

const at = (id: string): string => `${paths.import}?draft=${id}`;
const GONE = 'That list is no longer kept here. Send it again.';

async function showImport(house: House, c: Context, refused: Refused | null = null): Promise<Response> {
  const id = refused === null ? c.req.query('draft') : undefined;
  const kept = id === undefined ? null : await draftOf(house, id);
  const here = await visit(house, c, { refused });
  const flash = id !== undefined && kept === null ? [{ kind: 'problem' as const, text: GONE }] : [];
  const shell = { ...here.shell, flash: [...here.shell.flash, ...flash] };
  const draft = kept === null ? null : await shownDraft(house, here, kept);
  return page(c, ImportPage({ shell, forms: here.forms, draft }), statusOf(refused !== null));
}

async function shownDraft(house: House, { snapshot }: Visit, kept: KeptDraft): Promise<Draft | null> {
  const seen = await run(house, kept, { dryRun: true });
  if (!seen.ok) return null;
  const animals = kept.what === 'animals';
  return {
    id: kept.id,
    what: kept.what,
    reading: seen.value.reading,
    columns: (animals ? ANIMAL_COLUMNS : STOCK_COLUMNS).map((column) => ({
      value: column,
      label: COLUMN_WORDS[column] ?? sentenceCase(column),
    })),
    choices: animals ? kindOptions(snapshot.facts) : speciesOptions(snapshot.facts),
  };
}

/** What our columns mean, where their own names do not tell. */
const COLUMN_WORDS: Readonly<Record<string, string>> = {
  who: 'Name',
  unit: 'Unit of the size',
  fed: 'Last fed',
  moulted: 'Last moult',
  count: 'How many',
  came: 'Came on',
  role: 'Bin, colony or cup',
  label: 'Label or id',
};

/** A list of which nothing can be read comes back with what is wrong beside it. */
async function receive(house: House, c: Context): Promise<Response> {
  const sent = await sentList(c);
  if (!sent.ok) return showImport(house, c, sent.problem);
  const draft = newDraft(sent.value.what, sent.value.bytes);
  const seen = await run(house, draft, { dryRun: true });
  const wrong = seen.ok ? unreadable(seen.value.reading) : seen.problem.sentence;
  if (wrong !== null) return showImport(house, c, sent.value.refuse(wrong));
  const kept = await keep(house, draft);
  if (!kept.ok) return showImport(house, c, sent.value.refuse(kept.problem.sentence));
  return c.redirect(at(draft.id), 303);
}

const unreadable = ({ headings, problems }: Reading<unknown>): string | null =>
  headings.length === 0 ? (problems[0]?.sentence ?? null) : null;

async function readAgain(house: House, c: Context): Promise<Response> {
  const form = await c.req.parseBody();
  const draft = await draftOf(house, String(form.draft ?? ''));
  if (draft === null) return c.redirect(at(String(form.draft ?? '')), 303);
  const kept = await keep(house, answered(draft, form));
  if (!kept.ok) sayNext(c, 'problem', kept.problem.sentence);
  return c.redirect(at(draft.id), 303);
}

async function confirm(house: House, c: Context): Promise<Response> {
  const form = await c.req.parseBody();
  const draft = await draftOf(house, String(form.draft ?? ''));
  if (draft === null) return c.redirect(at(String(form.draft ?? '')), 303);
  const done = await run(house, draft, { formId: String(form.formId ?? draft.id) });
  if (!done.ok) sayNext(c, 'problem', `Nothing was written: ${done.problem.sentence}`);
  else if (done.value.done === null && done.value.reading.ready)
    sayNext(c, 'done', 'Nothing in the list was new; nothing was changed.');
  const written = done.ok && done.value.reading.ready;
  const place = draft.what === 'animals' ? paths.animals : paths.larder;
  return c.redirect(written ? place : at(draft.id), 303);
}

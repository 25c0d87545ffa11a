/** Takes the keeper's own values back, one field, one stage or all of a kind: the Book's hold again. */
import { z } from 'zod';
import { kindWith } from '../facts/own/kind-with.ts';
import { type Changed, type ChangedKind, type KindChanges, stageValues } from '../husbandry/animals/index.ts';
import { type Problem, problem } from '../husbandry/problems.ts';
import { err, ok, type Result } from '../husbandry/result.ts';
import type { Facts } from '../husbandry/snapshot.ts';
import { asOf, formId, someText, text } from './fields.ts';
import { findKind } from './find.ts';
import { bookKind, rowOf, spokenField, withStage, written } from './own-values.ts';
import { action } from './perform.ts';
import { whyNotRule, whyNotSizes } from './rule-bounds.ts';
import { unlessChanged } from './unless-changed.ts';

const schema = z.strictObject({
  kind: someText,
  /** '' with a field: a field of the kind as a whole. */
  stage: text.default(''),
  /** '': every field of the stage; without a stage every field of the kind. */
  field: text.default(''),
  asOf,
  formId,
});
type What = Pick<z.output<typeof schema>, 'stage' | 'field'>;

/** What names a kind of the keeper's own, and cannot be the Book's. */
const OWN_NAMES = ['name', 'commonName', 'aliases'];

export const resetRule = action({
  verb: 'reset-rule',
  schema,
  body: async ({ tx, book, facts }, { kind: code, stage, field, asOf: seen }) => {
    const kind = findKind(facts, code);
    if (!kind.ok) return kind;
    const called = kind.value.commonName;
    const free = await unlessChanged(tx, { noun: 'kind', code, called, asOf: seen });
    if (!free.ok) return free;
    const row = await rowOf(tx, code);
    const changes = without(row, { stage, field });
    if (JSON.stringify(changes) === JSON.stringify(row.changes)) return err(nothingOwn(called));
    const after = { ...row, changes };
    const stands = wholeStill(book, after);
    if (!stands.ok) return stands;
    const what = [stage, field === '' ? '' : spokenField(field)].filter((word) => word !== '').join(', ');
    return ok({
      summary: `Reset ${called}${what === '' ? '' : `, ${what}`} to the Book`,
      reply: { kind: code, stage },
      ...written(after),
    });
  },
});

const nothingOwn = (called: string): Problem =>
  problem('nothing-changed', `Nothing of yours stands there: ${called} is as the Book has it.`);

function without({ base, changes }: ChangedKind, { stage, field }: What): KindChanges {
  const kept = (name: string): boolean => base !== null && OWN_NAMES.includes(name);
  if (stage === '') {
    const isGone = (name: string): boolean => (field === '' || name === field) && !kept(name);
    const kind = filtered(changes.kind, (name) => !isGone(name));
    return { kind, stages: field === '' ? {} : changes.stages };
  }
  const own = changes.stages[stage as 'adult'] ?? {};
  return withStage(changes, stage, field === '' ? {} : filtered(own, (name) => name !== field));
}

const filtered = <T>(own: Changed<T>, keep: (name: string) => boolean): Changed<T> =>
  Object.fromEntries(Object.entries(own).filter(([name]) => keep(name))) as Changed<T>;

/** What is left of the keeper's values must still fit the Book's. */
function wholeStill(book: Facts, row: ChangedKind): Result<null> {
  const base = bookKind(book, row);
  if (!base.ok) return base;
  const kind = kindWith(base.value, row);
  const wrong =
    whyNotSizes(kind) ??
    kind.stages.reduce<Problem | null>((found, rule) => found ?? whyNotRule(stageValues(rule), book), null);
  if (wrong === null) return ok(null);
  return err(
    problem(
      'does-not-fit',
      `That alone does not fit your other values: ${wrong.sentence} Or reset the stage.`,
    ),
  );
}

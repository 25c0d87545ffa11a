/** A rule with some of its figures changed: what an edit writes and what a preview shows. */
import { z } from 'zod';
import { kindWith } from '../facts/own/kind-with.ts';
import { type ChangedKind, stageValues } from '../husbandry/animals/index.ts';
import { err, ok, type Result } from '../husbandry/result.ts';
import type { Facts } from '../husbandry/snapshot.ts';
import type { Now } from './context.ts';
import { asOf, formId, someText, text } from './fields.ts';
import { bookKind, differences, stageOf, withStage } from './own-values.ts';
import { whyNotRule } from './rule-bounds.ts';
import { ruleFigures, valuesWith } from './rule-fields.ts';

export const ruleEdit = z.strictObject({
  kind: someText,
  stage: someText,
  ...ruleFigures,
  /** Why, in the keeper's words; kept with every value this changes. */
  why: text.default(''),
  asOf,
  formId,
});

export interface Desk {
  /** The Book as it came. */
  readonly book: Facts;
  /** What was changed before. */
  readonly row: ChangedKind;
  readonly now: Pick<Now, 'today'>;
}

/** The row as it would stand; a Problem where the figures cannot be. */
export function ruleEdited(given: z.output<typeof ruleEdit>, { book, row, now }: Desk): Result<ChangedKind> {
  const { kind: _, stage, why, asOf: _seen, formId: _form, ...figures } = given;
  const base = bookKind(book, row);
  if (!base.ok) return base;
  const rule = stageOf(base.value, stage);
  if (!rule.ok) return rule;
  const current = stageOf(kindWith(base.value, row), stage);
  if (!current.ok) return current;
  const values = valuesWith(stageValues(current.value), figures);
  const wrong = whyNotRule(values, book);
  if (wrong !== null) return err(wrong);
  const both = { book: stageValues(rule.value), own: row.changes.stages[rule.value.stage] ?? {} };
  const own = differences(both, values, { day: now.today, why });
  return ok({ ...row, changes: withStage(row.changes, stage, own) });
}

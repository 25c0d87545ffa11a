/** Changes the feeding rule of one kind and stage; the Book's own values stay beside what is changed. */
import type { ChangedKind, Kind } from '../husbandry/animals/index.ts';
import { problem } from '../husbandry/problems.ts';
import { err, ok } from '../husbandry/result.ts';
import { findKind } from './find.ts';
import { fieldsChanged, rowOf, spokenField, written } from './own-values.ts';
import { action } from './perform.ts';
import { ruleEdit, ruleEdited } from './rule-edited.ts';
import { unlessChanged } from './unless-changed.ts';

export const editRule = action({
  verb: 'edit-rule',
  schema: ruleEdit,
  body: async ({ tx, now, book, facts }, given) => {
    const kind = findKind(facts, given.kind);
    if (!kind.ok) return kind;
    const called = kind.value.commonName;
    const free = await unlessChanged(tx, { noun: 'kind', code: given.kind, called, asOf: given.asOf });
    if (!free.ok) return free;
    const row = await rowOf(tx, given.kind);
    const after = ruleEdited(given, { book, row, now });
    if (!after.ok) return after;
    const fields = fieldsChanged(ofStage(row, given.stage), ofStage(after.value, given.stage));
    if (fields.length === 0)
      return err(problem('nothing-changed', `The rule of ${called} says so already; nothing was changed.`));
    return ok({
      summary: `Changed the rule of ${called}, ${wordOf(kind.value, given.stage)}: ${fields.map(spokenField).join(', ')}`,
      reply: { kind: given.kind, stage: given.stage },
      ...written(after.value),
    });
  },
});

/** What keepers call the stage: 'spiderling'. */
const wordOf = ({ stages }: Kind, stage: string): string =>
  stages.find((rule) => rule.stage === stage)?.words[0] ?? stage;

const ofStage = ({ changes }: ChangedKind, stage: string): object => changes.stages[stage as 'adult'] ?? {};

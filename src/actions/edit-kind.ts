/** Changes how a kind is measured, how large and heavy it is, and by what other names lists may call it. */
import { problem } from '../husbandry/problems.ts';
import { err, ok } from '../husbandry/result.ts';
import { findKind } from './find.ts';
import { kindEdit, kindEdited } from './kind-edited.ts';
import { whyNotFree } from './kind-names.ts';
import { fieldsChanged, rowOf, spokenField, written } from './own-values.ts';
import { action } from './perform.ts';
import { unlessChanged } from './unless-changed.ts';

export const editKind = action({
  verb: 'edit-kind',
  schema: kindEdit,
  body: async ({ tx, now, book, facts }, given) => {
    const kind = findKind(facts, given.kind);
    if (!kind.ok) return kind;
    const called = kind.value.commonName;
    const free = await unlessChanged(tx, { noun: 'kind', code: given.kind, called, asOf: given.asOf });
    if (!free.ok) return free;
    const row = await rowOf(tx, given.kind);
    const after = kindEdited(given, { book, row, now });
    if (!after.ok) return after;
    const taken = whyNotFree(facts, given.kind, { aliases: after.value.changes.kind.aliases?.value ?? [] });
    if (taken !== null) return err(taken);
    const fields = fieldsChanged(row.changes.kind, after.value.changes.kind);
    if (fields.length === 0)
      return err(problem('nothing-changed', `The Book says so of ${called} already; nothing was changed.`));
    return ok({
      summary: `Changed ${called}: ${fields.map(spokenField).join(', ')}`,
      reply: { kind: given.kind },
      ...written(after.value),
    });
  },
});

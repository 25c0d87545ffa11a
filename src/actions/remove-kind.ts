/** Removes a kind of the keeper's own that nobody is of. */
import { z } from 'zod';
import { type Problem, problem } from '../husbandry/problems.ts';
import { err, ok } from '../husbandry/result.ts';
import { fewOf } from '../husbandry/words.ts';
import { rowsOf, type Tx } from '../store/index.ts';
import { asOf, formId, someText } from './fields.ts';
import { findKind } from './find.ts';
import { action } from './perform.ts';
import { unlessChanged } from './unless-changed.ts';

export const removeKind = action({
  verb: 'remove-kind',
  schema: z.strictObject({ kind: someText, asOf, formId }),
  body: async ({ tx, facts }, { kind: code, asOf: seen }) => {
    const kind = findKind(facts, code);
    if (!kind.ok) return kind;
    const { name, commonName, madeFrom } = kind.value;
    if (madeFrom === undefined)
      return err(
        problem('of-the-book', `"${name}" belongs to the Book and stays; reset it to undo your changes.`),
      );
    const free = await unlessChanged(tx, { noun: 'kind', code, called: commonName, asOf: seen });
    if (!free.ok) return free;
    const used = await usedBy(tx, { code, name });
    if (used !== null) return err(used);
    return ok({ summary: `Removed the kind ${name}`, drops: { kind: [code] }, reply: null });
  },
});

const MOST_NAMED = 5;

/** Who is of this kind, those who left too, as a Problem; null when nobody. */
async function usedBy(tx: Tx, { code, name }: { code: string; name: string }): Promise<Problem | null> {
  const animals = await tx.ask(rowsOf('animal', { where: 'kind = ?', args: [code] }));
  const plans = await tx.ask(rowsOf('planned_change', { where: 'animal_kind = ?', args: [code] }));
  const named = [
    ...animals.map((animal) => (animal.name === '' ? animal.code : animal.name)),
    ...plans.map((plan) => `a planned ${plan.kind}`),
  ];
  if (named.length === 0) return null;
  const sentence = `"${name}" is the kind of ${fewOf(named, MOST_NAMED)}, on record here. Give them another kind first.`;
  return problem('kind-in-use', sentence);
}

/** Gives a kind another name: the old ones stay among its other names, so that old lists are still read. */
import { z } from 'zod';
import type { KindValues } from '../husbandry/animals/index.ts';
import { problem } from '../husbandry/problems.ts';
import { err, ok } from '../husbandry/result.ts';
import { isGeneral } from '../intake/index.ts';
import { asOf, formId, someText, text } from './fields.ts';
import { findKind } from './find.ts';
import { kindValued } from './kind-edited.ts';
import { whyNotFree } from './kind-names.ts';
import { rowOf, written } from './own-values.ts';
import { action } from './perform.ts';
import { unlessChanged } from './unless-changed.ts';

export const renameKind = action({
  verb: 'rename-kind',
  schema: z.strictObject({
    kind: someText,
    name: someText,
    commonName: someText,
    why: text.default(''),
    asOf,
    formId,
  }),
  body: async ({ tx, now, book, facts }, { kind: code, name, commonName, why, asOf: seen }) => {
    const kind = findKind(facts, code);
    if (!kind.ok) return kind;
    const old = kind.value;
    const free = await unlessChanged(tx, { noun: 'kind', code, called: old.commonName, asOf: seen });
    if (!free.ok) return free;
    if (isGeneral(old) && name !== old.name) return err(generalKind(old.name));
    const taken = whyNotFree(facts, code, { name, commonName });
    if (taken !== null) return err(taken);
    if (name === old.name && commonName === old.commonName)
      return err(problem('nothing-changed', `It is called "${name}" already; nothing was changed.`, 'name'));
    const row = await rowOf(tx, code);
    const after = kindValued((values) => renamed(values, { name, commonName }), { book, row, now, why });
    if (!after.ok) return after;
    return ok({
      summary: summaryOf(old, { name, commonName }),
      reply: { kind: code },
      ...written(after.value),
    });
  },
});

type Called = Pick<KindValues, 'name' | 'commonName'>;

/** Names are kept in lower case among the others, each once. */
function renamed(values: KindValues, called: Called): KindValues {
  const others = [...values.aliases, values.name.toLowerCase(), values.commonName.toLowerCase()];
  const now = [called.name.toLowerCase(), called.commonName.toLowerCase()];
  const aliases = [...new Set(others)].filter((alias) => !now.includes(alias));
  return { ...values, ...called, aliases };
}

const summaryOf = (old: Called, now: Called): string =>
  old.name === now.name
    ? `Called ${old.name} "${now.commonName}"; "${old.commonName}" is still read in lists`
    : `Renamed ${old.name} to ${now.name}; the old name is still read in lists`;

const generalKind = (name: string) =>
  problem(
    'general-kind',
    `"${name}" stands for its whole group and keeps its name. Make a kind of your own from it instead.`,
    'name',
  );

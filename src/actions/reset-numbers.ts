/** Takes the keeper's own numbers back, one or all of a prey species or of the method: the Book's hold again. */
import { z } from 'zod';
import type { BookNumber } from '../facts/own/book-number.ts';
import type { OwnNumbers } from '../husbandry/own-numbers.ts';
import { problem } from '../husbandry/problems.ts';
import { err, ok } from '../husbandry/result.ts';
import { asOf, formId, someText, text } from './fields.ts';
import { numbered } from './numbered.ts';
import { numbersWritten, ownNumbersOf } from './numbers-edited.ts';
import { action } from './perform.ts';
import { unlessChanged } from './unless-changed.ts';

const schema = z.strictObject({
  /** Code of a prey species, or 'method'. */
  of: someText,
  /** Key of one number with all its figures; '' for every number. */
  number: text.default(''),
  asOf,
  formId,
});

export const resetNumbers = action({
  verb: 'reset-numbers',
  schema,
  body: async ({ tx, book }, { of: code, number: key, asOf: seen }) => {
    const subject = numbered(book, code);
    if (!subject.ok) return subject;
    const { called, numbers, whyNot } = subject.value;
    const free = await unlessChanged(tx, { noun: 'numbers', code, called, asOf: seen });
    if (!free.ok) return free;
    const own = await ownNumbersOf(tx, code);
    const changes = key === '' ? {} : without(own, numbers, key);
    if (Object.keys(changes).length === Object.keys(own).length)
      return err(
        problem('nothing-changed', `Nothing of yours stands there: ${called} is as the Book has it.`),
      );
    const wrong = whyNot(changes);
    if (wrong !== null)
      return err(
        problem(
          'does-not-fit',
          `That alone does not fit your other numbers: ${wrong.sentence} Or reset all.`,
        ),
      );
    const what = numbers.find((each) => each.key === key)?.what;
    return ok({
      summary: `Reset ${called}${what === undefined ? '' : `, ${what},`} to the Book`,
      reply: { of: code },
      ...numbersWritten({ code, changes }),
    });
  },
});

function without(own: OwnNumbers, numbers: readonly BookNumber[], key: string): OwnNumbers {
  const figures = numbers.find((number) => number.key === key)?.figures ?? [];
  const gone = new Set(figures.map((figure) => figure.key));
  return Object.fromEntries(Object.entries(own).filter(([name]) => !gone.has(name)));
}

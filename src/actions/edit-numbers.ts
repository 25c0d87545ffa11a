/** Changes numbers of a prey species or of the method; the Book's own stay beside what is changed. */
import type { BookNumber } from '../facts/own/book-number.ts';
import { problem } from '../husbandry/problems.ts';
import { err, ok } from '../husbandry/result.ts';
import { numbered } from './numbered.ts';
import { numbersEdit, numbersEdited, numbersWritten, ownNumbersOf } from './numbers-edited.ts';
import { fieldsChanged } from './own-values.ts';
import { action } from './perform.ts';
import { unlessChanged } from './unless-changed.ts';

export const editNumbers = action({
  verb: 'edit-numbers',
  schema: numbersEdit,
  body: async ({ tx, now, book }, { of: code, figures, why, asOf }) => {
    const subject = numbered(book, code);
    if (!subject.ok) return subject;
    const { called } = subject.value;
    const free = await unlessChanged(tx, { noun: 'numbers', code, called, asOf });
    if (!free.ok) return free;
    const own = await ownNumbersOf(tx, code);
    const after = numbersEdited(subject.value, own, { figures, day: now.today, why });
    if (!after.ok) return after;
    const changed = fieldsChanged(own, after.value);
    if (changed.length === 0)
      return err(problem('nothing-changed', `The numbers of ${called} say so already; nothing was changed.`));
    return ok({
      summary: `Changed ${called}: ${spokenNumbers(subject.value.numbers, changed)}`,
      reply: { of: code },
      ...numbersWritten({ code, changes: after.value }),
    });
  },
});

/** 'days measured at 25 °C, eggs that hatch'. */
const spokenNumbers = (numbers: readonly BookNumber[], keys: readonly string[]): string =>
  numbers
    .flatMap(({ what, figures }) =>
      figures.filter(({ key }) => keys.includes(key)).map(({ at }) => (at === '' ? what : `${what} ${at}`)),
    )
    .join(', ');

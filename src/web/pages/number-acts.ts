/** What is done with the numbers of a prey species or of the method: changed, reset; and what their page needs for it. */
import type { Context, Hono } from 'hono';
import type { Refused } from '../../../views/partials/form.tsx';
import type { NumberAct } from '../../../views/paths.ts';
import { editNumbers, factsNow, resetNumbers } from '../../actions/index.ts';
import { numbered } from '../../actions/numbered.ts';
import type { BookNumber } from '../../facts/own/book-number.ts';
import type { Facts } from '../../husbandry/snapshot.ts';
import { actsChanging, rowNamed } from '../../store/index.ts';
import type { DoorEnv } from '../door.ts';
import { figuresTyped, numberForm, numberGroups, numberShape } from './book-numbers.ts';
import { latestLines } from './history.ts';
import type { House } from './house.ts';
import { posted, valuesIn } from './posted.ts';
import { route } from './route.ts';
import { anyText, revision } from './typed.ts';
import type { Visit } from './visit.ts';

interface NumbersAt {
  /** Code of the prey species, or of the method. */
  readonly codeOf: (c: Context) => string;
  /** Address of the page, and of its acts; with ':code' as a route. */
  readonly page: (code: string) => string;
  readonly act: (code: string, act: NumberAct) => string;
  /** The page with a form as it was refused. */
  readonly again: (c: Context, refused: Refused) => Promise<Response>;
}

export function numberRoutes(app: Hono<DoorEnv>, house: House, at: NumbersAt): void {
  const { context } = house;
  const next = (c: Context): string => at.page(at.codeOf(c));
  app.post(route(at.act(':code', 'numbers')), async (c) => {
    const { group = '' } = await valuesIn(c);
    const book = numbersIn(context.facts, at.codeOf(c));
    return posted(house, {
      form: () => 'numbers',
      next,
      again: at.again,
      shape: () => numberShape(book, group),
      act: async ({ why, asOf, ...given }, { formId }) => {
        const of = at.codeOf(c);
        const now = numbersIn(await factsNow(context), of);
        const sent = { of, figures: figuresTyped(now, given), why: why as string, asOf: asOf as number };
        return editNumbers(context, { ...sent, formId });
      },
    })(c);
  });
  app.post(
    route(at.act(':code', 'reset')),
    posted(house, {
      form: () => 'reset-all',
      next,
      again: at.again,
      shape: () => ({ stage: anyText, field: anyText, asOf: revision }),
      act: ({ field, asOf }, { c, formId }) =>
        resetNumbers(context, { of: at.codeOf(c), number: field, asOf, formId }),
    }),
  );
}

/** None of what the Book does not know. */
function numbersIn(facts: Facts, code: string): readonly BookNumber[] {
  const found = numbered(facts, code);
  return found.ok ? found.value.numbers : [];
}

/** What a page shows of the numbers: their groups, the open form and what the keeper changed before. */
export async function numbersShown(
  { context }: House,
  here: Visit,
  { code, open, at }: { code: string; open: string; at: Pick<NumbersAt, 'page' | 'act'> },
) {
  const { row, acts } = await context.store.askAll({
    row: rowNamed('numbers', code),
    acts: actsChanging('numbers', code),
  });
  const now = numbersIn(here.snapshot.facts, code);
  const book = numbersIn(context.facts, code);
  const { revision: asOf } = here.snapshot;
  return {
    revision: asOf,
    groups: numberGroups({ now, book, own: row?.changes ?? {}, unit: here.unit }),
    form: numberForm(now, open, {
      forms: here.forms,
      action: at.act(code, 'numbers'),
      back: at.page(code),
      revision: asOf,
    }),
    history: latestLines(acts, here.names),
  };
}

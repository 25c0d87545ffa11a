/** The numbers of a prey species or of the method as their page shows them: in groups, each group with its form. */
import type { z } from 'zod';
import { type LengthUnit, sentenceCase } from '../../../views/format.ts';
import type { NumberField, NumberFormProps, NumberGroup } from '../../../views/partials/number-form.tsx';
import type { NumberLine } from '../../../views/partials/own-numbers.tsx';
import { figureField, figureShown, unitTyped } from '../../actions/measure-bounds.ts';
import { type BookNumber, keyOf } from '../../facts/own/book-number.ts';
import { sourceWords } from '../../facts/source-words.ts';
import type { Own } from '../../husbandry/animals/index.ts';
import { civilDate } from '../../husbandry/calendar.ts';
import type { OwnNumbers } from '../../husbandry/own-numbers.ts';
import { numberWords } from './number-words.ts';
import { othersOf } from './source-line.ts';
import { anyText, needed, revision, typed } from './typed.ts';

export interface BookBeside {
  readonly now: readonly BookNumber[];
  readonly book: readonly BookNumber[];
  readonly own: OwnNumbers;
  readonly unit: LengthUnit;
}

/** The groups in the order of their numbers. */
export function numberGroups({ now, book, own, unit }: BookBeside): readonly NumberGroup[] {
  const inBook = new Map(book.map((number) => [number.key, number]));
  return [...new Set(now.map(({ about }) => about))].map((about) => ({
    code: keyOf(about),
    about,
    lines: now
      .filter((number) => number.about === about)
      .map((number) => lineOf(number, inBook.get(number.key) ?? number, { own, unit })),
  }));
}

type Beside = Pick<BookBeside, 'own' | 'unit'>;

function lineOf(number: BookNumber, book: BookNumber, { own, unit }: Beside): NumberLine {
  const changed = number.figures.flatMap(({ key }) => own[key] ?? []);
  const status = book.sourced?.status ?? null;
  const source = book.sourced === null ? null : sourceWords(book.sourced);
  return {
    field: number.key,
    what: sentenceCase(number.what),
    value: numberWords(number, unit),
    status: changed.length === 0 ? status : 'yours',
    source: changed.length === 0 ? source : null,
    own:
      changed.length === 0
        ? null
        : { ...sinceOf(changed), book: numberWords(book, unit), bookStatus: status, bookSource: source },
    others: book.sourced === null ? [] : othersOf(book.sourced),
    whyNotTheirs: book.sourced?.why ?? null,
  };
}

/** The latest day, and every reason once. */
function sinceOf(changed: readonly Own<number>[]) {
  const why = [...new Set(changed.flatMap((each) => each.why ?? []))].join('; ');
  return { since: civilDate(Math.max(...changed.map(({ day }) => day))), why: why === '' ? null : why };
}

/** The form of a group: every figure with what is typed for it. */
export function numberForm(
  numbers: readonly BookNumber[],
  code: string,
  rest: Pick<NumberFormProps, 'forms' | 'action' | 'back' | 'revision'>,
): NumberFormProps | null {
  const own = numbers.filter(({ about }) => keyOf(about) === code);
  const [first] = own;
  if (first === undefined) return null;
  const fields = own.map(({ what, measure, figures }) => ({
    what: sentenceCase(what),
    fields: figures.map(
      ({ key, at, value }): NumberField => ({
        name: key,
        label: [at === '' ? sentenceCase(what) : sentenceCase(at), unitTyped(measure)]
          .filter((word) => word !== '')
          .join(', '),
        start: figureShown(measure, value),
      }),
    ),
  }));
  return { ...rest, group: code, about: first.about, numbers: fields };
}

/** What the form of a group sends. */
export function numberShape(book: readonly BookNumber[], code: string): z.ZodRawShape {
  const figures = book
    .filter(({ about }) => keyOf(about) === code)
    .flatMap((number) =>
      number.figures.map(({ key }): [string, z.ZodType] => [key, typed(figureField(number))]),
    );
  return { ...Object.fromEntries(figures), group: needed, why: anyText, asOf: revision };
}

/** The figures typed, without those left as they were shown. */
export function figuresTyped(
  now: readonly BookNumber[],
  given: Readonly<Record<string, unknown>>,
): Readonly<Record<string, string>> {
  const all = now.flatMap(({ measure, figures }) =>
    figures.map(({ key, value }) => [key, figureShown(measure, value)] as const),
  );
  const changed = all.flatMap(([key, shown]) => {
    const sent = given[key];
    return typeof sent !== 'string' || sent === shown ? [] : [[key, sent] as const];
  });
  return Object.fromEntries(changed);
}

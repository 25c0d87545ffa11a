/** What is supposed, as an address says it or a form adds it: read field by field, or a sentence about what is wrong. */
import type { z } from 'zod';
import { MOST_IFS, SUPPOSABLE, type Supposable } from '../../../views/pages/what-if-forms.tsx';
import { AND } from '../../../views/plan-address.ts';
import { civilDay, figureWithin, heads } from '../../actions/fields.ts';
import type { DayRange } from '../../husbandry/calendar.ts';
import { restKey, type Supposed } from '../../husbandry/plan/index.ts';
import type { Snapshot } from '../../husbandry/snapshot.ts';
import { readFields, type Typed } from './sent-fields.ts';
import { needed, typed } from './typed.ts';
import { tooManySold } from './what-if-sold.ts';

const day = typed(civilDay);
const number = (least: number, most: number, wanted: string) =>
  figureWithin({ code: 'number-out-of-range', least, most, wanted });

const degrees = number(-15, 15, 'a number of degrees from -15 to 15, such as 2').refine((by) => by !== 0, {
  error: '"0" degrees would change nothing; write how much warmer, such as 2.',
});
const percent = number(-90, 500, 'a percentage from -90 to 500, such as 20').refine((by) => by !== 0, {
  error: '"0" % would change nothing; write how much dearer, such as 20.',
});
const outside = number(-40, 50, 'a temperature outside from -40 to 50 degrees Celsius, such as -5');
const many = typed(heads);

/** What a form can add, and what only a line of the plan asks. */
type Addressed = Supposable | 'without';

/** Fields of each, in the order in which an address gives them. */
const SHAPES = {
  warmer: { degrees },
  away: { from: day, to: day },
  sac: { kind: needed, young: many, day },
  sell: { kind: needed, heads: many, day },
  stops: { supplier: needed },
  dies: { bin: needed },
  price: { offer: needed, percent },
  weather: { from: day, to: day, temp: outside },
  without: { step: needed, line: needed },
} as const satisfies Record<Addressed, z.ZodRawShape>;

type Problems = Readonly<Record<string, string>>;
export type ReadSupposed =
  | { readonly ok: true; readonly supposed: Supposed }
  | { readonly ok: false; readonly problems: Problems };

type Given = Readonly<Record<string, string & number>>;

/** The room, and what is supposed already together with it. */
interface Standing {
  readonly snapshot: Snapshot;
  readonly together: readonly Supposed[];
}

/** One thing supposed, from its fields. */
export function supposedFrom(what: Addressed, fields: Typed, standing: Standing): ReadSupposed {
  const { snapshot } = standing;
  const read = readFields(fields, { shape: SHAPES[what] as z.ZodRawShape, today: snapshot.today });
  if (!read.ok) return read;
  const supposed = asSupposed(what, read.given as Given);
  const problems = amissIn(supposed, read.given as Given, standing);
  return Object.keys(problems).length === 0 ? { ok: true, supposed } : { ok: false, problems };
}

const dayIn = (text: string | undefined): number => civilDay.parse(text);

function asSupposed(what: Addressed, given: Given): Supposed {
  const { kind = '', from, to } = given;
  switch (what) {
    case 'warmer':
      return { what: 'warmer', degrees: given.degrees ?? 0 };
    case 'away':
      return { what: 'away', from: dayIn(from), to: dayIn(to) };
    case 'sac':
      return { what: 'sac', kind, young: Number(given.young), day: dayIn(given.day) };
    case 'sell':
      return { what: 'sell', kind, heads: Number(given.heads), day: dayIn(given.day) };
    case 'stops':
      return { what: 'supplier stops', supplier: given.supplier ?? '' };
    case 'dies':
      return { what: 'bin dies', bin: given.bin ?? '' };
    case 'price':
      return { what: 'price', offer: given.offer ?? '', percent: given.percent ?? 0 };
    case 'without':
      return { what: 'without', key: `${given.step}:${given.line}` };
    case 'weather':
      return { what: 'weather', from: dayIn(from), to: dayIn(to), tempC: given.temp ?? 0 };
  }
}

/** What fields that can each be read say against the room or each other. */
function amissIn(supposed: Supposed, given: Given, { snapshot, together }: Standing): Problems {
  const { today, bins, facts, market } = snapshot;
  const unknown = (field: string, known: boolean): Problems =>
    known ? {} : { [field]: `"${given[field]}" is not here; choose from the list.` };
  switch (supposed.what) {
    case 'away':
    case 'weather':
      return rangeAmiss(supposed, given, today);
    case 'sac':
      return { ...unknown('kind', facts.kinds.has(supposed.kind)), ...pastAmiss(supposed.day, given, today) };
    case 'sell': {
      if (!facts.kinds.has(supposed.kind)) return unknown('kind', false);
      const tooMany = tooManySold(supposed, snapshot, together);
      return {
        ...(tooMany === null ? {} : { heads: tooMany }),
        ...pastAmiss(supposed.day, given, today),
      };
    }
    case 'supplier stops':
      return unknown(
        'supplier',
        (market?.suppliers ?? []).some(({ code }) => code === supposed.supplier),
      );
    case 'bin dies':
      return unknown(
        'bin',
        bins.some(({ code }) => code === supposed.bin),
      );
    case 'price':
      return unknown(
        'offer',
        (market?.offers ?? []).some(({ code }) => code === supposed.offer),
      );
    case 'without':
      return isLine(supposed.key, snapshot) ? {} : { line: `"${supposed.key}" is no line of a plan.` };
    case 'warmer':
      return {};
  }
}

/** An order of an offer, cups of a species, or a bin left alone. */
const isLine = (key: string, { facts, market, bins }: Snapshot): boolean =>
  (market?.offers ?? []).some(({ code }) => key.startsWith(`order:${code}@`)) ||
  [...facts.species.keys()].some((code) => key.startsWith(`start:${code}@`)) ||
  bins.some(({ code }) => key === restKey(code));

function rangeAmiss({ from, to }: DayRange, given: Given, today: number): Problems {
  if (to < from) return { to: `"${given.from} to ${given.to}" runs backwards; the earlier day comes first.` };
  return to < today ? { to: `"${given.to}" is over; give days that are still to come.` } : {};
}

const pastAmiss = (on: number, given: Given, today: number): Problems =>
  on < today ? { day: `"${given.day}" is over; give a day that is still to come.` } : {};

export const isSupposable = (text: string | null): text is Supposable =>
  SUPPOSABLE.some((each) => each === text);

export interface IfsRead {
  readonly ifs: readonly (readonly Supposed[])[];
  /** Of each that could not be read, in sentences. */
  readonly problems: readonly string[];
}

/** Every `if` of an address; what cannot be read is left out and said. */
export function ifsIn(query: URLSearchParams, snapshot: Snapshot): IfsRead {
  const texts = query.getAll('if').filter((text) => text !== '');
  const read = texts.map((text) => togetherIn(text, snapshot));
  const ifs = read.map(({ together }) => together).filter((together) => together.length > 0);
  const over =
    ifs.length > MOST_IFS
      ? [`${ifs.length} what ifs are more than fit side by side; the first ${MOST_IFS} are shown.`]
      : [];
  return { ifs: ifs.slice(0, MOST_IFS), problems: [...read.flatMap(({ problems }) => problems), ...over] };
}

function togetherIn(text: string, snapshot: Snapshot) {
  const together: Supposed[] = [];
  const read = text.split(AND).map((each) => {
    const found = oneIn(each, { snapshot, together: [...together] });
    if (found?.ok) together.push(found.supposed);
    return { each, read: found };
  });
  return {
    together,
    problems: read.flatMap(({ each, read: found }) => {
      if (found?.ok) return [];
      const why =
        found === null
          ? `write ${SUPPOSABLE.join(', ')}, a colon and what it needs`
          : Object.values(found.problems)[0];
      return [`"${each}" in the address cannot be supposed: ${why}`];
    }),
  };
}

/** 'away:2026-12-10:2026-12-20' */
function oneIn(text: string, standing: Standing): ReadSupposed | null {
  const [what = '', ...values] = text.split(':');
  if (!isSupposable(what) && what !== 'without') return null;
  const fields = Object.keys(SHAPES[what]).map((name, i) => [name, [values[i] ?? '']] as const);
  return supposedFrom(what, Object.fromEntries(fields), standing);
}

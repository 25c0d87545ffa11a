/** What is supposed, and what it would change, in words. */
import {
  type Estimate,
  isTakenOut,
  type PlanAnswer,
  type PlanLine,
  type Supposed,
} from '../../src/husbandry/plan/index.ts';
import { counted, dayRange, listed, money, roundly, sentenceCase, shortDay } from '../format.ts';
import { kindsNamed, nameOf, preyName, sizedPrey } from '../names.ts';
import { keyWords } from './plan-wishes.ts';
import { amountOf, manyHeads, type PlanNames, supplierName } from './plan-words.ts';

/** What the codes of what is supposed are called. */
export interface SupposedNames extends PlanNames {
  readonly kinds: ReadonlyMap<string, { readonly commonName: string }>;
}

const degreesText = (degrees: number): string => counted(Math.abs(degrees), 'degree');

/** '2 degrees warmer', 'away Thu 10 Dec to Sun 20 Dec'. */
function supposedWords(supposed: Supposed, said: SupposedNames): string {
  switch (supposed.what) {
    case 'warmer':
      return `${degreesText(supposed.degrees)} ${supposed.degrees < 0 ? 'colder' : 'warmer'}`;
    case 'away':
      return `away ${dayRange(supposed.from, supposed.to)}`;
    case 'sac':
      return `a sac of ${manyHeads(supposed.young)} ${kindsNamed(said.kinds, supposed.kind, supposed.young)} on ${shortDay(supposed.day)}`;
    case 'sell':
      return `${manyHeads(supposed.heads)} ${kindsNamed(said.kinds, supposed.kind, supposed.heads)} sold on ${shortDay(supposed.day)}`;
    case 'supplier stops':
      return `${supplierName(said.market, supposed.supplier)} stops sending`;
    case 'bin dies':
      return `${nameOf(said.names.bins, supposed.bin)} dies out`;
    case 'price':
      return priceWords(supposed, said);
    case 'without':
      return `without ${keyWords(supposed.key, said)}`;
    case 'weather':
      return `${supposed.tempC} °C outside ${dayRange(supposed.from, supposed.to)}`;
  }
}

function priceWords({ offer, percent }: Extract<Supposed, { what: 'price' }>, said: SupposedNames): string {
  const found = said.market.offers.find(({ code }) => code === offer);
  const what =
    found === undefined
      ? 'an offer no longer here'
      : `${sizedPrey(found.size, preyName(said.names.species, found.species))} from ${supplierName(said.market, found.supplier)}`;
  return `${what} at ${Math.abs(percent)} % ${percent < 0 ? 'less' : 'more'}`;
}

export const togetherWords = (together: readonly Supposed[], said: SupposedNames): string =>
  sentenceCase(listed(together.map((each) => supposedWords(each, said))));

/** Steps by what became of them. */
export interface StepsChanged {
  readonly added: readonly PlanLine[];
  readonly dropped: readonly PlanLine[];
  readonly changed: readonly { readonly line: PlanLine; readonly before: number; readonly after: number }[];
  /** Heads harvested or culled from a bin over the whole plan, where they differ by a tenth or more. */
  readonly taken: readonly {
    readonly what: 'harvest' | 'cull';
    readonly bin: string;
    readonly before: number;
    readonly after: number;
  }[];
}

/** An order or a start of the same key is the same step; of what is taken out only the sum is compared. */
export function stepsChanged(base: PlanAnswer, other: PlanAnswer): StepsChanged {
  const decided = ({ lines }: PlanAnswer) =>
    new Map(lines.filter((line) => !isTakenOut(line)).map((line) => [line.key, line]));
  const [before, after] = [decided(base), decided(other)];
  return {
    added: [...after.values()].filter(({ key }) => !before.has(key)),
    dropped: [...before.values()].filter(({ key }) => !after.has(key)),
    changed: [...after.values()].flatMap((line) => {
      const was = before.get(line.key);
      if (was === undefined || amountOf(was) === amountOf(line)) return [];
      return [{ line, before: amountOf(was), after: amountOf(line) }];
    }),
    taken: takenChanged(base, other),
  };
}

const TOLD_FROM = 0.1;

function takenChanged(base: PlanAnswer, other: PlanAnswer): StepsChanged['taken'] {
  const [then, now] = [takenByBin(base), takenByBin(other)];
  return [...new Set([...then.keys(), ...now.keys()])].flatMap((key) => {
    const [before, after] = [then.get(key) ?? 0, now.get(key) ?? 0];
    if (Math.abs(after - before) < TOLD_FROM * Math.max(before, after)) return [];
    const [what, bin] = key.split(' ') as ['harvest' | 'cull', string];
    return [{ what, bin, before, after }];
  });
}

function takenByBin({ lines }: PlanAnswer): ReadonlyMap<string, number> {
  const heads = new Map<string, number>();
  for (const line of lines)
    if (isTakenOut(line)) {
      const key = `${line.what} ${line.bin}`;
      heads.set(key, (heads.get(key) ?? 0) + line.heads);
    }
  return heads;
}

/** '€12.40 dearer, 3 more meals missed; 2 steps added, 1 dropped.' */
export function changeWords(base: PlanAnswer, other: PlanAnswer, currency: string): string {
  const meals = mealsWords(base.whole.missedMeals, other.whole.missedMeals);
  return `${costWords(base, other, currency)}, ${meals}; ${stepsWords(stepsChanged(base, other))}.`;
}

/** '€12.40 dearer' */
export function costWords(base: PlanAnswer, other: PlanAnswer, currency: string): string {
  const cents = other.whole.cents.total - base.whole.cents.total;
  return cents === 0
    ? 'Costs the same'
    : `${money(Math.abs(cents), currency)} ${cents > 0 ? 'dearer' : 'cheaper'}`;
}

/** Counted apart, two plans differ for certain only where their intervals do not meet. */
function mealsWords(base: Estimate, other: Estimate): string {
  const more = roundly(Math.abs(other.mean - base.mean));
  const meet = other.low <= base.high && base.low <= other.high;
  if (more === 0 || meet) return 'about as many meals missed';
  return `${more} ${other.mean > base.mean ? 'more' : 'fewer'} ${more === 1 ? 'meal' : 'meals'} missed`;
}

function stepsWords({ added, dropped, changed, taken }: StepsChanged): string {
  const said = [
    [added.length, 'added'],
    [dropped.length, 'dropped'],
    [changed.length + taken.length, 'changed'],
  ] as const;
  const some = said.filter(([n]) => n > 0);
  if (some.length === 0) return 'the same steps';
  return listed(some.map(([n, how], i) => (i === 0 ? `${counted(n, 'step')} ${how}` : `${n} ${how}`)));
}

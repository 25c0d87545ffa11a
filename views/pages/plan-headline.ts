/** The plan's headline: what is to be done this week, in a few words; and the sentences below it. */
import type { DayNumber } from '../../src/husbandry/calendar.ts';
import { type PlanLine, type PlanStep, stepsOf } from '../../src/husbandry/plan/index.ts';
import { DAYS_PER_WEEK } from '../../src/husbandry/units.ts';
import { counted, fewOf, listed, parts, shortDay } from '../format.ts';
import { nameOf, preyName } from '../names.ts';
import { serviceWords } from './plan-service.ts';
import {
  headsWords,
  isOrder,
  lineTitle,
  type OrderLine,
  type PlanSaid,
  supplierName,
  whenWords,
} from './plan-words.ts';

/** 'Order from Hill Farm by Tuesday, 12:00: house crickets in 3 sizes', 'Nothing to order this week; the next order is by Wed 16 Dec'. */
export function planHeadline(said: PlanSaid): string {
  const { order, act, next } = urgent(said);
  if (next === undefined) return nothingWords(said);
  if (order === undefined) return `Nothing to buy; ${lowerFirst(actWords(act ?? next, said))}`;
  if (!isThisWeek(order, said))
    return `Nothing to order this week; ${
      act === undefined ? `the next order is ${whenWords(order, said)}` : lowerFirst(actWords(act, said))
    }`;
  const when = whenWords(order, said);
  if (act !== undefined && act !== order) return `${actWords(act, said)}; then order ${when}`;
  const what = preyWords(parcelOf(order, said), said);
  return `Order from ${supplierName(said.market, order.supplier)} ${when}: ${what}`;
}

/** 'To order: 500 small banded crickets; then every second Tuesday. 3 more steps this week. Nobody goes short.' */
export function planLede(said: PlanSaid): string {
  return [...overdue(said), orderSentence(said), ...moreSteps(said), `${serviceWords(said.plan)}.`]
    .filter((sentence) => sentence !== '')
    .join(' ');
}

interface Urgent {
  /** The next order. */
  readonly order: OrderLine | undefined;
  /** The first thing to do this week, an order before others of its day; leaving a colony alone only where nothing else is to be done. */
  readonly act: PlanLine | undefined;
  readonly next: PlanLine | undefined;
}

function urgent(said: PlanSaid): Urgent {
  const lines = ahead(said).map(({ line }) => line);
  const week = lines.filter((line) => isThisWeek(line, said));
  const order = lines.find(isOrder);
  const act = week.find(({ what }) => what !== 'rest') ?? week[0];
  return { order, act: order?.actBy === act?.actBy ? order : act, next: lines[0] };
}

/** Steps whose day has not passed, the first first, each parcel once. */
function ahead({ plan, today }: PlanSaid): readonly PlanStep[] {
  const steps = stepsOf(plan.lines).filter(({ line }) => line.actBy >= today);
  const parcels = steps.map(({ line }) => (isOrder(line) ? line.parcel : null));
  return steps.filter((_, i) => parcels[i] === null || parcels.indexOf(parcels[i]!) === i);
}

const isThisWeek = ({ actBy }: PlanLine, { today }: PlanSaid): boolean => actBy < today + DAYS_PER_WEEK;

function nothingWords({ plan }: PlanSaid): string {
  if (plan.lines.length > 0) return 'Nothing more is to be done in these weeks';
  return plan.whole.service.every(({ met }) => met)
    ? 'Nothing has to be bought, harvested or started'
    : 'Nothing that is here or on offer feeds all of them';
}

/** 'Harvest from Roach tub by Saturday', 'Start 2 cups of large fruit flies today'. */
function actWords(line: PlanLine, said: PlanSaid): string {
  switch (line.what) {
    case 'rest':
      return lineTitle(line, said);
    case 'start':
      return `${lineTitle(line, said)} ${whenWords(line, said)}`;
    case 'order':
      return `Order from ${supplierName(said.market, line.supplier)} ${whenWords(line, said)}`;
    default: {
      const verb = line.what === 'harvest' ? 'Harvest' : 'Cull';
      return `${verb} from ${nameOf(said.names.bins, line.bin)} ${whenWords(line, said)}`;
    }
  }
}

const parcelOf = ({ parcel }: OrderLine, { plan }: PlanSaid): readonly OrderLine[] =>
  plan.lines.filter(isOrder).filter((line) => line.parcel === parcel);

const KINDS_NAMED = 2;

/** 'house crickets', 'house crickets in 3 sizes', '3 kinds of prey'. */
function preyWords(parcel: readonly OrderLine[], { names, market }: PlanSaid): string {
  const kinds = [...new Set(parcel.map(({ species }) => species))];
  if (kinds.length > KINDS_NAMED) return `${kinds.length} kinds of prey`;
  const named = listed(kinds.map((code) => preyName(names.species, code)));
  const sizeOf = (code: string) => market.offers.find((offer) => offer.code === code)?.size;
  const sizes = new Set(parcel.map(({ offer }) => sizeOf(offer))).size;
  return kinds.length > 1 || sizes < 2 ? named : `${named} in ${sizes} sizes`;
}

const NAMED_PREY = 3;

function orderSentence(said: PlanSaid): string {
  const { order, act } = urgent(said);
  if (order === undefined) return '';
  return `${orderIs(order, act, said)}: ${parcelWords(parcelOf(order, said), said)}${rhythmWords(order, said)}.`;
}

/** '500 micro, 500 small and 750 medium house crickets' */
function parcelWords(parcel: readonly OrderLine[], said: PlanSaid): string {
  const all = parcel.map((line) => headsWords(line, said));
  const end = ` ${preyName(said.names.species, parcel[0]?.species ?? '')}`;
  const isOnePrey = all.every((words) => words.endsWith(end));
  return isOnePrey
    ? `${fewOf(
        all.map((words) => words.slice(0, -end.length)),
        NAMED_PREY,
      )}${end}`
    : fewOf(all, NAMED_PREY);
}

/** Says of an order what the headline has not said. */
function orderIs(order: OrderLine, act: PlanLine | undefined, said: PlanSaid): string {
  const supplier = supplierName(said.market, order.supplier);
  if (isThisWeek(order, said)) return act === order ? 'To order' : `To order from ${supplier}`;
  return act === undefined
    ? `It goes to ${supplier}`
    : `The next order, to ${supplier}, is ${whenWords(order, said)}`;
}

/** Days on which more is ordered there: '; then every second Tuesday'. */
function rhythmWords({ supplier }: OrderLine, said: PlanSaid): string {
  const alike = ahead(said).flatMap(({ line }) => (isOrder(line) && line.supplier === supplier ? line : []));
  const [first = 0, ...later] = alike.map(({ actBy }): DayNumber => actBy);
  const last = later.at(-1);
  if (last === undefined) return '';
  if (later.length === 1) return `; then once more by ${shortDay(last)}`;
  const gaps = later.map((day, i) => day - (later[i - 1] ?? first));
  const [gap = 0] = gaps;
  const isRegular = gap > 0 && gap % DAYS_PER_WEEK === 0 && gaps.every((each) => each === gap);
  if (!isRegular) return `; then ${later.length} more orders, the last by ${shortDay(last)}`;
  return `; then every ${EVERY[gap / DAYS_PER_WEEK] ?? `${gap / DAYS_PER_WEEK} weeks on `}${parts(first).name}`;
}
const EVERY: Readonly<Record<number, string>> = { 1: '', 2: 'second ', 3: 'third ', 4: 'fourth ' };

/** An older plan may order on days that have passed. */
function overdue({ plan, today }: PlanSaid): readonly string[] {
  const passed = plan.lines.filter(isOrder).filter(({ actBy }) => actBy < today);
  const n = new Set(passed.map(({ parcel }) => parcel)).size;
  return n === 0 ? [] : [`${counted(n, 'order was', 'orders were')} due before today.`];
}

/** Steps of this week that the headline does not name. */
function moreSteps(said: PlanSaid): readonly string[] {
  const { order, act } = urgent(said);
  const more = ahead(said).filter(({ line }) => isThisWeek(line, said) && line !== act && line !== order);
  return more.length === 0 ? [] : [`${counted(more.length, 'more step')} this week.`];
}

const lowerFirst = (text: string): string => text.charAt(0).toLowerCase() + text.slice(1);

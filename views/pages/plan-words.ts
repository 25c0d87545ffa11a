/** The plan in words: its headline, its lines, by when. */
import { type DayNumber, parseCivilDate } from '../../src/husbandry/calendar.ts';
import type { Market } from '../../src/husbandry/orders/index.ts';
import type { PlanAnswer, PlanLine } from '../../src/husbandry/plan/index.ts';
import { DAYS_PER_WEEK } from '../../src/husbandry/units.ts';
import { counted, fewOf, type LengthUnit, lengthRange, parts, sentenceCase, shortDay } from '../format.ts';
import { type Names, nameOf, preyName } from '../names.ts';
import { serviceWords } from './plan-service.ts';

/** What the codes of a plan are called. */
export interface PlanNames {
  readonly names: Names;
  readonly unit: LengthUnit;
  readonly market: Market;
}

export type OrderLine = Extract<PlanLine, { what: 'order' }>;
export const isOrder = (line: PlanLine): line is OrderLine => line.what === 'order';

/** A plan and what it is told with. */
export interface PlanSaid extends PlanNames {
  readonly plan: PlanAnswer;
  readonly today: DayNumber;
}

const NAMED_PREY = 3;

/** 'Order 500 small crickets by Tuesday; then every second Tuesday. Nobody goes short' */
export function planHeadline(said: PlanSaid): string {
  return `${stepsWords(said)}. ${serviceWords(said.plan)}`;
}

function stepsWords(said: PlanSaid): string {
  const { plan } = said;
  const orders = plan.lines.filter(isOrder).toSorted((a, b) => a.actBy - b.actBy);
  const [first] = orders;
  if (first === undefined) return withoutOrders(said);
  const parcel = orders.filter((line) => line.parcel === first.parcel);
  const what = fewOf(
    parcel.map((line) => headsWords(line, said)),
    NAMED_PREY,
  );
  const alike = orders.filter(({ supplier }) => supplier === first.supplier);
  const days = [...new Map(alike.map(({ parcel: code, actBy }) => [code, actBy])).values()];
  return `Order ${what} ${whenWords(first, said)}${rhythmWords(days)}`;
}

/** Days on which later parcels are ordered: '; then every second Tuesday'. */
function rhythmWords([first = 0, ...later]: readonly DayNumber[]): string {
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

function withoutOrders(said: PlanSaid): string {
  const { plan, today } = said;
  const [first] = plan.lines.toSorted((a, b) => a.actBy - b.actBy);
  if (first === undefined) return 'Nothing has to be bought, harvested or started';
  const begins = first.actBy === today ? 'Today' : `First, ${byWhen(first.actBy, today)}`;
  const title = lineTitle(first, said);
  return `Nothing has to be bought. ${begins}: ${title.charAt(0).toLowerCase()}${title.slice(1)}`;
}

/** 'today', 'by tomorrow', 'by Thursday', 'by Thu 8 Dec'. */
export function byWhen(day: DayNumber, today: DayNumber): string {
  const ahead = day - today;
  if (ahead < 0) return `(it was due on ${shortDay(day)})`;
  if (ahead === 0) return 'today';
  if (ahead === 1) return 'by tomorrow';
  return ahead < DAYS_PER_WEEK ? `by ${parts(day).name}` : `by ${shortDay(day)}`;
}

/** 'by Thursday' for what is to be done by then, 'by Thursday, 14:00' where a supplier names the hour; what is left alone begins at once. */
export function whenWords(line: PlanLine, { today, market }: Pick<PlanSaid, 'today' | 'market'>): string {
  const by = byWhen(line.actBy, today);
  if (line.what === 'rest' && line.actBy === today) return 'from today';
  const time = line.what === 'order' ? cutOffTime(market, line.supplier) : null;
  if (time === null || line.actBy < today) return by;
  return line.actBy === today ? `${by} before ${time}` : `${by}, ${time}`;
}

const cutOffTime = ({ suppliers }: Market, code: string): string | null =>
  suppliers.find((each) => each.code === code)?.cutOffTime ?? null;

export const manyHeads = (n: number): string => n.toLocaleString('en-GB');

/** '500 small house crickets'. */
export function headsWords({ heads, species, offer }: OrderLine, { names, market }: PlanNames): string {
  const size = market.offers.find(({ code }) => code === offer)?.size ?? '';
  return [manyHeads(heads), sized(size, preyName(names.species, species, heads))].join(' ');
}

/** 'small house crickets'; an offer need not name its size. */
const sized = (size: string, prey: string): string => (size === '' ? prey : `${size} ${prey}`);

export const supplierName = ({ suppliers }: Market, code: string): string =>
  suppliers.find((each) => each.code === code)?.name ?? 'a supplier no longer here';

const CULL_WHY = {
  room: 'It gets too full.',
  males: 'There are more males than it needs.',
} as const;

/** What a line asks for, in a few words: 'Order 500 small house crickets from Marrowgate Feeders'. */
export function lineTitle(line: PlanLine, said: PlanNames): string {
  const { names } = said;
  const prey = preyName(names.species, line.species, line.heads);
  switch (line.what) {
    case 'order':
      return `Order ${headsWords(line, said)} from ${supplierName(said.market, line.supplier)}`;
    case 'harvest':
      return `Harvest ${manyHeads(line.heads)} ${prey} of ${lengthRange(line.fromMm, line.toMm, said.unit)} from ${nameOf(names.bins, line.bin)}`;
    case 'cull':
      return `Cull ${manyHeads(line.heads)} ${prey} from ${nameOf(names.bins, line.bin)}`;
    case 'start':
      return `Start ${counted(line.cups, 'cup')} of ${preyName(names.species, line.species)}`;
    case 'rest':
      return `Leave ${nameOf(names.bins, line.bin)} alone until ${shortDay(line.until)}`;
  }
}

/** What a wish about a line says in numbers: packs, heads, cups or weeks. */
export function amountOf(line: PlanLine): number {
  switch (line.what) {
    case 'order':
      return line.packs;
    case 'start':
      return line.cups;
    case 'rest':
      return line.weeks;
    default:
      return line.heads;
  }
}

export const amountUnit = (line: PlanLine): string =>
  ({ order: 'packs', harvest: 'heads', cull: 'heads', start: 'cups', rest: 'weeks' })[line.what];

const REST = 'rest:';
const CULL = /^cull:([^:]+):(room|males)$/;
const KEY = /^(order|start):([^:@]+)@(\d{4}-\d{2}-\d{2})$/;

/** What a line is called by its key alone, whether or not it is in a plan: 'small house crickets from Marrowgate Feeders, sent Wed 25 Nov'. */
export function keyWords(key: string, { names, market }: PlanNames): string {
  if (key.startsWith(REST)) return `leaving ${nameOf(names.bins, key.slice(REST.length))} alone`;
  const [, culled, why] = CULL.exec(key) ?? [];
  if (culled !== undefined)
    return `culling ${why === 'males' ? 'males' : 'for room'} from ${nameOf(names.bins, culled)}`;
  const [, what, code = '', date = ''] = KEY.exec(key) ?? [];
  const day = parseCivilDate(date);
  if (!day.ok) return key;
  if (what === 'start') return `cups of ${preyName(names.species, code)} on ${shortDay(day.value)}`;
  const offer = market.offers.find((each) => each.code === code);
  if (offer === undefined) return `an offer no longer here, sent ${shortDay(day.value)}`;
  const prey = sized(offer.size, preyName(names.species, offer.species));
  return `${prey} from ${supplierName(market, offer.supplier)}, sent ${shortDay(day.value)}`;
}

/** The rest of a line: packs, when it comes, how long it yields. */
export function lineCourse(line: PlanLine): string {
  if (line.what === 'order') {
    const arrives = line.comes === line.sent ? '' : `, here on ${shortDay(line.comes)}`;
    return `${sentenceCase(counted(line.packs, 'pack'))}, sent on ${shortDay(line.sent)}${arrives}.`;
  }
  if (line.what === 'start')
    return `They yield from ${shortDay(line.yieldsFrom)} to ${shortDay(line.yieldsTo)}.`;
  if (line.what === 'cull') return CULL_WHY[line.why];
  if (line.what === 'rest') return 'Feed from the other bins until then, as long as anything in them fits.';
  return line.day === line.actBy ? '' : `From ${shortDay(line.day)} on, over the week.`;
}

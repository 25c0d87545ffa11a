/** The plan in words: its lines, by when, how much. */
import type { DayNumber } from '../../src/husbandry/calendar.ts';
import type { Market } from '../../src/husbandry/orders/index.ts';
import type { PlanAnswer, PlanLine } from '../../src/husbandry/plan/index.ts';
import { DAYS_PER_WEEK } from '../../src/husbandry/units.ts';
import { counted, type LengthUnit, lengthRange, parts, shortDay } from '../format.ts';
import { type Names, nameOf, preyName, sizedPrey } from '../names.ts';

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
  return [manyHeads(heads), sizedPrey(size, preyName(names.species, species, heads))].join(' ');
}

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

const UNIT = { order: 'pack', harvest: 'head', cull: 'head', start: 'cup', rest: 'week' } as const;

export const amountUnit = ({ what }: Pick<PlanLine, 'what'>): string => `${UNIT[what]}s`;

/** '1 pack', '3 weeks'. */
export const amountWords = ({ what }: Pick<PlanLine, 'what'>, n: number): string => counted(n, UNIT[what]);

/** The rest of a line: packs, when it comes, how long it yields. */
export function lineCourse(line: PlanLine): string {
  if (line.what === 'order') {
    const leaves = line.comes === line.sent ? ', ' : `. Leaves ${shortDay(line.sent)}, `;
    return `${counted(line.packs, 'pack')}${leaves}here on ${shortDay(line.comes)}.`;
  }
  if (line.what === 'start')
    return `They yield from ${shortDay(line.yieldsFrom)} to ${shortDay(line.yieldsTo)}.`;
  if (line.what === 'cull') return CULL_WHY[line.why];
  if (line.what === 'rest') return 'Feed from the other bins until then, as long as anything in them fits.';
  return line.day === line.actBy ? '' : `From ${shortDay(line.day)} on, over the week.`;
}

/** A supplier in words: by when to order and when it comes, how they send, what a parcel costs, what the weather holds. */

import { type DayNumber, weekday } from '../src/husbandry/calendar.ts';
import type { Dispatch, Supplier } from '../src/husbandry/orders/index.ts';
import { money } from './format/money.ts';
import {
  counted,
  DAY_OPTIONS,
  listed,
  longDay,
  percent,
  sentenceCase,
  shortDay,
  WEEKDAYS,
} from './format.ts';

/** The chances to order from one supplier in the time looked ahead. */
export interface Chances {
  readonly next: readonly Dispatch[];
  /** Days on which a parcel would have left, were it not for the weather; with the day it leaves instead. */
  readonly held: readonly { readonly sent: DayNumber; readonly leaves: DayNumber | null }[];
  readonly weeks: number;
}

/** 'today', 'tomorrow', 'Thu 27 Nov'. */
const soonDay = (day: DayNumber, today: DayNumber): string =>
  day === today ? 'today' : day === today + 1 ? 'tomorrow' : shortDay(day);

/** 'today before 12:00', 'by Sun 4 Oct, 12:00'. */
function byWhen({ cutOffTime }: Supplier, day: DayNumber, today: DayNumber): string {
  if (day === today) return cutOffTime === null ? 'today' : `today before ${cutOffTime}`;
  return `by ${soonDay(day, today)}${cutOffTime === null ? '' : `, ${cutOffTime}`}`;
}

/** 'order by Sun 4 Oct, 12:00, and it comes on Wed 7 Oct', 'open today'. */
export function nextWords(supplier: Supplier, { next, weeks }: Chances, today: DayNumber): string {
  const [first] = next;
  if (supplier.kind === 'shop')
    return first === undefined ? `not open in ${counted(weeks, 'week')}` : `open ${onDay(first.sent, today)}`;
  if (first === undefined) return `sends nothing in the next ${counted(weeks, 'week')}`;
  const { orderBy, comes } = first;
  return `order ${byWhen(supplier, orderBy, today)}, and it comes ${onDay(comes, today)}`;
}

const onDay = (day: DayNumber, today: DayNumber): string =>
  day <= today + 1 ? soonDay(day, today) : `on ${shortDay(day)}`;

/** For who is too late for the first: 'After that: by tomorrow, for Thu 8 Oct.'; empty where the hour does not matter. */
export function afterThatWords(supplier: Supplier, { next }: Chances, today: DayNumber): string {
  const [first, second] = next;
  if (supplier.kind === 'shop' || first?.orderBy !== today || second === undefined) return '';
  return `After that: order ${byWhen(supplier, second.orderBy, today)}, for ${longDay(second.comes)}.`;
}

/** 'The weather holds what would leave on Mon 5 Oct; a parcel ordered before leaves on Mon 12 Oct.' */
export function heldWords({ held }: Chances): string {
  const [first] = held;
  if (first === undefined) return '';
  const then =
    first.leaves === null
      ? 'an order already placed lapses'
      : `an order already placed leaves on ${shortDay(first.leaves)}`;
  return `The weather holds back what would leave on ${shortDay(first.sent)}: ${then}.`;
}

const weekdaysOf = (marked: readonly boolean[]): string => {
  const days = WEEKDAYS.filter((_, at) => marked[at]);
  if (days.length === WEEKDAYS.length) return 'every day';
  const [first, last] = [marked.indexOf(true), marked.lastIndexOf(true)];
  const inRow = last - first + 1 === days.length && days.length > 2;
  const short = (at: number) => DAY_OPTIONS[at]?.label ?? '';
  return inRow ? `${short(first)} to ${short(last)}` : listed(days.map((day) => day.slice(0, 3)));
};

/** 'Sends Mon to Wed, 2 days on the way; order by 12:00 the day before.' */
export function sendsWords(supplier: Supplier): string {
  const days = weekdaysOf(supplier.dispatchWeekdays);
  if (supplier.kind === 'shop') return `A shop, open ${days}.`;
  const way =
    supplier.transitDays === 0 ? 'there the same day' : `${counted(supplier.transitDays, 'day')} on the way`;
  return `Sends ${days}, ${way}; order ${cutOffWords(supplier)}.`;
}

function cutOffWords({ cutOffDays, cutOffTime }: Supplier): string {
  const time = cutOffTime === null ? 'at any hour' : `by ${cutOffTime}`;
  if (cutOffDays === 0) return `${time} on the day itself`;
  return cutOffDays === 1 ? `${time} the day before` : `${time}, ${cutOffDays} days before`;
}

/** 'Postage €4.90 and €2.00 a kilogram, none from €50.00 on; orders from €15.00.' */
export function postageWords({ kind, postage, minimumCents }: Supplier, currency: string): string {
  const { flatCents, perKgCents, freeFromCents } = postage;
  const parts = [
    ...(flatCents > 0 ? [money(flatCents, currency)] : []),
    ...(perKgCents > 0 ? [`${money(perKgCents, currency)} a kilogram`] : []),
  ];
  const free = freeFromCents === null ? '' : `, none from ${money(freeFromCents, currency)} on`;
  const least = minimumCents > 0 ? [`orders from ${money(minimumCents, currency)}`] : [];
  const sent = kind === 'shop' ? [] : [parts.length === 0 ? 'no postage' : `postage ${listed(parts)}${free}`];
  const said = [...sent, ...least].join('; ');
  return said === '' ? '' : `${sentenceCase(said)}.`;
}

/** 'Holds parcels below -2 °C and above 32 °C, for 5 days at most.'; empty without limits. */
export function weatherWords({ coldBelowC, heatAboveC, holdDays }: Supplier): string {
  const limits = [
    ...(coldBelowC === null ? [] : [`below ${degrees(coldBelowC)}`]),
    ...(heatAboveC === null ? [] : [`above ${degrees(heatAboveC)}`]),
  ];
  if (limits.length === 0) return '';
  const long = holdDays === null ? 'until it is over' : `for ${counted(holdDays, 'day')} at most`;
  return `Holds parcels back ${listed(limits)}, ${long}.`;
}

/** '-2.5 °C'. */
export const degrees = (tempC: number): string => `${Math.round(tempC * TENTHS) / TENTHS} °C`;
const TENTHS = 10;

/** 'You say 2 % are lost and 5 % sent over; dead prey is claimed within 24 hours.'; empty where nothing is said. */
export function arrivesWords({
  lossShare,
  overCountShare,
  claimHours,
}: Supplier & { readonly claimHours: number | null }): string {
  const shares = [
    ...(lossShare === null ? [] : [`${percent(lossShare)} are lost`]),
    ...(overCountShare === null ? [] : [`${percent(overCountShare)} are sent over`]),
  ];
  const claim = claimHours === null ? [] : [`dead prey is claimed within ${counted(claimHours, 'hour')}`];
  const said = [...(shares.length === 0 ? [] : [`you say ${listed(shares)}`]), ...claim].join('; ');
  return said === '' ? '' : `${sentenceCase(said)}.`;
}

/** A parcel that comes on a day on which none can come here, as the settings have it. */
export function wrongDayWords({ kind }: Supplier, { next }: Chances, comesOn: readonly boolean[]): string {
  const odd = kind === 'shop' ? undefined : next.find(({ comes }) => comesOn[weekday(comes)] === false);
  if (odd === undefined) return '';
  const name = WEEKDAYS[weekday(odd.comes)];
  return `What leaves on ${shortDay(odd.sent)} comes on ${shortDay(odd.comes)}; but by your settings no parcel comes on a ${name}.`;
}

/** What is on its way, in a sentence. */
import type { DayNumber } from '../src/husbandry/calendar.ts';
import { counted, longDay } from './format.ts';
import { preyName } from './names.ts';
import type { OrdersProps } from './pages/orders-shown.ts';

type Boxes = Pick<OrdersProps, 'coming' | 'singles' | 'shell' | 'names'>;

/** 'A parcel from Hill Farm comes on Thursday 10 October; one is a day late'. */
export function ordersHeadline({ coming, singles, shell: { today }, names }: Boxes): string {
  const boxes = [
    ...coming.map(({ from, kind, day }) => ({
      day,
      what: `${kind === 'shop' ? 'Your order' : 'A parcel'} from ${from}`,
    })),
    ...singles.map(({ species, day }) => ({
      day,
      what: `A delivery of ${preyName(names.species, species)}`,
    })),
  ].toSorted((a, b) => a.day - b.day);
  const late = boxes.filter(({ day }) => day < today);
  const [first, ...others] = boxes.filter(({ day }) => day >= today);
  if (first === undefined)
    return late[0] === undefined ? 'Nothing is on its way' : lateWords(late, late[0].what, today);
  const more = others.length === 0 ? '' : `, ${counted(others.length, 'more', 'more')} after it`;
  const behind = late.length === 0 ? '' : `; ${lateWords(late, late.length === 1 ? 'one' : '', today)}`;
  return `${first.what} comes ${onDay(first.day, today)}${more}${behind}`;
}

const onDay = (day: DayNumber, today: DayNumber): string => {
  if (day === today) return 'today';
  return day === today + 1 ? 'tomorrow' : `on ${longDay(day)}`;
};

/** 'one is a day late', '3 are late, the longest for 5 days'. */
function lateWords(late: readonly { readonly day: DayNumber }[], one: string, today: DayNumber): string {
  const days = today - (late[0]?.day ?? today);
  if (late.length === 1) return `${one} is ${daysLate(days)}`;
  return `${late.length} are late, the longest ${days === 1 ? 'for a day' : `for ${days} days`}`;
}

/** 'a day late', '3 days late'. */
export const daysLate = (days: number): string => (days === 1 ? 'a day late' : `${days} days late`);

/** How long something has been kept: a bin in cold store, a frozen stock, new stock apart. */
import type { DayNumber } from '../calendar.ts';
import type { ColdStore } from '../prey/index.ts';
import type { Bin, BinEvent, Where } from './bin.ts';

/** Whether a place of these temperatures is a cold store for the species. */
export const isCold = (ownC: Where['ownC'], { toC }: ColdStore): boolean =>
  ownC != null && Math.max(ownC.dayC, ownC.nightC) <= toC.value;

/** The day since which a bin stands in the cold without a break; null when it does not, or nobody wrote when it was put there. */
export function coldSince(
  { ownC, events }: Pick<Bin, 'ownC' | 'events'>,
  store: ColdStore,
): DayNumber | null {
  if (!isCold(ownC ?? null, store)) return null;
  const moves = events.filter((event) => event.kind === 'placed');
  const last = moves.findLast(({ before }) => !isCold(before.ownC, store));
  return last?.day ?? null;
}

/** The last day to which it keeps in the cold. */
export const coldUntil = (since: DayNumber, { days }: ColdStore): DayNumber => since + days.value;

/** First day on which a bin left alone is fed from again; until then only who finds nothing else is. Null: not left alone. */
export const restsTo = ({ restsUntil }: Pick<Bin, 'restsUntil'>, today: DayNumber): DayNumber | null =>
  restsUntil != null && today < restsUntil ? restsUntil : null;

/** Whether a bin is left alone on a day. */
export const rests = (bin: Pick<Bin, 'restsUntil'>, today: DayNumber): boolean =>
  restsTo(bin, today) !== null;

/** Whether a bin is kept apart on a day: to the end of its quarantine. */
export const isApart = ({ quarantineUntil }: Pick<Bin, 'quarantineUntil'>, today: DayNumber): boolean =>
  quarantineUntil != null && today < quarantineUntil;

/** Day on which the oldest of a frozen stock came in, the oldest being used first; null when nothing is left. */
export function oldestSince({ events }: Pick<Bin, 'events'>, headsNow: number): DayNumber | null {
  const lots = events.filter(({ kind }) => kind !== 'placed').flatMap((event, at) => lotOf(event, at) ?? []);
  const brought = lots.reduce((sum, { heads }) => sum + heads, 0);
  if (headsNow < 1 || lots.length === 0) return null;
  let gone = brought - headsNow;
  for (const { day, heads } of lots) {
    if (gone < heads - 1 / 2) return day;
    gone -= heads;
  }
  return null;
}

/** What came in; a count brings nothing but where the record begins with it. */
function lotOf(event: BinEvent, at: number): { readonly day: DayNumber; readonly heads: number } | null {
  const { day } = event;
  if (event.kind === 'delivered' || event.kind === 'moved in') return { day, heads: event.lot.heads };
  return event.kind === 'counted' && at === 0 ? { day, heads: event.heads } : null;
}

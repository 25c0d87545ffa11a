/** What a bin's coming weeks mean for its keeper, in words: what may be taken, whom it feeds, what must go. */
import type { DayNumber } from '../../src/husbandry/calendar.ts';
import type { ColonyTakes, Cull } from '../../src/husbandry/colony/index.ts';
import type { FedBy } from '../../src/husbandry/supply/index.ts';
import { PERCENT } from '../../src/husbandry/units.ts';
import {
  counted,
  dayRange,
  type LengthUnit,
  lengthRange,
  listed,
  roundly,
  sentenceCase,
  shortDay,
} from '../format.ts';
import { headsOfSize } from '../names.ts';

export interface When {
  readonly today: DayNumber;
  /** First day on which it is fed from again; null where it is not left alone. */
  readonly restsUntil: DayNumber | null;
}

/** 'Until Fri 18 Dec: only those for whom nothing else is there are fed from it' */
export const restWords = (until: DayNumber | null): string | null =>
  until === null
    ? null
    : `Until ${shortDay(until)}: only those for whom nothing else is there are fed from it`;

/** 'Once it is full, up to 70 small, or 55 medium. While it grows, no more than 7 in 100 of each size.' */
export function takesWords(takes: ColonyTakes, { restsUntil }: When): string {
  const share = Math.floor(takes.weeklyShare * PERCENT);
  if (share < 1) return 'Nothing: it does not grow as warm as it stands.';
  const most = mostWords(takes, share);
  if (restsUntil === null) return sentenceCase(most);
  return `Nothing before ${shortDay(restsUntil)}: it is left alone. After that, ${most}`;
}

function mostWords({ most }: ColonyTakes, share: number): string {
  const growing = `while it grows, no more than ${share} in 100 of each size.`;
  const sizes = most.filter(({ heads }) => heads >= 1);
  if (sizes.length === 0) return growing;
  const said = sizes.map(({ size, heads }) => headsOfSize(roundly(heads).toLocaleString('en-GB'), size));
  return `once it is full, up to ${said.join(', or ')}. ${sentenceCase(growing)}`;
}

const MOST_GROUPS = 4;

/** The groups it outgrows first, with the days on which it does; how many more it feeds. */
export function feedsWords(
  feeds: readonly FedBy[],
  { today, restsUntil, unit }: When & { readonly unit: LengthUnit },
): readonly string[] {
  const on = (day: number) => today + Math.round(day);
  const inRest = (day: number) =>
    restsUntil !== null && on(day) <= restsUntil ? ', while it is left alone' : '';
  const outgrown = feeds.flatMap(({ outgrownOn, ...fed }) =>
    outgrownOn !== null && outgrownOn.mid >= 1 ? [{ ...fed, ...outgrownOn }] : [],
  );
  const first = outgrown.toSorted((a, b) => a.mid - b.mid).slice(0, MOST_GROUPS);
  const said = first.map(
    ({ name, fromMm, toMm, low, mid, high }) =>
      `${sentenceCase(name)} that take ${lengthRange(fromMm, toMm, unit)}: until about ${shortDay(on(mid))} (${dayRange(on(low), on(high))})${inRest(mid)}`,
  );
  const later = outgrown.length - first.length;
  const always = feeds.filter(({ outgrownOn }) => outgrownOn === null).length;
  return [
    ...said,
    ...(later > 0 ? [`Until later: ${counted(later, 'more group')}`] : []),
    ...(always > 0 ? [`Through the weeks ahead: ${counted(always, 'group')}`] : []),
  ];
}

/** How many of which size make room enough, the first time it is too full; null where there is enough. */
export function roomWords(culls: readonly Cull[], { today, restsUntil }: When): string | null {
  const forRoom = culls.filter(({ why }) => why === 'room');
  const [first] = forRoom;
  if (first === undefined) return null;
  const soonest = forRoom.filter(({ day }) => day === first.day);
  const heads = soonest.map(({ heads: n, size }) =>
    headsOfSize(`${roundly(n)}`, size?.name ?? 'of any size'),
  );
  const when = first.day <= today ? 'now' : `by about ${shortDay(first.day)}`;
  const sooner = restsUntil !== null && first.day < restsUntil ? ' Leave it alone no longer than that.' : '';
  return `Too full: take out about ${listed(heads)} ${when}. Feed them off, freeze them or split the bin.${sooner}`;
}

/** Spare males are of no use to it, so that they need not wait until it is fed from again. */
export function malesWords(culls: readonly Cull[], { restsUntil }: When): string | null {
  const males = culls.find(({ why }) => why === 'males');
  if (males === undefined) return null;
  const though = restsUntil === null ? '' : ', though the rest is left alone';
  return `${counted(males.heads, 'male')} more than the females need: feed them off${though}`;
}

/** What may be left alone in a plan: colonies that are kept to breed, and whatever the keeper leaves alone already. */
import type { DayNumber } from '../calendar.ts';
import type { Cents } from '../orders/index.ts';
import type { Period, Wish } from './answer.ts';
import { middleOf } from './periods.ts';
import type { Place } from './place-of.ts';
import type { PlanPlace, PlanRest } from './problem.ts';

interface Resting {
  readonly places: readonly Place[];
  readonly planPlaces: readonly PlanPlace[];
  readonly periods: readonly Period[];
  readonly wishes: readonly Wish[];
  /** Price of an item. */
  readonly itemCents: Cents;
}

/** What a wish about it speaks of. */
export const restKey = (bin: string): string => `rest:${bin}`;

export function restsOf({ places, planPlaces, periods, wishes, itemCents }: Resting): PlanRest[] {
  return places.flatMap(({ bin, restsUntil }, place): PlanRest[] => {
    const key = restKey(bin.code);
    const own = periods.filter((period) => middleOf(period) < (restsUntil ?? 0)).length;
    const wish = wishes.find((each) => each.key === key);
    const asked = wish?.wish === 'pin' ? Math.min(periods.length, wish.amount ?? 1) : null;
    const canRest = planPlaces[place]?.floor !== null && wish?.wish !== 'forbid';
    const least = Math.max(own, asked ?? 0);
    const most = canRest && asked === null ? periods.length : least;
    return most > 0 ? [{ key, place, own, least, most, cents: itemCents }] : [];
  });
}

/** First day after so many periods, on which it is fed from like all others again. */
export function restEnds(periods: readonly Period[], rests: number): DayNumber {
  const last = periods[rests - 1] as Period;
  return last.from + last.days;
}

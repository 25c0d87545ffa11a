/** How high a cover panel of a plan reaches, and where the stock that stands ready is above it. */
import type { GroupCover } from '../../src/husbandry/plan/index.ts';

const HEADROOM = 2;

/** By what is wanted and should stand ready; more stock than twice the greatest of it leaves the frame. */
export function topOf({ wanted, safety, ready }: Pick<GroupCover, 'wanted' | 'safety' | 'ready'>): number {
  const asked = Math.max(1, ...wanted, ...safety);
  return Math.min(HEADROOM * asked, Math.max(asked, ...ready));
}

/** In weeks from the first. */
export interface Stretch {
  readonly from: number;
  readonly to: number;
}

/** Where the line through what stands ready at the end of each week is above `top`. */
export function beyond(ready: readonly number[], top: number): readonly Stretch[] {
  const starts = ready.flatMap((n, i) => (n > top && !((ready[i - 1] ?? 0) > top) ? i : []));
  return starts.map((start) => {
    const after = ready.findIndex((n, i) => i > start && n <= top);
    const last = after < 0 ? ready.length - 1 : after - 1;
    return { from: crossing(ready, top, start, -1), to: crossing(ready, top, last, 1) };
  });
}

/** Where the line from a week above the top crosses it towards the week before or after. */
function crossing(ready: readonly number[], top: number, week: number, step: 1 | -1): number {
  const [here = 0, there] = [ready[week], ready[week + step]];
  return week + 1 + (there === undefined ? 0 : (step * (here - top)) / (here - there));
}

/** The longest. */
export const wordedOf = (stretches: readonly Stretch[]): Stretch | null =>
  stretches.toSorted((a, b) => b.to - b.from - (a.to - a.from))[0] ?? null;

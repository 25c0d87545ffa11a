/** Cups that could be started within a plan, and what they would give. */
import { civilDate, type DayNumber, weeksAfter } from '../calendar.ts';
import { cupGives } from '../larder/index.ts';
import type { Policy } from '../policy.ts';
import { MINUTES_PER_HOUR } from '../units.ts';
import type { Period, Wish } from './answer.ts';
import { byNode, type Nodes } from './nodes.ts';
import { periodFrom } from './periods.ts';
import type { Place } from './place-of.ts';
import type { PlanEater, PlanStart } from './problem.ts';

/** What a start of the problem stands for. */
export interface StartOf {
  readonly species: string;
  readonly day: DayNumber;
  readonly place: number;
  readonly yieldsFrom: DayNumber;
  readonly yieldsTo: DayNumber;
  /** Flies of one cup by day since it was started. */
  readonly flies: Float64Array;
}

export interface Starting {
  readonly policy: Policy;
  readonly periods: readonly Period[];
  readonly places: readonly Place[];
  readonly nodes: readonly Nodes[];
  readonly hourCents: number;
  readonly itemCents: number;
  readonly wishes: readonly Wish[];
  readonly eaters: readonly PlanEater[];
}

const startKey = (species: string, day: DayNumber): string => `start:${species}@${civilDate(day)}`;

export interface Started {
  readonly starts: readonly PlanStart[];
  readonly of: readonly StartOf[];
}

/** One chance a period for each fly that is kept in cups here; where its cups stand apart, beside the first that do well. */
export function startsOf(starting: Starting): Started {
  const seen = new Set<string>();
  const made = starting.places.flatMap((place, p) => {
    if (place.role !== 'cup' || seen.has(place.species)) return [];
    const chances = startsAt(place, p, starting);
    if (chances.length > 0) seen.add(place.species);
    return chances;
  });
  return { starts: made.map(({ start }) => start), of: made.map(({ of }) => of) };
}

function startsAt(place: Place, p: number, starting: Starting): { start: PlanStart; of: StartOf }[] {
  const { policy, periods, hourCents, itemCents, wishes } = starting;
  const { species } = place.chain;
  const gives = cupGives(species, { climate: place.climate, policy });
  if (gives === null) return [];
  const cents =
    (policy.planStartMinutes.value / MINUTES_PER_HOUR) * hourCents + policy.planCupItems.value * itemCents;
  return periods.flatMap((period, t) => {
    const day = period.from;
    const brings = bringsOf(gives.flies, { day, p, starting });
    if (!brings.some((heads) => heads.some((n) => n > 0))) return [];
    const wish = wishes.find(({ key }) => key === startKey(species.code, day));
    const asked = wish?.wish === 'pin' ? (wish.amount ?? 1) : 0;
    const most = wish?.wish === 'forbid' ? 0 : Math.max(asked, mostUseful(p, brings, starting.eaters));
    const start: PlanStart = {
      key: startKey(species.code, day),
      period: t,
      paid: weeksAfter((periods[0] as Period).from, day),
      place: p,
      cents,
      least: asked,
      most: wish?.wish === 'pin' && wish.amount !== null ? asked : most,
      brings,
    };
    const yieldsTo = day + gives.flies.findLastIndex((n) => n > 0);
    const of = {
      species: species.code,
      day,
      place: p,
      yieldsFrom: day + gives.firstDay,
      yieldsTo,
      flies: gives.flies,
    };
    return [{ start, of }];
  });
}

/** Cups enough for all who eat at the place in the period in which they want most. */
function mostUseful(p: number, brings: readonly Float64Array[], eaters: readonly PlanEater[]): number {
  const best = Math.max(...brings.map((heads) => heads.reduce((a, b) => a + b, 0)));
  const wanted = brings.map((_, t) =>
    eaters
      .filter(({ fare }) => fare.some(({ place }) => place === p))
      .reduce((sum, eater) => sum + (eater.wanted[t] as number), 0),
  );
  return best > 0 ? Math.ceil((2 * Math.max(...wanted)) / best) : 0;
}

/** Flies of one cup by period, in the node of the adults. */
function bringsOf(
  flies: Float64Array,
  { day, p, starting }: { day: DayNumber; p: number; starting: Starting },
): Float64Array[] {
  const { periods, nodes, places } = starting;
  const of = nodes[p] as Nodes;
  const born = new Float64Array(of.chain.size);
  born[(places[p] as Place).chain.firstHead] = 1;
  const one = byNode(of, born);
  const brings = periods.map(() => new Float64Array(of.all.length));
  flies.forEach((n, since) => {
    const period = periodFrom(periods, day + since);
    if (period < 0 || n <= 0) return;
    const sum = brings[period] as Float64Array;
    one.forEach((share, node) => {
      sum[node] = (sum[node] as number) + share * n;
    });
  });
  return brings;
}

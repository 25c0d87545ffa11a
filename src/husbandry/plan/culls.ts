/** Culls: what must go from a bin although all are fed from it, because it gets too full or holds more males than are of use. */
import { civilDate } from '../calendar.ts';
import { type Cull, type CullsAsked, cullsAhead } from '../colony/index.ts';
import { spokenDay } from '../supply/index.ts';
import type { Obstacle, PlanLine, Wish } from './answer.ts';
import type { LaidOut } from './lay-out.ts';
import type { Nodes } from './nodes.ts';
import { periodOf } from './periods.ts';
import type { Flows, Proposal } from './proposal.ts';
import { usedOf } from './used.ts';

export type CullLine = Extract<PlanLine, { what: 'cull' }>;

/** What a wish about it speaks of: all that would go from a bin for one cause, whatever its size and day. */
export const cullKey = ({ bin, why }: Pick<CullLine, 'bin' | 'why'>): string => `cull:${bin}:${why}`;

/** One line a size, whether or not the keeper will have it. */
export function cullLines(laid: LaidOut, { flows }: Pick<Proposal, 'flows'>): CullLine[] {
  const { places, snapshot, periods } = laid;
  const days = periods.reduce((sum, period) => sum + period.days, 0);
  const { planHarvestMinutes, cullDays } = snapshot.facts.policy;
  const asked = { today: snapshot.today, days, lastsDays: cullDays.value };
  return places.flatMap(({ bins, climate, species }, p) => {
    const eaten = eatenOf(laid, flows, p);
    return bins.flatMap(({ bin, chain, state, belief }) => {
      const life = { chain, bin, climate, speed: Math.exp(belief.speedLog.mean) };
      return cullsAhead({ ...asked, life, state, eaten }).map((cull) =>
        cullLine(cull, { bin: bin.code, species, minutes: planHarvestMinutes.value }),
      );
    });
  });
}

function cullLine(
  { why, day, heads, size }: Cull,
  { bin, species, minutes }: { bin: string; species: string; minutes: number },
): CullLine {
  return {
    key: `cull:${bin}:${size?.name ?? why}@${civilDate(day)}`,
    actBy: day,
    species,
    heads,
    cents: 0,
    minutes,
    pinned: false,
    reason: null,
    what: 'cull',
    bin,
    why,
    fromMm: size?.fromMm ?? null,
    toMm: size?.toMm ?? null,
    day,
  };
}

/** Share of each substage of a place that is eaten on a day: what the flows use of its bands in a week, spread over the week; after the last as in it. */
function eatenOf(
  { problem, nodes, periods }: LaidOut,
  flows: Flows,
  p: number,
): NonNullable<CullsAsked['eaten']> {
  const { all, chain } = nodes[p] as Nodes;
  const daily = periods.map(({ days }, t) => {
    const left = flows.left[p]?.[t] as Float64Array;
    const shares = usedOf(problem, flows, [p, t]).map((heads, n) => {
      const there = heads + (left[n] as number);
      return there > 0 ? 1 - (1 - heads / there) ** (1 / days) : 0;
    });
    return Float64Array.from({ length: chain.size }, (_, j) =>
      all.reduce((sum, { share }, n) => sum + (share[j] as number) * (shares[n] as number), 0),
    );
  });
  return (day) => daily.at(periodOf(periods, day)) ?? null;
}

const isForbidden = ({ bin, why }: Pick<CullLine, 'bin' | 'why'>, wishes: readonly Wish[]): boolean =>
  wishes.some(({ key, wish }) => wish === 'forbid' && key === cullKey({ bin, why }));

/** Without those the keeper will not have. */
export const wantedCulls = (culls: readonly CullLine[], wishes: readonly Wish[]): CullLine[] =>
  culls.filter((line) => !isForbidden(line, wishes));

/** Species of which any pack is bought. */
export const boughtIn = (
  { problem, places }: LaidOut,
  { packs }: Pick<Proposal, 'packs'>,
): ReadonlySet<string> =>
  new Set(
    problem.parcels.flatMap((parcel, i) =>
      parcel.packs.flatMap(({ place }, j) =>
        (packs[i]?.[j] ?? 0) > 0 ? [places[place]?.species ?? ''] : [],
      ),
    ),
  );

/** Culls of boxes that get too full of prey which is bought as well: nobody throws away what is bought, a second box is set up. */
export function boxedCulls(
  { places }: LaidOut,
  culls: readonly CullLine[],
  bought: ReadonlySet<string>,
): CullLine[] {
  const holding = places.flatMap(({ bins }) =>
    bins.flatMap(({ bin }) => (bin.role === 'holding' ? [bin.code] : [])),
  );
  return culls.filter(
    (line) => line.why === 'room' && bought.has(line.species) && holding.includes(line.bin),
  );
}

interface Overfull {
  /** As they would be told. */
  readonly culls: readonly CullLine[];
  readonly wishes: readonly Wish[];
  /** Those for which a second box is set up. */
  readonly boxed: readonly CullLine[];
}

/** What comes of it where bins are not culled for room: the keeper will not have it, or a second box is better. */
export function overfull({ places }: LaidOut, { culls, wishes, boxed }: Overfull): Obstacle[] {
  const bins = places.flatMap((place) => place.bins.map(({ bin }) => bin));
  return bins.flatMap(({ code, name }): Obstacle[] => {
    const cull = culls.find(({ bin, why }) => bin === code && why === 'room');
    if (cull === undefined) return [];
    const day = spokenDay(cull.day);
    if (isForbidden(cull, wishes)) {
      const sentence = `You forbade culls for room from ${name}: from ${day} on it holds more than it has room for, so what lives in it grows and breeds more slowly.`;
      return [{ kind: 'forbidden', sentence, groups: [] }];
    }
    if (!boxed.includes(cull)) return [];
    const sentence = `${name} gets too full by ${day}: set up another box for some of it, and for what comes.`;
    return [{ kind: 'capacity', sentence, groups: [] }];
  });
}

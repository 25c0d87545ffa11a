/**
 * Groups that eat nearly the same are planned as one: what all of them take, in items of the largest group. Groups are
 * joined, those that lose least first, until there are few enough; nobody is joined who would lose half of the fare.
 */
import type { Eating } from './eaters.ts';
import type { PreparedFare } from './fares.ts';

/** One or more groups. */
export interface EatingClass extends Eating {
  /** The groups in it, with the share of the class's items that are theirs. */
  readonly members: readonly { readonly eating: Eating; readonly share: number }[];
  readonly fares: readonly PreparedFare[];
}

interface Joined {
  readonly members: readonly number[];
  readonly nodes: ReadonlySet<string>;
  readonly weight: number;
}

const nodeName = ({ place, node }: PreparedFare): string => `${place} ${node}`;

export function classesOf(
  eating: readonly Eating[],
  fares: readonly (readonly PreparedFare[])[],
  most: number,
): EatingClass[] {
  let classes = eating.map(
    ({ wanted }, e): Joined => ({
      members: [e],
      nodes: new Set(fares[e]?.map(nodeName)),
      weight: wanted.reduce((a, b) => a + b, 0),
    }),
  );
  classes = joinedAlike(classes, eating);
  while (classes.length > most) {
    const pair = cheapestPair(classes, eating);
    if (!pair) break;
    const [a, b] = pair;
    const joined = join(classes[a] as Joined, classes[b] as Joined);
    classes = [...classes.filter((_, i) => i !== a && i !== b), joined];
  }
  return classes
    .map(({ members, nodes }) => classFrom(members, nodes, { eating, fares }))
    .sort((a, b) => (a.group.key < b.group.key ? -1 : 1));
}

const urgencyOf = (eating: readonly Eating[], { members }: Joined): string =>
  (eating[members[0] as number] as Eating).group.rule.urgency;

/** Those with the very same fare are one from the start. */
function joinedAlike(classes: readonly Joined[], eating: readonly Eating[]): Joined[] {
  const byName = new Map<string, Joined>();
  for (const each of classes) {
    const name = `${urgencyOf(eating, each)}: ${[...each.nodes].sort().join(', ')}`;
    const known = byName.get(name);
    byName.set(name, known ? join(known, each) : each);
  }
  return [...byName.values()];
}

const join = (a: Joined, b: Joined): Joined => ({
  members: [...a.members, ...b.members],
  nodes: new Set([...a.nodes].filter((node) => b.nodes.has(node))),
  weight: a.weight + b.weight,
});

/** The two of one urgency whose joining takes least fare from those who want it. */
function cheapestPair(
  classes: readonly Joined[],
  eating: readonly Eating[],
): readonly [number, number] | null {
  let best: readonly [number, number] | null = null;
  let least = Number.POSITIVE_INFINITY;
  for (let a = 0; a < classes.length; a++) {
    for (let b = a + 1; b < classes.length; b++) {
      const [first, second] = [classes[a] as Joined, classes[b] as Joined];
      if (urgencyOf(eating, first) !== urgencyOf(eating, second)) continue;
      const loss = lossOf(first, second);
      if (loss < least) {
        least = loss;
        best = [a, b];
      }
    }
  }
  return best;
}

/** Share of the fare each loses times what it wants; Infinity where one would lose half or more. */
function lossOf(a: Joined, b: Joined): number {
  let common = 0;
  for (const node of a.nodes) if (b.nodes.has(node)) common++;
  if (2 * common < Math.max(a.nodes.size, b.nodes.size) || common === 0) return Number.POSITIVE_INFINITY;
  return a.weight * (1 - common / a.nodes.size) + b.weight * (1 - common / b.nodes.size);
}

interface From {
  readonly eating: readonly Eating[];
  readonly fares: readonly (readonly PreparedFare[])[];
}

function classFrom(members: readonly number[], nodes: ReadonlySet<string>, from: From): EatingClass {
  const total = (e: number) => (from.eating[e] as Eating).wanted.reduce((a, b) => a + b, 0);
  const first = [...members].sort((a, b) => total(b) - total(a) || a - b)[0] as number;
  const lead = from.eating[first] as Eating;
  const fares = (from.fares[first] as PreparedFare[]).filter((fare) => nodes.has(nodeName(fare)));
  const factors = members.map((m) => itemsRatio(fares, from.fares[m] as PreparedFare[]));
  const sumOver = (series: (each: Eating) => Float64Array): Float64Array =>
    series(lead).map((_, i) =>
      members.reduce(
        (sum, m, k) => sum + (factors[k] as number) * (series(from.eating[m] as Eating)[i] as number),
        0,
      ),
    );
  const wanted = sumOver((each) => each.wanted);
  const all = wanted.reduce((a, b) => a + b, 0);
  return {
    group: lead.group,
    wanted,
    lateMost: sumOver((each) => each.lateMost),
    mealItems: lead.mealItems,
    headsEach: lead.headsEach,
    byReplicate: lead.byReplicate.map((_, t) => sumOver((each) => each.byReplicate[t] as Float64Array)),
    fares,
    members: members.map((m, k) => ({
      eating: from.eating[m] as Eating,
      share: all > 0 ? ((factors[k] as number) * total(m)) / all : 0,
    })),
  };
}

/** Items of the one that stand for an item of the other: the geometric mean over the nodes both take. */
function itemsRatio(own: readonly PreparedFare[], others: readonly PreparedFare[]): number {
  const byName = new Map(others.map((fare) => [nodeName(fare), fare.items]));
  let logs = 0;
  let count = 0;
  for (const fare of own) {
    const items = byName.get(nodeName(fare));
    if (items === undefined) continue;
    logs += Math.log(fare.items / items);
    count++;
  }
  return count > 0 ? Math.exp(logs / count) : 1;
}

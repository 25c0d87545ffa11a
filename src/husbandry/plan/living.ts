/**
 * A plan's problem laid out to be lived through period by period by a fixed policy, without a solver: fragile groups
 * first, each from what is nearest to outgrowing it. Flat arrays, since a search asks it thousands of times.
 */
import type { Row } from '../../maths/linear-programme.ts';
import type { PlanEater, PlanProblem } from './problem.ts';

/** Who passes on into a node, and which share of them. */
export type PassedOn = Pick<Row, 'columns' | 'factors'>;

export interface Living {
  readonly problem: PlanProblem;
  /** First node of each place, and of all together. */
  readonly first: readonly number[];
  readonly nodes: number;
  /** Heads that come whatever is decided, at [period * nodes + node]. */
  readonly comes: Float64Array;
  /** By period and node, who passes on into it from the period before. */
  readonly passes: readonly (readonly PassedOn[])[];
  readonly eaters: readonly EaterLaid[];
  /** In the order in which they eat. */
  readonly order: readonly number[];
  readonly pools: readonly { readonly node: Int32Array; readonly items: Float64Array }[];
  readonly keepCents: Float64Array;
  readonly endOrder: readonly number[];
  /** Working room: what is there, what is left alone, and what was left at [period * nodes + node]. */
  readonly there: Float64Array;
  readonly aside: Float64Array;
  readonly left: Float64Array;
}

export interface EaterLaid {
  /** Its fare, best first. */
  readonly fare: Int32Array;
  readonly node: Int32Array;
  readonly items: Float64Array;
  readonly cents: Float64Array;
  readonly cap: Int32Array;
  readonly capRoom: Float64Array;
  /** Nodes under some cap. */
  readonly capped: Int32Array;
  readonly end: EndLaid;
}

/** What it can still eat after the last period, what lasts least first. */
export interface EndLaid {
  readonly node: Int32Array;
  readonly items: Float64Array;
  readonly span: Float64Array;
  readonly until: Float64Array;
}

const RANK = { fragile: 0, ordinary: 1, robust: 2 } as const;

/** Lays a problem out once. */
export function livingOf(problem: PlanProblem): Living {
  const { places, eaters, periods, pools } = problem;
  let nodes = 0;
  const first = places.map((place) => {
    nodes += place.nodes;
    return nodes - place.nodes;
  });
  const comes = new Float64Array(periods * nodes);
  const keepCents = new Float64Array(nodes);
  places.forEach((place, p) => {
    keepCents.fill(place.keepCents, first[p], (first[p] as number) + place.nodes);
    place.comes.forEach((heads, t) => {
      comes.set(heads, t * nodes + (first[p] as number));
    });
  });
  const nodeOf = ({ place, node }: { place: number; node: number }) => (first[place] as number) + node;
  const index = eaters.map((_, e) => e);
  return {
    problem,
    first,
    nodes,
    comes,
    passes: passesOf(problem, first),
    eaters: eaters.map((eater) => eaterLaid(eater, nodeOf)),
    order: [...index].sort(
      (a, b) => rankOf(eaters[a] as PlanEater) - rankOf(eaters[b] as PlanEater) || a - b,
    ),
    pools: pools.map(({ fare }) => ({
      node: Int32Array.from(fare, nodeOf),
      items: Float64Array.from(fare, ({ items }) => items),
    })),
    keepCents,
    endOrder: index
      .filter((e) => endCents(eaters[e]) > 0)
      .sort((a, b) => endCents(eaters[b]) - endCents(eaters[a]) || a - b),
    there: new Float64Array(nodes),
    aside: new Float64Array(nodes),
    left: new Float64Array(periods * nodes),
  };
}

const endCents = (eater: PlanEater | undefined): number => eater?.end.cents ?? 0;

/** Fragile first, then those with least fare. */
const rankOf = ({ urgency, fare }: PlanEater): number => RANK[urgency] + fare.length / (fare.length + 1);

function passesOf({ places, periods }: PlanProblem, first: readonly number[]): PassedOn[][] {
  const known = new Map<unknown, PassedOn[]>();
  return Array.from({ length: periods }, (_, t) =>
    places.flatMap((place, p): PassedOn[] => {
      const pass = place.passes[t - 1];
      if (!pass) return Array.from({ length: place.nodes }, () => ({ columns: [], factors: [] }));
      const made = known.get(pass) ?? sparseOf(pass, first[p] as number);
      known.set(pass, made);
      return made;
    }),
  );
}

const sparseOf = (pass: readonly Float64Array[], offset: number): PassedOn[] =>
  pass.map((row) => {
    const columns = [...row.keys()].filter((from) => (row[from] as number) > 0);
    return {
      columns: columns.map((from) => offset + from),
      factors: columns.map((from) => row[from] as number),
    };
  });

/** Each from the cheapest node, of those the one nearest to outgrowing it, as the engine hands prey out. */
function eaterLaid(
  { fare, caps, end }: PlanEater,
  nodeOf: (fare: { place: number; node: number }) => number,
): EaterLaid {
  const order = [...fare.keys()].sort((a, b) => {
    const [x, y] = [fare[a], fare[b]];
    return (x?.cents ?? 0) - (y?.cents ?? 0) || (y?.ripeness ?? 0) - (x?.ripeness ?? 0);
  });
  const sorted = order.map((k) => fare[k] as PlanEater['fare'][number]);
  return {
    fare: Int32Array.from(order),
    node: Int32Array.from(sorted, nodeOf),
    items: Float64Array.from(sorted, ({ items }) => items),
    cents: Float64Array.from(sorted, ({ cents }) => cents),
    cap: Int32Array.from(sorted, ({ cap }) => cap),
    capRoom: new Float64Array(caps.length),
    capped: Int32Array.from(
      sorted.filter(({ cap }) => cap >= 0),
      nodeOf,
    ),
    end: endLaid(end.fare, nodeOf),
  };
}

function endLaid(
  fare: PlanEater['end']['fare'],
  nodeOf: (fare: { place: number; node: number }) => number,
): EndLaid {
  const sorted = fare.toSorted((a, b) => a.until - b.until);
  return {
    node: Int32Array.from(sorted, nodeOf),
    items: Float64Array.from(sorted, ({ items }) => items),
    span: Float64Array.from(sorted, ({ span }) => span),
    until: Float64Array.from(sorted, ({ until }) => until),
  };
}

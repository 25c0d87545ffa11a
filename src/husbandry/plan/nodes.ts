/** The nodes a plan knows of a species: bands of length of those that are fed, adults, and those that are not fed. */
import { type Chain, firstAdult } from '../larder/index.ts';
import type { Mm } from '../units.ts';

export interface Node {
  readonly kind: 'band' | 'adult' | 'unfed';
  readonly fromMm: Mm;
  readonly toMm: Mm;
  /** Share of each substage that lies in it. */
  readonly share: Float64Array;
  /** One head of it over the substages. */
  readonly profile: Float64Array;
}

export interface Nodes {
  readonly chain: Chain;
  readonly all: readonly Node[];
}

/** Bands between the edges, then adults, then those not fed; parts that hold nobody are left out. */
export function nodesOf(chain: Chain, edgesMm: readonly Mm[]): Nodes {
  const adult = firstAdult(chain);
  const isFed = (j: number) => chain.stages[chain.stageOf[j] as number]?.fed === true;
  const bands = edgesMm.slice(1).map((toMm, b) => {
    const fromMm = edgesMm[b] as number;
    const share = (j: number) => (j < adult && isFed(j) ? overlap(chain, j, { fromMm, toMm }) : 0);
    return nodeOf(chain, { kind: 'band', fromMm, toMm, share });
  });
  const adultMm = chain.species.adultLengthMm.value;
  const adults = nodeOf(chain, {
    kind: 'adult',
    fromMm: adultMm,
    toMm: adultMm,
    share: (j) => Number(j >= adult),
  });
  const unfed = nodeOf(chain, {
    kind: 'unfed',
    fromMm: 0,
    toMm: 0,
    share: (j) => Number(j < adult && j >= youngest(chain) && !isFed(j)),
  });
  return { chain, all: [...bands, adults, unfed].filter((node) => node.share.some((share) => share > 0)) };
}

const youngest = (chain: Chain): number => chain.stages.find(({ kind }) => kind !== 'egg')?.first ?? 0;

interface Part extends Pick<Node, 'kind' | 'fromMm' | 'toMm'> {
  readonly share: (substage: number) => number;
}

function nodeOf(chain: Chain, { share: shareOf, ...part }: Part): Node {
  const share = Float64Array.from({ length: chain.size }, (_, j) => shareOf(j));
  const sum = share.reduce((a, b) => a + b, 0);
  return { ...part, share, profile: share.map((n) => (sum > 0 ? n / sum : 0)) };
}

/** Share of a substage between two lengths, the lower included. */
function overlap(chain: Chain, j: number, { fromMm, toMm }: { fromMm: Mm; toMm: Mm }): number {
  const [low, high] = [chain.fromMm[j] as number, chain.toMm[j] as number];
  if (high <= low) return Number(fromMm <= low && low < toMm);
  return Math.max(0, Math.min(high, toMm) - Math.max(low, fromMm)) / (high - low);
}

/** Heads by node of heads by substage. */
export const byNode = ({ all }: Nodes, heads: Float64Array): Float64Array =>
  Float64Array.from(all, ({ share }) => {
    let sum = 0;
    for (let j = 0; j < heads.length; j++) sum += (share[j] as number) * (heads[j] as number);
    return sum;
  });

/** A cut that would be wanted, and how much depends on it. */
export interface Cut {
  readonly mm: Mm;
  readonly weight: number;
}

/**
 * Edges from the shortest to the longest a species gets before it is adult: the cuts asked for, those nearest to one
 * another and of least weight left out until no more than `most` bands are left, and wide bands cut in two.
 */
export function edgesOf(
  chain: Chain,
  cuts: readonly Cut[],
  { most, ratio }: { most: number; ratio: number },
): Mm[] {
  const young = youngest(chain);
  const [least, longest] = [chain.fromMm[young] as number, chain.species.adultLengthMm.value];
  const inside = cuts
    .filter(({ mm }) => mm > least && mm < longest)
    .sort((a, b) => a.mm - b.mm)
    .map((cut) => ({ ...cut }));
  const ends = [
    { mm: least, weight: Number.POSITIVE_INFINITY },
    ...inside,
    { mm: longest, weight: Number.POSITIVE_INFINITY },
  ];
  while (ends.length > most + 1) ends.splice(leastMissed(ends), 1);
  return widened(
    ends.map(({ mm }) => mm),
    { most, ratio },
  );
}

/** The inner cut whose loss matters least: its weight times its distance to the nearest other. */
function leastMissed(cuts: readonly Cut[]): number {
  let best = 1;
  let least = Number.POSITIVE_INFINITY;
  for (let i = 1; i < cuts.length - 1; i++) {
    const { mm, weight } = cuts[i] as Cut;
    const near = Math.min(Math.log(mm / (cuts[i - 1] as Cut).mm), Math.log((cuts[i + 1] as Cut).mm / mm));
    if (near * weight >= least) continue;
    least = near * weight;
    best = i;
  }
  return best;
}

function widened(edges: readonly Mm[], { most, ratio }: { most: number; ratio: number }): Mm[] {
  const all = [...edges];
  while (all.length <= most) {
    const widths = all.slice(1).map((mm, i) => mm / (all[i] as number));
    const widest = widths.indexOf(Math.max(...widths));
    if ((widths[widest] as number) <= ratio) return all;
    all.splice(widest + 1, 0, Math.sqrt((all[widest] as number) * (all[widest + 1] as number)));
  }
  return all;
}

/** Where the nodes of each place begin when those of all are counted on, and how many there are. */
export function countedOn(nodes: readonly Nodes[]): {
  readonly first: readonly number[];
  readonly all: number;
} {
  let all = 0;
  const first = nodes.map((own) => {
    all += own.all.length;
    return all - own.all.length;
  });
  return { first, all };
}

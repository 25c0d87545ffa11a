/** What is alive in the larder today, by length, and how much of it fits an animal of one size. */
import type { Eater, StageRule } from '../animals/index.ts';
import { takesDead, windowFor } from '../prey/index.ts';
import type { Snapshot } from '../snapshot.ts';
import type { Spectrum } from './answer.ts';
import { type StandingPrey, shelvesOf } from './shelf-stock.ts';
import { rulerEdges } from './spectrum.ts';

export type Alive = Pick<Spectrum, 'edgesMm' | 'alive'>;

export interface LarderNow {
  readonly alive: Alive;
  /** Heads by species that an animal of this rule and size takes, killed first, frozen or alive. */
  readonly fitting: (rule: StageRule, eater: Eater) => readonly Fitting[];
}

export interface Fitting {
  readonly species: string;
  readonly heads: number;
}

/** The larder at the growth speed and count that are likeliest. */
export function larderNow(snapshot: Snapshot, standing?: readonly StandingPrey[]): LarderNow {
  const shelves = shelvesOf(snapshot, standing);
  const edges = Array.from(rulerEdges(snapshot.facts.policy));
  const codes = [...new Set(shelves.map(({ species }) => species.code))].sort();
  const slicesOf = (code: string, dead: boolean) =>
    shelves
      .filter(({ species, bin }) => species.code === code && (dead || bin.role !== 'frozen'))
      .flatMap(({ slices }) => slices);
  const sumOf = (slices: readonly { readonly heads: number }[]) =>
    slices.reduce((sum, { heads }) => sum + heads, 0);
  const alive = codes.map((species) => ({
    species,
    heads: edges.slice(1).map((to, i) => {
      const from = edges[i] as number;
      return sumOf(slicesOf(species, false).filter(({ lengthMm }) => from <= lengthMm && lengthMm < to));
    }),
  }));
  return {
    alive: { edgesMm: edges, alive: alive.filter(({ heads }) => heads.some((n) => n > 0)) },
    fitting: (rule, eater) =>
      codes.map((code) => {
        const species = snapshot.facts.species.get(code);
        const window = species === undefined ? null : windowFor(rule, eater, species);
        const fits = ({ lengthMm }: { readonly lengthMm: number }) =>
          window !== null && window.minMm <= lengthMm && lengthMm <= window.maxMm;
        return { species: code, heads: sumOf(slicesOf(code, takesDead(rule)).filter(fits)) };
      }),
  };
}

/** What stands on the larder's shelves tonight, as best known: each bin's prey by length. */
import type { Bin } from '../larder/index.ts';
import { madeOnce } from '../made-once.ts';
import type { PreySpecies } from '../prey/index.ts';
import type { Snapshot } from '../snapshot.ts';
import { stockOf } from './stock.ts';

export interface Shelf {
  readonly bin: Bin;
  readonly species: PreySpecies;
  /** Equal shares of the bin's heads by rank of length; taking from them lowers `heads`. */
  readonly slices: { readonly lengthMm: number; heads: number }[];
}

/** The bins open for feeding, at the growth speed and count that are likeliest. */
export function shelvesOf(snapshot: Snapshot): Shelf[] {
  const stock = tonightsStock(snapshot);
  return stock.cohorts.map((cohort) => {
    const [path] = cohort.nodes;
    const lengths = Array.from(path?.lengthMm.subarray(0, cohort.slices) ?? []);
    return {
      bin: (stock.bins[cohort.bin] as { bin: Bin }).bin,
      species: stock.species[cohort.species] as PreySpecies,
      slices: lengths.map((lengthMm) => ({ lengthMm, heads: (path?.heads ?? 0) / cohort.slices })),
    };
  });
}

const tonightsStock = madeOnce((snapshot: Snapshot) => stockOf(likeliest(snapshot), 1));

/** At one growth speed, the likeliest, and with what is here alone. */
function likeliest(snapshot: Snapshot): Snapshot {
  const { facts } = snapshot;
  const speedNodes = { ...facts.policy.speedNodes, value: 1 };
  return { ...snapshot, deliveries: [], facts: { ...facts, policy: { ...facts.policy, speedNodes } } };
}

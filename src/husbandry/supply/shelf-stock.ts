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

/** Some of a bin's prey that grew up together, as equal shares by rank of length. */
export interface StandingPrey {
  /** Its code. */
  readonly bin: string;
  readonly lengthsMm: readonly number[];
  /** Heads of each share. */
  readonly heads: number;
}

/** The bins open for feeding, at the growth speed and count that are likeliest; bins that are not here are left out. */
export function shelvesOf(snapshot: Snapshot, standing = standingTonight(snapshot)): Shelf[] {
  const bins = new Map(snapshot.bins.map((bin) => [bin.code, bin]));
  return standing.flatMap(({ bin: code, lengthsMm, heads }) => {
    const bin = bins.get(code);
    const species = snapshot.facts.species.get(bin?.species ?? '');
    if (bin === undefined || species === undefined) return [];
    return { bin, species, slices: lengthsMm.map((lengthMm) => ({ lengthMm, heads })) };
  });
}

/** What takes long of the shelves: each bin gone through to tonight. */
export const standingTonight = madeOnce((snapshot: Snapshot): readonly StandingPrey[] => {
  const { bins, cohorts } = stockOf(likeliest(snapshot), 1);
  return cohorts.map(({ bin, nodes: [path], slices }) => ({
    bin: (bins[bin] as { bin: Bin }).bin.code,
    lengthsMm: Array.from(path?.lengthMm.subarray(0, slices) ?? []),
    heads: (path?.heads ?? 0) / slices,
  }));
});

/** At one growth speed, the likeliest, and with what is here alone. */
function likeliest(snapshot: Snapshot): Snapshot {
  const { facts } = snapshot;
  const speedNodes = { ...facts.policy.speedNodes, value: 1 };
  return { ...snapshot, deliveries: [], facts: { ...facts, policy: { ...facts.policy, speedNodes } } };
}

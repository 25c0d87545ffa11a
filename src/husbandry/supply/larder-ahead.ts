/** The larder followed at its likeliest growth and count, evening by evening, with what is eaten on the way missing after. */
import type { Bin } from '../larder/index.ts';
import type { PreySpecies } from '../prey/index.ts';
import type { Snapshot } from '../snapshot.ts';
import type { Cohort } from './cohorts.ts';
import type { Shelf } from './shelf-stock.ts';
import { type Stock, stockOf } from './stock.ts';

export interface LarderAhead {
  readonly stock: Stock;
  /** Share of each slice's living that nobody has eaten. */
  readonly left: Float64Array;
}

/** Lays the larder out for a horizon of `days` days from the snapshot's day, deliveries included. */
export function larderAhead(snapshot: Snapshot, days: number): LarderAhead {
  const { policy } = snapshot.facts;
  const atOneSpeed = { ...policy, speedNodes: { ...policy.speedNodes, value: 1 } };
  const stock = stockOf({ ...snapshot, facts: { ...snapshot.facts, policy: atOneSpeed } }, days);
  return { stock, left: new Float64Array(stock.totalSlices).fill(1) };
}

/** What stands on the shelves on a day of the horizon, one shelf a bin; taking from it lowers `heads`. */
export function shelvesOn({ stock, left }: LarderAhead, day: number): Shelf[] {
  const byBin = stock.bins.map((): Shelf['slices'][number][] => []);
  for (const cohort of stock.cohorts) {
    if (cohort.arrives > day) continue;
    for (let q = 0; q < cohort.slices; q++) {
      const heads = headsOn(cohort, day) * (left[cohort.firstSlice + q] as number);
      byBin[cohort.bin]?.push({ lengthMm: lengthOn(cohort, day, q), heads });
    }
  }
  return stock.bins.map(({ bin, species }, b) => ({
    bin: bin as Bin,
    species: stock.species[species] as PreySpecies,
    slices: byBin[b] as Shelf['slices'],
  }));
}

/** Keeps what was taken from these shelves out of all later days. */
export function takenFrom({ stock, left }: LarderAhead, day: number, shelves: readonly Shelf[]): void {
  const place = stock.bins.map(() => 0);
  for (const cohort of stock.cohorts) {
    if (cohort.arrives > day) continue;
    const full = headsOn(cohort, day);
    for (let q = 0; q < cohort.slices; q++) {
      const at = place[cohort.bin] as number;
      place[cohort.bin] = at + 1;
      const heads = shelves[cohort.bin]?.slices[at]?.heads as number;
      left[cohort.firstSlice + q] = full > 0 ? heads / full : 0;
    }
  }
}

/** Living heads of one slice, if none were eaten. */
function headsOn({ nodes, arrives, slices }: Cohort, day: number): number {
  const path = nodes[0];
  return path ? (path.heads * (path.alive[day - arrives] as number)) / slices : 0;
}

const lengthOn = ({ nodes, arrives, slices }: Cohort, day: number, q: number): number =>
  nodes[0]?.lengthMm[(day - arrives) * slices + q] as number;

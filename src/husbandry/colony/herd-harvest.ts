/** What is taken from a colony of whole animals each week, and what is left to grow on. */
import { type Herd, type HerdLaws, VACANT } from './herd.ts';
import type { Size } from './sizes.ts';

/**
 * Takes the wanted heads, the largest of each size first, and leaves alone so many of the largest as growing ones are
 * missing above. Adults that are no breeders and of no wanted size go. Whether all that was wanted could be taken.
 */
export function harvest(laws: HerdLaws, herd: Herd, sizes: readonly Size[]): boolean {
  const vacancies = herd.breeders.reduce((sum, substage) => sum + Number(substage === VACANT), 0);
  let met = true;
  for (const size of sizes) {
    const growing = headsFrom(laws, herd, size.above);
    const left = Math.max(0, Math.ceil(size.growing) + vacancies - growing);
    if (takeLargest(laws, herd, { size, left }) < size.heads) met = false;
  }
  const keepsAdults = sizes.some(({ share }) => (share[laws.firstAdult] as number) > 0);
  if (!keepsAdults) dropAdults(laws, herd);
  return met;
}

function headsFrom({ chain }: HerdLaws, { heads }: Herd, first: number): number {
  let sum = 0;
  for (let j = first; j < chain.size; j++) sum += (heads[j] as number) + (heads[chain.size + j] as number);
  return sum;
}

/** Heads taken. Of a substage that lies in the size in part, that part may be taken. */
function takeLargest(
  { chain }: HerdLaws,
  { heads }: Herd,
  { size, left }: { size: Size; left: number },
): number {
  let spared = left;
  let taken = 0;
  for (let j = chain.size - 1; j >= 0; j--) {
    for (const at of [j, chain.size + j]) {
      const there = Math.round((heads[at] as number) * (size.share[j] as number));
      const free = Math.max(0, there - spared);
      spared -= there - free;
      const takes = Math.min(free, size.heads - taken);
      heads[at] = (heads[at] as number) - takes;
      taken += takes;
    }
  }
  return taken;
}

function dropAdults({ chain, firstAdult }: HerdLaws, { heads }: Herd): void {
  heads.fill(0, firstAdult, chain.size);
  heads.fill(0, chain.size + firstAdult);
}

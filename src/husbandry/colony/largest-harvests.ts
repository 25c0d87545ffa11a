/** What a colony of a given room can give each week for ever, of any one size. */
import { solver } from '../../maths/linear-programme.ts';
import type { SizeClass } from '../prey/index.ts';
import { ok, type Result } from '../result.ts';
import type { Snapshot } from '../snapshot.ts';
import { mostTaken } from './breeding-stock.ts';
import { breedingAsked, type Kept } from './colony-question.ts';

export interface HarvestQuestion extends Kept {
  /** Heads of adult size its room holds; smaller ones take the square of their length less. */
  readonly room: number;
}

/** Of one trade size and no other: most heads a week. */
export interface LargestHarvest {
  readonly size: SizeClass;
  readonly perWeek: number;
}

export interface HarvestAnswer {
  readonly revision: number;
  readonly outcome: Result<readonly LargestHarvest[]>;
}

export async function largestHarvests(snapshot: Snapshot, question: HarvestQuestion): Promise<HarvestAnswer> {
  const { revision } = snapshot;
  const asked = breedingAsked(snapshot.facts, question);
  if (!asked.ok) return { revision, outcome: asked };
  const solve = await solver();
  const { breeding } = asked.value;
  const sizes = breeding.chain.species.sizeClasses.value.map((size) => ({
    size,
    perWeek: mostTaken(solve, breeding, { size, capacity: { heads: question.room, bySize: true } }),
  }));
  return { revision, outcome: ok(sizes) };
}

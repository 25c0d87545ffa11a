/** The smallest breeding stock that bears a wanted harvest for ever, and the largest harvest a given room bears. */
import type { Solve } from '../../maths/linear-programme.ts';
import { type Capacity, type Chain, totalHeads } from '../larder/index.ts';
import { DAYS_PER_WEEK } from '../units.ts';
import { adultAgeWeeks, type Breeding, sizedShare, type Wanted } from './breeding.ts';
import { type Stationary, type Stock, stationaryProgramme, stockOf } from './stationary.ts';

/**
 * A colony that stays as it is while an even share is taken every day: a week would hide adults who live for days.
 * Means, so that heads need not be whole.
 */
export interface BreedingStock {
  /** Adults, of whom females and the males they need are kept. */
  readonly adults: number;
  readonly females: number;
  readonly males: number;
  /** Heads by substage after the harvest, eggs included. */
  readonly standing: Float64Array;
  /** Heads taken each week of each wanted size. */
  readonly taken: readonly number[];
  /** Heads of no wanted size that must go each week for the stock to stay as it is. */
  readonly surplus: number;
}

/** Fewest adults with which the wanted heads can be taken each week for ever; null where no number will do. */
export function fewestBreeders(
  solve: Solve,
  breeding: Breeding,
  wanted: readonly Wanted[],
): BreedingStock | null {
  const asked = harvested(breeding, wanted, { aim: { least: adultsOf(breeding) } });
  const solved = solve(stationaryProgramme(asked));
  return solved.status === 'optimal' ? stockSaid(breeding, wanted, stockOf(asked, solved)) : null;
}

/** Most heads of one size that can be taken each week for ever; nothing where the colony cannot keep itself up. */
export function mostTaken(
  solve: Solve,
  breeding: Breeding,
  { size, capacity }: { size: Pick<Wanted, 'fromMm' | 'toMm'>; capacity: Capacity },
): number {
  const asked = harvested(breeding, [{ ...size, heads: 0 }], {
    aim: 'most taken',
    limits: [{ perHead: roomPerHead(breeding.chain, capacity), most: capacity.heads }],
  });
  const solved = solve(stationaryProgramme(asked));
  return solved.status === 'optimal' ? solved.value * DAYS_PER_WEEK : 0;
}

const roomPerHead = ({ footprint, firstHead }: Chain, { bySize }: Capacity): Float64Array =>
  bySize ? footprint : new Float64Array(footprint.length).fill(1, firstHead);

/** Stationary under a wanted harvest: whom the wanted sizes leave may go too, and nobody past breeding stays. */
export function harvested(
  breeding: Breeding,
  wanted: readonly Wanted[],
  over: Pick<Stationary, 'aim' | 'limits'>,
): Stationary {
  const { chain, day, retireWeeks } = breeding;
  const takings = wanted.map((size) => ({
    share: sizedShare(chain, size),
    least: size.heads / DAYS_PER_WEEK,
    counts: true,
  }));
  const others = Float64Array.from({ length: chain.size }, (_, j) =>
    j < chain.firstHead ? 0 : Math.max(0, 1 - takings.reduce((sum, { share }) => sum + (share[j] ?? 0), 0)),
  );
  const standingMost = adultAgeWeeks(breeding).map((age) =>
    age > retireWeeks ? 0 : Number.POSITIVE_INFINITY,
  );
  return {
    ...over,
    step: day,
    takings: [...takings, { share: others, least: 0, counts: false }],
    standingMost,
  };
}

export const adultsOf = ({ chain, firstAdult }: Breeding): Float64Array =>
  new Float64Array(chain.size).fill(1, firstAdult);

function stockSaid(breeding: Breeding, wanted: readonly Wanted[], { standing, taken }: Stock): BreedingStock {
  const adults = totalHeads(standing, breeding.firstAdult);
  const females = adults * breeding.femaleShare;
  const heads = taken.map((each) => totalHeads(each) * DAYS_PER_WEEK);
  return {
    adults,
    females,
    males: Math.min(adults - females, females / breeding.femalesPerMale),
    standing,
    taken: heads.slice(0, wanted.length),
    surplus: heads[wanted.length] as number,
  };
}

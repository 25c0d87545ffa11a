/** What a morning sent says against the outcomes written down already: what is new, the same, or contradicts. */
import type { MealOutcome, OfferLine } from '../store/index.ts';

export type MorningOutcome = MealOutcome | 'moulted';

export interface MorningMark {
  readonly animal: string;
  readonly outcome: MorningOutcome;
}

export interface AgainstOutcome {
  readonly animal: string;
  readonly said: MorningOutcome;
  readonly stands: MealOutcome;
}

export interface MorningStanding {
  /** Marks to be written. */
  readonly marks: readonly MorningMark[];
  /** Marks that an outcome marked by hand contradicts; that stands. */
  readonly against: readonly AgainstOutcome[];
}

/** A mark by hand stands over what the button for the rest said, and gives way to an earlier mark by hand. */
export function morningStanding(
  marks: readonly MorningMark[],
  offers: readonly OfferLine[],
  moulted: readonly string[],
): MorningStanding {
  const written = (animal: string) => offers.findLast((offer) => offer.animal === animal && offer.byHand);
  const isSame = ({ animal, outcome }: MorningMark) =>
    outcome === 'moulted' ? moulted.includes(animal) : written(animal)?.outcome === outcome;
  const fresh = marks.filter((mark) => !isSame(mark));
  const contradicted = (mark: MorningMark) =>
    mark.outcome !== 'moulted' && written(mark.animal) !== undefined;
  return {
    marks: fresh.filter((mark) => !contradicted(mark)),
    against: fresh.filter(contradicted).map(({ animal, outcome }) => ({
      animal,
      said: outcome,
      stands: written(animal)!.outcome!,
    })),
  };
}

/** Whether an animal's refusals in a row are usual at the point of its moult cycle it has reached. */
import type { Animal } from '../animals/index.ts';
import type { DayNumber } from '../calendar.ts';
import type { Snapshot } from '../snapshot.ts';
import type { MealOnRecord } from './intake.ts';
import { type LikelyCycles, likelyCycles } from './likely-cycles.ts';
import { usualAcceptance } from './meals.ts';
import { type Row, rowOf } from './rows.ts';
import { type RuleTable, ruleTable } from './rule-table.ts';

export interface RefusalsSeen {
  readonly inRow: number;
  /** Chance of at least as many in a row on these evenings. */
  readonly chance: number;
  readonly usual: boolean;
  /** Where it stands: in the phase in which little is taken, in the rest of its cycle, or past its last moult. */
  readonly phase: 'close to a moult' | 'between moults' | 'moults no more';
}

/**
 * P(at least k in a row) = mean over the likely cycles of the product over the k evenings of 1 - a(evening): a the
 * rule's acceptance at that evening's phase times the animal's own. Null without refusals, and for groups, whose
 * members are not in step.
 */
export function refusalsSeen(
  snapshot: Snapshot,
  animal: Animal,
  meals: readonly MealOnRecord[],
): RefusalsSeen | null {
  const inRow = animal.refusalsInRow;
  if (inRow === 0 || animal.count > 1) return null;
  const row = rowOf(snapshot, { animal, steps: 1, change: null, leaving: null });
  const rules = ruleTable(
    row.steps.map(({ rule }) => rule),
    snapshot.facts.policy.acceptancePhases.value,
  );
  const evenings = lastRefused(meals, inRow).map((day) => day - snapshot.today);
  const own = ownAcceptance(row, snapshot);
  const cycles = unbroken(likelyCycles(row, snapshot), Math.min(...evenings));
  const chance = meanOver(cycles, (over) =>
    evenings.reduce((product, day) => product * refused(rules, over(day), own), 1),
  );
  return {
    inRow,
    chance,
    usual: chance >= snapshot.facts.policy.refusalsUnusualBelow.value,
    phase: phaseOf(rules, cycles),
  };
}

/** The latest evenings refused, as many as the run. */
const lastRefused = (meals: readonly MealOnRecord[], inRow: number): readonly DayNumber[] =>
  [...new Set(meals.filter(({ outcome }) => outcome === 'refused').map(({ day }) => day))]
    .toSorted((a, b) => b - a)
    .slice(0, inRow);

/** Acceptance on record over the kind's, the run that is judged left out; as the forecast learns it (on-record.ts). */
function ownAcceptance({ animal }: Row, { facts }: Snapshot): number {
  const prior = facts.policy.acceptancePriorWeight.value;
  const before = Math.max(animal.takenOnRecord, animal.offersOnRecord - animal.refusalsInRow);
  return (animal.takenOnRecord + prior) / (before + prior);
}

/** Without those cycles that began during the run: a moult among the refusals would have been found. */
function unbroken(cycles: LikelyCycles | null, first: number): LikelyCycles | null {
  if (cycles === null) return null;
  const whole = cycles.moulted.map((last) => (last < first ? 1 : 0));
  const kept = (days: Float64Array): Float64Array => days.filter((_, i) => whole[i] === 1);
  const { moulted, moults } = cycles;
  return whole.includes(1) ? { ...cycles, moulted: kept(moulted), moults: kept(moults) } : cycles;
}

const refused = (rules: RuleTable, over: number, own: number): number =>
  Math.max(0, 1 - usualAcceptance(rules, 0, over) * own);

/** Mean over the likely cycles of what depends on the share of a cycle over by a day; 0 over where none ever is. */
function meanOver(cycles: LikelyCycles | null, value: (over: (day: number) => number) => number): number {
  if (cycles === null) return value(() => 0);
  const { moulted, moults } = cycles;
  const sum = moulted.reduce((total, last, i) => {
    const length = (moults[i] as number) - last;
    return total + value((day) => (day - last) / length);
  }, 0);
  return sum / moulted.length;
}

/** Close to a moult when, over the likely cycles, less than half of the usual best is taken today. */
function phaseOf(rules: RuleTable, cycles: LikelyCycles | null): RefusalsSeen['phase'] {
  if (cycles === null) return 'moults no more';
  const taken = meanOver(cycles, (over) => usualAcceptance(rules, 0, over(0)));
  return taken < (rules.acceptanceBest[0] as number) / 2 ? 'close to a moult' : 'between moults';
}

/** What the young of a sac can be fed, and what must be started or ordered by when. */
import { eaterOf, type Kind, ruleOf } from '../animals/index.ts';
import type { DayNumber } from '../calendar.ts';
import { type CupGives, cupGives } from '../larder/index.ts';
import { itemsWorth, type LengthWindow, type PreySpecies, windowFor } from '../prey/index.ts';
import { climateAt } from '../rooms.ts';
import type { PlannedChange, Snapshot } from '../snapshot.ts';
import { DAYS_PER_WEEK } from '../units.ts';
import { type CupStart, cupStarts } from './cup-plan.ts';
import { fliesStanding } from './cups-standing.ts';
import { orderInTimeFor } from './delivery-days.ts';
import { middleOf, nearestClass } from './trade-class.ts';
import type { HatchWave } from './wave.ts';

/** Prey of a size that fits. */
export interface Fitting {
  readonly species: string;
  readonly size: string;
  /** Heads of it that the young want a week. */
  readonly heads: number;
}

export interface CupAdvice {
  readonly species: string;
  /** Where they are to stand. */
  readonly room: string;
  readonly gives: CupGives;
  readonly starts: readonly CupStart[];
  /** Flies wanted a week, and what standing cups give beyond what others eat, in the first week. */
  readonly wanted: number;
  readonly spare: number;
}

export interface OrderAdvice extends Fitting {
  readonly orderBy: DayNumber;
  readonly comes: DayNumber;
}

export interface YoungPrey {
  readonly fits: readonly Fitting[];
  /** Null where no fly fits, or none comes out of a cup at that temperature. */
  readonly cups: CupAdvice | null;
  readonly order: OrderAdvice | null;
}

const fittingOf = (snapshot: Snapshot, choice: Choice, wave: HatchWave): Fitting => ({
  species: choice.species.code,
  size: choice.size,
  heads: headsFor(snapshot, choice, wave.peak - wave.peakWithout),
});

interface Choice {
  /** Items of the ideal size in a meal, on average. */
  readonly itemsAMeal: number;
  readonly species: PreySpecies;
  readonly window: LengthWindow;
  readonly size: string;
  readonly lengthMm: number;
}

/** Advice for the first feed at its earliest: prey in hand too soon is cheaper than young that starve. */
export function youngPrey(snapshot: Snapshot, change: PlannedChange, wave: HatchWave): YoungPrey {
  const kind = snapshot.facts.kinds.get(change.animalKind);
  const choices = kind ? choicesFor(snapshot, kind, change.gaugeMm) : [];
  const raised = choices.find(({ species }) => species.cup !== null);
  const sold = choices.filter(({ species }) => species.cup === null);
  const kept = (choice: Choice) => snapshot.bins.some((bin) => bin.species === choice.species.code);
  const bought = sold.find(kept) ?? sold[0];
  return {
    fits: choices.map((choice) => fittingOf(snapshot, choice, wave)),
    cups: raised ? cupAdvice(snapshot, { change, wave, choice: raised }) : null,
    order: bought ? orderAdvice(snapshot, { change, wave, choice: bought }) : null,
  };
}

/** Each species in the trade size that suits best, the best first. */
function choicesFor({ facts }: Snapshot, kind: Kind, gaugeMm: number): readonly Choice[] {
  const young = { gaugeMm, matured: false, stageOverride: null };
  const rule = ruleOf(kind, young);
  const [least, most] = rule.mealItems.value;
  const itemsAMeal = Math.max(1, (least + most) / 2);
  const choices = [...facts.species.values()].flatMap((species): Choice[] => {
    const window = windowFor(rule, eaterOf(kind, young), species);
    const size = window && nearestClass(species, window);
    if (!window || !size) return [];
    return [{ species, window, itemsAMeal, size: size.name, lengthMm: middleOf(size) }];
  });
  const off = ({ lengthMm, window }: Choice) => Math.abs(Math.log(lengthMm / window.idealMm));
  return choices.sort((a, b) => off(a) - off(b) || (a.species.code < b.species.code ? -1 : 1));
}

interface Advising {
  readonly change: PlannedChange;
  readonly wave: HatchWave;
  readonly choice: Choice;
}

/** Heads of this prey that make so many items of the ideal size, but never less than one for each meal. */
function headsFor({ facts }: Snapshot, { lengthMm, window, itemsAMeal }: Choice, items: number): number {
  const worth = itemsWorth(lengthMm, window.idealMm, facts.policy.smallerItemsMost.value);
  return items / Math.min(worth, itemsAMeal);
}

function cupAdvice(snapshot: Snapshot, { change, wave, choice }: Advising): CupAdvice | null {
  const { policy } = snapshot.facts;
  const { species } = choice;
  const cups = snapshot.bins.filter((bin) => bin.role === 'cup' && bin.species === species.code);
  const room = cups[0]?.room ?? change.room;
  const gives = cupGives(species, { climate: climateAt(snapshot.rooms, { room, ownC: null }), policy });
  if (gives === null) return null;
  const from = Math.max(change.from, snapshot.today);
  const weeks = Array.from({ length: policy.waveWeeksAfter.value }, (_, week) => from + week * DAYS_PER_WEEK);
  const wanted = fittingOf(snapshot, choice, wave).heads;
  const eaten = headsFor(snapshot, choice, wave.peakWithout);
  const spare = weeks.map((day) => Math.max(0, fliesStanding(snapshot, { cups, species, day }) - eaten));
  const flies = spare.map((there) => Math.max(0, wanted - there));
  const starts = cupStarts({ today: snapshot.today, from, flies }, gives);
  return { species: species.code, room, gives, starts, wanted, spare: spare[0] as number };
}

function orderAdvice(snapshot: Snapshot, { change, wave, choice }: Advising): OrderAdvice | null {
  const days = orderInTimeFor(snapshot, change.from);
  if (days === null) return null;
  return { ...fittingOf(snapshot, choice, wave), ...days };
}

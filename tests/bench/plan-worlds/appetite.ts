/** Meals of the animals of a world: when one is wanted, how much, whether it is taken, what is owed when there is none. */
import { type Animals, FOR, type Place, REMEMBERED, schedule, stageOf } from './animal-places.ts';
import { normal, uniform } from './dice.ts';
import type { Room } from './rooms.ts';

const PER_MEAL = 4;

const mealKey = (animals: Animals, i: number, n: number): number =>
  FOR.meal + PER_MEAL * (animals.meals[i] as number) + n;

/** Whether it wants a meal this evening; hardening after a moult puts the meal off. */
export function isHungry(room: Room, { animals, i, day }: Place): boolean {
  if ((animals.due[i] as number) > day) return false;
  const { wait, interval } = stageOf(room, animals, i);
  const hard = (animals.foundOn[i] as number) + wait;
  if (day >= hard) return true;
  schedule(animals, i, { due: hard, to: hard + interval[1] - interval[0] });
  animals.fedOn[i] = hard;
  return false;
}

/** Items of the ideal size it is given, at least one. */
export function itemsOf(room: Room, generosity: number, { animals, i }: Omit<Place, 'day'>): number {
  const [least, most] = stageOf(room, animals, i).items;
  const key = animals.key[i] as number;
  const drawn = least + Math.floor(uniform(key, mealKey(animals, i, 0)) * (most - least + 1));
  return Math.max(1, Math.floor(drawn * generosity + uniform(key, mealKey(animals, i, 1))));
}

/** The meal was offered; the next follows from whether it was taken. */
export function offer(room: Room, { animals, i, day }: Place): void {
  const { interval, retry } = stageOf(room, animals, i);
  const key = animals.key[i] as number;
  const taken = uniform(key, mealKey(animals, i, 2)) < acceptance(animals, i, day);
  const own = Math.max(0, Math.min(1, 0.5 + 0.25 * normal(key, FOR.temper)));
  const drawn = (own + uniform(key, mealKey(animals, i, 3))) / 2;
  const wide = interval[1] - interval[0];
  note(animals, i, { day, taken });
  animals.meals[i] = (animals.meals[i] as number) + 1;
  animals.endangered[i] = 0;
  if (taken)
    schedule(animals, i, {
      due: day + interval[0] + Math.floor(drawn * (wide + 0.999)),
      to: day + interval[1],
    });
  else schedule(animals, i, { due: day + retry, to: day + retry + wide });
}

function acceptance(animals: Animals, i: number, day: number): number {
  const moulted = animals.moultedOn[i] as number;
  const cycle = (animals.moultsOn[i] as number) - moulted;
  const over = cycle === Number.POSITIVE_INFINITY ? 0 : (day - moulted) / cycle;
  if (over < 0.5) return 0.95;
  if (over < 0.75) return 0.87;
  return over < 0.9 ? 0.5 : 0.08;
}

/** Written down as keepers do: every offer, and the days between meals taken where no refusal and no moult came between. */
function note(animals: Animals, i: number, { day, taken }: { day: number; taken: boolean }): void {
  animals.fedOn[i] = day;
  animals.offeredOn[i] = day;
  animals.offers[i] = (animals.offers[i] as number) + 1;
  if (!taken) {
    animals.refusals[i] = (animals.refusals[i] as number) + 1;
    return;
  }
  const last = animals.takenOn[i] as number;
  if (animals.refusals[i] === 0 && (animals.moultedOn[i] as number) < last) {
    const known = animals.known[i] as number;
    animals.intervals[i * REMEMBERED + (known % REMEMBERED)] = day - last;
    animals.known[i] = known + 1;
  }
  animals.takenOn[i] = day;
  animals.refusals[i] = 0;
  animals.takes[i] = (animals.takes[i] as number) + 1;
}

/** What the end of an evening makes of a meal still owed. */
export type Owed = 'nothing' | 'late' | 'missed' | 'unfed';

/** A meal not offered by now is late, then missed once; one that is missed is not made up for: the next is due. */
export function owe(room: Room, { animals, i, day }: Place): Owed {
  if ((animals.due[i] as number) > day) return 'nothing';
  const { grace, interval } = stageOf(room, animals, i);
  const to = animals.rangeTo[i] as number;
  if (day >= to + grace) {
    const said = animals.asked[i] ? 'missed' : 'unfed';
    animals.meals[i] = (animals.meals[i] as number) + 1;
    schedule(animals, i, { due: day + 1, to: day + 1 + interval[1] - interval[0] });
    return said;
  }
  if (day < to || animals.late[i]) return 'nothing';
  animals.late[i] = 1;
  return 'late';
}

/** Once, until fed again, when longer without food than is safe. */
export function comesInDanger(room: Room, { animals, i, day }: Place): boolean {
  if (animals.endangered[i] || !animals.asked[i]) return false;
  if (day < (animals.fedOn[i] as number) + stageOf(room, animals, i).gap) return false;
  animals.endangered[i] = 1;
  return true;
}

/** A box of animals in which each lives its own life, and what its keeper does with it and sees of it. */
import { type Animal, animalOf, type Breed, isAdultOn, lengthOn, type Nature } from './animal.ts';
import { type Dice, diceOf } from './dice.ts';

/** Lengths a size is sold by. */
export interface SizeClass {
  readonly fromMm: number;
  readonly toMm: number;
}

/** One line of a keeper's notes. */
export type Note = { readonly day: number } & (
  | { readonly what: 'came'; readonly heads: number; readonly fromMm: number; readonly toMm: number }
  | { readonly what: 'counted'; readonly heads: number }
  | { readonly what: 'dead'; readonly heads: number }
  | { readonly what: 'fed'; readonly heads: number; readonly fromMm: number; readonly toMm: number }
  | { readonly what: 'looks'; readonly fromMm: number; readonly toMm: number }
  | { readonly what: 'first adults' }
);

/** A keeper's habits: on how many days something is done, and how far eye and hand err. */
export interface Habits {
  readonly days: number;
  readonly glanceEvery: number | null;
  readonly countEvery: number | null;
  readonly deadEvery: number | null;
  /** Animals fed each time. */
  readonly fed: { readonly every: number; readonly heads: number } | null;
  /** Chance that what was meant for a day is left out. */
  readonly skips: number;
  /** Heads looked at for adults at each glance. */
  readonly looksAt: number;
  readonly eyeLogSd: number;
  readonly countLogSd: number;
  readonly parcelLogSd: number;
}

export interface World {
  readonly seed: number;
  readonly breed: Breed;
  readonly nature: Nature;
  readonly parcel: { readonly heads: number; readonly fromMm: number; readonly toMm: number };
  readonly classes: readonly SizeClass[];
  readonly habits: Habits;
}

export interface Lived {
  readonly notes: readonly Note[];
  /** Median length of those in the box, by day, for as long as anybody asks. */
  readonly medianOn: (day: number) => number;
  readonly aliveOn: (day: number) => number;
}

/** The box lives through its days; only the notes are for the program. */
export function live(world: World): Lived {
  const { seed, breed, nature, parcel, habits } = world;
  const dice = diceOf(seed);
  const came = Math.round(parcel.heads * dice.logNormal(habits.parcelLogSd));
  const animals = Array.from({ length: came }, () => animalOf(dice, breed, { ...nature, ...parcel }));
  const notes: Note[] = [{ day: 0, what: 'came', ...parcel }];
  let lookedFor = 0;
  for (let day = 1; day <= habits.days; day += 1) {
    const does = (every: number | null) =>
      every !== null && day % every === 0 && dice.uniform() >= habits.skips;
    if (does(habits.deadEvery)) {
      const dead = animals.filter(({ dies, taken }) => lookedFor < dies && dies <= day && taken > dies);
      notes.push({ day, what: 'dead', heads: dead.length });
      lookedFor = day;
    }
    if (does(habits.countEvery)) {
      const heads = Math.round(inBox(animals, day).length * dice.logNormal(habits.countLogSd));
      notes.push({ day, what: 'counted', heads });
    }
    if (does(habits.glanceEvery)) {
      notes.push(...glance(world, animals, { day, dice }));
      const first = !notes.some(({ what }) => what === 'first adults');
      if (first && adultSeen(world, animals, { day, dice })) notes.push({ day, what: 'first adults' });
    }
    if (habits.fed && does(habits.fed.every)) notes.push(...feed(world, animals, { day, dice }));
  }
  return {
    notes,
    medianOn: (day) => medianOf(breed, inBox(animals, day), day),
    aliveOn: (day) => inBox(animals, day).length,
  };
}

interface At {
  readonly day: number;
  readonly dice: Dice;
}

const inBox = (animals: readonly Animal[], day: number): readonly Animal[] =>
  animals.filter(({ dies, taken }) => dies > day && taken > day);

function medianOf(breed: Breed, animals: readonly Animal[], day: number): number {
  const lengths = animals.map((animal) => lengthOn(breed, animal, day)).sort((a, b) => a - b);
  const [left, right] = [Math.ceil(lengths.length / 2) - 1, Math.floor(lengths.length / 2)];
  return ((lengths[left] ?? Number.NaN) + (lengths[right] ?? Number.NaN)) / 2;
}

/** The size the box looks to have: the class of its median, as the eye takes it. */
function glance({ breed, classes, habits }: World, animals: readonly Animal[], { day, dice }: At): Note[] {
  const median = medianOf(breed, inBox(animals, day), day) * dice.logNormal(habits.eyeLogSd);
  if (Number.isNaN(median)) return [];
  const last = classes.length - 1;
  const at = classes.findIndex(({ toMm }, i) => median < toMm || i === last);
  return [{ day, what: 'looks', ...(classes[at] as SizeClass) }];
}

/** Some are taken out, whichever come to hand; their least and greatest lengths are written. */
function feed({ breed, habits }: World, animals: readonly Animal[], { day, dice }: At): Note[] {
  const here = [...inBox(animals, day)];
  const taken: Animal[] = [];
  for (let i = 0; i < (habits.fed?.heads ?? 0) && here.length > 0; i += 1)
    taken.push(...here.splice(Math.floor(dice.uniform() * here.length), 1));
  if (taken.length === 0) return [];
  for (const animal of taken) animal.taken = day;
  const lengths = taken.map((animal) => lengthOn(breed, animal, day));
  return [
    { day, what: 'fed', heads: taken.length, fromMm: Math.min(...lengths), toMm: Math.max(...lengths) },
  ];
}

/** Adults are seen once one is among those that were looked at. */
function adultSeen({ habits }: World, animals: readonly Animal[], { day, dice }: At): boolean {
  const here = inBox(animals, day);
  const looked = Array.from(
    { length: here.length === 0 ? 0 : habits.looksAt },
    () => here[Math.floor(dice.uniform() * here.length)] as Animal,
  );
  return looked.some((animal) => isAdultOn(animal, day));
}

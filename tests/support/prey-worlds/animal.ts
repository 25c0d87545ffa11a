/** One animal of a world: when it passes each part of its growth, and when it dies. */
import type { Dice } from './dice.ts';

/** How a breed lives at the temperature of its box. */
export interface Breed {
  /** Mean days from hatch to adult of those that get there, and the parts they are made of, each exponential. */
  readonly daysToAdult: number;
  readonly parts: number;
  /** Mean days as an adult, and the parts they are made of. */
  readonly adultDays: number;
  readonly adultParts: number;
  /** Body length by share of the way to adult, straight in the logarithm between. */
  readonly lengths: readonly (readonly [share: number, mm: number])[];
  readonly deathsPerDay: number;
}

/** What is peculiar to a box: its animals grow and die by so many times the breed's rates. */
export interface Nature {
  readonly speed: number;
  readonly hazard: number;
}

export interface Animal {
  /** Day on which it leaves each part it has still to pass, from the first it is in. */
  readonly leaves: Float64Array;
  readonly firstPart: number;
  readonly dies: number;
  /** Day on which it was taken out; beyond all days while it was not. */
  taken: number;
}

/** An animal that comes on day 0 with a length drawn evenly between two. */
export function animalOf(
  dice: Dice,
  breed: Breed,
  { speed, hazard, fromMm, toMm }: Nature & { fromMm: number; toMm: number },
): Animal {
  const share = shareAt(breed, fromMm + (toMm - fromMm) * dice.uniform());
  const firstPart = Math.min(breed.parts, Math.floor(share * breed.parts));
  const leaves = new Float64Array(breed.parts - firstPart);
  // Who leaves a part alive did so before dying: parts passed at rate a and deaths at rate m leave a mean of 1/(a + m).
  const perDay = (breed.parts / breed.daysToAdult) * speed - breed.deathsPerDay;
  let at = 0;
  for (let i = 0; i < leaves.length; i += 1) {
    at += dice.exponential() / perDay;
    leaves[i] = at;
  }
  for (let i = 0; i < breed.adultParts; i += 1)
    at += (dice.exponential() * breed.adultDays) / breed.adultParts;
  const killed = dice.exponential() / (breed.deathsPerDay * hazard);
  return { leaves, firstPart, dies: Math.min(at, killed), taken: Number.POSITIVE_INFINITY };
}

/** Its length on a day, by the part it is in and how long it has been there. */
export function lengthOn(breed: Breed, { leaves, firstPart }: Animal, day: number): number {
  let i = 0;
  while (i < leaves.length && (leaves[i] as number) <= day) i += 1;
  if (i === leaves.length) return lengthAt(breed, 1);
  const entered = i === 0 ? 0 : (leaves[i - 1] as number);
  const within = (day - entered) / ((leaves[i] as number) - entered);
  return lengthAt(breed, (firstPart + i + within) / breed.parts);
}

export const isAdultOn = ({ leaves }: Animal, day: number): boolean =>
  leaves.length === 0 || (leaves[leaves.length - 1] as number) <= day;

function lengthAt({ lengths }: Breed, share: number): number {
  const i = Math.max(
    1,
    lengths.findIndex(([s]) => s >= share),
  );
  const [s0, mm0] = lengths[i - 1] as [number, number];
  const [s1, mm1] = lengths[i] as [number, number];
  return mm0 * (mm1 / mm0) ** ((share - s0) / (s1 - s0));
}

function shareAt({ lengths }: Breed, mm: number): number {
  const i = Math.max(
    1,
    lengths.findIndex(([, each]) => each >= mm),
  );
  const [s0, mm0] = lengths[i - 1] as [number, number];
  const [s1, mm1] = lengths[i] as [number, number];
  return s0 + ((s1 - s0) * Math.log(mm / mm0)) / Math.log(mm1 / mm0);
}

/** Boxes of an invented generator as the program sees them: a species' numbers handed over, a keeper's notes as events. */
import type { Bin, BinEvent } from '../../src/husbandry/larder/bin.ts';
import {
  type Belief,
  beliefOf,
  type Chain,
  chainOf,
  headsWithin,
  type Life,
  nextDay,
  steadyClimate,
  totalHeads,
} from '../../src/husbandry/larder/index.ts';
import type { Policy } from '../../src/husbandry/policy.ts';
import { developmentOnDay } from '../../src/husbandry/prey/index.ts';
import type { PreySpecies } from '../../src/husbandry/prey/species.ts';
import type { Breed } from './prey-worlds/animal.ts';
import type { Note } from './prey-worlds/box.ts';
import { binWith, facts } from './room.ts';

export interface Kept {
  readonly species: PreySpecies;
  readonly tempC: number;
}

export const speciesOf = (code: string): PreySpecies => facts.species.get(code) as PreySpecies;

/** The species' published numbers at one temperature, for the worlds' own biology. */
export function breedOf({ species, tempC }: Kept): Breed {
  const chain = chainOf(species);
  const temp = { minC: tempC, maxC: tempC };
  const days = species.stages.map((stage) => {
    const span = species.spans.find(({ code }) => code === stage.span)!;
    return stage.kind === 'egg' ? 0 : stage.share / developmentOnDay(span, temp, tempC);
  });
  const parts = chain.stages.reduce(
    (sum, { kind, count }) => sum + (kind === 'egg' || kind === 'adult' ? 0 : count),
    0,
  );
  const longevity = species.adult.longevity.value;
  return {
    daysToAdult: days.reduce((a, b) => a + b, 0),
    parts,
    adultDays: longevity.reduce((best, each) =>
      Math.abs(each.tempC - tempC) < Math.abs(best.tempC - tempC) ? each : best,
    ).days,
    adultParts: Math.round(1 / species.adult.cv.value ** 2),
    lengths: species.lengthByDevelopment.value,
    deathsPerDay: species.holdingLossPerDay.value,
  };
}

function eventOf(note: Note): BinEvent {
  const { day } = note;
  switch (note.what) {
    case 'came':
      return { day, kind: 'delivered', lot: note, dead: 0 };
    case 'counted':
      return { day, kind: 'counted', heads: note.heads, fromMm: null, toMm: null };
    case 'dead':
      return { day, kind: 'found dead', heads: note.heads };
    case 'fed':
      return { day, kind: 'offered', heads: note.heads, fromMm: note.fromMm, toMm: note.toMm };
    case 'looks':
      return { day, kind: 'size seen', fromMm: note.fromMm, toMm: note.toMm };
    case 'first adults':
      return { day, kind: 'first adults' };
  }
}

/** The holding bin these notes are kept of. */
const boxOf = ({ species }: Kept, notes: readonly Note[]): Bin =>
  binWith({ code: 'B1', species: species.code, events: notes.map(eventOf) });

const chains = new WeakMap<PreySpecies, Chain>();

function chainFor(species: PreySpecies): Chain {
  const chain = chains.get(species) ?? chainOf(species);
  chains.set(species, chain);
  return chain;
}

/** What the program makes of the notes on a day. */
export function believed(
  kept: Kept,
  notes: readonly Note[],
  day: number,
  policy: Policy = facts.policy,
): Belief {
  const chain = chainFor(kept.species);
  const climate = steadyClimate({ minC: kept.tempC, maxC: kept.tempC });
  return beliefOf(boxOf(kept, notes), day, { chain, policy, climate });
}

/** The day on which half of a box will be longer than a length, at the likeliest speed. */
export function dayLonger(
  kept: Kept,
  notes: readonly Note[],
  { today, mm }: { today: number; mm: number },
): number {
  const { speed, stateAt } = believed(kept, notes, today);
  const life: Life = {
    chain: chainFor(kept.species),
    bin: boxOf(kept, notes),
    climate: steadyClimate({ minC: kept.tempC, maxC: kept.tempC }),
    speed: speed.mid,
  };
  let [state, day] = [stateAt(speed.mid), today];
  const isLonger = () =>
    2 * headsWithin(life.chain, state.heads, { fromMm: mm, toMm: 1000 }) >= totalHeads(state.heads);
  for (; !isLonger(); day += 1) state = nextDay(life, state, day).state;
  return day;
}

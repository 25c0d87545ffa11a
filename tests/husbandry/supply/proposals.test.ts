/** What is offered out of which bin: the bin wished for, and what else each animal could get. */
import { describe, expect, it } from 'vitest';
import type { Kind } from '../../../src/husbandry/animals/kind.ts';
import { eaterOf, ruleOf } from '../../../src/husbandry/animals/stage.ts';
import type { Bin } from '../../../src/husbandry/larder/bin.ts';
import { windowFor } from '../../../src/husbandry/prey/matching.ts';
import type { PreySpecies } from '../../../src/husbandry/prey/species.ts';
import { eveningOf } from '../../../src/husbandry/supply/evening.ts';
import {
  animalWith,
  countedBin,
  facts,
  mixedAnimals,
  mixedBins,
  snapshotWith,
  TODAY,
} from '../../support/room.ts';

const hungry = (code: string, gaugeMm: number) =>
  animalWith({ code, kind: 'brachypelma-hamorii', gaugeMm, lastTaken: TODAY - 30 });
const crickets = countedBin('B1', 'acheta-domesticus', { heads: 100, fromMm: 10, toMm: 13 });
const roaches = countedBin('B2', 'blaptica-dubia', { heads: 100, fromMm: 9, toMm: 12 });
const large = countedBin('B3', 'blaptica-dubia', { heads: 100, fromMm: 36, toMm: 40 });

describe('a bin wished for', () => {
  const animals = [hungry('A1', 50), hungry('A2', 52), hungry('A3', 6)];
  const snapshot = snapshotWith({ animals, bins: [crickets, roaches] });
  const bins = (prefer: [string, string][]) =>
    eveningOf(snapshot, { prefer: new Map(prefer) }).servings.map(({ offer }) => offer?.bin ?? null);

  it('feeds those it fits, and nobody else', () => {
    expect(bins([])).toEqual(['B1', 'B1', null]);
    expect(bins([['A1', 'B2']])).toEqual(['B2', 'B1', null]);
    expect(
      bins([
        ['A1', 'B2'],
        ['A2', 'B2'],
        ['A3', 'B2'],
      ]),
    ).toEqual(['B2', 'B2', null]);
  });

  it('stands back where it is unknown or holds too little for a meal', () => {
    expect(bins([['A1', 'B9']])).toEqual(['B1', 'B1', null]);
    const nearlyEmpty = { ...roaches, events: [{ ...roaches.events[0]!, heads: 1 }] };
    const little = snapshotWith({ animals, bins: [crickets, nearlyEmpty as typeof roaches] });
    const round = eveningOf(little, {
      prefer: new Map([
        ['A1', 'B2'],
        ['A2', 'B2'],
      ]),
    });
    const fromB2 = round.servings.filter(({ offer }) => offer?.bin === 'B2');
    expect(fromB2.reduce((sum, { offer }) => sum + (offer?.heads ?? 0), 0)).toBeLessThanOrEqual(1);
    expect(round.servings.map(({ offer }) => offer === null)).toEqual([false, false, true]);
  });
});

describe('a bin that is left alone', () => {
  const animals = [hungry('A1', 50), hungry('A2', 52)];
  const resting = { ...crickets, restsUntil: TODAY + 1 };
  const offers = (bins: Bin[], prefer: [string, string][] = []) =>
    eveningOf(snapshotWith({ animals, bins }), { prefer: new Map(prefer) }).servings.map(
      ({ offer }) => offer?.bin ?? null,
    );

  it('is offered only to those for whom nothing else fits, or whom the keeper feeds from it', () => {
    expect(offers([resting, roaches])).toEqual(['B2', 'B2']);
    expect(offers([resting])).toEqual(['B1', 'B1']);
    expect(offers([resting, roaches], [['A2', 'B1']])).toEqual(['B2', 'B1']);
    expect(offers([{ ...resting, restsUntil: TODAY }, roaches])).toEqual(['B1', 'B1']);
  });

  it('can still be chosen', () => {
    const [serving] = eveningOf(snapshotWith({ animals, bins: [resting, roaches] })).servings;
    expect(serving!.choices.map(({ bin }) => bin)).toEqual(['B1']);
  });
});

describe('what else it could get', () => {
  it('is one proposal of each other bin that holds something it takes, whole, killed or cut', () => {
    const [serving] = eveningOf(
      snapshotWith({ animals: [hungry('A1', 50)], bins: [crickets, roaches, large] }),
    ).servings;
    expect(serving?.offer?.bin).toBe('B1');
    expect(serving?.choices.map(({ bin }) => bin)).toEqual(['B2']);
    expect(serving?.choices[0]).toMatchObject({ species: 'blaptica-dubia', killFirst: false, portions: 1 });
  });

  it('fits each own window and is no more than is left of a bin', () => {
    const snapshot = snapshotWith({ animals: mixedAnimals(150), bins: mixedBins(60) });
    const { servings } = eveningOf(snapshot);
    const taken = new Map<string, number>();
    for (const { offer } of servings)
      if (offer) taken.set(offer.bin, (taken.get(offer.bin) ?? 0) + offer.heads);
    const all = servings.flatMap(({ animal, choices }) => choices.map((choice) => ({ animal, choice })));
    expect(all.length).toBeGreaterThan(50);
    for (const { animal, choice } of all) {
      const eater = snapshot.animals.find(({ code }) => code === animal)!;
      const kind = facts.kinds.get(eater.kind) as Kind;
      const prey = facts.species.get(choice.species) as PreySpecies;
      const window = windowFor(ruleOf(kind, eater), eaterOf(kind, eater), prey)!;
      const longest = choice.killFirst ? window.maxMm * Math.cbrt(choice.portions) : window.liveMaxMm;
      expect(choice.toMm).toBeLessThanOrEqual(longest);
      expect(choice.fromMm).toBeGreaterThanOrEqual(window.minMm);
      const event = snapshot.bins.find(({ code }) => code === choice.bin)?.events[0];
      if (event?.kind === 'counted' && event.fromMm !== null)
        expect(choice.heads).toBeLessThanOrEqual(event.heads - (taken.get(choice.bin) ?? 0) + 1);
    }
  });

  it('is a part of the meal where no bin holds a whole one', () => {
    const three = countedBin('B1', 'acheta-domesticus', { heads: 1, fromMm: 10, toMm: 11 });
    const group = { ...hungry('A1', 50), count: 4 };
    const [serving] = eveningOf(snapshotWith({ animals: [group], bins: [three] })).servings;
    expect(serving?.offer).toBeNull();
    expect(serving?.choices).toMatchObject([{ bin: 'B1', heads: 1 }]);
  });
});

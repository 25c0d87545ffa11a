/** The matching rule: windows by length, by gape and by mass; unsafe prey; how many items stand for one. */
import { describe, expect, it } from 'vitest';
import type { Kind, StageRule } from '../../../src/husbandry/animals/kind.ts';
import { eaterOf, ruleOf } from '../../../src/husbandry/animals/stage.ts';
import { itemsWorth, suitability, windowFor } from '../../../src/husbandry/prey/matching.ts';
import type { PreySpecies } from '../../../src/husbandry/prey/species.ts';
import { facts } from '../../support/room.ts';

const cricket = facts.species.get('acheta-domesticus') as PreySpecies;
const beetle = facts.species.get('tribolium-confusum') as PreySpecies;
const animal = (code: string, gaugeMm: number) => {
  const kind = facts.kinds.get(code) as Kind;
  const state = { gaugeMm, matured: false, stageOverride: null };
  return { rule: ruleOf(kind, state), eater: eaterOf(kind, state) };
};

describe('a window', () => {
  it('is the rule’s shares of the body length', () => {
    const { rule, eater } = animal('brachypelma-hamorii', 50);
    expect(eater.referenceMm).toBeCloseTo(50 * 0.42, 9);
    const { min, ideal, max } = rule.window.value;
    expect(windowFor(rule, eater, cricket)).toMatchObject({
      minMm: min * 21,
      idealMm: ideal * 21,
      maxMm: max * 21,
    });
  });

  it('is narrowed by the gape of what swallows whole, more for broad prey', () => {
    const { rule, eater } = animal('dendrobates-tinctorius', 45);
    const broad = { ...cricket, widthPerLength: { ...cricket.widthPerLength, value: 2 } };
    const [slim, wide] = [windowFor(rule, eater, cricket), windowFor(rule, eater, broad)];
    const gape = rule.gape as NonNullable<StageRule['gape']>;
    const widest = gape.headWidthShare.value * gape.widthMaxOfHead.value * 45;
    expect(wide?.maxMm).toBeCloseTo(Math.min(widest / 2, rule.window.value.max * 45), 9);
    expect(wide?.maxMm).toBeLessThan(slim?.maxMm as number);
  });

  it('is refused for hard beetles where they are unsafe, and for prey the kind does not take', () => {
    const young = animal('brachypelma-hamorii', 12);
    expect(young.rule.refusesHard).toBe(true);
    const rule = { ...young.rule, accepts: [...young.rule.accepts, beetle.form] };
    expect(beetle.traits.hard).toBe(true);
    expect(windowFor(rule, young.eater, beetle)).toBeNull();
    expect(windowFor({ ...rule, refusesHard: false }, young.eater, beetle)).not.toBeNull();
    expect(windowFor({ ...rule, accepts: [] }, young.eater, cricket)).toBeNull();
  });
});

describe('items', () => {
  it('stand for one another by the cube of length, but at most three small ones for one', () => {
    expect(itemsWorth(20, 10, 3)).toBe(8);
    expect(itemsWorth(8, 10, 3)).toBeCloseTo(0.512, 12);
    expect(itemsWorth(4, 10, 3)).toBeCloseTo(1 / 3, 12);
  });
});

describe('suitability', () => {
  const window = { minMm: 4, idealMm: 8, liveMaxMm: 14, maxMm: 16 };
  it('is 1 at the ideal, a half half-way in the logarithm, 0 at and beyond the edges', () => {
    expect(suitability(window, 8)).toBe(1);
    expect(suitability(window, Math.sqrt(32))).toBeCloseTo(0.5, 12);
    expect([3, 4, 16, 20].map((mm) => suitability(window, mm))).toEqual([0, 0, 0, 0]);
  });
});

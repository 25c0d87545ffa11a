/** How warmth and cold act on growth and death, in every species. */

import { describe, expect, it } from 'vitest';
import { achetaDomesticus } from '../../../src/facts/prey/acheta-domesticus.ts';
import { gryllodesSigillatus } from '../../../src/facts/prey/gryllodes-sigillatus.ts';
import { preySpecies } from '../../../src/facts/prey/index.ts';
import { chainOf } from '../../../src/husbandry/larder/chain.ts';
import { steadyClimate } from '../../../src/husbandry/larder/index.ts';
import { firstYoung, totalHeads } from '../../../src/husbandry/larder/lot.ts';
import { emptyState, type Life, nextDay } from '../../../src/husbandry/larder/state.ts';
import type { DayTemp } from '../../../src/husbandry/prey/rate.ts';
import type { PreySpecies } from '../../../src/husbandry/prey/species.ts';
import { constant, rear } from '../../support/rearing.ts';
import { binWith } from '../../support/room.ts';

/** The species without deaths, so that only growth is seen. */
const undying = (species: PreySpecies): PreySpecies => ({
  ...species,
  stages: species.stages.map((stage) => ({
    ...stage,
    survival: { ...stage.survival, value: [{ tempC: 25, share: 1 }] },
  })),
});

const grownBy = (species: PreySpecies, temp: DayTemp): readonly number[] =>
  rear(undying(species), { temp, from: 'egg', days: 120 }).adult;

/** Least optimum of its spans: up to there warmth must help. */
const optimumOf = ({ spans }: PreySpecies): number => Math.min(...spans.map((span) => span.optimumC.value));

describe.each(preySpecies.map((species) => [species.name, species] as const))('%s', (_, species) => {
  it('never grows slower where it is warmer, up to its optimum, by day and night too', () => {
    const top = optimumOf(species);
    const swings = [0, 6];
    for (const swing of swings) {
      let cooler: readonly number[] | null = null;
      for (let max = top - 18; max <= top; max += 1.5) {
        const now = grownBy(species, { minC: max - swing, maxC: max });
        const before = cooler;
        if (before) expect(now.every((share, day) => share >= before[day]! - 1e-12)).toBe(true);
        cooler = now;
      }
    }
  });

  it('goes on dying in the dead cold, and nobody matures', () => {
    const chain = chainOf(species);
    const life: Life = {
      chain,
      bin: binWith({ code: 'B', species: species.code }),
      climate: steadyClimate(constant(2)),
      speed: 1,
    };
    const young = firstYoung(chain);
    const grown = chain.stages.find(({ kind }) => kind === 'adult')!.first;
    let state = emptyState(chain);
    state.heads.fill(1, young, grown);
    const start = totalHeads(state.heads);
    for (let day = 0; day < 60; day++) {
      const before = totalHeads(state.heads);
      const next = nextDay(life, state, day);
      expect(next.died).toBeGreaterThan(0);
      expect(before - totalHeads(next.state.heads)).toBeCloseTo(next.died, 9);
      state = next.state;
    }
    expect(totalHeads(state.heads, grown)).toBe(0);
    expect(totalHeads(state.heads)).toBeLessThan(start);
  });
});

describe('a room with cold nights', () => {
  it('is not slowed by its cold hours alone: the hard stop goes by the mean of days', () => {
    const warmDays = rear(gryllodesSigillatus, { temp: { minC: 18, maxC: 32 }, from: 'hatch', days: 150 });
    const always = rear(gryllodesSigillatus, { temp: constant(25), from: 'hatch', days: 150 });
    expect(warmDays.adult.at(-1)).toBeGreaterThan(0.5);
    expect(Math.abs(warmDays.adult[85]! - always.adult[85]!)).toBeLessThan(0.2);
  });

  it('grows at least as fast as the constant mean where the rate bends upwards at the threshold', () => {
    const swinging = rear(achetaDomesticus, { temp: { minC: 6, maxC: 20 }, from: 'egg', days: 600 });
    const steady = rear(achetaDomesticus, { temp: constant(13), from: 'egg', days: 600 });
    expect(swinging.adult.at(-1)).toBeGreaterThan(steady.adult.at(-1)!);
  });
});

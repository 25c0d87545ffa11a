/** The sheet of a species: what was published comes back, and growth is what the engine does in the long run. */

import { describe, expect, it } from 'vitest';
import { preySpecies, speciesByCode } from '../../../src/facts/prey/index.ts';
import type { Bin } from '../../../src/husbandry/larder/bin.ts';
import { chainOf } from '../../../src/husbandry/larder/chain.ts';
import { steadyClimate } from '../../../src/husbandry/larder/index.ts';
import { scaleTo, totalHeads } from '../../../src/husbandry/larder/lot.ts';
import { speciesSheet } from '../../../src/husbandry/larder/species-sheet.ts';
import { type BinState, emptyState, type Life, nextDay } from '../../../src/husbandry/larder/state.ts';
import type { PreySpecies } from '../../../src/husbandry/prey/species.ts';
import { binWith } from '../../support/room.ts';

const gryllodes = speciesByCode.get('gryllodes-sigillatus') as PreySpecies;

describe('the banded cricket at 30 °C', () => {
  const sheet = speciesSheet(gryllodes, 30);

  it('takes the published days, with the published spread and survival', () => {
    expect(sheet.hatchToAdult.days).toBeCloseTo(43.74, 9);
    expect(Math.abs(sheet.hatchToAdult.cv - 0.142)).toBeLessThan(0.002);
    expect(sheet.hatchToAdult.survival).toBeCloseTo(0.83, 9);
    expect(sheet.stages.find(({ kind }) => kind === 'egg')).toMatchObject({ days: 10.6, survival: 1 });
    expect(sheet.adultDays).toBe(86.5);
    expect(sheet.develops).toBe(true);
    expect(sheet.remarks).toEqual([]);
  });

  it('grows from the mass of a hatchling to that of an adult within the weeks it takes', () => {
    expect(sheet.byAge[0]!.massMg).toBeLessThan(1);
    expect(sheet.byAge.map(({ ageDays }) => ageDays)).toEqual([0, 7, 14, 21, 28, 35, 42, 49]);
    expect(sheet.byAge.at(-1)!.lengthMm).toBe(16.5);
    expect(sheet.byAge.at(-1)!.alive).toBeCloseTo(0.83, 1);
    const masses = sheet.byAge.map(({ massMg }) => massMg);
    expect(masses).toEqual([...masses].sort((a, b) => a - b));
  });
});

const optimumOf = (species: PreySpecies): number =>
  Math.min(...species.spans.map(({ optimumC }) => optimumC.value));

it.each(preySpecies)(
  '$name grows at its optimum, every figure finite and every remark a sentence',
  (species) => {
    const sheet = speciesSheet(species, optimumOf(species));
    expect(sheet.develops).toBe(true);
    expect(sheet.growth!.perWeek).toBeGreaterThan(1);
    expect(JSON.stringify(sheet)).not.toMatch(/Infinity|NaN/);
    const { doublingDays } = sheet.growth!;
    const figures = [
      sheet.adultDays,
      doublingDays,
      ...sheet.stages.flatMap(({ days, survival }) => [days, survival]),
    ];
    expect(figures.filter((figure) => figure === null || !Number.isFinite(figure))).toEqual([]);
    expect(sheet.remarks.filter((remark) => !/^[A-Z0-9].*\.$/.test(remark))).toEqual([]);
  },
);

describe.each(preySpecies.filter(({ laying }) => laying))(
  'the growth of $commonName at its optimum',
  (species) => {
    const tempC = Math.min(28, optimumOf(species));
    const { growth } = speciesSheet(species, tempC);

    it('is what a colony with room comes to after long', () => {
      const chain = chainOf(species);
      const bin: Bin = binWith({ code: 'B1', species: species.code, role: 'colony' });
      const life: Life = { chain, bin, climate: steadyClimate({ minC: tempC, maxC: tempC }), speed: 1 };
      let state: BinState = { ...emptyState(chain), heads: new Float64Array(chain.size).fill(1) };
      /** Generations in step part slowly where siblings differ little. */
      const [settling, weeks] = [species.immatureCv.value < 0.07 ? 3000 : 600, 100];
      let logGrowth = 0;
      for (let week = 0; week < settling + weeks; week++) {
        const before = totalHeads(state.heads);
        for (let day = 0; day < 7; day++) state = nextDay(life, state, 7 * week + day).state;
        const factor = totalHeads(state.heads) / before;
        if (week >= settling) logGrowth += Math.log(factor) / weeks;
        state = { ...state, heads: scaleTo(state.heads, 1) };
      }
      expect(Math.exp(logGrowth)).toBeCloseTo(growth!.perWeek, 5);
    });

    it('doubles in the time that fits its growth', () => {
      expect(growth!.perWeek ** (growth!.doublingDays! / 7)).toBeCloseTo(2, 9);
    });
  },
);

it('says plainly that nothing develops in the cold, in the heat and below a hard stop', () => {
  const cold = speciesSheet(gryllodes, 15);
  expect(cold).toMatchObject({ develops: false, byAge: [], growth: null });
  expect(cold.hatchToAdult).toMatchObject({ days: null, survival: null });
  expect(cold.remarks[0]).toBe('Nothing develops at 15 °C: for eggs it must be warmer than 17.3 °C.');
  expect(speciesSheet(gryllodes, 22).remarks[0]).toBe(
    'Nothing develops at 22 °C: for nymphs a constant 22 °C or less was too cold to grow up.',
  );
  expect(speciesSheet(gryllodes, 41).remarks[0]).toBe(
    'Nothing develops at 41 °C: for eggs it is too hot from 40 °C.',
  );
  expect(speciesSheet(gryllodes, 41).remarks.join(' ')).not.toContain('for eggs (');
});

it('says where nobody has measured', () => {
  expect(speciesSheet(gryllodes, 39).remarks).toContain(
    '39 °C is outside what was measured for nymphs (24–38 °C): the days are reckoned, not measured.',
  );
});

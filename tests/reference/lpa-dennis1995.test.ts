/**
 * The larva-pupa-adult map of flour beetles in 20 g of flour, stepped by two weeks: L' = b A exp(-c_el L - c_ea A),
 * P' = L (1 - mu_l), A' = P exp(-c_pa A) + A (1 - mu_a): Dennis, Desharnais, Cushing and Costantino 1995, Ecol.
 * Monogr. 65:261-281, and Costantino et al. 1997, Science 275:389-391, with the estimates as held in public code. What
 * is not eaten comes from the engine's own function; the attractors published with them are met within 0.5 %.
 */
import { expect, it } from 'vitest';
import { triboliumCastaneum } from '../../src/facts/prey/tribolium-castaneum.ts';
import { uneaten } from '../../src/husbandry/larder/crowding.ts';
import type { Eaten } from '../../src/husbandry/prey/species.ts';

const GRAMS = 20;

/** The rules of the species with other coefficients, given per 20 g. */
const rulesOf = (...perVolume: readonly number[]): readonly Eaten[] =>
  triboliumCastaneum.crowding!.eaten!.map((rule, i) => ({
    ...rule,
    perEater: { ...rule.perEater, value: perVolume[i]! * GRAMS },
  }));

interface Line {
  readonly rules: readonly Eaten[];
  readonly b: number;
  readonly muL: number;
  readonly muA: number;
}

type Census = readonly [larvae: number, pupae: number, adults: number];

function twoWeeksOn({ rules, b, muL, muA }: Line, [larvae, pupae, adults]: Census): Census {
  const eaters = { young: larvae / GRAMS, adult: adults / GRAMS };
  return [
    b * adults * uneaten(rules, 'egg', eaters),
    larvae * (1 - muL),
    pupae * uneaten(rules, 'pupa', eaters) + adults * (1 - muA),
  ];
}

function settled(line: Line): readonly Census[] {
  let census: Census = [100, 50, 100];
  for (let step = 0; step < 2000; step++) census = twoWeeksOn(line, census);
  return [census, twoWeeksOn(line, census)].toSorted(([a], [b]) => a - b);
}

function expectWithin(seen: Census, published: Census): void {
  seen.forEach((heads, i) => {
    expect(Math.abs(heads / published[i]! - 1)).toBeLessThan(0.005);
  });
}

it('swings between two states where larvae die often, with the coefficients of the species', () => {
  const rules = triboliumCastaneum.crowding!.eaten!;
  const [low, high] = settled({ rules, b: 11.67, muL: 0.5129, muA: 0.1108 });
  expectWithin(low!, [18.29, 158.3, 106.39]);
  expectWithin(high!, [324.98, 8.91, 118.42]);
});

it('comes to rest where they die seldom', () => {
  const [now, next] = settled({
    rules: rulesOf(0.01209, 0.01155, 0.0047),
    b: 6.598,
    muL: 0.2055,
    muA: 0.007629,
  });
  expectWithin(now!, [22.61, 17.96, 385.18]);
  expectWithin(next!, [22.61, 17.96, 385.18]);
});

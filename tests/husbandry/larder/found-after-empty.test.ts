/** A bin thought empty in which something is found: the count is believed, and no more than the count. */
import { describe, expect, it } from 'vitest';
import { achetaDomesticus } from '../../../src/facts/prey/acheta-domesticus.ts';
import { beliefOf } from '../../../src/husbandry/larder/belief.ts';
import type { BinEvent } from '../../../src/husbandry/larder/bin.ts';
import { chainOf } from '../../../src/husbandry/larder/chain.ts';
import { steadyClimate } from '../../../src/husbandry/larder/climate.ts';
import { binWith, facts, TODAY } from '../../support/room.ts';

const chain = chainOf(achetaDomesticus);
const climate = steadyClimate({ minC: 26, maxC: 26 });
const believed = (events: readonly BinEvent[]) =>
  beliefOf(binWith({ code: 'B1', species: achetaDomesticus.code, events }), TODAY, {
    chain,
    climate,
    policy: facts.policy,
  });
const used = (heads: number): readonly BinEvent[] => [
  { kind: 'delivered', day: TODAY - 7, lot: { heads: 250, fromMm: 2, toMm: 3 }, dead: 0 },
  { kind: 'offered', day: TODAY - 4, heads, fromMm: 2, toMm: 3 },
];

describe('a bin from which more was fed than came', () => {
  it.each([200, 240, 400])('holds what is counted after %d were fed', (fed) => {
    const counted = [
      ...used(fed),
      { kind: 'counted', day: TODAY - 1, heads: 120, fromMm: null, toMm: null } as const,
    ];
    const { heads, hazard } = believed(counted);
    expect(heads.mean).toBeGreaterThan(100);
    expect(heads.mean).toBeLessThan(130);
    expect(hazard.low).toBeGreaterThan(0);
  });

  it('is empty until somebody looks', () => {
    expect(believed(used(400)).heads.mean).toBe(0);
  });
});

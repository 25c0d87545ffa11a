/** The larder's days against their twin in C, bin by bin. */
import { describe, expect, it } from 'vitest';
import { chainOf } from '../../src/husbandry/larder/chain.ts';
import { steadyClimate } from '../../src/husbandry/larder/climate.ts';
import { emptyState, nextDay, ratesOn } from '../../src/husbandry/larder/state.ts';
import { freshFolder } from '../support/store-at.ts';
import { noTwin } from './demand-twin.ts';
import { larderDays } from './larder-days.ts';
import { compileLarderTwin, playLarderTwin } from './larder-twin.ts';

const missing = noTwin();

describe('the days of a larder', () => {
  it('agree with their twin in C, crowded colonies of every species among them', (context) => {
    if (missing !== null) return context.skip(missing);
    const days = larderDays(
      { chainOf, steadyClimate, emptyState, nextDay, ratesOn },
      { bins: 20, weeks: 30 },
    );
    const { heads } = playLarderTwin(compileLarderTwin(freshFolder()), days);
    const ours = days.play();
    expect(heads).toHaveLength(20);
    ours.forEach((n, b) => {
      expect(Math.abs(n / heads[b]! - 1)).toBeLessThan(1e-9);
    });
  });
});

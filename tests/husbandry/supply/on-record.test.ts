/** What stands on record starts the forecast where the animal is. */
import { describe, expect, it } from 'vitest';
import { sundayCheck } from '../../../src/husbandry/supply/sunday.ts';
import {
  animalWith,
  binWith,
  certainPolicy,
  countedBin,
  facts,
  snapshotWith,
  TODAY,
} from '../../support/room.ts';

const certain = {
  ...facts,
  policy: { ...certainPolicy, replicates: { ...certainPolicy.replicates, value: 50 } },
};
const plenty = countedBin('B1', 'acheta-domesticus', { heads: 500, fromMm: 8, toMm: 14 });
const juvenile = (over: object) =>
  animalWith({ code: 'A1', kind: 'brachypelma-hamorii', gaugeMm: 50, ...over });
const answerFor = (over: object, bins = [plenty]) =>
  sundayCheck(snapshotWith({ animals: [juvenile(over)], bins, facts: certain }), { days: 7 });

describe('an animal', () => {
  it('that refused a week ago is no danger while prey is there', () => {
    const answer = answerFor({ lastTaken: TODAY - 20, lastOffered: TODAY - 6, lastOutcome: 'refused' });
    expect(answer).toMatchObject({ verdict: 'lasts', dangers: 0 });
  });

  it('that was offered its meal tonight is not due again tomorrow', () => {
    const answer = answerFor({ lastTaken: TODAY - 20, lastOffered: TODAY, lastOutcome: 'offered' });
    const group = answer.groups.find(({ animals }) => animals.includes('A1'));
    const least = facts.kinds.get('brachypelma-hamorii')?.stages.find(({ stage }) => stage === 'juvenile')
      ?.intervalDays.value[0];
    expect(least).toBeGreaterThan(2);
    expect(group?.wantedByDay.slice(0, least).every((items) => items === 0)).toBe(true);
  });

  it('that hardens is not counted from its last meal', () => {
    const lastMoult = { earliest: TODAY - 5, found: TODAY - 4 };
    expect(answerFor({ lastTaken: TODAY - 60, lastMoult })).toMatchObject({ verdict: 'lasts', dangers: 0 });
  });
});

describe('a cup just started', () => {
  it('holds no prey: its starters are there to lay', () => {
    const cup = binWith({
      code: 'C1',
      species: 'drosophila-hydei',
      role: 'cup',
      events: [{ kind: 'cup looked', look: 'started', day: TODAY - 2 }],
    });
    const [bin] = answerFor({ lastTaken: TODAY - 1 }, [cup]).bins;
    expect(bin?.headsNow.mid).toBeLessThan(0.01);
    expect(bin?.eaten).toBe(0);
  });
});

/**
 * Banded stock against the daily engine: over eight weeks the share of what a place holds that lies in an animal's
 * window is within three points, whatever the species, the size it starts at and whose window it is.
 */
import { expect, it } from 'vitest';
import { preyIn } from '../../../src/husbandry/larder/index.ts';
import { layOut } from '../../../src/husbandry/plan/lay-out.ts';
import { headsAfter } from '../../../src/husbandry/plan/passing.ts';
import { middleOf } from '../../../src/husbandry/plan/periods.ts';
import { passingOf } from '../../../src/husbandry/plan/standing.ts';
import { mixedMarket } from '../../support/plan/markets.ts';
import { countedBin, facts, mixedAnimals, policyWith, snapshotWith } from '../../support/room.ts';

const WEEKS = 9;
const POINTS = 0.03;

const BINS = [
  countedBin('small crickets', 'acheta-domesticus', { heads: 1000, fromMm: 2, toMm: 4 }),
  countedBin('banded crickets', 'gryllodes-sigillatus', { heads: 1000, fromMm: 5, toMm: 8 }),
  countedBin('roaches', 'blaptica-dubia', { heads: 1000, fromMm: 8, toMm: 15 }),
  countedBin('mealworms', 'tenebrio-molitor', { heads: 1000, fromMm: 8, toMm: 14 }),
  countedBin('black crickets', 'gryllus-bimaculatus', { heads: 1000, fromMm: 4, toMm: 7 }),
];

it('errs by less than three points of a hundred', () => {
  const snapshot = snapshotWith({
    animals: mixedAnimals(60),
    bins: BINS,
    market: mixedMarket,
    facts: { ...facts, policy: policyWith({ planReplicates: 5 }) },
  });
  const { places, nodes, periods, problem } = layOut(snapshot, { weeks: WEEKS, wishes: [], supposed: [] });
  let worst = { off: 0, said: '' };
  places.forEach((place, p) => {
    const [stock] = place.bins;
    if (!stock) return;
    const life = { chain: place.chain, bin: place.bin, climate: place.climate, speed: 1 };
    const here = preyIn(stock.state, { life, today: snapshot.today });
    const all = here.reduce((a, b) => a + b, 0);
    const passing = passingOf(place, nodes[p]!, snapshot.facts.policy);
    let banded = problem.places[p]!.comes[0]!;
    periods.forEach((period, t) => {
      if (t > 0)
        banded = Float64Array.from(problem.places[p]!.passes[t - 1]!, (row) =>
          row.reduce((sum, share, from) => sum + share * banded[from]!, 0),
        );
      const daily = headsAfter(passing, here, {
        from: snapshot.today,
        days: middleOf(period) - snapshot.today,
      });
      for (const { key, fare } of problem.eaters) {
        const own = fare.filter((each) => each.place === p);
        const share = (heads: Float64Array) => own.reduce((sum, { node }) => sum + heads[node]!, 0) / all;
        const off = Math.abs(share(banded) - share(daily));
        if (off > worst.off)
          worst = { off, said: `${place.key}, week ${t + 1}, ${key}: ${share(banded)} of ${share(daily)}` };
      }
    });
  });
  console.log(worst);
  expect(worst.off, worst.said).toBeLessThan(POINTS);
});

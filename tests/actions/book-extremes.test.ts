/** Every number of prey and of planning at the ends of its bounds: there is still a sheet and a plan, in plain numbers. */
import { expect, test } from 'vitest';
import { figureEnds, figureKept } from '../../src/actions/measure-bounds.ts';
import { whyNotPrey } from '../../src/actions/prey-bounds.ts';
import { methodWith, preyWith } from '../../src/facts/own/facts-with.ts';
import { methodNumbers } from '../../src/facts/own/method-numbers.ts';
import { preyNumbers } from '../../src/facts/own/prey-numbers.ts';
import { speciesSheet } from '../../src/husbandry/larder/index.ts';
import { makePlan } from '../../src/husbandry/plan/index.ts';
import { mixedMarket } from '../support/plan/markets.ts';
import { facts, mixedAnimals, mixedBins, policyWith, snapshotWith } from '../support/room.ts';

const TEMPS = [12, 28];

/** Paths of what is no plain number in a sheet. */
function strange(value: unknown, path = ''): readonly string[] {
  if (typeof value === 'number') return Number.isFinite(value) && value >= 0 ? [] : [`${path}: ${value}`];
  if (value === null || typeof value !== 'object') return [];
  return Object.entries(value).flatMap(([name, each]) => strange(each, `${path}/${name}`));
}

test.each([...facts.species.values()])('$commonName', (prey) => {
  let tried = 0;
  for (const number of preyNumbers(prey))
    for (const { key } of number.figures)
      for (const end of figureEnds(number)) {
        const changed = preyWith(prey, { [key]: { value: figureKept(number.measure, end), day: 1 } });
        if (whyNotPrey(changed) !== null) continue;
        tried += 1;
        for (const tempC of TEMPS)
          expect(strange(speciesSheet(changed, tempC)), `${key} = ${end}`).toEqual([]);
      }
  expect(tried).toBeGreaterThan(20);
});

const quickly = policyWith({
  planJudgeReplicates: 10,
  planJudgeLeast: 5,
  planQuickTrials: 30,
  planReplicates: 20,
});
const PLANNED = methodNumbers(quickly).filter(({ about }) => about.startsWith('Plan: '));

test.each(PLANNED)('$what', async (number) => {
  for (const { key } of number.figures)
    for (const end of figureEnds(number)) {
      const policy = methodWith(quickly, { [key]: { value: figureKept(number.measure, end), day: 1 } });
      const { whole, lines } = await makePlan(
        snapshotWith({
          animals: mixedAnimals(30),
          bins: mixedBins(8),
          market: mixedMarket,
          facts: { ...facts, policy },
        }),
        { weeks: 6, wishes: [], supposed: [], explained: false, effort: 'quick' },
      );
      expect(strange({ cents: whole.cents, service: whole.service, lines }), `${key} = ${end}`).toEqual([]);
    }
});

/** Planning four weeks further than usual changes no order of the first week by more than a pack, in nine rooms of ten. */
import { expect, it } from 'vitest';
import { makePlan } from '../../../src/husbandry/plan/index.ts';
import type { Snapshot } from '../../../src/husbandry/snapshot.ts';
import { DAYS_PER_WEEK } from '../../../src/husbandry/units.ts';
import { mixedMarket } from '../../support/plan/markets.ts';
import { facts, mixedAnimals, mixedBins, policyWith, snapshotWith } from '../../support/room.ts';

const ROOMS = 10;
const WEEKS = 12;
const FURTHER = 4;

const quick = policyWith({ planReplicates: 40, planJudgeReplicates: 20, planJudgeLeast: 10 });

/** Twelve to thirty-six animals, two to eleven times as thinly stocked. */
const room = (number: number): Snapshot =>
  snapshotWith({
    seed: number + 1,
    animals: mixedAnimals(60).filter((_, k) => (k * 7 + number * 3) % 5 < 1 + (number % 3)),
    bins: mixedBins(2 + number).slice(0, 3 + (number % 5)),
    market: mixedMarket,
    facts: { ...facts, policy: quick },
  });

/** Packs by what has to be ordered within a week. */
async function firstWeek(snapshot: Snapshot, weeks: number): Promise<Map<string, number>> {
  const { lines } = await makePlan(snapshot, {
    weeks,
    wishes: [],
    supposed: [],
    explained: false,
    effort: 'quick',
  });
  const soon = lines.filter(({ actBy }) => actBy < snapshot.today + DAYS_PER_WEEK);
  return new Map(soon.flatMap((line) => (line.what === 'order' ? [[line.key, line.packs] as const] : [])));
}

it('is so', async () => {
  let steady = 0;
  let ordered = 0;
  for (let number = 0; number < ROOMS; number++) {
    const [near, far] = [
      await firstWeek(room(number), WEEKS),
      await firstWeek(room(number), WEEKS + FURTHER),
    ];
    const changes = [...new Set([...near.keys(), ...far.keys()])].map((key) =>
      Math.abs((near.get(key) ?? 0) - (far.get(key) ?? 0)),
    );
    if (Math.max(0, ...changes) <= 1) steady++;
    ordered += near.size;
  }
  expect(ordered).toBeGreaterThan(ROOMS);
  expect(steady).toBeGreaterThanOrEqual(ROOMS - 1);
}, 120_000);

/** Stock that stands ready for several groups at once: less than for each by itself, since they are not all unlucky together. */
import { expect, it } from 'vitest';
import type { Animal } from '../../../src/husbandry/animals/animal.ts';
import type { Eating } from '../../../src/husbandry/plan/eaters.ts';
import { poolsOf } from '../../../src/husbandry/plan/pools.ts';
import type { PlanEater } from '../../../src/husbandry/plan/problem.ts';
import { meanOf } from '../../../src/maths/mean.ts';
import { normalQuantile } from '../../../src/maths/normal.ts';
import { dayKey, uniform } from '../../../src/maths/random.ts';
import { laidOut } from '../../support/plan/planned.ts';
import { animalWith, countedBin, policyWith, snapshotWith, TODAY } from '../../support/room.ts';

const shelf = (kind: string): Animal[] =>
  Array.from({ length: 8 }, (_, i) =>
    animalWith({ code: `${kind} ${i}`, kind, gaugeMm: 22, lastTaken: TODAY - (i % 6) }),
  );

/** Items that are to stand ready over the weeks for all who eat of what anybody eats here. */
function readyFor(animals: readonly Animal[]): number {
  const { problem } = laidOut(
    snapshotWith({
      animals,
      bins: [countedBin('B1', 'acheta-domesticus', { heads: 200, fromMm: 2, toMm: 6 })],
    }),
    8,
  );
  return Math.max(...problem.pools.map(({ least }) => least.reduce((sum, items) => sum + items, 0)));
}

it('is less for two shelves that eat alike than for both by themselves, and more than for one', () => {
  const [pulchra, hamorii] = [shelf('grammostola-pulchra'), shelf('brachypelma-hamorii')];
  const alone = [readyFor(pulchra), readyFor(hamorii)] as const;
  const together = readyFor([...pulchra, ...hamorii]);
  expect(Math.min(...alone)).toBeGreaterThan(1);
  expect(together).toBeGreaterThan(Math.max(...alone));
  expect(together).toBeLessThan(0.95 * (alone[0] + alone[1]));
});

const REPLICATES = 20_000;
const LEVEL = 0.95;

/** Those who want ten items a week with this standard deviation, of whatever lies on these nodes. */
function wanting(key: string, { sd, nodes }: { sd: number; nodes: readonly number[] }) {
  const drawn = Float64Array.from(
    { length: REPLICATES },
    (_, r) => 10 + sd * normalQuantile(uniform(dayKey(key.charCodeAt(0), r), 0)),
  );
  const wanted = Float64Array.of(meanOf(drawn));
  return {
    eating: { group: { key, windows: new Map() }, wanted, byReplicate: [drawn] } as unknown as Eating,
    eater: { key, fare: nodes.map((node) => ({ place: 0, node, items: 1 })) } as unknown as PlanEater,
  };
}

/** What is to stand ready for each, where supply is certain. */
function readyByKey(all: readonly ReturnType<typeof wanting>[]): Record<string, number> {
  const pools = poolsOf({
    eating: all.map(({ eating }) => eating),
    eaters: all.map(({ eater }) => eater),
    policy: policyWith({ overCountCv: 0, countCv: 0, speedLogSd: 0, deliveryLateChance: 0 }),
    seed: 1,
    level: LEVEL,
    leadDays: 0,
    readyCents: all.map(() => 1),
  });
  return Object.fromEntries(pools.map(({ key, least }) => [key, least[0]!]));
}

it('is for independent wants what the root of their summed squares makes it: 3 and 4 together 5', () => {
  const picky = wanting('p', { sd: 3, nodes: [1] });
  const broad = wanting('b', { sd: 4, nodes: [1, 2] });
  const z = normalQuantile(LEVEL);
  const near = (ready: number, sd: number) => expect(Math.abs(ready / (z * sd) - 1)).toBeLessThan(0.03);
  const { p, b } = readyByKey([picky, broad]);
  near(p!, 3);
  near(b!, 5);
  near(readyByKey([broad]).b!, 4);
});

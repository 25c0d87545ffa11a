/** Stock that stands ready for several groups at once: less than for each by itself, since they are not all unlucky together. */
import { expect, it } from 'vitest';
import type { Animal } from '../../../src/husbandry/animals/animal.ts';
import { laidOut } from '../../support/plan/planned.ts';
import { animalWith, countedBin, snapshotWith, TODAY } from '../../support/room.ts';

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

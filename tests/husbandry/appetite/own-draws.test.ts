/** Each animal has draws of its own: who else lives in the room does not change them. */
import { expect, it } from 'vitest';
import { forecastDemand } from '../../../src/husbandry/supply/demand.ts';
import { animalWith, type mixedAnimals, snapshotWith, TODAY } from '../../support/room.ts';

const spiders = [1, 2, 3, 4].map((n) =>
  animalWith({ code: `M${n}`, kind: 'grammostola-pulchra', gaugeMm: 60 + n, lastTaken: TODAY - n }),
);
const ofSpiders = (animals: ReturnType<typeof mixedAnimals>) => {
  const { groups } = forecastDemand(snapshotWith({ animals }), { weeks: 3, replicates: 30 });
  return groups
    .filter(({ animals: codes }) => codes.some((code) => code.startsWith('M')))
    .map(({ weeks }) => weeks);
};

it('a newcomer of another kind leaves the forecast of the others as it was, to the bit', () => {
  const newcomer = animalWith({
    code: 'A0',
    kind: 'dendrobates-tinctorius',
    gaugeMm: 45,
    lastTaken: TODAY - 1,
  });
  expect(ofSpiders([newcomer, ...spiders])).toEqual(ofSpiders(spiders));
});

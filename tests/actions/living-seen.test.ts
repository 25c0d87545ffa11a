/** What is seen of the living besides their number becomes an event of the bin. */
import { expect, test } from 'vitest';
import {
  cleanOut,
  dieOff,
  foundDead,
  loadSnapshot,
  seeAdults,
  sexAdults,
  startCup,
  weighBin,
} from '../../src/actions/index.ts';
import { binNow } from '../../src/husbandry/supply/index.ts';
import { binIn, headsOf, livingRoom } from '../support/living-room.ts';
import { facts } from '../support/room.ts';
import { good, TODAY } from '../support/store-at.ts';

test('the dead, the grown, the sexes, a clean-out, a sample and a die-off are events of the bin', async () => {
  const room = await livingRoom();
  good(await foundDead(room, { bin: 'B3', heads: 12 }));
  good(await seeAdults(room, { bin: 'B3' }));
  good(await sexAdults(room, { bin: 'B3', females: 7, males: 3 }));
  good(await cleanOut(room, { bin: 'B3', eggsLost: 40 }));
  const sample = { heads: 20, massMg: 4000, cv: 0.2 };
  good(await weighBin(room, { bin: 'B3', massMg: 60_000, sample }));
  good(await dieOff(room, { bin: 'B3', left: 25 }));
  const day = TODAY;
  expect((await binIn(room, 'B3')).events.slice(1)).toEqual([
    { day, kind: 'found dead', heads: 12 },
    { day, kind: 'first adults' },
    { day, kind: 'sexed', females: 7, males: 3 },
    { day, kind: 'cleaned out', eggsLost: 0.4 },
    { day, kind: 'weighed', massMg: 60_000, sample },
    { day, kind: 'died off', left: 25 },
  ]);
  expect(await headsOf(room, 'B3')).toBeCloseTo(25, 6);
});

test('what cannot be is said in a sentence', async () => {
  const room = await livingRoom();
  const cup = good(await startCup(room, { species: 'drosophila-hydei', room: 'R1' })).reply.bin;
  const refused = [
    await dieOff(room, { bin: cup, left: 0 }),
    await sexAdults(room, { bin: 'B1', females: 0, males: 0 }),
    await weighBin(room, { bin: 'B3', massMg: 1000, sample: { heads: 5, massMg: 2000 } }),
    await cleanOut(room, { bin: 'B3', eggsLost: 130 }),
  ];
  expect(refused.map((each) => (each.ok ? '' : each.problem.sentence))).toEqual([
    'large fruit fly is a cup: say that it looks crashed.',
    'Say how many females and how many males you saw.',
    'The sample weighs more than the whole bin.',
    '"130" is not a share of the eggs from 0 to 100 %, such as 50.',
  ]);
});

test('new medium makes a cup give again', async () => {
  const room = await livingRoom();
  const cup = good(await startCup(room, { species: 'drosophila-melanogaster', room: 'R1' })).reply.bin;
  room.pass(20);
  const medium = async () => binNow(await loadSnapshot(room), await binIn(room, cup)).state.medium;
  const full = facts.species.get('drosophila-melanogaster')?.cup?.yieldPerCup.value as number;
  expect(await medium()).toBeLessThan(full / 2);
  good(await cleanOut(room, { bin: cup, eggsLost: 0 }));
  expect(await medium()).toBe(full);
});

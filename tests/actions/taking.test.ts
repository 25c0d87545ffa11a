/** Prey taken out of bins: harvested, retired, culled, moved, split and merged. */
import { expect, test } from 'vitest';
import {
  addBin,
  coldStore,
  countBin,
  cull,
  discard,
  expectDelivery,
  foundDead,
  harvest,
  loadSnapshot,
  mergeBins,
  move,
  quarantine,
  restBin,
  retire,
  splitBin,
  startCup,
  undo,
} from '../../src/actions/index.ts';
import { adultSize, chainOf } from '../../src/husbandry/larder/index.ts';
import { binIn, headsOf, livingRoom } from '../support/living-room.ts';
import { facts } from '../support/room.ts';
import { good } from '../support/store-at.ts';

const problemOf = <T>(result: { ok: true; value: T } | { ok: false; problem: { sentence: string } }) =>
  result.ok ? null : result.problem.sentence;
const ADULT = facts.species.get('blaptica-dubia')?.adultLengthMm.value as number;
/** Lengths that only the grown have. */
const GROWN = { fromMm: ADULT, toMm: 100 };
const MEDIUM = { fromMm: 12, toMm: 20 };

test('a harvest goes into a new bin with the lengths it has, and the breeders stay', async () => {
  const room = await livingRoom();
  const [before, breeders] = [await headsOf(room, 'B1'), await headsOf(room, 'B1', GROWN)];
  expect(breeders).toBeGreaterThan(10);
  const done = good(await harvest(room, { bin: 'B1', heads: 40, fromMm: 8, toMm: 100 }));
  const to = await binIn(room, done.reply.bin);
  expect(to).toMatchObject({
    role: 'holding',
    species: 'blaptica-dubia',
    origin: 'Dubia colony',
    room: 'R1',
  });
  expect(await headsOf(room, 'B1')).toBeCloseTo(before - 40, 6);
  expect(await headsOf(room, to.code)).toBeCloseTo(40, 6);
  expect(await headsOf(room, 'B1', GROWN)).toBeCloseTo(breeders, 9);
  expect(await headsOf(room, to.code, GROWN)).toBe(0);
  good(await undo(room, { act: done.act }));
  expect(await headsOf(room, 'B1')).toBeCloseTo(before, 9);
});

test('dead found or prey thrown out beyond what the bin holds says how many there are, and the keeper can insist', async () => {
  const room = await livingRoom();
  const there = Math.round(await headsOf(room, 'B2'));
  for (const act of [discard, foundDead]) {
    const refused = await act(room, { bin: 'B2', heads: 5000 });
    expect(problemOf(refused)).toBe(
      `There are about ${there} in Dubia tub; you wrote 5000. Count it, or tick that you are sure.`,
    );
    expect(await headsOf(room, 'B2')).toBeCloseTo(there, 0);
    const done = good(await act(room, { bin: 'B2', heads: 5000, sure: true }));
    expect(await headsOf(room, 'B2')).toBeLessThan(there / 2);
    good(await undo(room, { act: done.act }));
  }
});

test('a harvest larger than the bin says how many there are, and the keeper can insist', async () => {
  const room = await livingRoom();
  const there = Math.round(await headsOf(room, 'B1', MEDIUM));
  const refused = await harvest(room, { bin: 'B1', heads: 4000, ...MEDIUM });
  expect(problemOf(refused)).toBe(
    `There are about ${there} of that size in Dubia colony; you wrote 4000. Count it, or tick that you are sure.`,
  );
  expect(problemOf(await harvest(room, { bin: 'B2', heads: 5, fromMm: 60, toMm: 70 }))).toContain(
    'There are none of that size in Dubia tub; you wrote 5.',
  );
  const done = good(await harvest(room, { bin: 'B1', heads: there + 60, ...MEDIUM, sure: true }));
  expect(await headsOf(room, done.reply.bin)).toBeCloseTo(there + 60, 6);
});

test('what is written may pass the record as far as the count is in doubt', async () => {
  const room = await livingRoom();
  good(await harvest(room, { bin: 'B2', heads: 92, fromMm: 8, toMm: 14 }));
  expect(await headsOf(room, 'B2')).toBe(0);
  const wide = await harvest(room, { bin: 'B3', heads: 440, fromMm: 6, toMm: 12 });
  expect(problemOf(wide)).toContain('There are about 391 of that size in Crickets; you wrote 440.');
});

test('breeders are retired: grown animals alone, into a bin to be fed', async () => {
  const room = await livingRoom();
  const [all, grown] = [await headsOf(room, 'B1'), await headsOf(room, 'B1', GROWN)];
  good(await retire(room, { bin: 'B1', heads: 6, to: 'B2' }));
  expect(await headsOf(room, 'B1', GROWN)).toBeCloseTo(grown - 6, 6);
  expect(await headsOf(room, 'B1')).toBeCloseTo(all - 6, 6);
  expect(await headsOf(room, 'B2', GROWN)).toBeCloseTo(6, 6);
});

test('the grown of every species are told from the growing, also after their length was written down', async () => {
  const room = await livingRoom();
  for (const [code, species] of facts.species) {
    if (species.cup !== null || species.laying === null) continue;
    const { bin } = good(await addBin(room, { species: code, room: 'R1', role: 'colony' })).reply;
    good(await countBin(room, { bin, heads: 5000 }));
    const grown = adultSize(chainOf(species));
    const before = await headsOf(room, bin, grown);
    const taken = Math.floor(before / 2);
    const to = good(await retire(room, { bin, heads: taken })).reply.bin;
    expect([code, (await headsOf(room, bin, grown)) - (before - taken)]).toEqual([
      code,
      expect.closeTo(0, 2),
    ]);
    expect([code, await headsOf(room, to, grown)]).toEqual([code, expect.closeTo(taken, 2)]);
  }
});

test('the culled are frozen into a stock of their species, made when there is none, or thrown away', async () => {
  const room = await livingRoom();
  const first = good(await cull(room, { bin: 'B3', heads: 50, how: 'frozen' }));
  const stock = await binIn(room, first.reply.bin);
  expect(stock).toMatchObject({ role: 'frozen', name: 'Frozen house crickets' });
  good(await cull(room, { bin: 'B3', heads: 30, fromMm: 6, toMm: 8, how: 'frozen' }));
  good(await cull(room, { bin: 'B3', heads: 20, how: 'humanely' }));
  room.pass(60);
  expect(await headsOf(room, stock.code)).toBeCloseTo(80, 6);
  expect(await headsOf(room, stock.code, { fromMm: 6, toMm: 8 })).toBeGreaterThan(30);
  expect(problemOf(await cull(room, { bin: stock.code, heads: 1, how: 'frozen' }))).toContain('dead already');
  expect(problemOf(await move(room, { from: 'B3', to: stock.code, heads: 1 }))).toContain('cull into it');
  const alive = await harvest(room, { bin: stock.code, heads: 5, fromMm: 6, toMm: 12, to: 'B3' });
  expect(problemOf(alive)).toContain('frozen ones do not go in');
  const apart = good(await harvest(room, { bin: stock.code, heads: 5, fromMm: 6, toMm: 12 }));
  expect(await binIn(room, apart.reply.bin)).toMatchObject({ role: 'frozen' });
});

test('prey moves in one size or in all, to its own kind alone', async () => {
  const room = await livingRoom();
  good(await move(room, { from: 'B1', to: 'B2', heads: 30, ...MEDIUM }));
  good(await move(room, { from: 'B1', to: 'B2', heads: 30 }));
  expect(await headsOf(room, 'B2')).toBeCloseTo(150, 6);
  expect(problemOf(await move(room, { from: 'B1', to: 'B3', heads: 1 }))).toBe(
    '"Crickets" holds house crickets.',
  );
  expect(problemOf(await move(room, { from: 'B1', to: 'B1', heads: 1 }))).toContain(
    'is the bin it comes from',
  );
});

test('a split halves every size; all of a bin merges back, and the empty one is out of use', async () => {
  const room = await livingRoom();
  const [all, small] = [await headsOf(room, 'B1'), await headsOf(room, 'B1', { fromMm: 0, toMm: 12 })];
  const split = good(await splitBin(room, { bin: 'B1', percent: 50, name: 'Second line' }));
  const { bin } = split.reply;
  expect(await binIn(room, bin)).toMatchObject({ role: 'colony', name: 'Second line', keepAdults: true });
  expect(Math.abs((await headsOf(room, bin)) - all / 2)).toBeLessThan(1);
  expect((await headsOf(room, bin, { fromMm: 0, toMm: 12 })) / (small / 2)).toBeCloseTo(1, 1);
  const merged = good(await mergeBins(room, { bin, to: 'B1' }));
  expect(Math.abs((await headsOf(room, 'B1')) - all)).toBeLessThan(1);
  await expect(binIn(room, bin)).rejects.toThrow('not in use');
  good(await undo(room, { act: merged.act }));
  expect(Math.abs((await headsOf(room, bin)) - all / 2)).toBeLessThan(1);
  expect(problemOf(await splitBin(room, { bin: 'B1', percent: 50, heads: 3 }))).toContain(
    'how many, or which',
  );
  expect(problemOf(await splitBin(room, { bin: 'B1', percent: 120 }))).toContain('"120" is not a share');
});

test('cups are neither split nor merged, and a bin waiting for prey is not merged away', async () => {
  const room = await livingRoom();
  const cups = [await startCup(room, { species: 'drosophila-hydei', room: 'R1' })].map(good);
  const cup = cups[0]?.reply.bin ?? '';
  const other = good(await startCup(room, { species: 'drosophila-hydei', room: 'R1' })).reply.bin;
  expect(problemOf(await splitBin(room, { bin: cup, percent: 50 }))).toContain('is a cup');
  expect(problemOf(await mergeBins(room, { bin: cup, to: other }))).toContain('is a cup');
  good(await expectDelivery(room, { bin: 'B2', heads: 50, fromMm: 8, toMm: 9, day: room.date(4) }));
  expect(problemOf(await mergeBins(room, { bin: 'B2', to: 'B1' }))).toContain('are expected for Dubia tub');
});

test('a bin kept apart asks before anything leaves it or joins it', async () => {
  const room = await livingRoom();
  good(await addBin(room, { species: 'acheta-domesticus', room: 'R1', name: 'New crickets' }));
  good(await countBin(room, { bin: 'B5', heads: 200, fromMm: 6, toMm: 9 }));
  good(await quarantine(room, { bin: 'B5', days: 7 }));
  const wanted = { from: 'B5', to: 'B3', heads: 20 };
  expect(problemOf(await move(room, wanted))).toBe(
    'New crickets is kept apart until Fri 11 Oct, in case it carries a virus. Leave it, or tick that you are sure.',
  );
  expect(problemOf(await move(room, { ...wanted, heads: 90_000 }))).toMatch(
    /kept apart.* There are about .*you wrote 90000/,
  );
  expect(problemOf(await mergeBins(room, { bin: 'B3', to: 'B5' }))).toContain('kept apart');
  good(await move(room, { ...wanted, sure: true }));
  const half = good(await splitBin(room, { bin: 'B5', percent: 50, sure: true })).reply.bin;
  expect((await binIn(room, half)).quarantineUntil).toBe((await binIn(room, 'B5')).quarantineUntil);
  room.pass(7);
  good(await move(room, wanted));
  good(await quarantine(room, { bin: 'B5', days: 7 }));
  good(await quarantine(room, { bin: 'B5', days: 0 }));
  good(await mergeBins(room, { bin: 'B5', to: 'B3' }));
});

test('a bin can be left alone for some days, and the rest can be ended', async () => {
  const room = await livingRoom();
  expect(good(await restBin(room, { bin: 'B2', days: '21' })).summary).toBe('Left B2 alone until Fri 25 Oct');
  expect((await binIn(room, 'B2')).restsUntil).toBe((await loadSnapshot(room)).today + 21);
  expect(good(await restBin(room, { bin: 'B2', days: 0 })).summary).toBe('Fed from B2 again');
  expect((await binIn(room, 'B2')).restsUntil).toBeNull();
});

test('prey in the cold stays as it was: neither grown nor culled by moving it', async () => {
  const room = await livingRoom();
  good(await coldStore(room, { bin: 'B4' }));
  room.pass(40);
  const grown = await headsOf(room, 'B4', { fromMm: 22.5, toMm: 60 });
  expect(grown).toBe(0);
});

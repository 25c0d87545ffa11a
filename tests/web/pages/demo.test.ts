/** The demo room: it moves in once, says that it is one, and leaves a room of one's own behind. */
import { expect, test } from 'vitest';
import { addAnimal, addBin, loadSnapshot, recordEvening } from '../../../src/actions/index.ts';
import { emptyHome } from '../../support/house.ts';
import { good } from '../../support/store-at.ts';

const BANNER = 'class="banner demo"';

test('it moves in once, however often it is asked', async () => {
  const { room, see, send } = await emptyHome();
  expect(await see('/')).not.toContain(BANNER);
  for (let n = 0; n < 2; n++) expect((await send('/demo/start', {})).status).toBe(303);
  expect(await see('/')).toContain(BANNER);
  expect((await loadSnapshot(room)).animals).toHaveLength(1);
});

test('it leaves, what is the keeper’s own stays, and there is a room', async () => {
  const { room, see, send } = await emptyHome();
  await send('/demo/start', {});
  good(await addAnimal(room, { name: 'Own', kind: 'brachypelma-hamorii', gaugeMm: 30, room: 'R1' }));
  expect((await send('/demo/remove', {})).headers.get('location')).toBe('/start');
  const { animals, rooms } = await loadSnapshot(room);
  expect(animals.map(({ name }) => name)).toEqual(['Own']);
  expect(rooms).toHaveLength(1);
  const home = await see('/');
  expect(home).not.toContain(BANNER);
  const act = /action="\/undo\/(\d+)" class="banner undo"/.exec(home)?.[1];
  expect(home).toContain('Emptied the demo room');
  await send(`/undo/${act}`, {});
  expect((await loadSnapshot(room)).animals).toHaveLength(2);
});

test('nobody asks what became of the meals of those who left with it', async () => {
  const { room, see, send } = await emptyHome();
  await send('/demo/start', {});
  const lot = { heads: 50, fromMm: 8, toMm: 12 };
  good(await addBin(room, { species: 'acheta-domesticus', room: 'R1', name: 'Box', lot }));
  const offer = { animal: 'A1', outcome: 'offered', bin: 'B1', heads: 2, fromMm: 8, toMm: 12 } as const;
  good(await recordEvening(room, { rows: [offer] }));
  room.pass(1);
  expect(await see('/tonight')).toContain('Say what became of 1 meal');
  await send('/demo/remove', {});
  expect(await see('/tonight')).not.toContain('Say what became of');
  expect(await see('/morning')).toContain('Every meal is accounted for');
});

test('an evening of those who left with it is not counted with one of the keeper’s own', async () => {
  const { room, see, send } = await emptyHome();
  await send('/demo/start', {});
  const lot = { heads: 50, fromMm: 8, toMm: 12 };
  good(await addBin(room, { species: 'acheta-domesticus', room: 'R1', name: 'Box', lot }));
  const offer = { outcome: 'offered', bin: 'B1', heads: 2, fromMm: 8, toMm: 12 } as const;
  good(await recordEvening(room, { rows: [{ ...offer, animal: 'A1' }] }));
  await send('/demo/remove', {});
  expect(await see('/tonight/key-in?day=2024-10-06')).not.toContain('written down already');
  const own = { name: 'Own', kind: 'brachypelma-hamorii', gaugeMm: 30, room: 'R1' };
  const { animal } = good(await addAnimal(room, own)).reply;
  good(await recordEvening(room, { rows: [{ ...offer, animal }] }));
  const history = await see('/history');
  expect(history.match(/Round of [^<]*: 1 fed, 0 not/g)?.length).toBeGreaterThan(1);
  expect(history).not.toContain('2 fed, 0 not');
});

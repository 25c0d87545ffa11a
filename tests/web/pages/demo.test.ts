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

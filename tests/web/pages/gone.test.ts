/** What is gone keeps its page, and its way back, on the pages. */
import { expect, test } from 'vitest';
import {
  bringBack,
  cancelDelivery,
  editAnimal,
  lend,
  loadSnapshot,
  recordDied,
  recordEvening,
} from '../../../src/actions/index.ts';
import { latestActs } from '../../../src/store/index.ts';
import { filledHome } from '../../support/house.ts';
import { good } from '../../support/store-at.ts';

const words = (html: string): string => html.replace(/<[^>]+>/g, '|').replace(/\|+/g, '|');

test('an animal that died keeps its page with what became of it, its record and the way back', async () => {
  const home = await filledHome();
  const day = home.room.date(0);
  await home.send('/animals/A1/premoult', { day });
  await home.send('/animals/A1/died', { heads: '1', day });
  const html = words(await home.see('/animals/A1'));
  expect(html).toMatch(/Ash\|Died on 4 October 2024\..*Bring it back.*Died\..*Seen in premoult\./s);
  expect(html).not.toContain('Write down');
  const answer = await home.send('/animals/A1/premoult', { day });
  expect(answer.status).toBe(422);
  expect(await answer.text()).toContain('so “premoult” was not written down.');
  expect((await home.app.request('/animals/A77')).status).toBe(404);
});

test('bringing back undoes the death where nothing rests on it, and else writes that it came back', async () => {
  const home = await filledHome();
  const back = { what: 'animal', code: 'A1' };
  good(await recordDied(home.room, { animal: 'A1' }));
  const answer = await home.send('/gone/back', back);
  expect(answer.headers.get('location')).toBe('/animals/A1');
  const [last] = await home.room.store.ask(latestActs(1));
  expect(last?.summary).toBe('Undid: A1 died');
  good(await recordDied(home.room, { animal: 'A1' }));
  good(await editAnimal(home.room, { animal: 'A1', notes: 'buried' }));
  await home.send('/gone/back', { ...back, formId: 'twice' });
  await home.send('/gone/back', { ...back, formId: 'twice' });
  const [newest] = await home.room.store.ask(latestActs(1));
  expect(newest?.summary).toBe('Brought A1 back (died on 2024-10-04)');
  expect((await loadSnapshot(home.room)).animals.map(({ code }) => code)).toContain('A1');
});

test('one that died in a round comes back without the round', async () => {
  const home = await filledHome();
  const round = [
    { animal: 'A1', outcome: 'died' as const },
    { animal: 'A2', outcome: 'premoult' as const },
  ];
  const evening = good(await recordEvening(home.room, { rows: round }));
  await home.send('/gone/back', { what: 'animal', code: 'A1' });
  const acts = await home.room.store.ask(latestActs(9));
  expect(acts.find(({ id }) => id === evening.act)?.voidedAt).toBeNull();
  expect((await loadSnapshot(home.room)).animals).toHaveLength(2);
});

test('all that is gone stands on one page, each with when, why and its button', async () => {
  const home = await filledHome();
  const { room, send, see } = home;
  expect(words(await see('/gone'))).toContain('Nobody and nothing is gone');
  good(await recordDied(room, { animal: 'A2', heads: 2 }));
  good(await cancelDelivery(room, { delivery: 'D1' }));
  await send('/animals/A1/left', { reason: 'sold', day: room.date(-1) });
  await send('/larder/B2/close', {});
  await send('/settings/rooms', { room: '', name: 'Attic', dayTemp: '20', nightTemp: '18' });
  await send('/settings/rooms/remove', { room: 'R2' });
  const html = words(await see('/gone'));
  const lines = [
    'Ash|Sold on 3 October 2024|Bring it back',
    '2 of Sac of five|Died on 4 October 2024|Bring them back',
    'Large box|Taken out of use on 4 October 2024|Bring it back',
    'Attic|Removed on 4 October 2024|Bring it back',
    '100 house crickets for Small box|Not coming on 4 October 2024|Bring it back',
  ];
  for (const line of lines) expect(html).toContain(line);
  expect(words(await see('/larder/B2'))).toContain('Large box|Taken out of use on 4 October 2024.');
  for (const [what, code] of [
    ['bin', 'B2'],
    ['room', 'R2'],
    ['delivery', 'D1'],
    ['animal', 'A1'],
  ] as const)
    await send('/gone/back', { what, code });
  await send('/gone/back', { what: 'animal', code: 'A2', heads: '2' });
  const now = await loadSnapshot(room);
  expect([now.bins.length, now.rooms.length, now.deliveries.length]).toEqual([3, 2, 1]);
  expect(now.animals.map(({ count }) => count)).toEqual([1, 5]);
});

test('a room in use is not removed, and says what is in it', async () => {
  const home = await filledHome();
  await home.send('/settings/rooms', { room: '', name: 'Attic', dayTemp: '20', nightTemp: '18' });
  const answer = await home.send('/settings/rooms/remove', { room: 'R1' });
  expect(answer.status).toBe(422);
  expect(await answer.text()).toContain('Room is in use: Ash, Sac of five, Small box and 2 more.');
});

test('one that is lent says to whom, and comes back by its own page', async () => {
  const home = await filledHome();
  good(await lend(home.room, { animals: ['A1'], to: 'A neighbour' }));
  const html = await home.see('/animals/A1');
  expect(words(html)).toContain('Lent to A neighbour on 4 October 2024.');
  expect(html).toContain('href="/animals/A1/came-back"');
  expect(html).not.toContain('Bring it back');
  expect(await bringBack(home.room, { what: 'animal', code: 'A1' })).toMatchObject({
    problem: { code: 'is-lent' },
  });
});

/** Undo from the pages: where one goes on to, and that no act is out of reach. */
import { expect, test } from 'vitest';
import { latestActs } from '../../../src/store/index.ts';
import { OWN } from '../../support/door.ts';
import { filledHome, type Home } from '../../support/house.ts';

const lastAct = async ({ room }: Home): Promise<number> => (await room.store.ask(latestActs(1)))[0]!.id;

/** Sends an undo as the page at `from` does. */
async function undone({ app }: Home, act: number, from: string): Promise<string | null> {
  const headers = { ...OWN, host: 'localhost', referer: `http://localhost${from}` };
  const answer = await app.request(`/undo/${act}`, { method: 'POST', headers, body: `formId=undo-${act}` });
  expect(answer.status).toBe(303);
  return answer.headers.get('location');
}

test('it stays on the page it was asked on', async () => {
  const home = await filledHome();
  await home.send('/larder/B1/look', { level: 'half', day: home.room.date(0) });
  expect(await undone(home, await lastAct(home), '/larder/B1')).toBe('/larder/B1');
});

test('it goes to the list when the page went with what was added', async () => {
  const home = await filledHome();
  const cup = { name: 'Mel', role: 'cup', species: 'drosophila-melanogaster', room: 'R1', capacity: '' };
  const added = await home.send('/larder/new', { ...cup, heads: '', size: '', day: home.room.date(0) });
  const place = added.headers.get('location')!;
  expect(await home.see(place)).toContain('Started cup Mel');
  expect(await undone(home, await lastAct(home), place)).toBe('/larder');
});

test('a round can be undone from the settings after something else was written', async () => {
  const home = await filledHome();
  await home.send('/tonight', { day: home.room.date(0), animal: ['A1', 'A2'] });
  const round = await lastAct(home);
  await home.send('/animals/A1/premoult', { day: home.room.date(0) });
  const settings = await home.see('/settings');
  expect(settings).toMatch(/Round of \w{3} \d+ \w{3}: 2 fed, 0 not\./);
  expect(settings).toContain(`action="/undo/${round}"`);
});

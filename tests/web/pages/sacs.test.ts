/** The page of sacs: what the young will want is said first, each step is one act with its day, and nothing typed is lost. */
import { expect, test } from 'vitest';
import { addAnimal, editChange, editSettings, loadSnapshot, noteSac } from '../../../src/actions/index.ts';
import { filledHome, type Home } from '../../support/house.ts';
import { good } from '../../support/store-at.ts';

const sacOf = async ({ room }: Home) => (await loadSnapshot(room)).changes[0];

/** A sac of Ash, laid twenty days ago: today is 4 October 2024. */
async function withSac(): Promise<Home> {
  const home = await filledHome();
  const { room } = home;
  good(await noteSac(room, { animal: 'A1', laidFrom: room.date(-20), count: 80, motherFasts: true }));
  return home;
}

test('with none the page says so and offers to write one down', async () => {
  const { see, send, acts } = await filledHome();
  const html = await see('/sacs');
  expect(html).toContain('<h1>No sac is expected</h1>');
  expect(html).toContain('A sac was laid or found');
  const before = await acts();
  const fields = {
    animal: 'A1',
    laidFrom: '2024-09-14',
    laidTo: '',
    count: '80',
    chance: '',
    shareKept: '50',
  };
  const sent = await send('/sacs', fields);
  expect(sent.headers.get('location')).toBe('/sacs');
  expect(await acts()).toBe(before + 1);
});

test('the headline says who will want how much of what from when, and the cup has its day', async () => {
  const { see } = await withSac();
  const html = await see('/sacs');
  expect(html).toMatch(
    /<h1>The sac of Ash will want about \d+ flies or pinheads a week from late November; nobody else eats that size now<\/h1>/,
  );
  expect(html).toMatch(/Start \d cups? of small fruit flies on \w+day \d+ (October|November)/);
  expect(html).toMatch(/Or order about \d+ pinheads a week: by \w+/);
  expect(html).toContain('nothing caught outdoors');
  expect(html).toContain('href="/larder/new?cup=drosophila-melanogaster"');
  expect(html).toContain('takes no food until');
});

test('the start form opened from there is for a cup of that fly', async () => {
  const { see } = await filledHome();
  const html = await see('/larder/new?cup=drosophila-melanogaster');
  expect(html).toMatch(/value="cup" checked/);
  expect(html).toMatch(/value="drosophila-melanogaster" selected/);
});

test('taken, out, first fed: each is one act that leads on', async () => {
  const home = await withSac();
  const { send, see, acts } = home;
  const before = await acts();
  await send('/sacs/P1/pulled', { day: '2024-10-03' });
  expect((await sacOf(home))?.sac?.pulled).not.toBeNull();
  await send('/sacs/P1/hatched', { day: '2024-10-04', count: '64' });
  expect(await sacOf(home)).toMatchObject({ count: 64, chance: 1 });
  const fed = await send('/sacs/P1/settled', { day: '2024-10-04', count: '30', name: 'Ashlings', shelf: '' });
  expect(fed.headers.get('location')).toBe('/animals/A3');
  expect(await acts()).toBe(before + 3);
  const html = await see('/sacs');
  expect(html).toContain('No sac is expected');
  expect(html).toContain('The sac of Ash: first fed 4 Oct 2024');
});

test('a sac that came to nothing is over, and can be undone', async () => {
  const home = await withSac();
  const { send, see, acts } = home;
  await send('/sacs/P1/ended', { day: '2024-10-04', how: 'eaten' });
  expect(await see('/sacs')).toContain('The sac of Ash: eaten, 4 Oct 2024');
  await send(`/undo/${await acts()}`, {});
  expect((await sacOf(home))?.sac?.ended).toBeNull();
});

test('its days and numbers can be changed, and the sac removed', async () => {
  const home = await withSac();
  const { send } = home;
  const fields = {
    from: '2024-12-01',
    to: '2024-12-09',
    count: '90',
    gauge: '1/4 in',
    chance: '50',
    shareKept: '25',
  };
  expect((await send('/sacs/P1/edit', fields)).status).toBe(303);
  expect(await sacOf(home)).toMatchObject({
    count: 90,
    gaugeMm: 6.35,
    chance: 0.5,
    sac: { shareKept: 0.25 },
  });
  await send('/sacs/P1/cancel', {});
  expect(await sacOf(home)).toBeUndefined();
});

test.each([
  ['/sacs/P1/pulled', { day: '2024-10-05' }, 'to come'],
  ['/sacs/P1/hatched', { day: '2024-09-01', count: '' }, 'before the sac was laid'],
  ['/sacs/P1/hatched', { day: '2024-10-04', count: 'many' }, '"many" is not'],
  [
    '/sacs/P1/edit',
    { from: '2024-12-09', to: '2024-12-01', count: '9', gauge: '6 mm', chance: '', shareKept: '' },
    'runs backwards',
  ],
  [
    '/sacs/P1/edit',
    { from: '2024-12-01', to: '2024-12-09', count: '9', gauge: '6 mm', chance: '140', shareKept: '' },
    '"140" is not a percentage',
  ],
])('%s with %o is refused and kept as typed', async (path, fields, sentence) => {
  const { send, acts } = await withSac();
  const before = await acts();
  const refused = await send(path, fields);
  const html = (await refused.text()).replaceAll('&quot;', '"');
  expect(refused.status).toBe(422);
  expect(html).toContain(sentence);
  for (const value of Object.values(fields)) expect(html).toContain(`value="${value}"`);
  expect(await acts()).toBe(before);
});

test('an arrival in the settings is edited as one act', async () => {
  const { send, see, room, acts } = await filledHome();
  const dates = { from: '2024-11-01', to: '2024-11-03' };
  const arrival = {
    kind: 'arrival',
    animalKind: 'brachypelma-hamorii',
    animal: '',
    chance: '',
    count: '3',
    gauge: '20 mm',
    room: 'R1',
  };
  await send('/settings/changes', { ...arrival, ...dates });
  expect(await see('/settings')).toMatch(/Moves in: 3 heads of Mexican red-knee, 20 mm/);
  const before = await acts();
  const edit = {
    change: 'P1',
    from: '2024-11-02',
    to: '2024-11-09',
    count: '4',
    gauge: '22 mm',
    chance: '80',
  };
  expect((await send('/settings/changes/edit', edit)).status).toBe(303);
  expect(await acts()).toBe(before + 1);
  expect((await loadSnapshot(room)).changes[0]).toMatchObject({ count: 4, gaugeMm: 22, chance: 0.8 });
  const refused = await send('/settings/changes/edit', { ...edit, to: '2024-11-01' });
  expect(refused.status).toBe(422);
  expect(await refused.text()).toContain('runs backwards');
});

test('what is not changed of a sac stays as exact as it was, in millimetres and in inches', async () => {
  const home = await withSac();
  good(await editChange(home.room, { change: 'P1', gaugeMm: 3.3, chance: 0.725, shareKept: 0.666 }));
  const before = await sacOf(home);
  for (const units of ['mm', 'inch'] as const) {
    good(await editSettings(home.room, { units }));
    const shown = valuesOf(await home.see('/sacs'), 'edit-P1');
    expect(shown.gauge).toBe(units === 'mm' ? '3.5 mm' : '1/8 in');
    await home.send('/sacs/P1/edit', { ...shown, count: '70' });
    const { gaugeMm, chance, sac, count } = (await sacOf(home))!;
    expect(count).toBe(70);
    expect([gaugeMm, chance, sac?.shareKept]).toEqual([3.3, 0.725, before?.sac?.shareKept]);
  }
  const typed = valuesOf(await home.see('/sacs'), 'edit-P1');
  await home.send('/sacs/P1/edit', { ...typed, gauge: '4 mm', chance: '80' });
  expect(await sacOf(home)).toMatchObject({ gaugeMm: 4, chance: 0.8, sac: { shareKept: 0.666 } });
});

/** The fields of a form as a browser would send them. */
function valuesOf(html: string, form: string): Record<string, string> {
  const [inside = ''] = new RegExp(`<form[^>]*id="${form}".*?</form>`, 's').exec(html) ?? [];
  const inputs = [...inside.matchAll(/<input[^>]*>/g)].map(([tag]) =>
    ['name', 'value'].map((each) => new RegExp(` ${each}="([^"]*)"`).exec(tag)?.[1] ?? ''),
  );
  return Object.fromEntries(inputs.filter(([name]) => name !== 'formId'));
}

test('the mothers to choose from are grown or nearly so, no males, and stand by name', async () => {
  const home = await filledHome();
  const spider = { kind: 'brachypelma-hamorii', room: 'R1', gaugeMm: 140 };
  good(await addAnimal(home.room, { ...spider, name: 'Thimble' }));
  good(await addAnimal(home.room, { ...spider, name: 'Clove', sex: 'female' }));
  good(await addAnimal(home.room, { ...spider, name: 'Bramble', sex: 'male' }));
  const [, select = ''] =
    /<select[^>]*name="animal"[^>]*>(.*?)<\/select>/s.exec(await home.see('/sacs')) ?? [];
  const named = [...select.matchAll(/<option value="A\d+"[^>]*>([^<]+)</g)].map(([, label]) => label);
  expect(named).toEqual(['Clove', 'Thimble']);
});

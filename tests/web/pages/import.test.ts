/** Lists from the import page: sent, seen, asked about, written once. */
import { expect, test } from 'vitest';
import { loadSnapshot } from '../../../src/actions/index.ts';
import { emptyHome, type Home } from '../../support/house.ts';

const LIST = 'who,kind,size,fed\nClove,Brachypelma hamorii,4.5,03/10/2024\nWho,Qwxyz zzyx,2,02/10/2024\n';

const placeOf = (answer: Response): string => answer.headers.get('location') ?? '';
const draftIn = (place: string): string => new URLSearchParams(place.split('?')[1]).get('draft') ?? '';

async function sent(home: Home, text: string, what = 'animals'): Promise<string> {
  const answer = await home.send('/import', { what, text });
  expect(answer.status).toBe(303);
  return placeOf(answer);
}

test('questions are answered by sending answers, and then the list is written once', async () => {
  const home = await emptyHome();
  const acts = await home.acts();
  const place = await sent(home, LIST);
  const draft = draftIn(place);
  const first = await home.see(place);
  expect(first).toContain('Qwxyz zzyx');
  expect(first).not.toContain('Write it down');
  await home.send('/import/check', { draft, 'answer:Qwxyz zzyx': '-', unit: 'cm', dates: 'dmy' });
  const second = await home.see(place);
  expect(second).toContain('Ready: 1 new animal');
  expect(await home.acts()).toBe(acts);
  const written = await home.send('/import/confirm', { draft, formId: 'yes' });
  const again = await home.send('/import/confirm', { draft, formId: 'yes' });
  expect([placeOf(written), placeOf(again)]).toEqual(['/animals', '/animals']);
  expect(await home.acts()).toBe(acts + 1);
  expect((await loadSnapshot(home.room)).animals).toMatchObject([
    { name: 'Clove', gaugeMm: 45, lastTaken: 19_999 },
  ]);
});

test('the same list again changes nothing and says so', async () => {
  const home = await emptyHome();
  const text = 'bin,prey,size,count,came\nBox,house cricket,6 mm,200,2024-10-01\n';
  const confirmed = async () =>
    home.send('/import/confirm', { draft: draftIn(await sent(home, text, 'stock')) });
  expect(placeOf(await confirmed())).toBe('/larder');
  const acts = await home.acts();
  const again = await confirmed();
  expect(await home.acts()).toBe(acts);
  const cookie = again.headers.getSetCookie()[0]!.split(';')[0]!;
  expect(await (await home.app.request('/larder', { headers: { cookie } })).text()).toContain(
    'Nothing in the list was new; nothing was changed.',
  );
});

test('a file with nothing in it is called empty by its name', async () => {
  const home = await emptyHome();
  const body = new FormData();
  body.set('what', 'animals');
  body.set('text', '');
  body.set('file', new File([], 'spiders.csv'));
  const answer = await home.app.request('/import', {
    method: 'POST',
    headers: { origin: 'http://localhost' },
    body,
  });
  expect(answer.status).toBe(422);
  expect(await answer.text()).toContain('The file &quot;spiders.csv&quot; is empty.');
});

test('a list that still has a question is not written', async () => {
  const home = await emptyHome();
  const draft = draftIn(await sent(home, LIST));
  const acts = await home.acts();
  const answer = await home.send('/import/confirm', { draft });
  expect(placeOf(answer)).toBe(`/import?draft=${draft}`);
  expect(await home.acts()).toBe(acts);
});

test('a heading can be given to another column', async () => {
  const home = await emptyHome();
  const place = await sent(home, 'beast,sort,size\nClove,Brachypelma hamorii,45 mm\n');
  const draft = draftIn(place);
  await home.send('/import/check', {
    draft,
    'column:who': 'beast',
    'column:kind': 'sort',
    'column:size': 'size',
  });
  await home.send('/import/confirm', { draft });
  expect((await loadSnapshot(home.room)).animals).toMatchObject([{ name: 'Clove', gaugeMm: 45 }]);
});

test.each([
  [{ what: 'animals', text: '' }, 'text', 'Choose a file or paste the cells of a list.'],
  [{ what: 'minerals', text: 'a,b' }, 'what', 'Say what the list is of'],
])('%o is refused beside its field', async (fields, field, said) => {
  const home = await emptyHome();
  const answer = await home.send('/import', fields);
  expect(answer.status).toBe(422);
  expect(await answer.text()).toMatch(new RegExp(`-${field}-problem">${said}`));
});

test('a file is read, and one that is no text is refused beside the file', async () => {
  const { app, see } = await emptyHome();
  const upload = (bytes: Uint8Array<ArrayBuffer>) => {
    const body = new FormData();
    body.set('what', 'animals');
    body.set('text', '');
    body.set('file', new File([bytes], 'list.csv', { type: 'text/csv' }));
    return app.request('/import', { method: 'POST', headers: { origin: 'http://localhost' }, body });
  };
  const good = await upload(new TextEncoder().encode(LIST));
  expect(await see(placeOf(good))).toContain('Clove');
  const bad = await upload(new Uint8Array([80, 75, 3, 4, 0, 0, 1]));
  expect(bad.status).toBe(422);
  expect(await bad.text()).toMatch(/id="import-file-problem">This is a spreadsheet workbook/);
});

test('only the last few drafts are kept; one that is gone says so', async () => {
  const home = await emptyHome();
  const first = await sent(home, LIST);
  for (let n = 0; n < 5; n++) await sent(home, LIST);
  expect(await home.see(first)).toContain('That list is no longer kept here. Send it again.');
});

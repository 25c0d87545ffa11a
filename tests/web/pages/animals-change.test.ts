/** Many animals changed from the list: chosen, looked over in words, done as one step, undone as one. */
import { describe, expect, test } from 'vitest';
import { addAnimal, addRoom, editAnimal, importRows, loadSnapshot } from '../../../src/actions/index.ts';
import { latestActs, rowNamed } from '../../../src/store/index.ts';
import { emptyHome, filledHome, type Home } from '../../support/house.ts';
import { words } from '../../support/markup-words.ts';
import { good } from '../../support/store-at.ts';

const KIND = 'brachypelma-hamorii';
const DAY = '2024-10-04';

/** Every field of the form of an act on a page, as a browser would send it. */
function formOf(html: string, act: string): { action: string; fields: Record<string, string[]> } {
  const form = new RegExp(`<form[^>]*action="([^"]*)"[^>]*id="${act}".*?</form>`, 's').exec(html);
  if (form === null) throw new Error(`no form ${act} on the page`);
  const fields: Record<string, string[]> = {};
  for (const [tag] of form[0].matchAll(/<input[^>]*>/g)) {
    const [name, value] = ['name', 'value'].map(
      (each) => new RegExp(` ${each}="([^"]*)"`).exec(tag)?.[1] ?? '',
    );
    if (/type="(radio|checkbox)"/.test(tag)) continue;
    fields[name!] = [...(fields[name!] ?? []), value!.replaceAll('&amp;', '&')];
  }
  return { action: form[1]!.replaceAll('&amp;', '&'), fields };
}

const query = (fields: Record<string, string | readonly string[]>) =>
  new URLSearchParams(
    Object.entries(fields).flatMap(([name, value]) => [value].flat().map((each) => [name, each as string])),
  ).toString();

/** The form of the list, with a button pressed and some ticked. */
function pressed(html: string, of: string, ticked: readonly string[] = []) {
  const value = (name: string) =>
    (new RegExp(`name="${name}" value="([^"]*)"`).exec(html)?.[1] ?? '').replaceAll('&amp;', '&');
  return `/animals/change?${query({ list: value('list'), seen: value('seen'), animal: ticked, of })}`;
}

/** From the list to the page that says what an act will change. */
async function lookedOver(
  { see }: Home,
  list: string,
  press: Parameters<typeof pressed>[1],
  act: string,
  more: Record<string, string>,
  ticked: readonly string[] = [],
) {
  const acts = await see(pressed(await see(list), press, ticked));
  const { action, fields } = formOf(acts, act);
  return see(`${action}?${query({ ...fields, ...more })}`);
}

const shelves = async ({ room }: Home) =>
  (await loadSnapshot(room)).animals.map(({ name, room: at, shelf }) => `${name}: ${at} ${shelf}`);

test('those ticked move: first in words, then by one button, and back by one undo', async () => {
  const home = await filledHome();
  good(await addRoom(home.room, { name: 'Cellar', dayTempC: 20, nightTempC: 18 }));
  good(await addAnimal(home.room, { kind: KIND, room: 'R2', shelf: 'B1', gaugeMm: 40, name: 'There' }));
  const before = await shelves(home);
  const html = await lookedOver(home, '/animals', 'ticked', 'move', { room: 'R2', shelf: 'B1' }, [
    'A1',
    'A2',
    'A3',
  ]);
  expect(words(html)).toContain(
    '2 animals (6 heads with the groups) move to B1 of Cellar; 1 is there already.',
  );
  expect(await shelves(home)).toEqual(before);
  const { action, fields } = formOf(html, 'move');
  const answer = await home.send(action, fields);
  expect([answer.status, answer.headers.get('location')]).toEqual([303, '/animals']);
  expect((await shelves(home)).every((each) => each.endsWith('R2 B1'))).toBe(true);
  const list = await home.see('/animals');
  expect(list).toContain('Moved 2 animals to “B1” of Cellar');
  await home.send(/action="(\/undo\/\d+)"/.exec(list)![1]!, {});
  expect(await shelves(home)).toEqual(before);
});

describe('all that a list found', () => {
  const crowd = async () => {
    const home = await emptyHome();
    const many = Array.from({ length: 130 }, (_, at) => ({
      name: `Spider ${at}`,
      kind: KIND,
      room: 'R1',
      shelf: at % 2 === 0 ? 'Even' : 'Odd',
      gaugeMm: 40,
    }));
    good(await importRows(home.room, { animals: { new: many, changed: [] } }));
    return home;
  };

  test('travels as what was asked, not name by name, and changes exactly those', async () => {
    const home = await crowd();
    const html = await lookedOver(home, '/animals?q=even', 'found', 'stage', { stage: 'adult' });
    expect(words(html)).toContain('65 animals are fed as adults, whatever their size.');
    const { action, fields } = formOf(html, 'stage');
    expect(fields.animal).toBeUndefined();
    const answer = await home.send(action, fields);
    expect(answer.headers.get('location')).toBe('/animals?q=even');
    const { animals } = await loadSnapshot(home.room);
    expect(
      animals.filter(({ stageOverride }) => stageOverride === 'adult').map(({ shelf }) => shelf),
    ).toEqual(Array(65).fill('Even'));
  });

  test('or all on its page', async () => {
    const home = await crowd();
    const html = await lookedOver(home, '/animals?page=2', 'page', 'move', { room: '', shelf: 'New' });
    expect(words(html)).toContain('30 animals move to New, each in its own room.');
  });

  test.each(['before it is looked over', 'before it is done'])(
    'is refused when the list changes %s',
    async (when) => {
      const home = await crowd();
      const early = when === 'before it is looked over';
      const change = async () => good(await editAnimal(home.room, { animal: 'A1', shelf: 'Odd' }));
      const acts = await home.see(pressed(await home.see('/animals?q=even'), 'found'));
      const first = formOf(acts, 'stage');
      if (early) await change();
      const check = await home.see(`${first.action}?${query({ ...first.fields, stage: 'adult' })}`);
      const sentence =
        'The list has changed since you looked: it found 65 and now finds 64. Look at it again.';
      if (early) {
        expect(check).toContain(sentence);
        expect(check).toContain('href="/animals?q=even"');
        return;
      }
      const second = formOf(check, 'stage');
      await change();
      const before = await home.acts();
      const answer = await home.send(second.action, second.fields);
      expect(answer.status).toBe(422);
      expect(await answer.text()).toContain(sentence);
      expect(await home.acts()).toBe(before);
    },
  );

  test('is refused when one of them was changed, though the list is the same', async () => {
    const home = await crowd();
    const html = await lookedOver(home, '/animals?q=even', 'found', 'stage', { stage: 'adult' });
    const { action, fields } = formOf(html, 'stage');
    good(await editAnimal(home.room, { animal: 'A1', sex: 'female' }));
    const answer = await home.send(action, fields);
    expect(answer.status).toBe(422);
    expect(await answer.text()).toContain('was changed while you chose');
  });
});

test('a new kind keeps codes and records', async () => {
  const home = await filledHome();
  const html = await lookedOver(home, '/animals', 'found', 'kind', { kind: 'brachypelma-boehmei' });
  expect(words(html)).toContain('are Brachypelma boehmei');
  expect(words(html)).toContain('Codes, sizes and records stay.');
  const { action, fields } = formOf(html, 'kind');
  await home.send(action, fields);
  const { animals } = await loadSnapshot(home.room);
  expect(animals).toMatchObject([
    { code: 'A1', kind: 'brachypelma-boehmei', lastTaken: 20_000 - 14 },
    { code: 'A2', kind: 'brachypelma-boehmei', count: 5 },
  ]);
});

test('lending says to whom and until when, accepts “yesterday”, and they are back by a tap', async () => {
  const home = await filledHome();
  const html = await lookedOver(
    home,
    '/animals',
    'ticked',
    'lend',
    { to: 'the school', day: 'yesterday', back: '2024-11-01' },
    ['A1'],
  );
  expect(words(html)).toContain('1 animal goes to the school on Thursday 3 October.');
  expect(words(html)).toContain('They are expected back on 1 Nov 2024.');
  const { action, fields } = formOf(html, 'lend');
  await home.send(action, fields);
  expect(await home.see('/animals')).toContain('href="/animals/A1/came-back"');
  expect(words(await home.see('/animals/A1/came-back'))).toContain('Ash is back');
  const refused = await home.send('/animals/A1/came-back', { day: '2024-10-01', lastTaken: '' });
  expect(refused.status).toBe(422);
  expect(await refused.text()).toContain('&quot;2024-10-01&quot; is before it was lent (3 Oct 2024).');
  const back = await home.send('/animals/A1/came-back', { day: 'today', lastTaken: 'yesterday' });
  expect(back.headers.get('location')).toBe('/animals/A1');
  expect((await loadSnapshot(home.room)).animals[0]).toMatchObject({ code: 'A1', lastTaken: 19_999 });
});

test('deaths of many are asked for twice', async () => {
  const home = await filledHome();
  const html = await lookedOver(home, '/animals', 'found', 'died', { day: DAY });
  const { action, fields } = formOf(html, 'died');
  const before = await home.acts();
  const unsure = await home.send(action, fields);
  expect(unsure.status).toBe(422);
  expect(await unsure.text()).toContain('Tick that they died');
  expect(await home.acts()).toBe(before);
  await home.send(action, { ...fields, sure: 'on' });
  expect((await loadSnapshot(home.room)).animals).toEqual([]);
  expect(await home.room.store.ask(rowNamed('animal', 'A2'))).toMatchObject({ leftReason: 'died', count: 5 });
  expect((await home.room.store.ask(latestActs(1)))[0]?.summary).toBe('2 animals died');
});

describe('what is wrong is said, and nothing changes', () => {
  const WRONG: readonly (readonly [string, Record<string, string>, string])[] = [
    ['move', { room: '', shelf: '' }, 'Choose a room, write a shelf, or both.'],
    ['move', { room: 'R9', shelf: '' }, 'There is no room &quot;R9&quot; here.'],
    ['stage', {}, 'Choose a stage.'],
    ['stage', { stage: 'by size' }, 'All 2 are so already: nothing would change.'],
    ['kind', { kind: '' }, 'Choose a kind.'],
    ['kind', { kind: 'unicorn' }, '&quot;unicorn&quot; is not a kind of animal in the Book.'],
    ['gone', { day: DAY }, 'Choose why.'],
    ['gone', { reason: 'sold', day: '2062-01-01' }, '&quot;2062-01-01&quot; is after today.'],
    ['lend', { to: '', day: DAY }, 'This is needed.'],
    [
      'lend',
      { to: 'Jo', day: DAY, back: '2024-10-01' },
      '&quot;2024-10-01&quot; is before they leave (2024-10-04).',
    ],
    ['died', { day: 'soon' }, '&quot;soon&quot; is not a date'],
  ];
  test.each(WRONG)('%s with %o', async (act, more, sentence) => {
    const home = await filledHome();
    const before = await home.acts();
    const html = await lookedOver(home, '/animals', 'found', act, more);
    expect(html).toContain(sentence);
    expect(html).toContain('What happens to 2 animals');
    const { action, fields } = formOf(html, act);
    const answer = await home.send(action, { ...fields, ...more });
    expect(answer.status).toBe(422);
    expect(await home.acts()).toBe(before);
  });

  test('nobody ticked, and somebody who left', async () => {
    const home = await filledHome();
    expect(await home.see('/animals/change?of=ticked')).toContain('Nobody is ticked.');
    good(await editAnimal(home.room, { animal: 'A1', leftReason: 'sold' }));
    expect(await home.see('/animals/change?animal=A1&animal=A2')).toContain(
      '&quot;A1&quot; does not live here any more.',
    );
  });
});

test('the same form sent twice moves nobody twice', async () => {
  const home = await filledHome();
  const html = await lookedOver(home, '/animals', 'found', 'move', { room: '', shelf: 'Z' });
  const { action, fields } = formOf(html, 'move');
  await home.send(action, fields);
  const acts = await home.acts();
  expect((await home.send(action, fields)).status).toBe(303);
  expect(await home.acts()).toBe(acts);
});

test('a sending that does not say which page it came from is done as it stands', async () => {
  const home = await filledHome();
  const html = await lookedOver(home, '/animals', 'found', 'move', { room: '', shelf: 'Z' });
  const { action, fields } = formOf(html, 'move');
  const { asOf: _, ...others } = fields;
  expect((await home.send(action, others)).status).toBe(303);
  expect(await shelves(home)).toEqual(['Ash: R1 Z', 'Sac of five: R1 Z']);
});

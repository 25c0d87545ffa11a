/** The list of animals at scale: found, narrowed, ordered, a page at a time. */
import { describe, expect, test } from 'vitest';
import {
  addAnimal,
  addRoom,
  editAnimal,
  importRows,
  lend,
  recordEvening,
  recordMorning,
  recordMoult,
  recordPremoult,
} from '../../../src/actions/index.ts';
import { emptyHome, filledHome, type Home } from '../../support/house.ts';
import { insides, words } from '../../support/markup-words.ts';
import { good } from '../../support/store-at.ts';

const KIND = 'brachypelma-hamorii';

/** Who stands in the list, in its order. */
const listed = async ({ see }: Home, address: string): Promise<readonly string[]> =>
  [...(await see(address)).matchAll(/<th scope="row"><a [^>]*>([^<]*)</g)].map((match) => match[1]!);

/** 'Late 3' and so on. */
const filters = async ({ see }: Home, address: string): Promise<readonly string[]> =>
  [...(await see(address)).matchAll(/<a href="[^"]*" class="filter"[^>]*>(.*?)<\/a>/g)].map((match) =>
    words(match[1]!),
  );

/** Beside Ash and the sac: Fern was offered prey twice in vain, Moss moulted today, Oak nears a moult in the cellar. */
async function livelyHome(): Promise<Home> {
  const home = await filledHome();
  const { room } = home;
  good(await addRoom(room, { name: 'Cellar', dayTempC: 20, nightTempC: 18 }));
  const add = async (name: string, more: object) =>
    good(await addAnimal(room, { kind: KIND, room: 'R1', gaugeMm: 60, name, shelf: 'A2', ...more }));
  await add('Fern', { notes: 'webs the lid shut', gaugeMm: 90 });
  await add('Moss', { gaugeMm: 30, lastTaken: room.date(-3) });
  await add('Oak', {
    room: 'Cellar',
    gaugeMm: 130,
    label: 'red dot',
    gaugeAssumed: true,
    kind: 'pandinus-imperator',
  });
  good(await recordPremoult(room, { animal: 'A5' }));
  for (let evening = 0; evening < 2; evening += 1) {
    const offer = { animal: 'A3', outcome: 'offered', bin: 'B2', heads: 1, fromMm: 10, toMm: 14 } as const;
    good(await recordEvening(room, { rows: [offer] }));
    good(await recordMorning(room, { exceptions: [{ animal: 'A3', outcome: 'refused' }] }));
    room.pass(3);
  }
  good(await recordMoult(room, { animal: 'A4', gaugeMm: 36 }));
  return home;
}

describe('finding', () => {
  test('looks into name, code, mark, kind in both tongues, room, shelf and notes; every word must stand there', async () => {
    const home = await livelyHome();
    const found = (q: string) => listed(home, `/animals?q=${encodeURIComponent(q)}`);
    expect(await found('fern')).toEqual(['Fern']);
    expect(await found('A5')).toEqual(['Oak']);
    expect(await found('RED DOT')).toEqual(['Oak']);
    expect(await found('webs lid')).toEqual(['Fern']);
    expect(await found('hamorii a10')).toEqual(['Sac of five']);
    expect(await found('red-knee a2')).toEqual(['Ash', 'Fern', 'Moss', 'Sac of five']);
    expect(await found('cellar')).toEqual(['Oak']);
    expect(await found('fern cellar')).toEqual([]);
  });

  test('by tap: each filter counts what it would find, and they combine', async () => {
    const home = await livelyHome();
    expect(await filters(home, '/animals')).toEqual(
      expect.arrayContaining([
        'About to moult 1',
        'Hardening 1',
        'Refused twice or more 1',
        'Size to be measured 1',
        'Kept as a group 1',
      ]),
    );
    expect(await listed(home, '/animals?show=refused')).toEqual(['Fern']);
    expect(await listed(home, '/animals?show=premoult&show=measure')).toEqual(['Oak']);
    expect(await listed(home, '/animals?show=hardening')).toEqual(['Moss']);
    expect(await listed(home, '/animals?show=late')).toContain('Ash');
    expect(await filters(home, '/animals?show=premoult')).toEqual([
      'About to moult 1',
      'Size to be measured 1',
    ]);
    expect(await home.see('/animals?show=premoult&show=measure')).toContain(
      '1 of 5 found: about to moult, size to be measured.',
    );
  });

  test('by group of kinds, stage, room and shelf, and by what nobody knows: left out', async () => {
    const home = await livelyHome();
    expect(await listed(home, '/animals?group=scorpion')).toEqual(['Oak']);
    expect(await listed(home, '/animals?stage=young')).toEqual(['Sac of five']);
    expect(await listed(home, '/animals?place=R1')).toHaveLength(4);
    expect(await listed(home, '/animals?place=R1%7CA10')).toEqual(['Sac of five']);
    expect(await listed(home, '/animals?show=unicorns&order=colour&page=-4&x=1')).toHaveLength(5);
  });

  test('nobody: says so, and what each part is worth leaving out', async () => {
    const { see } = await livelyHome();
    const html = await see('/animals?q=fern&show=premoult');
    expect(html).toContain('None of 5 found: matching “fern”, about to moult.');
    expect(words(insides(html, 'ul').find((list) => list.includes('Without')) ?? '')).toBe(
      'Without “matching fern”: 1 Without “about to moult”: 1',
    );
    expect(html).toContain('href="/animals?show=premoult"');
  });

  test('a size is to be measured again when a usual moult cycle has passed since', async () => {
    const home = await emptyHome();
    good(await addAnimal(home.room, { kind: KIND, room: 'R1', gaugeMm: 40, name: 'Old' }));
    expect(await listed(home, '/animals?show=measure')).toEqual([]);
    home.room.pass(1000);
    expect(await listed(home, '/animals?show=measure')).toEqual(['Old']);
    expect(await home.see('/animals')).toContain('size to be measured again');
  });
});

describe('order and pages', () => {
  test('by next meal, by size and by name stand in one table with each place', async () => {
    const home = await livelyHome();
    expect(await listed(home, '/animals?order=name')).toEqual(['Ash', 'Fern', 'Moss', 'Oak', 'Sac of five']);
    expect((await listed(home, '/animals?order=size'))[0]).toBe('Sac of five');
    expect((await listed(home, '/animals?order=meal')).slice(-2).toSorted()).toEqual(['Moss', 'Oak']);
    expect(await home.see('/animals?order=name')).toContain('Cellar');
  });

  test('250 animals come in three pages of at most 100 rows, none twice, none left out', async () => {
    const home = await emptyHome();
    const many = Array.from({ length: 250 }, (_, at) => ({
      name: `Spider ${at}`,
      kind: KIND,
      room: 'R1',
      shelf: `S${at % 7}`,
      gaugeMm: 40,
    }));
    good(await importRows(home.room, { animals: { new: many, changed: [] } }));
    const pages = await Promise.all([1, 2, 3, 9].map((page) => listed(home, `/animals?page=${page}`)));
    expect(pages.map(({ length }) => length)).toEqual([100, 100, 50, 50]);
    expect(new Set(pages.slice(0, 3).flat()).size).toBe(250);
    const second = await home.see('/animals?page=2&order=name');
    expect(words(second)).toContain('101–200 of 250');
    expect(second).toContain('href="/animals?order=name"');
    expect(second).toContain('href="/animals?order=name&amp;page=3"');
  });
});

test('who is lent stands below the list, and no longer in it', async () => {
  const home = await filledHome();
  good(await lend(home.room, { animals: ['A1'], to: 'the school', back: home.room.date(30) }));
  good(await editAnimal(home.room, { animal: 'A2', leftReason: 'sold' }));
  expect(await listed(home, '/animals')).toEqual([]);
  const html = words(await home.see('/animals'));
  expect(html).toContain('1 is lent out');
  expect(html).toContain('Ash, Mexican red-knee: with the school since 4 Oct 2024, back by 3 Nov 2024.');
  expect(html).toContain('Nobody lives here yet');
});

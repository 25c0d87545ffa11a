/** What an act changed stands in the history in words, field by field. */
import { describe, expect, test } from 'vitest';
import {
  cameBack,
  editAnimal,
  editAnimals,
  editBin,
  lend,
  recordDied,
  recordMatured,
  recordMeasure,
  recordMoult,
} from '../../../src/actions/index.ts';
import { filledHome, type Home } from '../../support/house.ts';
import { insides, words } from '../../support/markup-words.ts';
import { good } from '../../support/store-at.ts';

/** The newest line of a record. */
const newest = async ({ see }: Home, path = '/animals/A1') =>
  words(insides((await see(path)).replace(/^.*?<ol class="history">/s, ''), 'li')[0] ?? '').replace(
    / Undo.*$/,
    '',
  );

describe('an animal’s history says', () => {
  test.each([
    [{ shelf: 'B3' }, 'Moved from A2 to B3.'],
    [{ shelf: '' }, 'Moved from A2 to no shelf.'],
    [{ name: 'Oak', sex: 'female' }, 'Name “Ash” to “Oak”, unsexed to female.'],
    [{ gaugeMm: 55 }, 'Size 50 mm to 55 mm.'],
    [{ stageOverride: 'adult' }, 'Fed as adult.'],
    [{ label: 'red dot', notes: 'webs a lot' }, 'Own mark “” to “red dot”, notes: “webs a lot”.'],
    [
      { kind: 'brachypelma-boehmei' },
      'Was Brachypelma hamorii until 4 Oct 2024, Brachypelma boehmei from then on.',
    ],
    [{ hereSince: '2024-09-01' }, 'Here since 1 Sep 2024.'],
  ] as const)('%o as “%s”', async (fields, said) => {
    const home = await filledHome();
    good(await editAnimal(home.room, { animal: 'A1', ...fields }));
    expect(await newest(home)).toBe(`4 Oct 2024 ${said}`);
  });

  test('the same of one that was changed with many, which is undone as a whole', async () => {
    const home = await filledHome();
    good(await editAnimals(home.room, { animals: ['A1', 'A2'], kind: 'brachypelma-boehmei' }));
    const html = await home.see('/animals/A2');
    expect(html).toContain('Was Brachypelma hamorii until 4 Oct 2024');
    expect(html).not.toContain('Undo<span class="unseen">: Was');
  });

  test('nothing twice: what its own words tell is not told as a change', async () => {
    const home = await filledHome();
    const { room } = home;
    good(await recordMeasure(room, { animal: 'A1', gaugeMm: 52 }));
    expect(await newest(home)).toBe('4 Oct 2024 Measured: 52 mm.');
    good(await recordMoult(room, { animal: 'A1' }));
    expect(await newest(home)).toMatch(/^4 Oct 2024 Moult found, size 52 mm to \d+ mm \(not measured\)\.$/);
    good(await recordMatured(room, { animal: 'A1' }));
    expect(await newest(home)).toBe('4 Oct 2024 Matured, unsexed to male.');
    good(await recordDied(room, { animal: 'A2', heads: 2 }));
    expect(await newest(home, '/animals/A2')).toBe('4 Oct 2024 2 died.');
  });

  test('to whom it was lent, and that it came back', async () => {
    const home = await filledHome();
    good(await lend(home.room, { animals: ['A1'], to: 'the school', back: home.room.date(2) }));
    good(await cameBack(home.room, { animal: 'A1' }));
    const lines = insides((await home.see('/animals/A1')).replace(/^.*?<ol class="history">/s, ''), 'li').map(
      words,
    );
    expect(lines[0]).toContain('Back from the school.');
    expect(lines[1]).toContain('Lent to the school, back by 6 Oct 2024.');
    expect(lines[2]).toContain('Moved in, ate on 20 Sep 2024.');
  });
});

test('a bin’s history says what was changed of it', async () => {
  const home = await filledHome();
  good(await editBin(home.room, { bin: 'B1', name: 'Tub', capacity: 800 }));
  expect(await newest(home, '/larder/B1')).toBe('4 Oct 2024 Name “Small box” to “Tub”, room for 800.');
});

/** The record is what the page showed and the keeper did: offers travel with the form and are read strictly. */
import { expect, test } from 'vitest';
import { countBin } from '../../../src/actions/index.ts';
import { shownOffer } from '../../../src/web/pages/shown-offer.ts';
import { offerText } from '../../../views/offer-text.ts';
import { filledHome } from '../../support/house.ts';
import { words } from '../../support/markup-words.ts';
import { animalOf, DAY, eventsOf, fiveAtTable } from '../../support/round-home.ts';
import { sheetIn } from '../../support/round-sheet.ts';
import { good } from '../../support/store-at.ts';

test('an offer survives the form, its lengths widened to tenths', () => {
  const offer = {
    bin: 'B12',
    species: 'blaptica-dubia',
    heads: 3,
    fromMm: 9.16,
    toMm: 12.31,
    killFirst: true,
    portions: 2,
  };
  expect(shownOffer.parse(offerText(offer))).toEqual({
    bin: 'B12',
    heads: 3,
    fromMm: 9.1,
    toMm: 12.4,
    preKilled: true,
    portions: 2,
  });
});

test('what was shown is recorded, though the larder changed since', async () => {
  const home = await filledHome();
  const sheet = sheetIn(await home.see('/tonight'));
  const [bin, heads, fromMm, toMm] = String(sheet['offer:A1']).split('|');
  expect(bin).toBe('B2');
  good(await countBin(home.room, { bin: 'B2', heads: 0 }));
  expect((await home.send('/tonight', sheet)).status).toBe(303);
  expect(await eventsOf(home, 'B2')).toMatchObject([
    { heads: Number(heads), fromMm: Number(fromMm), toMm: Number(toMm) },
  ]);
});

const UNSOUND = [
  ['a bin that is not here', 'B9|2|10|12|alive|1', 'There is no bin "B9" here.'],
  ['no heads', 'B2|0|10|12|alive|1', '"0" is not a whole number from 1'],
  ['half a head', 'B2|1.5|10|12|alive|1', '"1.5" is not a whole number from 1'],
  ['lengths that run backwards', 'B2|2|12|10|alive|1', 'The lengths run backwards.'],
  ['a preparation nobody knows', 'B2|2|10|12|fried|1', '"fried" is neither alive nor killed.'],
  ['a part too many', 'B2|2|10|12|alive|1|x', '"B2|2|10|12|alive|1|x" is no offer of this page.'],
  ['nothing readable', 'two crickets', '"two crickets" is no offer of this page.'],
] as const;

test.each(UNSOUND)('%s is refused with a sentence, and nothing is written', async (_, text, sentence) => {
  const home = await filledHome();
  const acts = await home.acts();
  const sheet = { ...sheetIn(await home.see('/tonight')), 'offer:A1': text, premoult: 'A2' };
  const refused = await home.send('/tonight', sheet);
  const html = await refused.text();
  expect([refused.status, await home.acts()]).toEqual([422, acts]);
  expect(words(html)).toContain(sentence);
  expect(html).toContain('name="premoult" value="A2" checked=""');
  expect(sheetIn(html)['offer:A1']).toMatch(/^B2\|/);
});

test('a count and another bin are one tap each, as the page words them', async () => {
  const home = await fiveAtTable();
  const html = await home.see('/tonight');
  const sheet = sheetIn(html);
  expect(html).not.toMatch(/<input(?![^>]*type="(hidden|checkbox|radio|date)")[^>]*name="(heads|bin):/);
  const [, other] = /name="bin:A1" value="(B4\|[^"]+)"/.exec(html)!;
  const heads = Number(other!.split('|')[1]);
  expect(words(html)).toContain(`${heads} dubia roaches from Roach tub`);
  const shown = Number(String(sheet['offer:A3']).split('|')[1]);
  await home.send('/tonight', { ...sheet, 'bin:A1': other!, 'heads:A3': `${shown + 1}` });
  expect(await eventsOf(home, 'B4')).toMatchObject([{ heads }]);
  const fed = async (code: string) => words(await home.see(`/animals/${code}`));
  expect(await fed('A1')).toMatch(new RegExp(`Offered ${heads} dubia roaches, .* from Roach tub`));
  expect(await fed('A3')).toContain(`Offered ${shown + 1} house crickets`);
});

test('without what was shown the evening is worked out, and who is not due is left out', async () => {
  const home = await filledHome();
  await home.send('/tonight', { day: DAY, animal: ['A1', 'A9'] });
  expect(await animalOf(home, 'A1')).toMatchObject({ lastOffered: 20_000 });
});

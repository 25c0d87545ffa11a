/** Numbers of a prey species and of the method on their pages: what they do, each changed in its form and taken back. */
import { describe, expect, test } from 'vitest';
import { editSettings, factsNow } from '../../../src/actions/index.ts';
import { type Fields, filledHome, type Home } from '../../support/house.ts';
import { attributes, tags } from '../../support/markup-words.ts';
import { good } from '../../support/store-at.ts';

const CRICKET = '/book/prey/acheta-domesticus';
const GROWTH = 'Growth-egg-to-adult';
const FLY = '/book/prey/drosophila-hydei';

const plain = (html: string): string =>
  html
    .replace(/<[^>]*>/g, ' ')
    .replaceAll('&quot;', '"')
    .replace(/\s+/g, ' ')
    .trim();

/** The open form's fields as they are shown, with some typed otherwise. */
async function formOf(home: Home, page: string, group: string, typed: Fields = {}): Promise<Fields> {
  const html = await home.see(`${page}?change=${group}`);
  const form = /<form[^>]*id="numbers"[\s\S]*?<\/form>/.exec(html)![0];
  const shown = tags(form, 'input')
    .map((tag) => [attributes(tag, 'name')[0]!, attributes(tag, 'value')[0] ?? ''])
    .filter(([name]) => name !== 'formId');
  return { ...Object.fromEntries(shown), ...typed };
}
const cricketIn = async ({ room }: Home) => (await factsNow(room)).species.get('acheta-domesticus')!;

describe('the page of a prey species', () => {
  test('says first what it does where it is kept, and at another temperature what it does there', async () => {
    const home = await filledHome();
    const text = plain(await home.see(CRICKET));
    expect(text).toMatch(
      /House cricket At \d+ °C it grows up in about \d+ days, and a colony with room doubles in \d+ (days|weeks|months)\./,
    );
    const warm = plain(await home.see(`${CRICKET}?at=30`));
    expect(warm).toContain('At a constant 30 °C');
    expect(warm).toContain('Hatching to adult 54.3 12 % 81 %');
    expect(plain(await home.see(`${CRICKET}?at=5`))).toContain('House cricket At 5 °C it never grows up.');
    expect(plain(await home.see(`${CRICKET}?at=86+F`))).toContain('At a constant 30 °C');
  });

  test('quotes a temperature that is none, and keeps what was typed', async () => {
    const { see } = await filledHome();
    const html = await see(`${CRICKET}?at=900`);
    expect(html).toContain('value="900"');
    expect(plain(html)).toContain('"900" is not a likely temperature');
  });

  test('needs the unit of a temperature of those who write inches', async () => {
    const { see, room } = await filledHome();
    good(await editSettings(room, { units: 'inch' }));
    expect(plain(await see(`${CRICKET}?at=86`))).toContain(
      '"86" is not a temperature; write it as 26 C or 79 F.',
    );
  });

  test('has each number changed in its form, shows both with day and reason, and takes it back', async () => {
    const home = await filledHome();
    const fields = await formOf(home, CRICKET, GROWTH, {
      'span.egg-to-adult.points.30': '99,5',
      why: 'my own boxes',
    });
    const answer = await home.send(`${CRICKET}/numbers`, fields);
    expect([answer.status, answer.headers.get('location')]).toEqual([303, CRICKET]);
    expect((await cricketIn(home)).spans[0]!.points.value).toContainEqual({ tempC: 30, days: 99.5 });
    const text = plain(await home.see(`${CRICKET}?at=30`));
    expect(text).toMatch(
      /Days measured 201 days at 18 °C, 99\.5 days at 30 °C yours since 2024-10-04 my own boxes The Book: 201 days at 18 °C, 66\.3 days at 30 °C \(published\)/,
    );
    expect(text).toContain('Changed house cricket: days measured at 30 °C.');
    expect(text).toContain('Hatching to adult 81.5');
    await home.send(`${CRICKET}/reset`, { stage: '', field: 'span.egg-to-adult.points' });
    expect(await factsNow(home.room)).toBe(home.room.facts);
    expect(plain(await home.see(`${CRICKET}?at=30`))).toContain('Hatching to adult 54.3');
  });

  test('with nothing typed otherwise changes nothing, whatever is rounded on the page', async () => {
    const home = await filledHome();
    const html = await home.see(CRICKET);
    const groups = [...html.matchAll(/\?change=([\w%-]+)#change/g)].map(([, group]) => group!);
    expect(groups.length).toBeGreaterThan(3);
    for (const group of groups) {
      const answer = await home.send(`${CRICKET}/numbers`, await formOf(home, CRICKET, group));
      expect(answer.status).toBe(422);
      expect(plain(await answer.text())).toContain('say so already; nothing was changed.');
    }
  });

  test.each([
    [
      GROWTH,
      { 'span.egg-to-adult.lowerThresholdC': '36' },
      'span.egg-to-adult.lowerThresholdC',
      '"36" °C is not below 35 °C',
    ],
    [GROWTH, { 'span.egg-to-adult.degreeDays': '' }, 'span.egg-to-adult.degreeDays', 'This is needed.'],
    [GROWTH, { 'stage.egg.share': '50' }, 'stage.later-young.share', '% of their time together, not 100 %'],
    [
      'Survival',
      { 'stage.egg.survival.30': '101' },
      'stage.egg.survival.30',
      '"101" is not a share from 0 to 100 %.',
    ],
    [
      'Size',
      { 'species.sizeClasses.pinhead.to': '1' },
      'species.sizeClasses.pinhead.to',
      '"1" mm is not above 2 mm',
    ],
  ])('%s with %o is refused beside %s, and what was typed is kept', async (group, typed, field, sentence) => {
    const home = await filledHome();
    const before = await home.acts();
    const answer = await home.send(
      `${CRICKET}/numbers`,
      await formOf(home, CRICKET, group, { ...typed, why: 'trying' } as Fields),
    );
    expect(answer.status).toBe(422);
    const html = await answer.text();
    const beside = html.split(`id="numbers-${field}-problem">`)[1]!.split('<')[0]!;
    expect(plain(beside)).toContain(sentence);
    expect(html).toContain('value="trying"');
    expect(await home.acts()).toBe(before);
  });

  test('of a cup has the numbers of a cup', async () => {
    const home = await filledHome();
    const fields = await formOf(home, FLY, 'Keeping', { 'cup.yieldPerCup': '300' });
    await home.send(`${FLY}/numbers`, fields);
    expect((await factsNow(home.room)).species.get('drosophila-hydei')!.cup!.yieldPerCup.value).toBe(300);
    expect(plain(await home.see('/book'))).toMatch(/Yours 1 .* Drosophila hydei , 1 value changed/);
  });

  test('a form of a species or a group that is not there changes nothing', async () => {
    const home = await filledHome();
    const before = await home.acts();
    const answer = await home.send('/book/prey/wombat/numbers', { group: 'Size', why: '' });
    expect(answer.status).toBe(404);
    expect((await home.send(`${CRICKET}/numbers`, { group: 'Wings', why: '', wings: '2' })).status).toBe(422);
    expect(await home.acts()).toBe(before);
  });
});

describe('the method page', () => {
  test('has a place for each topic it lists', async () => {
    const { see } = await filledHome();
    const html = await see('/book/method');
    const links = [...html.matchAll(/<a href="#([\w-]+)">/g)].map(([, id]) => id!);
    expect(links).toContain('verdict');
    const ids = attributes(html, 'id');
    for (const id of links) expect(ids).toContain(id);
  });

  test('shows every number of the method with its standing, and changes those a keeper may', async () => {
    const home = await filledHome();
    const text = plain(await home.see('/book/method'));
    expect(text).toContain('Evenings skipped 12 % from memory, unchecked');
    expect(text).toContain('Replicates 30 replicates from memory, unchecked');
    expect(text).not.toMatch(/NaN|undefined|\[object/);
    await home.send(
      '/book/method/numbers',
      await formOf(home, '/book/method', 'Verdict', { 'method.eveningSkippedChance': '30' }),
    );
    expect((await factsNow(home.room)).policy.eveningSkippedChance).toMatchObject({
      value: 0.3,
      status: 'yours',
    });
    expect(plain(await home.see('/book/method'))).toContain('Changed the method: evenings skipped.');
    await home.send('/book/method/reset', {});
    expect(await factsNow(home.room)).toBe(home.room.facts);
  });

  test('offers what a keeper may hold dear of a plan, with its sources', async () => {
    const home = await filledHome();
    const text = plain(await home.see('/book/method'));
    for (const said of [
      'Meals not to be missed 99.5 % for fragile animals, 98 % for ordinary animals, 95 % for robust animals from memory, unchecked',
      'A missed meal counts as 20 for fragile animals, 6 for ordinary animals, 3 for robust animals, times the middle price of an item, or of the meal where that is dearer from memory',
      'An item killed first counts as 0.05 times the cheapest item from memory, unchecked our own starting value, no source; our choice: live prey of the right size is better',
      'A colony feeds most when full to 50 % from memory',
      'What is left is counted on for 10 weeks from memory',
      'A parcel takes 20 minutes from memory, unchecked our own starting value, no source; our choice: ordering, unpacking, counting',
    ])
      expect(text).toContain(said);
    await home.send(
      '/book/method/numbers',
      await formOf(home, '/book/method', 'Plan-meals', { 'method.planTargets.robust': '90' }),
    );
    const { planTargets } = (await factsNow(home.room)).policy;
    expect(planTargets).toMatchObject({
      value: { fragile: 0.995, ordinary: 0.98, robust: 0.9 },
      status: 'yours',
      note: 'since 2024-10-04; the others as the Book has them',
    });
    const time = { 'method.planShopMinutes': '30 minutes' };
    await home.send('/book/method/numbers', await formOf(home, '/book/method', 'Plan-your-time', time));
    expect((await factsNow(home.room)).policy.planShopMinutes).toMatchObject({ value: 30, status: 'yours' });
    const after = plain(await home.see('/book/method'));
    expect(after).toContain('Changed the method: meals not to be missed for robust animals.');
    expect(after).toMatch(/95 % for robust animals \(from memory/);
  });

  test.each([
    ['Plan-meals', 'planTargets.fragile', '100', '"100" is not a share from 50 to 99.9 %.'],
    ['Plan-meals', 'planMissedTimes.robust', '0.5', '"0.5" is not a price from 1 to 1,000 times an item’s.'],
    ['Plan-prey', 'planEndShare', '100', '"100" is not a share from 0 to 95 %.'],
    ['Plan-prey', 'planEndWeeks', '2.5', '"2.5" is not a whole number from 1 to 52 weeks.'],
    ['Plan-prey', 'planBreederRoom', 'half', '"half" is not a share from 5 to 100 %.'],
    ['Plan-your-time', 'planShopMinutes', '-5', '"-5" is not a time from 0 to 600 minutes.'],
  ])('of %s it refuses %s as "%s", in a sentence that quotes it', async (group, name, typed, sentence) => {
    const home = await filledHome();
    const fields = await formOf(home, '/book/method', group, { [`method.${name}`]: typed });
    const answer = await home.send('/book/method/numbers', fields);
    expect(answer.status).toBe(422);
    expect(plain(await answer.text())).toContain(sentence);
    expect(await factsNow(home.room)).toBe(home.room.facts);
  });

  test('is linked from where numbers are listed', async () => {
    const { see } = await filledHome();
    expect(await see('/book')).toContain('href="/book/method"');
    expect(await see('/animals/A1')).toContain('href="/book/method"');
  });
});

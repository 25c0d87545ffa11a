/** The Book's pages: found, read, changed with the effect in sight, and taken back. */
import { describe, expect, test } from 'vitest';
import {
  addAnimal,
  cancelChange,
  factsNow,
  loadSnapshot,
  planChange,
  recordDied,
} from '../../../src/actions/index.ts';
import { figuresShown } from '../../../src/actions/rule-fields.ts';
import type { StageRule } from '../../../src/husbandry/animals/index.ts';
import { type Fields, filledHome, type Home } from '../../support/house.ts';
import { facts } from '../../support/room.ts';
import { good } from '../../support/store-at.ts';

const KNEE = '/book/kinds/brachypelma-hamorii';
const kind = facts.kinds.get('brachypelma-hamorii')!;

/** The form of a stage as it is shown, with some fields typed otherwise. */
function formOf(stage: string, typed: Fields = {}): Fields {
  const rule = kind.stages.find((each) => each.stage === stage) as StageRule;
  const { moultDays, moultCv, moultGrowth, ...others } = figuresShown(rule);
  const moult = rule.moult === null ? {} : { moultDays, moultCv, moultGrowth };
  return {
    ...others,
    ...moult,
    stage,
    accepts: rule.accepts,
    urgency: rule.urgency,
    ...(rule.refusesHard ? { refusesHard: 'on' } : {}),
    why: '',
    ...typed,
  } as Fields;
}

const plain = (html: string): string =>
  html
    .replace(/<[^>]*>/g, ' ')
    .replaceAll('&quot;', '"')
    .replaceAll('&#39;', "'")
    .replace(/\s+/g, ' ')
    .trim();
const effectIn = (html: string): string =>
  plain(/<div id="effect">([\s\S]*)$/.exec(html)![1]!.split('</section>')[0]!);
const ruleNow = async ({ room }: Home, stage: string) =>
  (await factsNow(room)).kinds.get(kind.code)!.stages.find((rule) => rule.stage === stage)!;

describe('a prey species', () => {
  test('is reached from the Book, with what to mind and every number with its source', async () => {
    const { see } = await filledHome();
    expect(await see('/book')).toContain('<a href="/book/prey/zophobas-morio">Superworm</a>');
    const text = plain(await see('/book/prey/zophobas-morio'));
    expect(text).toContain('Bites: crush the head for small animals');
    expect(text).toMatch(
      /Growth: larva: \d numbers .* Days measured 120 days at 27 °C common practice, no source/,
    );
    expect(text).not.toMatch(/NaN|undefined|Infinity|null/);
  });

  test('says what other works say of a number, and why theirs is not used', async () => {
    const { see } = await filledHome();
    const text = plain(await see('/book/prey/tribolium-castaneum'));
    expect(text).toMatch(/Others say: 38\.5 days at 25 °C \(.{0,80}Laboratory population life table/);
    expect(text).toContain(
      'Why not theirs: its 38.5 days at 25 °C are left out: three degree-day lines give 45, 54 and 64.',
    );
    const cricket = plain(await see('/book/prey/gryllodes-sigillatus'));
    expect(cricket).toContain(
      'Why not theirs: as published, though open: the records were ended on days 56 to 58',
    );
  });

  test('shows how far a temperature left out would be missed, where four were measured', async () => {
    const { see } = await filledHome();
    expect(plain(await see('/book/prey/tenebrio-molitor'))).toContain(
      'Hatch to adult at 23 °C 162 days 154 days -5 %',
    );
    expect(plain(await see('/book/prey/blaptica-dubia'))).not.toContain('Left out');
  });

  test('can be read for every species, and none is made up', async () => {
    const { app, see } = await filledHome();
    for (const code of facts.species.keys())
      expect(plain(await see(`/book/prey/${code}`))).not.toMatch(/NaN|undefined/);
    expect((await app.request('/book/prey/wombat')).status).toBe(404);
  });
});

describe('the Book', () => {
  test('says what it knows, on what its numbers rest, and whose kinds are kept', async () => {
    const { see } = await filledHome();
    const text = plain(await see('/book'));
    expect(text).toContain('The Book knows 85 kinds of animal and 17 of prey');
    expect(text).toMatch(
      /Published \d{3} Common practice, no source [\d,]+ From memory, unchecked [\d,]+ Yours 0/,
    );
    expect(text).toMatch(
      /Kinds you keep or changed .* Mexican red-knee Brachypelma hamorii 127–152 mm 6 animals/,
    );
    expect(text).toContain('No kind here fits? Make one of your own');
  });

  test('is searched by any name of a kind or of prey', async () => {
    const { see } = await filledHome();
    const knee = await see('/book?q=red-knee');
    expect(knee).toContain(`href="${KNEE}"`);
    expect(knee).not.toContain('grammostola-rosea');
    expect(plain(await see('/book?q=house+cricket'))).toContain('Acheta domesticus');
    expect(plain(await see('/book?q=wombat'))).toContain('The Book has nothing for “wombat”.');
  });

  test('has no page for what it does not know', async () => {
    const { app } = await filledHome();
    expect((await app.request('/book/kinds/unicorn')).status).toBe(404);
    expect((await app.request('/book/kinds/unicorn/rule', { method: 'POST' })).status).not.toBe(200);
  });
});

describe('the page of a kind', () => {
  test('answers first, shows every stage and every number with its standing and source', async () => {
    const { see } = await filledHome();
    const html = await see(KNEE);
    const text = plain(html);
    expect(text).toContain(
      '6 of yours. A spiderling of 6 mm takes 1–2.5 mm, best 2 mm: grown white springtails',
    );
    expect(html.match(/takes prey of/g)).toHaveLength(5);
    expect(text).toContain('Between meals 14 to 21 days common practice, no source');
    expect(text).toContain('Grows at a moult by 38 % published');
    expect(text).toContain('Kicks hairs');
  });

  test('opens the form of one stage, with what it means for the keeper’s own', async () => {
    const { see } = await filledHome();
    const text = effectIn(await see(`${KNEE}?change=juvenile`));
    expect(text).toContain('This is what the one of yours gets now.');
    expect(text).toContain('Ash (50 mm)');
    expect(text).toMatch(
      /takes [\d.]+–[\d.]+ mm, best [\d.]+ mm: \S+ house crickets 1 to 2 every 4 to 7 days, late since/,
    );
  });

  test('shows a typical one where none is kept at the stage', async () => {
    const { see } = await filledHome();
    const text = effectIn(await see(`${KNEE}?change=adult`));
    expect(text).toContain('None of yours is at this stage; this is a typical one.');
    expect(text).toContain('A typical adult (140 mm) takes prey of 12–47 mm');
    expect(text).not.toContain('A week for all of them');
  });
});

describe('a look at the effect', () => {
  test('shows before and after for the keeper’s own, keeps what was typed and writes nothing', async () => {
    const home = await filledHome();
    const before = await home.acts();
    const fields = formOf('juvenile', { intervalMost: '10', itemsMost: '4', safeGapDays: '20' });
    const answer = await home.send(`${KNEE}/rule-effect`, fields);
    expect(answer.status).toBe(200);
    const html = await answer.text();
    const text = effectIn(html);
    expect(text).toContain('Changes what the one of yours gets.');
    expect(text).toMatch(/1 to 4 every 4 to 10 days, \S+.* before: 1 to 2 every 4 to 7 days/);
    expect(text).toContain('A week for all of them: 2.5 items of the best size');
    expect(text).toContain('before 1.9 items of the best size');
    expect(html).toContain('name="intervalMost" type="text" value="10"');
    expect(await home.acts()).toBe(before);
    expect(await ruleNow(home, 'juvenile')).toBe(kind.stages[1]);
  });

  test('says why it cannot be shown yet, beside the field too', async () => {
    const { send } = await filledHome();
    const html = await (await send(`${KNEE}/rule-effect`, formOf('juvenile', { windowIdeal: '95' }))).text();
    const sentence = '"90" is not above the best length; write more than 95 %.';
    expect(effectIn(html)).toContain(
      `Put right what is marked, then this shows what it would do. Until then, this holds: ${sentence}`,
    );
    expect(html).toMatch(/id="rule-windowMax-problem">&quot;90&quot; is not above/);
  });

  test('of the kind as a whole shows all of the keeper’s of that kind', async () => {
    const { send, see } = await filledHome();
    const shown = await see(`${KNEE}?change=kind`);
    const value = (name: string) => new RegExp(`name="${name}"[^>]*value="([^"]*)"`).exec(shown)![1]!;
    const names = [
      'gauge',
      'adultLeast',
      'adultMost',
      'firstLeast',
      'firstMost',
      'bodyPerGauge',
      'bodyPerGaugeMale',
      'massPerCubicMm',
      'aliases',
    ];
    const asShown = Object.fromEntries(names.map((name) => [name, value(name)]));
    const same = await (await send(`${KNEE}/edit-effect`, asShown)).text();
    expect(effectIn(same)).toContain('This is what your 2 get now.');
    const longer = await (await send(`${KNEE}/edit-effect`, { ...asShown, bodyPerGauge: '60' })).text();
    expect(effectIn(longer)).toContain('Changes what all 2 of yours get.');
    expect(effectIn(longer)).toContain('before: takes');
  });
});

describe('a rule saved', () => {
  test('is the rule from then on, stands beside what the Book says, and is reset from there', async () => {
    const home = await filledHome();
    const fields = formOf('juvenile', { intervalMost: '9', why: 'she stays plump' });
    const answer = await home.send(`${KNEE}/rule`, fields);
    expect([answer.status, answer.headers.get('location')]).toEqual([303, KNEE]);
    const now = await loadSnapshot(home.room);
    expect(now.facts.kinds.get(kind.code)!.stages[1]!.intervalDays.value).toEqual([4, 9]);
    const text = plain(await home.see(KNEE));
    expect(text).toContain('Juvenile: 16 values and where they come from: 1 of yours');
    expect(text).toMatch(
      /Between meals 4 to 9 days yours since 2024-10-04 she stays plump The Book: 4 to 7 days \(common practice, no source\); .* Reset/,
    );
    expect(text).toContain('Changed the rule of Mexican red-knee, juvenile: interval.');
    await home.send(`${KNEE}/reset`, { stage: 'juvenile', field: 'intervalDays' });
    expect(await factsNow(home.room)).toBe(home.room.facts);
  });

  test('with nothing typed otherwise changes nothing, whatever is rounded on the page', async () => {
    const home = await filledHome();
    const before = await home.acts();
    for (const { stage } of kind.stages) {
      const answer = await home.send(`${KNEE}/rule`, formOf(stage));
      expect(answer.status).toBe(422);
      expect(plain(await answer.text())).toContain('says so already; nothing was changed.');
    }
    expect(await home.acts()).toBe(before);
  });

  test.each([
    [{ intervalMost: '500' }, 'intervalMost', '"500" is not a whole number of days from 1 to 400.'],
    [{ itemsLeast: 'few' }, 'itemsLeast', '"few" is not a whole number of items from 0 to 1000.'],
    [{ windowMin: '' }, 'windowMin', 'This is needed.'],
    [{ killFirstAbove: '40' }, 'killFirstAbove', '"40" lies outside what is taken'],
    [{ 'cap-cricket': '300' }, 'cap-cricket', '"300" is not a share from 1 to 100 %'],
    [{ accepts: [] }, 'accepts', 'Choose at least one kind of prey.'],
    [{ intervalMost: '20' }, 'safeGapDays', 'would be a danger too soon'],
  ])('%o is refused beside %s, and what was typed is kept', async (typed, field, sentence) => {
    const home = await filledHome();
    const before = await home.acts();
    const answer = await home.send(`${KNEE}/rule`, formOf('juvenile', { why: 'trying', ...typed } as Fields));
    expect(answer.status).toBe(422);
    const html = await answer.text();
    const problem = new RegExp(`id="rule-${field}-problem">([^<]*)<`).exec(html)?.[1] ?? '';
    expect(plain(problem)).toContain(sentence);
    expect(html).toContain('value="trying"');
    expect(await home.acts()).toBe(before);
  });

  test('on an older page than another’s is told of it', async () => {
    const home = await filledHome();
    const asOf = String(await home.acts());
    await home.send(`${KNEE}/rule`, formOf('juvenile', { graceDays: '4', asOf }));
    const answer = await home.send(`${KNEE}/rule`, formOf('juvenile', { retryDays: '3', asOf }));
    expect(answer.status).toBe(422);
    expect(plain(await answer.text())).toContain('Mexican red-knee was changed while you wrote');
    expect((await ruleNow(home, 'juvenile')).retryDays.value).toBe(10);
  });

  test('lets hard prey be taken by clearing the box', async () => {
    const home = await filledHome();
    const { refusesHard: _, ...fields } = formOf('young');
    await home.send(`${KNEE}/rule`, fields);
    expect((await ruleNow(home, 'young')).refusesHard).toBe(false);
  });
});

describe('a kind of one’s own', () => {
  const made = async () => {
    const home = await filledHome();
    const answer = await home.send('/book/kinds/new', {
      from: kind.code,
      name: 'Brachypelma nova',
      commonName: 'New knee',
      why: '',
    });
    expect(answer.headers.get('location')).toBe('/book/kinds/K1');
    return home;
  };

  test('is made from another, kept in the Book and offered where animals move in', async () => {
    const home = await made();
    expect(plain(await home.see('/book/kinds/K1'))).toContain(
      'New knee None of yours. A spiderling of 6 mm takes',
    );
    expect(plain(await home.see('/book/kinds/K1'))).toContain(
      'a kind of your own, made from Brachypelma hamorii',
    );
    expect(plain(await home.see('/book'))).toContain(
      'The Book knows 86 kinds of animal and 17 of prey 1 kind is your own. Every forecast',
    );
    expect(await home.see('/animals/new')).toContain('<option value="K1">New knee</option>');
    const moved = await home.send('/animals/new', {
      ...{ name: 'Nova', kind: 'K1', count: '1', sex: 'unsexed', gauge: '', room: 'R1', shelf: '' },
      ...{ lastMoult: '', lastTaken: '' },
    });
    expect(moved.status).toBe(303);
    const { animals } = await loadSnapshot(home.room);
    expect(animals.find(({ name }) => name === 'Nova')?.kind).toBe('K1');
    const refused = await home.send('/book/kinds/K1/remove', {});
    expect(refused.status).toBe(422);
    expect(plain(await refused.text())).toContain('"Brachypelma nova" is the kind of Nova, on record here.');
  });

  test('is named where those of it who left, and plans that were given up, are listed', async () => {
    const home = await made();
    const { room } = home;
    good(await addAnimal(room, { name: 'Nova', kind: 'K1', gaugeMm: 40, room: 'R1' }));
    good(await recordDied(room, { animal: 'A3' }));
    const days = { from: room.date(5), to: room.date(9) };
    const { reply } = good(
      await planChange(room, {
        kind: 'arrival',
        animalKind: 'K1',
        ...days,
        count: 4,
        gaugeMm: 9,
        room: 'R1',
      }),
    );
    good(await cancelChange(room, { change: reply.change }));
    expect(plain(await home.see('/animals/A3'))).toContain('New knee, unsexed');
    expect(plain(await home.see('/gone'))).toContain('Arrival of 4, New knee');
  });

  test('is removed when nobody is of it', async () => {
    const home = await made();
    const answer = await home.send('/book/kinds/K1/remove', {});
    expect(answer.headers.get('location')).toBe('/book');
    expect((await home.app.request('/book/kinds/K1')).status).toBe(404);
  });

  test('needs a name of its own, said beside the field', async () => {
    const home = await made();
    const answer = await home.send('/book/kinds/new', {
      ...{ from: kind.code, name: 'Brachypelma nova', commonName: 'Another', why: '' },
    });
    expect(answer.status).toBe(422);
    expect(await answer.text()).toMatch(
      /id="new-kind-name-problem">&quot;Brachypelma nova&quot; already means/,
    );
  });
});

test('a kind renamed keeps its animals and says so in its history', async () => {
  const home = await filledHome();
  const answer = await home.send(`${KNEE}/rename`, {
    ...{ name: 'Brachypelma nova', commonName: 'Mexican red-knee', why: 'a revision' },
  });
  expect(answer.status).toBe(303);
  const text = plain(await home.see(KNEE));
  expect(text).toContain('6 of yours');
  expect(text).toContain(
    'Renamed Brachypelma hamorii to Brachypelma nova; the old name is still read in lists.',
  );
});

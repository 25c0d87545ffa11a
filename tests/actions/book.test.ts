/** The Book in the keeper's hands: what is changed, made, renamed, reset and taken back. */
import { describe, expect, test } from 'vitest';
import {
  type Answering,
  addAnimal,
  addKind,
  answerHere,
  askSunday,
  editAnimal,
  editKind,
  editRule,
  factsNow,
  loadSnapshot,
  removeKind,
  renameKind,
  resetRule,
  tryRule,
  undo,
} from '../../src/actions/index.ts';
import type { Kind, StageRule } from '../../src/husbandry/animals/index.ts';
import { latestActs, revision, rowsOf } from '../../src/store/index.ts';
import { furnished } from '../support/furnished.ts';
import { emptyHome } from '../support/house.ts';
import { facts } from '../support/room.ts';
import { freshContext, good, type Room } from '../support/store-at.ts';

const KNEE = 'brachypelma-hamorii';
const young = { kind: KNEE, stage: 'young' };

/** A context with the whole Book. */
const library = async (): Promise<Room> => ({ ...(await freshContext()), facts });
const kindOf = async (room: Room, code = KNEE): Promise<Kind> => (await factsNow(room)).kinds.get(code)!;
const ruleOf = async (room: Room, stage = 'young'): Promise<StageRule> =>
  (await kindOf(room)).stages.find((rule) => rule.stage === stage)!;

describe('a rule', () => {
  test('is changed in the figures named, and says since when and why', async () => {
    const room = await library();
    const done = good(
      await editRule(room, {
        ...young,
        intervalLeast: 5,
        intervalMost: '9 days',
        safeGapDays: 11,
        why: 'they stay plump',
      }),
    );
    const rule = await ruleOf(room);
    expect(rule.intervalDays).toMatchObject({
      value: [5, 9],
      status: 'yours',
      note: 'since 2024-10-04: they stay plump',
    });
    expect(rule.window).toBe(facts.kinds.get(KNEE)!.stages[0]!.window);
    expect(done.summary).toBe('Changed the rule of Mexican red-knee, spiderling: interval, safe gap');
  });

  test('keeps the day and why of what was changed before', async () => {
    const room = await library();
    good(await editRule(room, { ...young, intervalMost: 9, safeGapDays: 11, why: 'first' }));
    room.pass(3);
    good(await editRule(room, { ...young, intervalMost: 9, graceDays: 3, safeGapDays: 12, why: 'second' }));
    const rule = await ruleOf(room);
    expect(rule.intervalDays.note).toBe('since 2024-10-04: first');
    expect(rule.graceDays.note).toBe('since 2024-10-07: second');
  });

  test('changed back to what the Book says is no longer the keeper’s', async () => {
    const room = await library();
    good(await editRule(room, { ...young, windowIdeal: '65,5 %' }));
    expect((await ruleOf(room)).window.value.ideal).toBe(0.655);
    good(await editRule(room, { ...young, windowIdeal: 70 }));
    expect(await factsNow(room)).toBe(facts);
    expect(await room.store.ask(rowsOf('kind'))).toEqual([]);
  });

  test('is undone as one act, and done again', async () => {
    const room = await library();
    const { act } = good(await editRule(room, { ...young, graceDays: 1, urgency: 'ordinary' }));
    const undone = good(await undo(room, { act }));
    expect(await factsNow(room)).toBe(facts);
    good(await undo(room, { act: undone.act }));
    expect(await ruleOf(room)).toMatchObject({ urgency: 'ordinary', graceDays: { value: 1 } });
  });

  const REFUSED: readonly (readonly [object, string, string])[] = [
    [{ windowMin: 80 }, 'windowMin', '"80" is not below the best length; write less than 70 %.'],
    [{ windowMax: 60 }, 'windowMax', '"60" is not above the best length; write more than 70 %.'],
    [
      { killFirstAbove: 120 },
      'killFirstAbove',
      '"120" lies outside what is taken; write more than 70 % and at most 100 %, or leave it empty.',
    ],
    [{ intervalMost: 2 }, 'intervalMost', '"2" is less than the least (3); write 3 or more.'],
    [{ itemsLeast: 9 }, 'itemsMost', '"2" is less than the least (9); write 9 or more.'],
    [{ needLeast: 300 }, 'needMost', '"130" is less than the least (300); write 300 or more.'],
    [
      { intervalMost: 20 },
      'safeGapDays',
      '"10" days without food would be a danger too soon: a meal is missed only after 20 + 2 days; write 22 or more.',
    ],
    [
      { windowMin: 0.4 },
      'windowMin',
      '"0.4" is not a share from 1 to 150 %; write it in percent, such as 40.',
    ],
    [{ intervalLeast: 401 }, 'intervalLeast', '"401" is not a whole number of days from 1 to 400.'],
    [{ graceDays: 'soon' }, 'graceDays', '"soon" is not a whole number of days from 0 to 400.'],
    [{ accepts: [] }, 'accepts', 'Choose at least one kind of prey.'],
    [{ urgency: 'hungry' }, 'urgency', '"hungry" is not one of: fragile, ordinary, robust.'],
    [
      { accepts: ['flour beetle'] },
      'accepts',
      '"flour beetle" is all refused as too hard; choose softer prey as well.',
    ],
  ];

  test.each(REFUSED)('%o is refused beside %s', async (figures, field, sentence) => {
    const room = await library();
    const before = await room.store.ask(revision);
    expect(await editRule(room, { ...young, ...figures })).toMatchObject({
      ok: false,
      problem: { field, sentence },
    });
    expect(await room.store.ask(revision)).toBe(before);
  });

  test('of a stage the kind does not have, or a kind the Book does not have, is refused', async () => {
    const room = await library();
    expect(await editRule(room, { kind: KNEE, stage: 'larva' })).toMatchObject({
      problem: { code: 'unknown-stage' },
    });
    expect(await editRule(room, { kind: 'unicorn', stage: 'young' })).toMatchObject({
      problem: { code: 'unknown-kind' },
    });
  });

  test('that says so already is no act', async () => {
    const room = await library();
    expect(await editRule(room, { ...young, graceDays: 2 })).toMatchObject({
      problem: { code: 'nothing-changed' },
    });
  });

  test('edited by two people from the same page: the second is told', async () => {
    const room = await library();
    const asOf = await room.store.ask(revision);
    good(await editRule(room, { ...young, graceDays: 3, asOf }));
    expect(await editRule(room, { ...young, graceDays: 1, asOf })).toMatchObject({
      problem: {
        code: 'changed-meanwhile',
        sentence: expect.stringContaining('Mexican red-knee was changed while you wrote'),
      },
    });
    expect((await ruleOf(room)).graceDays.value).toBe(3);
  });

  test('a stage that moults no more has no moult to change', async () => {
    const room = await library();
    good(await editRule(room, { kind: KNEE, stage: 'mature male', moultDays: 90, graceDays: 12 }));
    expect((await ruleOf(room, 'mature male')).moult).toBeNull();
  });

  test('caps, hard prey and moults are changed as well', async () => {
    const room = await library();
    good(
      await editRule(room, {
        ...young,
        'cap-mealworm': '',
        'cap-cricket': 60,
        refusesHard: false,
        moultGrowth: 30,
        killFirstAbove: '',
      }),
    );
    const rule = await ruleOf(room);
    expect(rule.shareCaps.value).toEqual({ waxworm: 0.1, superworm: 0.3, cricket: 0.6 });
    expect(rule).toMatchObject({ refusesHard: false, window: { value: { killFirstAbove: null } } });
    expect(rule.moult!.lengthFactor.value).toBeCloseTo(1.3, 12);
  });
});

describe('reset', () => {
  const changed = async () => {
    const room = await library();
    good(await editRule(room, { ...young, graceDays: 1, retryDays: 4 }));
    good(await editRule(room, { kind: KNEE, stage: 'adult', retryDays: 20 }));
    good(await editKind(room, { kind: KNEE, bodyPerGauge: 45 }));
    return room;
  };

  test('takes back one field, one stage, a field of the kind, or all', async () => {
    const room = await changed();
    good(await resetRule(room, { ...young, field: 'graceDays' }));
    expect(await ruleOf(room)).toMatchObject({
      graceDays: facts.kinds.get(KNEE)!.stages[0]!.graceDays,
      retryDays: { value: 4 },
    });
    good(await resetRule(room, young));
    expect(await ruleOf(room)).toBe(facts.kinds.get(KNEE)!.stages[0]);
    good(await resetRule(room, { kind: KNEE, field: 'bodyPerGauge' }));
    expect((await kindOf(room)).bodyPerGauge).toBe(facts.kinds.get(KNEE)!.bodyPerGauge);
    good(await resetRule(room, { kind: KNEE }));
    expect(await factsNow(room)).toBe(facts);
  });

  test('of nothing is no act', async () => {
    const room = await library();
    expect(await resetRule(room, young)).toMatchObject({ problem: { code: 'nothing-changed' } });
  });

  test('that would leave the rest at odds is refused', async () => {
    const room = await library();
    good(await editRule(room, { ...young, intervalMost: 15, safeGapDays: 30 }));
    expect(await resetRule(room, { ...young, field: 'safeGapDays' })).toMatchObject({
      problem: { code: 'does-not-fit', sentence: expect.stringContaining('Or reset the stage.') },
    });
    good(await resetRule(room, young));
  });
});

describe('a kind as a whole', () => {
  test('is measured, sized and named otherwise', async () => {
    const room = await library();
    good(
      await editKind(room, {
        kind: KNEE,
        gauge: 'carapace length',
        bodyPerGauge: '120',
        adultLeast: 20,
        adultMost: 25,
        firstMost: 4,
        firstLeast: 3,
        aliases: 'Red Knee; knee, knee',
      }),
    );
    expect(await kindOf(room)).toMatchObject({
      gauge: 'carapace length',
      bodyPerGauge: { value: 1.2, status: 'yours' },
      adultGaugeMm: { value: [20, 25] },
      aliases: ['red knee', 'knee'],
    });
  });

  test.each([
    [{ adultLeast: 200 }, 'adultMost', 'is less than the smallest (200 mm)'],
    [{ firstMost: 400 }, 'firstMost', '"400 mm" is not below a grown one'],
    [{ bodyPerGauge: 4 }, 'bodyPerGauge', '"4" is not a share of the measure'],
    [{ massPerCubicMm: 0 }, 'massPerCubicMm', '"0" is not a mass'],
    [{ aliases: 'gbb' }, 'aliases', '"gbb" already means Chromatopelma cyaneopubescens'],
  ])('%o is refused beside %s', async (figures, field, sentence) => {
    const room = await library();
    expect(await editKind(room, { kind: KNEE, ...figures })).toMatchObject({
      problem: { field, sentence: expect.stringContaining(sentence) },
    });
  });

  test('is renamed, and every old name is kept among the others', async () => {
    const room = await library();
    const { summary } = good(
      await renameKind(room, { kind: KNEE, name: 'Brachypelma nova', commonName: 'New red-knee' }),
    );
    expect(summary).toBe(
      'Renamed Brachypelma hamorii to Brachypelma nova; the old name is still read in lists',
    );
    const kind = await kindOf(room);
    expect(kind).toMatchObject({ name: 'Brachypelma nova', commonName: 'New red-knee' });
    expect(kind.aliases).toEqual(
      expect.arrayContaining(['brachypelma hamorii', 'mexican red-knee', 'b. hamorii']),
    );
    good(await renameKind(room, { kind: KNEE, name: 'Brachypelma hamorii', commonName: 'Mexican red-knee' }));
    expect((await kindOf(room)).aliases).toEqual(
      expect.arrayContaining(['brachypelma nova', 'new red-knee', 'b. hamorii']),
    );
  });

  test('cannot take the name of another, nor can a general kind be renamed', async () => {
    const room = await library();
    const poecilotheria = { kind: KNEE, name: 'Grammostola pulchra', commonName: 'Knee' };
    expect(await renameKind(room, poecilotheria)).toMatchObject({
      problem: { code: 'name-taken', field: 'name' },
    });
    expect(await renameKind(room, { kind: 'tarantula', name: 'Theraphosa', commonName: 'x' })).toMatchObject({
      problem: { code: 'general-kind' },
    });
  });
});

describe('a kind of the keeper’s own', () => {
  const made = async () => {
    const room = { ...(await emptyHome()).room };
    good(await editRule(room, { ...young, graceDays: 1 }));
    const { reply } = good(
      await addKind(room, { from: KNEE, name: 'Brachypelma nova', commonName: 'New knee' }),
    );
    return { room, code: reply.kind };
  };

  test('begins with all the numbers of the other, also those changed, and goes its own way', async () => {
    const { room, code } = await made();
    expect(code).toBe('K1');
    good(await editRule(room, { ...young, graceDays: 3 }));
    const kind = await kindOf(room, code);
    expect(kind.stages[0]).toMatchObject({ graceDays: { value: 1, status: 'yours' } });
    expect(kind.cautions).toEqual(facts.kinds.get(KNEE)!.cautions);
    good(await resetRule(room, { kind: code }));
    expect(await kindOf(room, code)).toMatchObject({
      name: 'Brachypelma nova',
      aliases: [],
      stages: facts.kinds.get(KNEE)!.stages,
    });
  });

  test('can be copied once more', async () => {
    const { room, code } = await made();
    const { reply } = good(await addKind(room, { from: code, name: 'Other', commonName: 'Other one' }));
    expect(await kindOf(room, reply.kind)).toMatchObject({ madeFrom: KNEE, name: 'Other' });
  });

  test('needs a name of its own', async () => {
    const { room } = await made();
    expect(await addKind(room, { from: KNEE, name: 'Any', commonName: 'new KNEE' })).toMatchObject({
      problem: { code: 'name-taken', field: 'commonName' },
    });
  });

  test('lives in the room like any other, and is not removed from under its animals', async () => {
    const { room, code } = await made();
    const { reply } = good(await addAnimal(room, { name: 'Nova', kind: code, gaugeMm: 40, room: 'R1' }));
    expect((await loadSnapshot(room)).animals.map(({ kind }) => kind)).toEqual([code]);
    expect(await removeKind(room, { kind: code })).toMatchObject({
      problem: {
        code: 'kind-in-use',
        sentence: expect.stringContaining('"Brachypelma nova" is the kind of Nova'),
      },
    });
    good(await editAnimal(room, { animal: reply.animal, kind: KNEE }));
    good(await removeKind(room, { kind: code }));
    expect((await factsNow(room)).kinds.has(code)).toBe(false);
  });

  test('is not undone from under its animals, nor named again once it is gone', async () => {
    const { room, code } = await made();
    const [make] = await room.store.ask(latestActs(1));
    const { reply } = good(await addAnimal(room, { name: 'Nova', kind: code, gaugeMm: 40, room: 'R1' }));
    expect(await undo(room, { act: make!.id })).toMatchObject({ problem: { code: 'newer-stands' } });
    const { act } = good(await editAnimal(room, { animal: reply.animal, kind: KNEE }));
    const removed = good(await removeKind(room, { kind: code }));
    expect(await undo(room, { act })).toMatchObject({ problem: { code: 'newer-stands' } });
    good(await undo(room, { act: removed.act }));
    good(await undo(room, { act }));
    expect((await loadSnapshot(room)).animals.map(({ kind }) => kind)).toEqual([code]);
  });

  test('is what can be removed; a kind of the Book is not', async () => {
    const { room } = await made();
    expect(await removeKind(room, { kind: KNEE })).toMatchObject({ problem: { code: 'of-the-book' } });
  });
});

test('a change is tried without being written', async () => {
  const room = await furnished();
  const rule = { kind: 'test-spider', stage: 'young', intervalMost: 30, safeGapDays: 90 };
  const before = await room.store.ask(revision);
  const tried = good(await tryRule(room, rule));
  const days = ({ facts: book }: typeof tried.before) =>
    book.kinds.get('test-spider')!.stages[0]!.intervalDays.value;
  expect([days(tried.before), days(tried.after)]).toEqual([
    [5, 9],
    [5, 30],
  ]);
  expect(await room.store.ask(revision)).toBe(before);
  expect((await loadSnapshot(room)).facts).toBe(room.facts);
});

test('a kept answer is not shown for another rule, and an unchanged room keeps its own', async () => {
  const { room } = await emptyHome();
  good(await addAnimal(room, { name: 'Ash', kind: KNEE, gaugeMm: 50, room: 'R1', lastTaken: room.date(-8) }));
  let computed = 0;
  const answering: Answering = (question) => {
    computed += 1;
    return answerHere(question);
  };
  const first = good(await askSunday(room, { answering }));
  good(await askSunday(room, { answering }));
  expect(computed).toBe(1);
  const stage = { kind: KNEE, stage: 'juvenile' };
  good(await editRule(room, { ...stage, itemsLeast: 7, itemsMost: 8 }));
  const second = good(await askSunday(room, { answering }));
  expect(computed).toBe(2);
  expect(second.groups[0]!.itemsWantedMean).toBeGreaterThan(3 * first.groups[0]!.itemsWantedMean);
  const other = { ...room, facts: { ...room.facts, policy: { ...room.facts.policy } } };
  good(await askSunday(other, { answering }));
  expect(computed).toBe(2);
});

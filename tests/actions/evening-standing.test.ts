/** Two people write down one evening: what is new, the same, or contradicts; nothing is written twice. */
import { expect, test } from 'vitest';
import { loadSnapshot, recordDied, recordEvening, recordPremoult, undo } from '../../src/actions/index.ts';
import { furnished, offering } from '../support/furnished.ts';
import { good, type Room, TODAY } from '../support/store-at.ts';

const bulk = (animal: string) => ({ ...offering(animal), bulk: true });
const left = (animal: string) => ({ animal, outcome: 'not offered' as const });
const mark = (animal: string, outcome: 'premoult' | 'moulted' | 'died') => ({ animal, outcome });
const animalOf = async (room: Room, code: string) =>
  (await loadSnapshot(room)).animals.find((each) => each.code === code);
const outOf = async (room: Room, code: string) =>
  (await loadSnapshot(room)).bins
    .find((bin) => bin.code === code)!
    .events.flatMap((event) => (event.kind === 'offered' ? event.heads : []));

test('who is written down already is left out and told, and the others are recorded', async () => {
  const room = await furnished();
  good(await recordEvening(room, { rows: [bulk('A1')], formId: 'his' }));
  const hers = await recordEvening(room, { rows: [bulk('A1'), bulk('A2')], formId: 'hers' });
  expect(good(hers).reply).toMatchObject({ recorded: 1, already: ['A1'], against: [] });
  expect(await outOf(room, 'B1')).toEqual([5, 5]);
});

test('shelves sent from one page are not told of one another', async () => {
  const room = await furnished();
  good(await recordEvening(room, { rows: [bulk('A1'), mark('A3', 'died')], formId: 'page:left' }));
  const rest = await recordEvening(room, {
    rows: [bulk('A1'), bulk('A2'), mark('A3', 'died')],
    formId: 'page',
  });
  expect(good(rest).reply).toMatchObject({ recorded: 1, already: [], against: [] });
  expect((await animalOf(room, 'A3'))?.count).toBe(4);
});

test('a mark taken back after its page sent another shelf is that keeper’s later word', async () => {
  const room = await furnished();
  const marks = [left('A1'), mark('A2', 'premoult')];
  good(await recordEvening(room, { rows: marks, formId: 'page:left' }));
  const later = await recordEvening(room, { rows: [bulk('A1'), bulk('A2')], formId: 'page:right' });
  expect(good(later).reply).toMatchObject({
    recorded: 1,
    already: [],
    against: [{ animal: 'A2', said: 'offered' }],
  });
  expect((await animalOf(room, 'A1'))?.lastOffered).toBe(TODAY);
});

const CONTRADICTIONS = [
  ['premoult', offering('A1'), mark('A1', 'premoult')],
  ['moulted', offering('A1'), mark('A1', 'moulted')],
  ['not offered', offering('A1'), left('A1')],
  ['offered', offering('A1'), { ...offering('A1'), heads: 2 }],
  ['offered', mark('A1', 'premoult'), offering('A1')],
] as const;

test.each(CONTRADICTIONS)(
  '%s against what is written is told, and the record stands',
  async (said, his, hers) => {
    const room = await furnished();
    good(await recordEvening(room, { rows: [his] }));
    const before = await animalOf(room, 'A1');
    const done = good(await recordEvening(room, { rows: [hers, bulk('A2')] }));
    expect(done.reply).toMatchObject({ recorded: 1, already: [], against: [{ animal: 'A1', said }] });
    expect(await animalOf(room, 'A1')).toEqual(before);
    expect((await animalOf(room, 'A2'))?.lastOffered).toBe(TODAY);
  },
);

const ADDITIONS = [
  ['fed after all', left('A1'), { ...offering('A1'), heads: 3 }],
  ['in premoult, which is why', left('A1'), mark('A1', 'premoult')],
  ['found dead later that evening', offering('A1'), mark('A1', 'died')],
] as const;

test.each(ADDITIONS)('%s is added to what is written', async (_, his, hers) => {
  const room = await furnished();
  good(await recordEvening(room, { rows: [his] }));
  expect(good(await recordEvening(room, { rows: [hers] })).reply).toMatchObject({ recorded: 1, against: [] });
});

test('the same word twice has one effect, and a premoult seen by day counts for the evening', async () => {
  const room = await furnished();
  good(await recordPremoult(room, { animal: 'A2' }));
  const rows = [{ ...offering('A1'), bulk: false }, mark('A2', 'premoult')];
  good(await recordEvening(room, { rows, formId: 'his' }));
  expect(await recordEvening(room, { rows, formId: 'hers' })).toMatchObject({
    ok: false,
    problem: { code: 'nobody-left' },
  });
  expect(await outOf(room, 'B1')).toEqual([5]);
});

test('a meal for the dead is told by name and day, and nothing of that sheet is written', async () => {
  const room = await furnished();
  good(await recordDied(room, { animal: 'A1' }));
  const refused = await recordEvening(room, { rows: [bulk('A1'), bulk('A2')] });
  expect(refused).toMatchObject({
    ok: false,
    problem: {
      code: 'animal-left',
      sentence:
        'Ash (died on Fri 4 Oct) no longer lives here and cannot be fed. The rest is as you marked it.',
    },
  });
  expect((await animalOf(room, 'A2'))?.lastOffered).toBeNull();
});

test('an evening before its death may still be written down', async () => {
  const room = await furnished();
  room.pass(5);
  const { act } = good(await recordDied(room, { animal: 'A1' }));
  const early = { day: room.date(-3), rows: [offering('A1')] };
  expect((await loadSnapshot(room, TODAY + 2)).animals.map(({ code }) => code)).toContain('A1');
  expect(good(await recordEvening(room, early)).reply).toMatchObject({ recorded: 1 });
  expect(await animalOf(room, 'A1')).toBeUndefined();
  expect(await recordEvening(room, { day: room.date(0), rows: [offering('A1')] })).toMatchObject({
    ok: false,
  });
  good(await undo(room, { act }));
  expect((await animalOf(room, 'A1'))?.lastOffered).toBe(TODAY + 2);
});

test('an evening longer ago than two months is not written down', async () => {
  const room = await furnished();
  room.pass(100);
  const on = (days: number) => recordEvening(room, { day: room.date(-days), rows: [offering('A1')] });
  expect((await on(61)).ok).toBe(false);
  expect(await on(61)).toMatchObject({ problem: { code: 'too-long-ago', field: 'day' } });
  expect((await on(60)).ok).toBe(true);
});

test('more fed than a bin was thought to hold is kept', async () => {
  const room = await furnished();
  const greedy = { ...offering('A1'), heads: 900 };
  expect(good(await recordEvening(room, { rows: [greedy] })).reply).toMatchObject({ recorded: 1 });
  expect(await outOf(room, 'B1')).toEqual([900]);
});

/** Groups that lose members and split: heads are neither made nor lost. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  editAnimal,
  loadSnapshot,
  recordDied,
  recordEvening,
  splitGroup,
  undo,
} from '../../src/actions/index.ts';
import { latestActs, revision, rowNamed, rowsOf } from '../../src/store/index.ts';
import { furnished, offering } from '../support/furnished.ts';
import { good, type Room, TODAY } from '../support/store-at.ts';

const herd = async (room: Room) =>
  (await room.store.ask(rowsOf('animal', { where: 'left_day is null' }))).map(({ name, count }) => [
    name,
    count,
  ]);

describe('a group splits', () => {
  test('into one new group at a size and a shelf of its own, which says where it came from', async () => {
    const room = await furnished();
    const { reply } = good(
      await splitGroup(room, { animal: 'A3', heads: 2, into: 'group', gaugeMm: 14, shelf: 'B' }),
    );
    expect(reply.animals).toEqual(['A4']);
    expect(await room.store.ask(rowNamed('animal', 'A4'))).toMatchObject({
      name: 'Sac of five 2',
      count: 2,
      gaugeMm: 14,
      gaugeDay: TODAY,
      shelf: 'B',
      cameFrom: 'A3',
    });
    expect(await room.store.ask(rowNamed('animal', 'A3'))).toMatchObject({ count: 3, gaugeMm: 9, shelf: '' });
  });

  test('into single animals, numbered past the names in use', async () => {
    const room = await furnished();
    good(await editAnimal(room, { animal: 'A1', name: 'Sling 2' }));
    good(await splitGroup(room, { animal: 'A3', heads: 3, into: 'singles', name: 'Sling' }));
    expect(await herd(room)).toEqual([
      ['Sling 2', 1],
      ['Birch', 1],
      ['Sac of five', 2],
      ['Sling 3', 1],
      ['Sling 4', 1],
      ['Sling 5', 1],
    ]);
  });

  test('numbers go on past whole numbers only, whatever else a name ends in', async () => {
    const room = await furnished();
    good(await editAnimal(room, { animal: 'A1', name: 'Sling Infinity' }));
    good(await editAnimal(room, { animal: 'A2', name: 'Sling 1e9' }));
    good(await splitGroup(room, { animal: 'A3', heads: 1, into: 'singles', name: 'Sling' }));
    expect((await herd(room)).at(-1)).toEqual(['Sling 1', 1]);
  });

  test('on another shelf they have no place yet; beside the group they stand with it', async () => {
    const room = await furnished();
    good(await editAnimal(room, { animal: 'A3', shelfPosition: 2 }));
    for (const shelf of [undefined, 'B']) {
      const split = { animal: 'A3', heads: 1, into: 'singles' as const };
      good(await splitGroup(room, shelf === undefined ? split : { ...split, shelf }));
    }
    const places = await Promise.all(['A4', 'A5'].map((code) => room.store.ask(rowNamed('animal', code))));
    expect(places.map((row) => row?.shelfPosition)).toEqual([2, 0]);
  });

  test('no more at a time than can be kept singly', async () => {
    const room = await furnished();
    good(await editAnimal(room, { animal: 'A3', count: 5000 }));
    const split = await splitGroup(room, { animal: 'A3', heads: 1001, into: 'singles' });
    expect(split).toMatchObject({ ok: false, problem: { code: 'too-many', field: 'heads' } });
    good(await splitGroup(room, { animal: 'A3', heads: 1001, into: 'group' }));
  });

  test('keeps its record; the new ones know the last meal, so that nobody is fed twice', async () => {
    const room = await furnished();
    good(await recordEvening(room, { rows: [offering('A3')] }));
    room.pass(2);
    const { reply } = good(await splitGroup(room, { animal: 'A3', heads: 1, into: 'singles' }));
    const { animals } = await loadSnapshot(room);
    const of = (code: string) => animals.find((animal) => animal.code === code);
    expect(of('A3')).toMatchObject({ lastTaken: TODAY, count: 4 });
    expect(of(reply.animals[0]!)).toMatchObject({ lastTaken: TODAY, lastMoult: null });
  });

  test('never of its last head, never of one animal, never from an older page', async () => {
    const room = await furnished();
    const asOf = await room.store.ask(revision);
    const said = async (input: Parameters<typeof splitGroup>[1]) => {
      const answer = await splitGroup(room, input);
      return answer.ok ? 'done' : answer.problem.sentence;
    };
    expect(await said({ animal: 'A3', heads: 5, into: 'singles' })).toBe(
      '"5" leaves nobody of the 5: take out at most 4. The last one keeps this record.',
    );
    expect(await said({ animal: 'A1', heads: 1, into: 'singles' })).toBe('A1 is one animal, not a group.');
    good(await recordDied(room, { animal: 'A3' }));
    expect(await said({ animal: 'A3', heads: 2, into: 'group', asOf })).toContain(
      'was changed while you wrote',
    );
  });
});

test('heads are conserved: what lives and what died is what there was, through splits, deaths and undos', async () => {
  const step = fc.oneof(
    fc.record({
      kind: fc.constant('split' as const),
      of: fc.nat(9),
      heads: fc.integer({ min: 1, max: 6 }),
      singles: fc.boolean(),
    }),
    fc.record({ kind: fc.constant('died' as const), of: fc.nat(9), heads: fc.integer({ min: 1, max: 3 }) }),
    fc.record({ kind: fc.constant('undo' as const) }),
  );
  await fc.assert(
    fc.asyncProperty(fc.array(step, { minLength: 1, maxLength: 10 }), async (steps) => {
      const room = await furnished();
      const begun = (await room.store.ask(latestActs(1)))[0]!.id;
      for (const each of steps) {
        const codes = (await loadSnapshot(room)).animals.map(({ code }) => code);
        if (each.kind === 'undo') await undoLast(room, begun);
        else if (codes.length > 0) await act(room, codes[each.of % codes.length]!, each);
        expect((await alive(room)) + (await dead(room))).toBe(7);
      }
    }),
    { numRuns: 25 },
  );
});

type Step =
  | { readonly kind: 'split'; readonly heads: number; readonly singles: boolean }
  | { readonly kind: 'died'; readonly heads: number };

const act = (room: Room, animal: string, step: Step) =>
  step.kind === 'died'
    ? recordDied(room, { animal, heads: step.heads })
    : splitGroup(room, { animal, heads: step.heads, into: step.singles ? 'singles' : 'group' });

async function undoLast(room: Room, begun: number): Promise<void> {
  const last = (await room.store.ask(latestActs(50))).find(
    ({ id, voidedAt, verb }) => id > begun && voidedAt === null && verb !== 'undo',
  );
  if (last !== undefined) good(await undo(room, { act: last.id }));
}

const alive = async (room: Room) =>
  (await loadSnapshot(room)).animals.reduce((heads, { count }) => heads + count, 0);

const dead = (room: Room) =>
  room.store.ask({
    sql: "select coalesce(sum(heads), 0) as heads from entry where kind = 'died' and voided = 0",
    args: [],
    decode: (rows) => Number(rows[0]?.heads),
  });

/** Sacs: laid, pulled, out, first fed, come to nothing; every act on its day, and undone as a whole. */
import { describe, expect, test } from 'vitest';
import {
  cancelChange,
  editChange,
  endSac,
  hatchSac,
  loadSnapshot,
  noteSac,
  planChange,
  pullSac,
  settleSac,
  undo,
} from '../../src/actions/index.ts';
import { policy } from '../../src/facts/policy.ts';
import { layingToFirstFeed } from '../../src/facts/sacs.ts';
import { reasonToWait } from '../../src/husbandry/supply/index.ts';
import { nextMealOf } from '../../src/husbandry/supply/next-meal.ts';
import { furnished } from '../support/furnished.ts';
import { good, type Room, TODAY } from '../support/store-at.ts';

const laid = (room: Room) => ({ animal: 'A1', laidFrom: room.date(-10), count: 80, motherFasts: true });
const only = async (room: Room) => (await loadSnapshot(room)).changes[0]!;

test('a sac laid today shows its wave 60 to 90 days on, by the table of its group', async () => {
  const room = await furnished();
  good(await noteSac(room, { animal: 'A1', laidFrom: room.date(0), count: 80 }));
  expect(layingToFirstFeed.tarantula.value).toEqual([60, 90]);
  expect(await only(room)).toMatchObject({
    kind: 'sac',
    animalKind: 'test-spider',
    animal: 'A1',
    room: 'R1',
    from: TODAY + 60,
    to: TODAY + 90,
    gaugeMm: 9,
    chance: 0.7,
    sac: { laid: { from: TODAY, to: TODAY }, shareKept: 1, motherFasts: null },
  });
});

test('days found rather than seen widen the first feed, and days given stand', async () => {
  const room = await furnished();
  const dates = { laidFrom: room.date(-20), laidTo: room.date(-6) };
  good(await noteSac(room, { animal: 'A1', ...dates, count: 80 }));
  expect(await only(room)).toMatchObject({ from: TODAY + 40, to: TODAY + 84 });
  good(await noteSac(room, { animal: 'A2', ...dates, from: room.date(50), to: room.date(55), count: 80 }));
  expect((await loadSnapshot(room)).changes[1]).toMatchObject({ from: TODAY + 50, to: TODAY + 55 });
});

test('the mother is off her food until the first feed, and again fed when the sac is taken from her', async () => {
  const room = await furnished();
  good(await noteSac(room, laid(room)));
  const mother = async () => {
    const snapshot = { ...(await loadSnapshot(room)), facts: { ...room.facts, policy } };
    return { snapshot, animal: snapshot.animals.find(({ code }) => code === 'A1')! };
  };
  const fasting = await mother();
  expect(fasting.animal.fasts).toEqual({ from: TODAY - 10, to: TODAY + 50 });
  expect(reasonToWait(nextMealOf(fasting.snapshot, fasting.animal), TODAY)).toContain('guards its young');
  good(await pullSac(room, { change: 'P1', day: room.date(0) }));
  const after = await mother();
  expect(after.animal.fasts).toEqual({ from: TODAY - 10, to: TODAY - 1 });
  expect(reasonToWait(nextMealOf(after.snapshot, after.animal), TODAY)).toBeNull();
});

test('young that are out are certain, counted, and near their first feed', async () => {
  const room = await furnished();
  good(await noteSac(room, laid(room)));
  good(await hatchSac(room, { change: 'P1', day: room.date(-1), count: 64 }));
  expect(await only(room)).toMatchObject({
    chance: 1,
    count: 64,
    from: TODAY + 4,
    to: TODAY + 29,
    sac: { hatched: TODAY - 1, counted: true },
  });
});

test('with the first feed the young become a group, and the sac asks for nothing more', async () => {
  const room = await furnished();
  good(await noteSac(room, laid(room)));
  const done = good(
    await settleSac(room, { change: 'P1', day: room.date(0), count: 40, name: 'Little ones' }),
  );
  const { animals, changes } = await loadSnapshot(room);
  expect(animals.find(({ code }) => code === done.reply.animal)).toMatchObject({
    name: 'Little ones',
    kind: 'test-spider',
    count: 40,
    gaugeMm: 9,
    room: 'R1',
  });
  expect(changes[0]?.sac?.settled).toBe(TODAY);
  expect(await hatchSac(room, { change: 'P1', day: room.date(0) })).toMatchObject({
    ok: false,
    problem: { code: 'sac-settled' },
  });
  good(await undo(room, { act: done.act }));
  const before = await loadSnapshot(room);
  expect(before.changes[0]?.sac?.settled).toBeNull();
  expect(before.animals.map(({ code }) => code)).toEqual(['A1', 'A2', 'A3']);
});

test('a dud is over, and so is the fast', async () => {
  const room = await furnished();
  good(await noteSac(room, laid(room)));
  good(await endSac(room, { change: 'P1', day: room.date(0), how: 'dud' }));
  expect((await only(room)).sac).toMatchObject({
    ended: { how: 'dud', day: TODAY },
    motherFasts: { from: TODAY - 10, to: TODAY - 1 },
  });
  expect(await endSac(room, { change: 'P1', day: room.date(0), how: 'eaten' })).toMatchObject({
    ok: false,
    problem: { code: 'sac-ended' },
  });
});

test('a planned change is edited and cancelled, each as one act that can be undone', async () => {
  const room = await furnished();
  const dates = { from: room.date(10), to: room.date(12) };
  const plan = { kind: 'arrival' as const, animalKind: 'test-spider', count: 3, gaugeMm: 20, room: 'R1' };
  good(await planChange(room, { ...plan, ...dates }));
  const first = await only(room);
  const edited = good(await editChange(room, { change: 'P1', to: room.date(20), count: 5, chance: 0.5 }));
  expect(await only(room)).toEqual({ ...first, to: TODAY + 20, count: 5, chance: 0.5 });
  good(await undo(room, { act: edited.act }));
  expect(await only(room)).toEqual(first);
  const cancelled = good(await cancelChange(room, { change: 'P1' }));
  expect((await loadSnapshot(room)).changes).toEqual([]);
  good(await undo(room, { act: cancelled.act }));
  expect(await only(room)).toEqual(first);
});

describe('what cannot be', () => {
  test.each([
    ['a day to come', (room: Room) => ({ ...laid(room), laidFrom: room.date(1) }), 'after-today'],
    ['days that run backwards', (room: Room) => ({ ...laid(room), laidTo: room.date(-12) }), 'ends-swapped'],
    [
      'a first feed before the laying',
      (room: Room) => ({ ...laid(room), from: room.date(-20) }),
      'before-laid',
    ],
    ['a mother nobody knows', (room: Room) => ({ ...laid(room), animal: 'A99' }), 'unknown-animal'],
    ['no young', (room: Room) => ({ ...laid(room), count: 0 }), 'number-out-of-range'],
  ])('%s is refused in a sentence', async (_, given, code) => {
    const room = await furnished();
    const refused = await noteSac(room, given(room));
    expect(refused).toMatchObject({ ok: false });
    expect(refused.ok ? '' : refused.problem.code).toContain(code);
    expect((await loadSnapshot(room)).changes).toEqual([]);
  });

  test('a step before the sac was laid, or of something that is no sac', async () => {
    const room = await furnished();
    good(await noteSac(room, laid(room)));
    expect(await pullSac(room, { change: 'P1', day: room.date(-11) })).toMatchObject({
      problem: { code: 'before-laid', field: 'day' },
    });
    const dates = { from: room.date(1), to: room.date(1) };
    good(
      await planChange(room, {
        kind: 'arrival',
        animalKind: 'test-spider',
        count: 1,
        gaugeMm: 20,
        room: 'R1',
        ...dates,
      }),
    );
    expect(await pullSac(room, { change: 'P2', day: room.date(0) })).toMatchObject({
      problem: { code: 'not-a-sac' },
    });
    expect(await editChange(room, { change: 'P2', from: room.date(9) })).toMatchObject({
      problem: { code: 'ends-swapped' },
    });
  });
});

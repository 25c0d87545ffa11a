/** The feeding round: evening, morning, and what is assumed when nobody says. */
import { expect, test } from 'vitest';
import {
  loadSnapshot,
  recordEvening,
  recordMeasure,
  recordMorning,
  recordMoult,
  recordPremoult,
  undo,
} from '../../src/actions/index.ts';
import { furnished, offering } from '../support/furnished.ts';
import { good, type Room, TODAY } from '../support/store-at.ts';

const animal = async (room: Room, code: string) =>
  (await loadSnapshot(room)).animals.find((each) => each.code === code)!;
const eventsOf = async (room: Room, code: string) =>
  (await loadSnapshot(room)).bins.find((each) => each.code === code)!.events;

test('an offer is one fact: the animal was offered and the heads left the bin', async () => {
  const room = await furnished();
  good(await recordEvening(room, { rows: [offering('A1'), offering('A2')] }));
  expect(await animal(room, 'A1')).toMatchObject({
    lastOffered: TODAY,
    lastOutcome: 'offered',
    lastTaken: null,
  });
  expect(await eventsOf(room, 'B1')).toEqual([
    { day: TODAY, kind: 'counted', heads: 200, fromMm: 4, toMm: 6, grown: null },
    { day: TODAY, kind: 'offered', heads: 10, fromMm: 4, toMm: 6 },
  ]);
});

test('an offer nobody spoke of is taken as assumed on the next day', async () => {
  const room = await furnished();
  good(await recordEvening(room, { rows: [offering('A1')] }));
  room.pass(1);
  expect(await animal(room, 'A1')).toMatchObject({
    lastOutcome: 'taken (assumed)',
    lastTaken: TODAY,
    takenOnRecord: 1,
  });
});

test('the morning closes the exceptions by name and the rest as taken', async () => {
  const room = await furnished();
  good(await recordEvening(room, { rows: [offering('A1'), offering('A2'), offering('A3')] }));
  room.pass(1);
  good(
    await recordMorning(room, {
      exceptions: [
        { animal: 'A2', outcome: 'refused' },
        { animal: 'A3', outcome: 'part-taken' },
      ],
    }),
  );
  expect((await animal(room, 'A1')).lastOutcome).toBe('taken');
  expect(await animal(room, 'A2')).toMatchObject({
    lastOutcome: 'refused',
    lastTaken: null,
    offersOnRecord: 1,
  });
  expect((await animal(room, 'A3')).lastOutcome).toBe('part-taken');
});

test('found moulted in the morning is a refusal that teaches nothing and an animal that grew', async () => {
  const room = await furnished();
  good(await recordEvening(room, { rows: [offering('A1')] }));
  room.pass(1);
  good(await recordMorning(room, { exceptions: [{ animal: 'A1', outcome: 'moulted' }] }));
  expect(await animal(room, 'A1')).toMatchObject({
    gaugeMm: 50,
    gaugeAssumed: true,
    lastOutcome: 'refused',
    lastMoult: { earliest: TODAY, found: TODAY + 1 },
    offersOnRecord: 0,
  });
});

test('a second morning finds no evening open', async () => {
  const room = await furnished();
  good(await recordEvening(room, { rows: [offering('A1')] }));
  good(await recordMorning(room, {}));
  expect(await recordMorning(room, {})).toMatchObject({ ok: false, problem: { code: 'nothing-offered' } });
});

test('the button that records the rest leaves out whoever was recorded already', async () => {
  const room = await furnished();
  good(await recordEvening(room, { rows: [offering('A1')] }));
  const rest = [offering('A1'), offering('A2')].map((row) => ({ ...row, bulk: true }));
  expect(good(await recordEvening(room, { rows: rest })).reply).toMatchObject({ recorded: 1 });
  expect((await eventsOf(room, 'B1')).filter(({ kind }) => kind === 'offered')).toMatchObject([
    { heads: 5 },
    { heads: 5 },
  ]);
});

test('intervals are the days between accepted meals, oldest first', async () => {
  const room = await furnished();
  for (const days of [7, 9, 6, 8]) {
    good(await recordEvening(room, { rows: [offering('A1')] }));
    room.pass(days);
  }
  expect((await animal(room, 'A1')).intervalsOnRecord).toEqual([7, 9, 6]);
});

test('an interval with a refusal between two meals teaches nothing of how often an animal eats', async () => {
  const room = await furnished();
  for (const days of [7, 9]) {
    good(await recordEvening(room, { rows: [offering('A1')] }));
    room.pass(days);
  }
  good(await recordEvening(room, { rows: [offering('A1')] }));
  room.pass(1);
  good(await recordMorning(room, { exceptions: [{ animal: 'A1', outcome: 'refused' }] }));
  for (const days of [6, 5]) {
    good(await recordEvening(room, { rows: [offering('A1')] }));
    room.pass(days);
  }
  expect((await animal(room, 'A1')).intervalsOnRecord).toEqual([7, 6]);
});

test('what was given since the last moult is on record, whole prey alone', async () => {
  const room = await furnished();
  const givenTo = async (code: string) => (await animal(room, code)).givenOnRecord;
  good(await recordEvening(room, { rows: [offering('A1')] }));
  const one = await givenTo('A1');
  // Crickets of 4 to 6 mm are small beside this animal's best: five are a third of an item each.
  expect(one).toEqual({ meals: 1, items: expect.closeTo(5 / 3, 9) });
  room.pass(7);
  good(await recordEvening(room, { rows: [{ ...offering('A1'), heads: 10 }] }));
  expect(await givenTo('A1')).toEqual({ meals: 2, items: expect.closeTo(15 / 3, 9) });
  room.pass(7);
  const cut = { ...offering('A1'), portions: 2 };
  good(await recordEvening(room, { rows: [offering('A1'), { ...cut, bin: 'B2' }] }));
  expect(await givenTo('A1')).toEqual({ meals: 2, items: expect.closeTo(15 / 3, 9) });
  room.pass(2);
  good(await recordMoult(room, { animal: 'A1' }));
  expect(await givenTo('A1')).toEqual({ meals: 0, items: 0 });
});

test('of a long record the oldest evening is left out, which may have been cut short', async () => {
  const room = await furnished();
  for (let evening = 0; evening < 26; evening++) {
    good(await recordEvening(room, { rows: [offering('A1')] }));
    room.pass(1);
  }
  expect((await animal(room, 'A1')).givenOnRecord.meals).toBe(23);
});

test('what was given before an animal was measured tells nothing of its meals now', async () => {
  const room = await furnished();
  good(await recordEvening(room, { rows: [offering('A2')] }));
  room.pass(3);
  good(await recordMeasure(room, { animal: 'A2', gaugeMm: 60 }));
  expect((await animal(room, 'A2')).givenOnRecord).toEqual({ meals: 0, items: 0 });
});

test('an evening written down late sorts by its own day', async () => {
  const room = await furnished();
  room.pass(10);
  good(await recordEvening(room, { rows: [offering('A1')] }));
  good(await recordEvening(room, { day: room.date(-4), rows: [offering('A1')] }));
  expect((await animal(room, 'A1')).lastOffered).toBe(TODAY + 10);
  expect((await eventsOf(room, 'B1')).map(({ day }) => day - TODAY)).toEqual([0, 6, 10]);
});

test('a mark on the way is part of the round: premoult, moulted, died', async () => {
  const room = await furnished();
  const rows = [
    { animal: 'A1', outcome: 'premoult' as const },
    { animal: 'A2', outcome: 'moulted' as const },
    { animal: 'A3', outcome: 'died' as const },
  ];
  const { act } = good(await recordEvening(room, { rows }));
  expect((await animal(room, 'A1')).premoultSeen).toBe(TODAY);
  expect((await animal(room, 'A2')).gaugeMm).toBe(50);
  expect((await animal(room, 'A3')).count).toBe(4);
  good(await undo(room, { act }));
  expect((await animal(room, 'A3')).count).toBe(5);
});

test('a moult ends premoult; a measure made later is not overruled by a moult written down afterwards', async () => {
  const room = await furnished();
  good(await recordPremoult(room, { animal: 'A1' }));
  room.pass(5);
  good(await recordMeasure(room, { animal: 'A1', gaugeMm: 47 }));
  expect((await animal(room, 'A1')).premoultSeen).toBe(TODAY);
  good(await recordMoult(room, { animal: 'A1', found: room.date(-2) }));
  expect(await animal(room, 'A1')).toMatchObject({ premoultSeen: null, gaugeMm: 47, gaugeAssumed: false });
});

test('refusals in a row are counted by evening, until prey is taken or a moult is found', async () => {
  const room = await furnished();
  const refuse = async () => {
    good(await recordEvening(room, { rows: [offering('A1'), offering('A2')] }));
    room.pass(1);
    good(
      await recordMorning(room, {
        exceptions: [
          { animal: 'A1', outcome: 'refused' },
          { animal: 'A2', outcome: 'refused' },
        ],
      }),
    );
    room.pass(6);
  };
  await refuse();
  await refuse();
  expect((await animal(room, 'A1')).refusalsInRow).toBe(2);
  good(await recordMoult(room, { animal: 'A1' }));
  good(await recordEvening(room, { rows: [offering('A2')] }));
  expect((await animal(room, 'A2')).refusalsInRow).toBe(2);
  room.pass(1);
  expect((await animal(room, 'A1')).refusalsInRow).toBe(0);
  expect((await animal(room, 'A2')).refusalsInRow).toBe(0);
});

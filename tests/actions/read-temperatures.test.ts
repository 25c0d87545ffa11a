/** Temperatures read into a room: kept beside its setting, added to, and taken back. */
import { expect, test } from 'vitest';
import { editRoom, loadSnapshot, readTemperatures, undo } from '../../src/actions/index.ts';
import { livingRoom } from '../support/living-room.ts';
import { good, type Room } from '../support/store-at.ts';

const bytes = (...rows: string[]) => new TextEncoder().encode(['date,temp', ...rows].join('\n'));
const seriesOf = async (room: Room) =>
  (await loadSnapshot(room)).rooms.find(({ code }) => code === 'R1')?.series ?? null;

test('a file is told by its days, range and gaps; a later one adds to it, and each is taken back', async () => {
  const room = await livingRoom();
  const rows = [
    `${room.date(-5)} 06:00,18`,
    `${room.date(-5)} 15:00,27`,
    `${room.date(-2)},24`,
    'soonish,20',
  ];
  const first = good(await readTemperatures(room, { room: 'R1', bytes: bytes(...rows) }));
  expect(first.reply).toMatchObject({ days: 2, gaps: 2, leastC: 18, greatestC: 27, leftOut: 1 });
  expect(first.reply.why).toContain('"soonish" is not a date');
  expect(await seriesOf(room)).toMatchObject({ minC: [18, null, null, 24], maxC: [27, null, null, 24] });
  const more = bytes(`${room.date(-2)},20`, `${room.date(-1)},21`);
  const second = good(await readTemperatures(room, { room: 'R1', bytes: more }));
  expect(await seriesOf(room)).toMatchObject({
    minC: [18, null, null, 20, 21],
    maxC: [27, null, null, 20, 21],
  });
  good(await undo(room, { act: second.act }));
  expect(await seriesOf(room)).toMatchObject({ minC: [18, null, null, 24] });
  good(await undo(room, { act: first.act }));
  expect(await seriesOf(room)).toBeNull();
});

test('a room keeps its measured temperatures when its name or setting is changed', async () => {
  const room = await livingRoom();
  good(await readTemperatures(room, { room: 'R1', bytes: bytes(`${room.date(-1)},21`) }));
  good(await editRoom(room, { room: 'R1', name: 'Warm room', dayTempC: 27 }));
  expect(await seriesOf(room)).toMatchObject({ minC: [21] });
});

/** Nothing is written of an animal before it hatched, nor as seen here before it came. */
import { expect, test } from 'vitest';
import {
  addAnimal,
  editAnimal,
  loadSnapshot,
  recordDied,
  recordEvening,
  recordMatured,
  recordMeasure,
  recordMoult,
  recordPremoult,
} from '../../src/actions/index.ts';
import type { Result } from '../../src/husbandry/result.ts';
import { furnished, offering } from '../support/furnished.ts';
import { good } from '../support/store-at.ts';

const spider = { kind: 'test-spider', room: 'R1', gaugeMm: 40, name: 'Late' };
const problemOf = (result: Result<unknown>) => (result.ok ? null : result.problem);

test('whatever is seen here is refused before the day it came, with both days', async () => {
  const room = await furnished();
  good(await addAnimal(room, { ...spider, hereSince: room.date(-5) }));
  const [early, field] = [room.date(-6), 'day'];
  const sentence = '"2024-09-28" is before Late came to live here (2024-09-29).';
  for (const answer of [
    await recordMeasure(room, { animal: 'A4', gaugeMm: 41, day: early }),
    await recordPremoult(room, { animal: 'A4', day: early }),
    await recordMatured(room, { animal: 'A4', day: early }),
    await recordDied(room, { animal: 'A4', day: early }),
    await recordEvening(room, { day: early, rows: [offering('A4')] }),
  ])
    expect(problemOf(answer)).toMatchObject({ sentence, field });
  expect(problemOf(await recordMoult(room, { animal: 'A4', found: early }))).toMatchObject({
    sentence,
    field: 'found',
  });
  good(await recordMoult(room, { animal: 'A4', found: room.date(-5) }));
});

test('the button of an earlier evening leaves out who came later', async () => {
  const room = await furnished();
  good(await addAnimal(room, { ...spider, hereSince: room.date(0) }));
  const rows = ['A1', 'A4'].map((animal) => ({ ...offering(animal), bulk: true }));
  expect(good(await recordEvening(room, { day: room.date(-1), rows })).reply.recorded).toBe(1);
  const { animals } = await loadSnapshot(room);
  expect(animals.map(({ lastOffered }) => lastOffered === null)).toEqual([false, true, true, true]);
});

test('what a former keeper told may be older than its coming, but not than the animal', async () => {
  const room = await furnished();
  const told = { ...spider, hereSince: room.date(-5), lastMoult: room.date(-30) };
  good(await addAnimal(room, told));
  expect(problemOf(await addAnimal(room, { ...told, hatchedDay: room.date(-20) }))).toMatchObject({
    sentence: '"2024-09-04" is before Late hatched (2024-09-14).',
    field: 'lastMoult',
  });
  expect(problemOf(await editAnimal(room, { animal: 'A4', hatchedDay: room.date(-2) }))).toMatchObject({
    field: 'hereSince',
  });
  expect(problemOf(await addAnimal(room, { ...spider, hatchedDay: room.date(1) }))).toMatchObject({
    code: 'after-today',
    field: 'hatchedDay',
  });
});

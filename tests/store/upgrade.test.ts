/** A database of the first schema grows to the newest with all that is in it, and what was done there can be undone. */
import { join } from 'node:path';
import { createClient } from '@libsql/client';
import { expect, onTestFinished, test } from 'vitest';
import { editChange, undo } from '../../src/actions/index.ts';
import { backupsOf, openStore, rowsOf } from '../../src/store/index.ts';
import { first } from '../../src/store/migrations/001-first.ts';
import { freshContext, freshFolder, good, MOMENT, urlOf } from '../support/store-at.ts';

/** A planned change as the first schema wrote it, in its table and in the image kept of its act. */
const PLANNED = {
  code: 'P1',
  kind: 'sac',
  animalKind: 'test-spider',
  fromDay: 20_030,
  toDay: 20_040,
  chance: 0.7,
  count: 60,
  gaugeMm: 6,
  room: 'R1',
  animal: null,
  cancelled: false,
  demo: false,
};

async function firstSchema(file: string): Promise<void> {
  const client = createClient({ url: urlOf(file) });
  await client.batch(
    [
      'create table schema_version (version integer not null) strict',
      ...first.statements,
      'insert into schema_version (version) values (1)',
      "insert into room values ('R1', 'Room', 26, 22, 0)",
      `insert into planned_change values ('P1', 'sac', 'test-spider', 20030, 20040, 0.7, 60, 6, 'R1', null, 0, 0)`,
      `insert into act (form_id, verb, summary, written_at, civil_day, reply) values
         ('f1', 'plan-change', 'Planned: sac of 60', '${MOMENT}', 20000, '{"change":"P1"}')`,
      {
        sql: "insert into change (act, noun, code, before, after) values (1, 'planned_change', 'P1', null, ?)",
        args: [JSON.stringify(PLANNED)],
      },
    ],
    'write',
  );
  client.close();
}

test('a sac planned before sacs had dates is kept, can be edited, and its planning undone', async () => {
  const file = join(freshFolder(), 'larder.db');
  await firstSchema(file);
  const store = good(await openStore({ place: { url: urlOf(file) }, moment: MOMENT }));
  onTestFinished(() => store.close());
  expect(backupsOf(file)).toHaveLength(1);
  const rows = () => store.ask(rowsOf('planned_change'));
  expect(await rows()).toEqual([{ ...PLANNED, sac: null }]);
  const room = await freshContext(store);
  const edited = good(await editChange(room, { change: 'P1', count: 70 }));
  good(await undo(room, { act: edited.act }));
  expect(await rows()).toEqual([{ ...PLANNED, sac: null }]);
  good(await undo(room, { act: 1 }));
  expect(await rows()).toEqual([]);
});

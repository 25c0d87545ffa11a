/** A database of an older schema grows, and what was done in it can still be undone. */
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { undo } from '../../src/actions/index.ts';
import { openStore, rowsOf } from '../../src/store/index.ts';
import { migrations } from '../../src/store/migrations/index.ts';
import { freshContext, freshFolder, freshStore, good, MOMENT, TODAY, urlOf } from '../support/store-at.ts';

const BEFORE = {
  code: 'A1',
  name: 'Ash',
  kind: 'test-spider',
  count: 1,
  sex: 'unsexed',
  matured: false,
  gaugeMm: 40,
  gaugeDay: TODAY,
  gaugeAssumed: false,
  room: 'R1',
  shelf: 'A',
  shelfPosition: 0,
  stageOverride: null,
  label: '',
  notes: '',
  leftReason: null,
  leftDay: null,
  demo: false,
};

test('an act of schema 1 is undone in today’s schema, byte for byte', async () => {
  const url = urlOf(join(freshFolder(), 'larder.db'));
  const old = good(await openStore({ place: { url }, moment: MOMENT, steps: migrations.slice(0, 1) }));
  await old.write(async (tx) => {
    await tx.run("insert into room values ('R1', 'Warm room', 26, 22, 0)");
    await tx.run(
      `insert into animal values ('A1', 'Ash', 'test-spider', 1, 'unsexed', 0, 40, ${TODAY}, 0, 'R1', 'B', 0, null,
         '', '', null, null, 0)`,
    );
    await tx.run("insert into act values (1, null, 'edit-animal', 'Changed A1', ?, ?, 'null', null, null)", [
      MOMENT,
      TODAY,
    ]);
    await tx.run("insert into change values (1, 1, 'animal', 'A1', ?, ?)", [
      JSON.stringify(BEFORE),
      JSON.stringify({ ...BEFORE, shelf: 'B' }),
    ]);
    return { ok: true, value: null };
  });
  await old.close();
  const context = await freshContext(await freshStore(url));
  good(await undo(context, { act: 1 }));
  expect(await context.store.ask(rowsOf('animal'))).toEqual([
    { ...BEFORE, hatchedDay: null, hereSince: null, cameFrom: null, lentTo: null, backDay: null },
  ]);
});

/** Writing: one after another, whole or not at all, and patient with locks of other programs. */
import { join } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import { createClient } from '@libsql/client';
import { expect, test } from 'vitest';
import { addRoom } from '../../src/actions/index.ts';
import { problem } from '../../src/husbandry/problems.ts';
import { err, ok } from '../../src/husbandry/result.ts';
import { keepAnswer, keptAnswer, openStore, revision, rowsOf } from '../../src/store/index.ts';
import { freshContext, freshFolder, freshStore, good, MOMENT, urlOf } from '../support/store-at.ts';

const room = { name: 'Cellar', dayTempC: 20, nightTempC: 18 };
const insert = "insert into counter (name, last) values ('X', 1)";
const counted = {
  sql: "select last from counter where name = 'X'",
  args: [],
  decode: (rows: readonly unknown[]) => rows.length,
};

test('fifty writes at once are written one after another', async () => {
  const context = await freshContext();
  const done = await Promise.all(Array.from({ length: 50 }, () => addRoom(context, room)));
  expect(new Set(done.map((each) => good(each).reply.room)).size).toBe(50);
  expect(await context.store.ask(revision)).toBe(50);
});

test('a Problem leaves nothing behind', async () => {
  const store = await freshStore();
  const refused = await store.write(async (tx) => {
    await tx.run(insert);
    return err(problem('no', 'No.'));
  });
  expect(refused.ok).toBe(false);
  expect(await store.ask(counted)).toBe(0);
});

test('an error is thrown on, leaves nothing behind, and the next write goes through', async () => {
  const store = await freshStore();
  const broken = store.write(async (tx) => {
    await tx.run(insert);
    await tx.run('insert into nowhere values (1)');
    return ok(null);
  });
  await expect(broken).rejects.toThrow('nowhere');
  expect(await store.ask(counted)).toBe(0);
  good(await store.write(async (tx) => ok(await tx.run(insert))));
  expect(await store.ask(counted)).toBe(1);
});

test('a question the database cannot answer is an error, not an empty answer', async () => {
  const store = await freshStore();
  await expect(store.ask({ ...counted, sql: 'select last from nowhere' })).rejects.toThrow('nowhere');
});

test('a lock held for a second by another program is waited for', async () => {
  const url = urlOf(join(freshFolder(), 'larder.db'));
  const context = await freshContext(good(await openStore({ place: { url }, moment: MOMENT })));
  const other = createClient({ url });
  const held = await other.transaction('write');
  const writing = addRoom(context, room);
  await pause(1000);
  expect(await context.store.ask(rowsOf('room'))).toEqual([]);
  await held.rollback();
  good(await writing);
  other.close();
  await context.store.close();
});

test('an answer is kept for one revision and one engine', async () => {
  const store = await freshStore();
  const keeping = { key: 'week', revision: 4, engine: 'e1' };
  good(await keepAnswer(store, keeping, '{"verdict":"lasts"}'));
  expect(await store.ask(keptAnswer(keeping))).toBe('{"verdict":"lasts"}');
  expect(await store.ask(keptAnswer({ ...keeping, revision: 5 }))).toBeNull();
  expect(await store.ask(keptAnswer({ ...keeping, engine: 'e2' }))).toBeNull();
});

test('two hundred answers are kept, those of the oldest revisions go first', async () => {
  const store = await freshStore();
  const kept = (at: number) => ({ key: `plan ${at}`, revision: at, engine: 'e1' });
  for (let at = 1; at <= 203; at++) good(await keepAnswer(store, kept(at), `${at}`));
  const found = await Promise.all([1, 3, 4, 203].map((at) => store.ask(keptAnswer(kept(at)))));
  expect(found).toEqual([null, null, '4', '203']);
});

test('foreign keys hold and the log is written through', async () => {
  const store = await freshStore();
  const orphan = store.write(async (tx) =>
    ok(
      await tx.run(
        "insert into delivery values ('D1', 'x', 'B9', 1, 1, 1, 1, 'expected', 0, null, null, null, null)",
      ),
    ),
  );
  await expect(orphan).rejects.toThrow('FOREIGN KEY');
  expect(
    await store.ask({ sql: 'PRAGMA journal_mode', args: [], decode: (rows) => rows[0]?.journal_mode }),
  ).toBe('wal');
});

test('a full disk is a Problem, reads go on, and the next write goes through', async () => {
  const store = await freshStore();
  const bulk = { key: 'bulk', revision: 1, engine: 'e1' };
  const full = await store.write(async (tx) => {
    await tx.run('PRAGMA max_page_count = 1');
    await tx.run('insert into kept values (?, 1, ?, ?)', ['bulk', 'e1', 'x'.repeat(1_000_000)]);
    return ok(null);
  });
  expect(full).toMatchObject({ ok: false, problem: { code: 'disk-full' } });
  expect(await store.ask(keptAnswer(bulk))).toBeNull();
  good(await keepAnswer(store, bulk, 'small'));
});

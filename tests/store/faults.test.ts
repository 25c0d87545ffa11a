/** A fault at any call to the database leaves the state before or after, never between. */
import { expect, test } from 'vitest';
import { importRows, recordEvening, recordMorning, undo } from '../../src/actions/index.ts';
import type { Store, Tx } from '../../src/store/index.ts';
import { furnished, offering } from '../support/furnished.ts';
import { good, type Room } from '../support/store-at.ts';

const TABLES = ['act', 'change', 'entry', 'animal', 'bin', 'counter'];

/** Everything the database holds. */
const everything = (room: Room) =>
  Promise.all(
    TABLES.map((table) =>
      room.store.ask({ sql: `select * from ${table}`, args: [], decode: (rows) => JSON.stringify(rows) }),
    ),
  );

/** The same store, whose n-th call within a write fails. */
function failingAt(store: Store, nth: number): Store {
  let calls = 0;
  const count = (): void => {
    calls += 1;
    if (calls === nth) throw new Error('the disk is gone');
  };
  const failing = (tx: Tx): Tx => ({
    ask: async (query) => {
      count();
      return tx.ask(query);
    },
    run: async (sql, args) => {
      count();
      return tx.run(sql, args);
    },
  });
  return { ...store, write: (work) => store.write((tx) => work(failing(tx))) };
}

const rows = [
  offering('A1'),
  { animal: 'A2', outcome: 'moulted' as const },
  { animal: 'A3', outcome: 'died' as const },
];
const animals = { new: [{ kind: 'test-spider', room: 'R1', gaugeMm: 12 }], changed: [] };
const lots = [{ newBin: { species: 'test-cricket', room: 'R1' }, lot: { heads: 9, fromMm: 3, toMm: 4 } }];
const verbs: readonly [string, (room: Room) => Promise<{ readonly ok: boolean }>][] = [
  ['an evening', (room) => recordEvening(room, { day: room.date(-1), rows })],
  ['a morning', (room) => recordMorning(room, {})],
  ['an import', (room) => importRows(room, { animals, lots })],
  ['an undo', (room) => undo(room, { act: 7 })],
];

test.each(verbs)('%s is whole or not at all', async (_name, perform) => {
  const room = await furnished();
  good(await recordEvening(room, { rows }));
  const before = await everything(room);
  for (let nth = 1; ; nth += 1) {
    const tried = await perform({ ...room, store: failingAt(room.store, nth) }).catch(() => null);
    if (tried !== null) {
      expect(tried.ok).toBe(true);
      expect(nth).toBeGreaterThan(4);
      break;
    }
    expect(await everything(room)).toEqual(before);
  }
  expect(await everything(room)).not.toEqual(before);
});

/** Does something to the database of a terminal between two commands. */
import { type Context, nowIn } from '../../src/actions/index.ts';
import { openStore } from '../../src/store/index.ts';
import { INSTANT, type Terminal } from './command.ts';
import { facts } from './room.ts';
import { good, urlOf } from './store-at.ts';

export async function onDatabase({ db }: Terminal, work: (context: Context) => Promise<void>): Promise<void> {
  const clock = () => nowIn('UTC', INSTANT);
  const store = good(await openStore({ place: { url: urlOf(db) }, moment: clock().moment }));
  await work({ store, facts, clock });
  await store.close();
}

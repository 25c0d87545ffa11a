/** The Book as it stands: as it came, with what the keeper changed. */
import { factsWith } from '../facts/own/facts-with.ts';
import type { ChangedKind } from '../husbandry/animals/index.ts';
import type { Facts } from '../husbandry/snapshot.ts';
import { type Query, rowsOf, type Tx } from '../store/index.ts';
import type { Context } from './context.ts';

/** What the keeper changed of kinds, and kinds of the keeper's own. */
export const changedKinds: Query<readonly ChangedKind[]> = rowsOf('kind', { order: 'length(code), code' });

/** The Book now. */
export const factsNow = async ({ store, facts }: Context): Promise<Facts> =>
  factsWith(facts, await store.ask(changedKinds));

/** The Book as a write finds it. */
export const factsIn = async (tx: Tx, book: Facts): Promise<Facts> =>
  factsWith(book, await tx.ask(changedKinds));

/** The Book as it stands: as it came, with what the keeper changed. */
import { factsWith } from '../facts/own/facts-with.ts';
import type { Facts } from '../husbandry/snapshot.ts';
import { rowsOf, type Tx } from '../store/index.ts';
import type { Context } from './context.ts';

/** What the keeper changed: kinds, and kinds of the keeper's own; numbers of prey species and of the method. */
export const bookChanges = {
  kinds: rowsOf('kind', { order: 'length(code), code' }),
  numbers: rowsOf('numbers', { order: 'code' }),
};

/** The Book now. */
export const factsNow = async ({ store, facts }: Context): Promise<Facts> =>
  factsWith(facts, await store.askAll(bookChanges));

/** The Book as a write finds it. */
export const factsIn = async (tx: Tx, book: Facts): Promise<Facts> =>
  factsWith(book, { kinds: await tx.ask(bookChanges.kinds), numbers: await tx.ask(bookChanges.numbers) });

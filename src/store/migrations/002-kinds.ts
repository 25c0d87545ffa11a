/** Schema 2: what the keeper changed of the Book's kinds, and kinds of the keeper's own. */
import type { Migration } from './migration.ts';

export const kinds: Migration = {
  version: 2,
  statements: ['create table kind (code text primary key, base text, changes text not null) strict'],
};

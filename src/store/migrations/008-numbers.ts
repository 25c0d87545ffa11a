/** Schema 8: what the keeper changed of the numbers of prey species and of the method. */
import type { Migration } from './migration.ts';

export const numbers: Migration = {
  version: 8,
  statements: ['create table numbers (code text primary key, changes text not null) strict'],
};

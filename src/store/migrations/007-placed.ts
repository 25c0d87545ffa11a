/** Schema 7: where a bin was placed is found without reading all that was ever fed from it. */
import type { Migration } from './migration.ts';

export const placed: Migration = {
  version: 7,
  statements: [
    `create index entry_placed on entry (bin, civil_day, id) where voided = 0 and kind = 'placed'`,
  ],
};

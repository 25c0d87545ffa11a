/** Schema 10: a bin may be left alone until a day. */
import type { Migration } from './migration.ts';

export const rests: Migration = {
  version: 10,
  statements: [
    'alter table bin add column rests_until integer',
    ...['before', 'after'].map(
      (image) =>
        `update change set ${image} = json_insert(${image}, '$.restsUntil', null) where noun = 'bin'`,
    ),
  ],
};

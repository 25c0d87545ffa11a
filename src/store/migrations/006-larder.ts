/** Schema 6: temperatures measured in a room, and of a bin its own temperatures, its space, origin and quarantine. */
import type { Migration } from './migration.ts';

export const larder: Migration = {
  version: 6,
  statements: [
    "alter table room add column series text not null default 'null'",
    "alter table bin add column own_c text not null default 'null'",
    "alter table bin add column space text not null default 'null'",
    "alter table bin add column origin text not null default ''",
    'alter table bin add column quarantine_until integer',
    `update change set before = json_insert(before, '$.series', null), after = json_insert(after, '$.series', null)
     where noun = 'room'`,
    ...['before', 'after'].map(
      (image) => `update change set ${image} = json_insert(${image}, '$.ownC', null, '$.space', null,
       '$.origin', '', '$.quarantineUntil', null) where noun = 'bin'`,
    ),
  ],
};

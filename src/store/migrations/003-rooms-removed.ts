/** Schema 3: rooms can be removed and brought back. */
import type { Migration } from './migration.ts';

export const roomsRemoved: Migration = {
  version: 3,
  statements: [
    'alter table room add column closed integer not null default 0',
    `update change set before = json_insert(before, '$.closed', json('false')),
       after = json_insert(after, '$.closed', json('false')) where noun = 'room'`,
  ],
};

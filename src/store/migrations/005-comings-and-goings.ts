/** Schema 5: since when an animal lives and lives here, the group it came from, and who has it on loan until when. */
import type { Migration } from './migration.ts';

const COLUMNS = [
  'hatched_day integer',
  'here_since integer',
  'came_from text',
  'lent_to text',
  'back_day integer',
];

/** In the order of the columns: an undo compares whole images. */
const NOT_KNOWN =
  "'$.hatchedDay', null, '$.hereSince', null, '$.cameFrom', null, '$.lentTo', null, '$.backDay', null";

export const comingsAndGoings: Migration = {
  version: 5,
  statements: [
    ...COLUMNS.map((column) => `alter table animal add column ${column}`),
    `update change set before = json_insert(before, ${NOT_KNOWN}), after = json_insert(after, ${NOT_KNOWN})
     where noun = 'animal'`,
  ],
};

/** Schema 4: what is known of a sac, kept with its planned change and in the images of what was changed before. */
import type { Migration } from './migration.ts';

const inImages = (side: 'before' | 'after'): string =>
  `update change set ${side} = json_set(${side}, '$.sac', json('null'))
   where noun = 'planned_change' and ${side} is not null`;

export const sacs: Migration = {
  version: 4,
  statements: [
    `alter table planned_change add column sac text not null default 'null'`,
    inImages('before'),
    inImages('after'),
  ],
};

/** Whether the demo room is here. */
import { jsonQuery, type Query } from './query.ts';

export const demoIsHere: Query<boolean> = jsonQuery(
  `select json(iif(exists (select 1 from animal where demo = 1) or exists (select 1 from bin where demo = 1),
     'true', 'false')) as body`,
);

/** What is written down of one evening's round: by animal, with the act that wrote it. */
import type { DayNumber } from '../husbandry/calendar.ts';
import type { AnimalEntryKind } from './entries.ts';
import { jsonQuery, type Query } from './query.ts';

export interface EveningLine {
  readonly animal: string;
  readonly kind: Extract<AnimalEntryKind, 'offered' | 'skipped' | 'premoult' | 'moulted' | 'died'>;
  readonly bin: string | null;
  readonly heads: number | null;
  readonly act: number;
  readonly summary: string;
  readonly writtenAt: string;
  readonly formId: string | null;
}

/** Meals offered or left out and what was seen on the way, in the order written. */
export const eveningLines = (evening: DayNumber): Query<readonly EveningLine[]> =>
  jsonQuery(
    `select json_group_array(json_object('animal', animal, 'kind', kind, 'bin', bin, 'heads', heads, 'act', act,
       'summary', summary, 'writtenAt', written_at, 'formId', form_id)) as body from (
       select e.*, a.summary, a.written_at, a.form_id from entry e join act a on a.id = e.act
       where e.civil_day = ? and e.voided = 0 and e.animal in (select code from animal)
         and e.kind in ('offered', 'skipped', 'premoult', 'moulted', 'died') order by e.id)`,
    [evening],
  );

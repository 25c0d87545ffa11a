/** What the keeper wrote on and about the animals that live here, beside what they are fed by. */
import type { DayNumber } from '../husbandry/calendar.ts';
import { jsonQuery, type Query } from './query.ts';

export interface AnimalMark {
  readonly code: string;
  /** The keeper's own mark on the enclosure. */
  readonly label: string;
  readonly notes: string;
  /** Day the size holds for: measured, moulted or entered. */
  readonly gaugeDay: DayNumber;
}

export const animalMarks: Query<readonly AnimalMark[]> = jsonQuery(
  `select json_group_array(json_object('code', code, 'label', label, 'notes', notes, 'gaugeDay', gauge_day)) as body
   from animal where left_day is null`,
);

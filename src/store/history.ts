/** What happened to one animal or bin: the acts that touched it, undone ones too, with what each says of it. */
import type { DayNumber } from '../husbandry/calendar.ts';
import type { Mm } from '../husbandry/units.ts';
import type { AnimalEntryKind, BinEntryKind, EntryDetails } from './entries.ts';
import type { Rows } from './nouns.ts';
import { jsonQuery, type Query } from './query.ts';

/** One line of the journal. */
export interface EntryLine {
  readonly day: DayNumber;
  readonly kind: AnimalEntryKind | BinEntryKind;
  readonly animal: string | null;
  readonly bin: string | null;
  readonly heads: number | null;
  readonly fromMm: Mm | null;
  readonly toMm: Mm | null;
  readonly details: EntryDetails;
}

export interface ActAbout {
  readonly act: number;
  readonly verb: string;
  readonly summary: string;
  readonly day: DayNumber;
  readonly writtenAt: string;
  readonly undone: boolean;
  /** Lines about this animal or bin; none when the act only changed its row. */
  readonly lines: readonly EntryLine[];
  /** The row before and after, when the act changed it; before is null for one that was new. */
  readonly change: RowChange | null;
}

export type RowChange =
  | { readonly noun: 'animal'; readonly before: Rows['animal'] | null; readonly after: Rows['animal'] | null }
  | { readonly noun: 'bin'; readonly before: Rows['bin'] | null; readonly after: Rows['bin'] | null };

const ACTS_SHOWN = 200;
const LINE = `'day', civil_day, 'kind', kind, 'animal', animal, 'bin', bin, 'heads', heads, 'fromMm', from_mm,
  'toMm', to_mm, 'details', json(details)`;

/** The latest acts that touched one animal or bin, newest first; undos are told by what they undid. */
export const actsAbout = (
  noun: 'animal' | 'bin',
  code: string,
  most = ACTS_SHOWN,
): Query<readonly ActAbout[]> => ({
  ...jsonQuery<readonly ActAbout[]>(
    `select json_group_array(json_object('act', id, 'verb', verb, 'summary', summary, 'day', civil_day,
       'writtenAt', written_at, 'undone', json(iif(voided_at is null, 'false', 'true')),
       'lines', json((select json_group_array(json_object(${LINE})) from (
         select * from entry where act = a.id and ${noun} = :code order by id))),
       'change', (select json_object('noun', noun, 'before', json(before), 'after', json(after)) from change
         where act = a.id and noun = '${noun}' and code = :code))) as body
     from (select * from act
       where undoes is null and id in (
         select act from entry where ${noun} = :code
         union select act from change where noun = '${noun}' and code = :code)
       order by id desc limit :most) a`,
  ),
  args: { code, most },
});

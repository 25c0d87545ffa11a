/** Animals that are lent: who has them, since when, and when they are expected back. */
import type { DayNumber } from '../../src/husbandry/calendar.ts';
import { ago, counted, recordDay } from '../format.ts';
import { paths } from '../paths.ts';

export interface LentRow {
  readonly code: string;
  readonly name: string;
  readonly kindName: string;
  readonly count: number;
  readonly to: string;
  readonly since: DayNumber;
  /** Day it is expected back; null when no day was set. */
  readonly back: DayNumber | null;
}

export const Lent = ({ rows, today }: { rows: readonly LentRow[]; today: DayNumber }) =>
  rows.length === 0 ? null : (
    <section class="lent" aria-labelledby="lent">
      <h2 id="lent">{counted(rows.length, 'is lent out', 'are lent out')}</h2>
      <p class="note">Not fed here until they are back; codes and records wait for them.</p>
      <ul class="lines">
        {rows.map((row) => (
          <li>
            <span>
              <strong>{row.name}</strong>
              {row.count > 1 ? ` × ${row.count}` : ''}, {row.kindName}: with {row.to} since{' '}
              {recordDay(row.since)}, {backWords(row.back, today)}
            </span>
            <a class="button quiet small" href={paths.animalAct(row.code, 'came-back')}>
              It is back<span class="unseen">: {row.name}</span>
            </a>
          </li>
        ))}
      </ul>
    </section>
  );

function backWords(back: DayNumber | null, today: DayNumber): string {
  if (back === null) return 'no day set.';
  return back < today ? `expected back ${ago(today - back)}.` : `back by ${recordDay(back)}.`;
}

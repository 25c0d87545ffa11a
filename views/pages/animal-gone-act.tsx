/** Something written down of an animal that has left: a sentence, and what was typed. */
import { civilDate, type DayNumber } from '../../src/husbandry/calendar.ts';
import { recordDay } from '../format.ts';
import { Layout, type Shell } from '../layout.tsx';
import type { Refused } from '../partials/form.tsx';
import { paths } from '../paths.ts';

interface AnimalGoneActProps {
  readonly shell: Shell;
  readonly name: string;
  /** 'died', 'sold' ... */
  readonly reason: string;
  readonly leftDay: DayNumber;
  readonly refused: Refused;
}

const FIELDS: Readonly<Record<string, string>> = {
  found: 'Found on',
  earliest: 'Last seen unmoulted',
  gauge: 'Size',
  day: 'Day',
  heads: 'How many',
};

const LEFT: Readonly<Record<string, string>> = {
  died: 'died',
  sold: 'was sold',
  'given away': 'was given away',
  lost: 'was lost',
};

export const AnimalGoneActPage = ({ shell, name, reason, leftDay, refused }: AnimalGoneActProps) => (
  <Layout shell={shell} title={name} here="animals">
    <header class="page-head">
      <p class="eyebrow">
        <a href={paths.animals}>Animals</a>
      </p>
      <h1>Not written down: {name} lives here no more</h1>
      <p class="problem" role="alert">
        {name} {LEFT[reason] ?? 'left'} on {recordDay(leftDay)} ({civilDate(leftDay)}), so “{refused.form}”
        was not written down.
      </p>
      <p>
        If that is wrong, undo its leaving among the <a href={paths.settings}>latest changes</a> and write it
        down again.
      </p>
    </header>
    <section aria-labelledby="typed">
      <h2 id="typed">What you typed</h2>
      <dl class="pairs">
        {Object.entries(refused.values)
          .filter(([field, value]) => field in FIELDS && value !== '')
          .map(([field, value]) => (
            <>
              <dt>{FIELDS[field]}</dt>
              <dd>{value}</dd>
            </>
          ))}
      </dl>
    </section>
  </Layout>
);

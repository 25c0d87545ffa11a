/** The way to an evening that was not written down when it was fed, and to paper. */
import { civilDate, type DayNumber } from '../../src/husbandry/calendar.ts';
import { longDay } from '../format.ts';
import type { Shell } from '../layout.tsx';
import { paths } from '../paths.ts';

interface EveningsProps {
  readonly shell: Shell;
  readonly evening: { readonly day: DayNumber };
  readonly earliest: DayNumber;
}

export const OtherEvenings = ({ shell, evening: { day }, earliest }: EveningsProps) => {
  const yesterday = shell.today - 1;
  return (
    <section class="evenings" aria-labelledby="evenings">
      <h2 id="evenings">Fed on another evening?</h2>
      <div class="evening-links">
        {day === shell.today ? null : (
          <a class="button" href={paths.tonight}>
            Back to tonight
          </a>
        )}
        {day === yesterday ? null : (
          <a class="button" href={paths.tonightOf(civilDate(yesterday))}>
            Yesterday evening, {longDay(yesterday)}
          </a>
        )}
      </div>
      <form method="get" action={paths.tonight} class="evening-form">
        <label for="evening-day">Another evening</label>
        <input
          id="evening-day"
          type="date"
          name="day"
          required
          min={civilDate(earliest)}
          max={civilDate(shell.today)}
          value={civilDate(day)}
        />
        <button type="submit">Show it</button>
      </form>
      <div class="evening-links">
        <a class="button quiet" href={paths.sheetOf(civilDate(day))}>
          Print this evening
        </a>
        <a class="button quiet" href={paths.keyInOf(civilDate(day))}>
          Key a sheet in
        </a>
        <a class="button quiet" href={paths.walk}>
          The order you walk
        </a>
      </div>
    </section>
  );
};

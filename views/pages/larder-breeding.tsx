/** What is bred in the larder: how well separate lines insure each other, and the cups to start so that flies keep coming. */
import type { CupCalendar, Lines } from '../../src/husbandry/supply/index.ts';
import { DAYS_PER_WEEK } from '../../src/husbandry/units.ts';
import { counted, listed, oneIn, roundly, sentenceCase, shortDay } from '../format.ts';
import { preyName } from '../names.ts';
import { paths } from '../paths.ts';
import type { LarderProps } from './larder.tsx';

export const Insurance = ({ lines, names }: Pick<LarderProps, 'lines' | 'names'>) =>
  lines.length === 0 ? null : (
    <section aria-labelledby="insurance">
      <h2 id="insurance">If one is lost</h2>
      <dl class="pairs insurance">
        {lines.map((each) => (
          <>
            <dt>{sentenceCase(preyName(names.species, each.species))}</dt>
            <dd>{linesWords(each)}</dd>
          </>
        ))}
      </dl>
      <p class="note">
        Lines in one room, or of one origin, are taken to be lost together now and then. How often a line is
        lost is our guess, not a measured number.
      </p>
    </section>
  );

function linesWords({ bins, apart, days, allLost, withOneMore }: Lines): string {
  const within = `within ${counted(Math.round(days / DAYS_PER_WEEK), 'week')}`;
  const more = `One more in another room, of another origin, makes that ${oneIn(withOneMore)}.`;
  if (bins.length === 1) return `One line only: ${oneIn(allLost)} to lose it ${within}. ${more}`;
  const share =
    apart === 1
      ? 'that share a room or an origin'
      : apart === bins.length
        ? 'that share nothing'
        : `in ${apart} sets that share nothing`;
  const lost = `${bins.length} lines ${share}: ${oneIn(allLost)} to lose all ${within}.`;
  return apart === 1 ? `${lost} ${more}` : lost;
}

export const CupsToStart = ({ cups, names }: Pick<LarderProps, 'cups' | 'names'>) =>
  cups.length === 0 ? null : (
    <section aria-labelledby="cups-to-start">
      <h2 id="cups-to-start">Cups to start</h2>
      <dl class="pairs insurance">
        {cups.map((calendar) => (
          <>
            <dt>{sentenceCase(preyName(names.species, calendar.species))}</dt>
            <dd>
              {startsWords(calendar)} <a href={paths.newCup(calendar.species)}>Start a cup</a>
            </dd>
          </>
        ))}
      </dl>
    </section>
  );

function startsWords({ weekly, starts }: CupCalendar): string {
  if (weekly < 1) return 'None of these flies are wanted just now.';
  const wanted = `About ${roundly(weekly)} a week are wanted:`;
  if (starts.length === 0) return `${wanted} the cups here give enough.`;
  return `${wanted} start ${listed(starts.map(({ day, cups }) => `${cups} on ${shortDay(day)}`))}.`;
}

/** Morning: what became of the last meals; what is not said counts as eaten once the button is pressed. */
import { civilDate, type DayNumber } from '../../src/husbandry/calendar.ts';
import { counted, longDay } from '../format.ts';
import { Layout, type Shell } from '../layout.tsx';
import { Toggle } from '../partials/choices.tsx';
import { entryOf, type PageForms, PostForm } from '../partials/form.tsx';
import { paths } from '../paths.ts';

export interface MorningRow {
  readonly animal: string;
  readonly name: string;
  readonly shelf: string;
  /** What it was offered: '3 crickets, 6–8 mm'. */
  readonly offered: string;
  /** May moult soon: live prey still with it must come out first. */
  readonly nearMoult: boolean;
}

/**
 * Posts to `paths.morning`: `day`; `animal` once for each row shown; `refused`, `partTaken`, `moulted` once for
 * each animal so marked. A row without a mark has eaten.
 */
export interface MorningProps {
  readonly shell: Shell;
  readonly forms: PageForms;
  /** The evening the meals were offered. */
  readonly day: DayNumber;
  /** In shelf order. */
  readonly rows: readonly MorningRow[];
}

export const MorningPage = ({ shell, forms, day, rows }: MorningProps) => (
  <Layout shell={shell} title="Morning" here="tonight">
    <div class="round">
      <header class="round-head">
        <p class="eyebrow">After {longDay(day)}</p>
        <h1>
          {rows.length === 0
            ? 'Every meal is accounted for'
            : `What became of ${counted(rows.length, 'meal')}?`}
        </h1>
      </header>
      {rows.length === 0 ? (
        <p class="lede">
          Next: <a href={paths.tonight}>tonight's round</a>.
        </p>
      ) : (
        <MorningForm forms={forms} day={day} rows={rows} />
      )}
    </div>
  </Layout>
);

const MorningForm = ({ forms, day, rows }: Omit<MorningProps, 'shell'>) => {
  const first = rows.filter(({ nearMoult }) => nearMoult);
  const shelves = [...new Set(rows.map(({ shelf }) => shelf))];
  return (
    <PostForm
      entry={entryOf(forms, 'morning')}
      action={paths.morning}
      class="round-form"
      keep="the morning’s outcomes"
    >
      <input type="hidden" name="day" value={civilDate(day)} />
      <p class="note">Tap only what did not eat. Take leftovers out and throw them away.</p>
      {first.length === 0 ? null : (
        <section class="shelf urgent" aria-labelledby="look-first">
          <h2 id="look-first">Look here first: may moult</h2>
          <p class="caution">Take live prey out now.</p>
          <Rows rows={first} showShelf />
        </section>
      )}
      {shelves.map((shelf) => {
        const here = rows.filter((row) => row.shelf === shelf && !row.nearMoult);
        return here.length === 0 ? null : (
          <section class="shelf" aria-label={shelf}>
            <h2>{shelf}</h2>
            <Rows rows={here} />
          </section>
        );
      })}
      <div class="closing">
        <button type="submit" class="act-here big">
          The rest ate
        </button>
        <p class="note">Records the others as eaten. You can undo it.</p>
      </div>
    </PostForm>
  );
};

const MARKS = [
  { mark: 'refused', label: 'Refused' },
  { mark: 'partTaken', label: 'Ate some' },
  { mark: 'moulted', label: 'Moulted' },
] as const;

const Rows = ({ rows, showShelf }: { rows: readonly MorningRow[]; showShelf?: boolean }) => (
  <ul class="rows">
    {rows.map(({ animal, name, offered, shelf }) => (
      <li class="serving">
        <input type="hidden" name="animal" value={animal} />
        <div class="serving-words">
          <strong class="who">{name}</strong>
          <span class="offer">
            {offered}
            {showShelf ? <small>{shelf}</small> : null}
          </span>
        </div>
        <fieldset class="choice-row outcomes">
          <legend class="unseen">{name}: what became of it</legend>
          {MARKS.map(({ mark, label }) => (
            <Toggle name={mark} value={animal} label={label} of={name} />
          ))}
        </fieldset>
      </li>
    ))}
  </ul>
);

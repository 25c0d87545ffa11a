/** A sheet keyed in: the rows of the printed sheet in its order, one cell each, filled with the keyboard alone. */
import { civilDate, type DayNumber } from '../../src/husbandry/calendar.ts';
import { counted, longDay, shortDay } from '../format.ts';
import { Layout, type Shell } from '../layout.tsx';
import { entryOf, type PageForms, PostForm } from '../partials/form.tsx';
import { paths } from '../paths.ts';
import { KeyLine, type KeyRow } from './key-in-line.tsx';

/**
 * Posts to `paths.keyIn`: `day`, `who` ('all' or ''), `animal` once a row with what it was shown as `offer:<animal>`,
 * and `cell:<animal>` as typed.
 */
export interface KeyInProps {
  readonly shell: Shell;
  readonly forms: PageForms;
  readonly day: DayNumber;
  readonly earliest: DayNumber;
  /** The last feeding evenings, latest first. */
  readonly latest: readonly DayNumber[];
  /** Everybody is shown, not only who stands on the sheet. */
  readonly everybody: boolean;
  readonly wrongDay: string | null;
  readonly bins: readonly { readonly code: string; readonly name: string }[];
  /** Animals of whose meal something is written already. */
  readonly written: number;
  readonly shelves: readonly { readonly shelf: string; readonly rows: readonly KeyRow[] }[];
}

export const KeyInPage = (props: KeyInProps) => {
  const rows = props.shelves.flatMap((each) => each.rows).length;
  return (
    <Layout shell={props.shell} title="Key a sheet in" here="tonight">
      <header class="page-head">
        <h1>Key in the sheet of {longDay(props.day)}</h1>
        {props.written === 0 ? null : (
          <p>{counted(props.written, 'animal')} written down already; the others stand here.</p>
        )}
      </header>
      <WhichEvening {...props} />
      {rows === 0 ? <NobodyLeft {...props} /> : <KeyForm {...props} rows={rows} />}
    </Layout>
  );
};

const addressOf = (day: DayNumber, everybody: boolean): string =>
  `${paths.keyInOf(civilDate(day))}${everybody ? '&who=all' : ''}`;

const WhichEvening = ({ shell, day, earliest, latest, everybody, wrongDay }: KeyInProps) => (
  <form method="get" action={paths.keyIn} class="key-which">
    <p>
      {latest
        .filter((each) => each !== day)
        .map((each) => (
          <a href={addressOf(each, everybody)}>{shortDay(each)}</a>
        ))}
      <a href={addressOf(day, !everybody)}>
        {everybody ? 'Only who stands on the evening sheet' : 'Everybody, for a blank sheet'}
      </a>
    </p>
    <label for="key-day">Another evening</label>
    <input
      type="date"
      id="key-day"
      name="day"
      value={civilDate(day)}
      min={civilDate(earliest)}
      max={civilDate(shell.today)}
      {...(wrongDay === null ? {} : { 'aria-invalid': 'true', 'aria-describedby': 'key-day-problem' })}
    />
    {everybody ? <input type="hidden" name="who" value="all" /> : null}
    <button type="submit">Show it</button>
    {wrongDay === null ? null : (
      <p class="problem" id="key-day-problem">
        {wrongDay}
      </p>
    )}
  </form>
);

const NobodyLeft = ({ day, written }: KeyInProps) => (
  <p class="lede">
    {written > 0
      ? 'Everybody on the sheet of that evening is written down.'
      : 'Nobody stood on the sheet of that evening.'}{' '}
    <a href={addressOf(day, true)}>Show everybody</a>
  </p>
);

const SIGNS: readonly (readonly [string, string])[] = [
  ['empty', 'as printed'],
  ['0', 'not fed'],
  ['3', 'got 3'],
  ['3 B2', 'got 3 from bin B2'],
  ['p', 'premoult, not fed'],
  ['m', 'moulted, not fed'],
  ['d', 'dead'],
  ['t · s · r', 'after any of these: taken, ate some, refused, as in 3 r'],
];

const Signs = ({ bins, everybody }: KeyInProps) => (
  <section class="key-signs" aria-labelledby="key-signs">
    <h2 id="key-signs">What to write</h2>
    <dl>
      {SIGNS.map(([sign, words]) => (
        <div>
          <dt>{sign}</dt>
          <dd>{words}</dd>
        </div>
      ))}
    </dl>
    <p class="note">
      {everybody ? 'Who was not due and has an empty cell is left out. ' : ''}
      Enter or ↓ goes on to the next cell. Bins: {bins.map(({ code, name }) => `${code} ${name}`).join(', ')}.
    </p>
  </section>
);

const KeyForm = (props: KeyInProps & { readonly rows: number }) => {
  const { forms, day, everybody, shelves } = props;
  const entry = entryOf(forms, 'key-in');
  return (
    <>
      <Signs {...props} />
      <PostForm entry={entry} action={paths.keyIn} class="key-in">
        {/* The form's first button cannot be pressed, so that Enter in a cell sends nothing. */}
        <button type="submit" disabled hidden>
          Not yet
        </button>
        <input type="hidden" name="day" value={civilDate(day)} />
        <input type="hidden" name="who" value={everybody ? 'all' : ''} />
        {shelves.map(({ shelf, rows }) => (
          <section aria-label={shelf}>
            <h2>{shelf}</h2>
            <ul class="key-rows">
              {rows.map((row) => (
                <KeyLine row={row} entry={entry} />
              ))}
            </ul>
          </section>
        ))}
        <button type="submit" class="act-here big key-in-end">
          Write this evening down
        </button>
        <p class="note">Recorded as the round of {longDay(day)}. You can undo it.</p>
      </PostForm>
    </>
  );
};

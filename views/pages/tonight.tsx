/** Tonight: who eats, what and out of which bin, in shelf order; exceptions are tapped, the rest is one button. */
import type { CautionCode } from '../../src/husbandry/animals/index.ts';
import type { Evening } from '../../src/husbandry/appetite/index.ts';
import { civilDate, type DayNumber } from '../../src/husbandry/calendar.ts';
import type { UsedBin } from '../../src/husbandry/supply/index.ts';
import { ROUND_CAUTION } from '../cautions.ts';
import { ago, counted, type LengthUnit, longDay } from '../format.ts';
import { Layout, type Shell } from '../layout.tsx';
import { type Names, nameOf } from '../names.ts';
import { entryOf, type PageForms, PostForm } from '../partials/form.tsx';
import { paths } from '../paths.ts';
import { OtherEvenings } from './tonight-evenings.tsx';
import { byShelf, Shelf } from './tonight-shelf.tsx';
import { type Told, ToldSection } from './tonight-told.tsx';
import { Doubted, Used } from './tonight-used.tsx';
import { Withheld } from './tonight-withheld.tsx';

/**
 * Posts to `paths.tonight`: `day` (YYYY-MM-DD); `animal` once for each row shown, with what it was shown as
 * `offer:<animal>` (see offer-text.ts); `notFed`, `premoult`, `moulted`, `died` once for each animal so marked;
 * `heads:<animal>` and `bin:<animal>` where something else was offered ('' = as shown). A row without a mark was
 * offered as shown. A shelf's own button adds `shelf`. `from:<shelf>` is the bin a shelf is to be fed from, which
 * `paths.tonightPreview` shows without writing.
 */
export interface TonightProps {
  readonly shell: Shell;
  readonly evening: Evening;
  readonly names: Names;
  readonly unit: LengthUnit;
  readonly forms: PageForms;
  /** Cautions of the kinds fed tonight, by animal. */
  readonly cautions: ReadonlyMap<string, readonly CautionCode[]>;
  /** Animals shown whose kind never moults. */
  readonly moultless: ReadonlySet<string>;
  /** Bin each shelf is to be fed from, where one was chosen. */
  readonly chosen: ReadonlyMap<string, string>;
  /** How many of last evening's meals wait for a word; 0 when none do. */
  readonly waiting: number;
  /** The next evening anybody is due, when nobody is tonight. */
  readonly nextDay: DayNumber | null;
  /** Whether anybody lives here. */
  readonly anybody: boolean;
  /** What of the last sending stood written down already. */
  readonly told: Told;
  /** Bins this evening was fed from. */
  readonly used: readonly UsedBin[];
  /** Animals of whose meal this evening something is written. */
  readonly written: number;
  /** First evening that may still be written down. */
  readonly earliest: DayNumber;
}

export const TonightPage = (props: TonightProps) => {
  const { shell, evening, waiting } = props;
  return (
    <Layout shell={shell} title="Tonight" here="tonight">
      <div class="round">
        <header class="round-head">
          <p class={evening.day < shell.today ? 'other-evening' : 'eyebrow'}>{whichEvening(props)}</p>
          <h1>{headline(props)}</h1>
          {waiting > 0 ? (
            <p class="look">
              <a href={paths.morning}>Say what became of {counted(waiting, 'meal')} from last time</a>
            </p>
          ) : null}
        </header>
        <ToldSection {...props} />
        <Doubted {...props} />
        {evening.servings.length === 0 ? (
          <>
            <Used {...props} />
            <NobodyDue {...props} />
          </>
        ) : (
          <>
            <RoundForm {...props} />
            <Used {...props} />
          </>
        )}
        <Withheld {...props} />
        <OtherEvenings {...props} />
      </div>
    </Layout>
  );
};

/** Said plainly, so that nothing is written on the wrong evening. */
function whichEvening({ shell, evening: { day } }: TonightProps): string {
  if (day < shell.today)
    return `You are writing down ${longDay(day)}, ${ago(shell.today - day)}, not tonight.`;
  return shell.smallHours
    ? `After midnight: until 04:00 this is still the evening of ${longDay(day)}`
    : longDay(day);
}

function headline({ shell, evening, written }: TonightProps): string {
  const past = evening.day < shell.today;
  const when = past ? 'that evening' : 'tonight';
  if (evening.servings.length === 0)
    return written > 0
      ? `Everybody due ${when} is written down`
      : `Nobody ${past ? 'was' : 'is'} due ${when}`;
  const fed = evening.servings.filter(({ offer }) => offer !== null).length;
  const unfed = evening.servings.length - fed;
  if (fed === 0)
    return past
      ? `${counted(unfed, 'animal was due', 'animals were due')} and nothing on record in the larder fits`
      : `${counted(unfed, 'animal is due', 'animals are due')} and nothing in the larder fits`;
  const eat = past
    ? counted(fed, 'animal was due', 'animals were due')
    : counted(fed, 'animal eats', 'animals eat');
  return `${eat} ${when}${unfed > 0 ? `; ${counted(unfed, 'finds', 'find')} nothing that fits` : ''}`;
}

const NobodyDue = (props: TonightProps) =>
  props.anybody ? (
    <NextRound {...props} />
  ) : (
    <p class="lede">
      <a href={paths.newAnimal}>Add an animal</a> or <a href={paths.import}>bring in a list</a>: each evening
      this page says who eats, what, and out of which bin.
    </p>
  );

const NextRound = (props: TonightProps) => {
  const words = nextWords(props);
  const { shell, evening } = props;
  return (
    <>
      {words === null ? null : <p class="lede">{words}</p>}
      {evening.feedingDay || evening.day < shell.today ? null : (
        <p>
          Feeding all the same?{' '}
          <a href={`${paths.keyInOf(civilDate(evening.day))}&who=all`}>Write down who got what</a>.
        </p>
      )}
    </>
  );
};

function nextWords({ shell, evening: { day, feedingDay }, nextDay, written }: TonightProps): string | null {
  if (day < shell.today && written > 0) return null;
  if (day < shell.today)
    return feedingDay ? 'That is how the record stood.' : 'It was not one of your feeding days.';
  const why = feedingDay || written > 0 ? '' : 'Tonight is not one of your feeding days. ';
  return `${why}${nextDay === null ? 'Nobody is due in the next two weeks.' : `Next round: ${longDay(nextDay)}.`}`;
}

const RoundForm = (props: TonightProps) => {
  const { shell, evening, forms, names } = props;
  const bins = new Set(evening.servings.flatMap(({ offer }) => (offer === null ? [] : [offer.bin])));
  const keep = evening.day === shell.today ? "tonight's round" : `the round of ${longDay(evening.day)}`;
  return (
    <PostForm entry={entryOf(forms, 'round')} action={paths.tonight} class="round-form" keep={keep}>
      <EnterWritesNothing />
      <input type="hidden" name="day" value={civilDate(evening.day)} />
      <p class="caution">{ROUND_CAUTION}</p>
      <p class="note">
        {evening.day < shell.today ? 'Out that evening' : 'Out tonight'}:{' '}
        {[...bins].map((bin) => nameOf(names.bins, bin)).join(', ') || 'nothing'}. Tap only what went
        otherwise.
      </p>
      {byShelf(evening.servings).map(([shelf, servings], at) => (
        <Shelf {...props} shelf={shelf} servings={servings} at={at} />
      ))}
      <div class="closing">
        <button type="submit" class="act-here big">
          Everyone else got theirs
        </button>
        <p class="note">Records the rest as offered and takes the prey out of the bins. You can undo it.</p>
      </div>
    </PostForm>
  );
};

/** Enter in a field presses a form's first button: here one that only shows the round again with its marks. */
const EnterWritesNothing = () => <button type="submit" formaction={paths.tonightPreview} hidden></button>;

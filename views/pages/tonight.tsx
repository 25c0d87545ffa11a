/** Tonight: who eats, what and out of which bin, in shelf order; exceptions are tapped, the rest is one button. */
import type { CautionCode } from '../../src/husbandry/animals/index.ts';
import type { Evening, Serving } from '../../src/husbandry/appetite/index.ts';
import { civilDate, type DayNumber } from '../../src/husbandry/calendar.ts';
import { ROUND_CAUTION } from '../cautions.ts';
import { counted, type LengthUnit, longDay } from '../format.ts';
import { Layout, type Shell } from '../layout.tsx';
import { type Names, nameOf } from '../names.ts';
import { entryOf, type PageForms, PostForm } from '../partials/form.tsx';
import { paths } from '../paths.ts';
import { ServingRow } from './tonight-row.tsx';

/**
 * Posts to `paths.tonight`: `day` (YYYY-MM-DD); `animal` once for each row shown; `notFed`, `premoult`,
 * `moulted`, `died` once for each animal so marked; `heads:<animal>` and `bin:<animal>` where something else
 * was offered than proposed ('' = as proposed). A row without a mark was offered as proposed.
 */
export interface TonightProps {
  readonly shell: Shell;
  readonly evening: Evening;
  readonly names: Names;
  readonly unit: LengthUnit;
  readonly forms: PageForms;
  /** Cautions of the kinds fed tonight, by animal. */
  readonly cautions: ReadonlyMap<string, readonly CautionCode[]>;
  /** How many of last evening's meals wait for a word; 0 when none do. */
  readonly waiting: number;
  /** The next evening anybody is due, when nobody is tonight. */
  readonly nextDay: DayNumber | null;
  /** Whether anybody lives here. */
  readonly anybody: boolean;
}

/** Rows by shelf, in the order given. */
function byShelf<T extends { readonly shelf: string }>(rows: readonly T[]): [string, T[]][] {
  const shelves = new Map<string, T[]>();
  for (const row of rows) shelves.set(row.shelf, [...(shelves.get(row.shelf) ?? []), row]);
  return [...shelves];
}

export const TonightPage = (props: TonightProps) => {
  const { shell, evening, waiting } = props;
  const fed = evening.servings.filter(({ offer }) => offer !== null);
  return (
    <Layout shell={shell} title="Tonight" here="tonight">
      <div class="round">
        <header class="round-head">
          <p class="eyebrow">{longDay(evening.day)}</p>
          <h1>{headline(evening, fed.length)}</h1>
          {waiting > 0 ? (
            <p class="look">
              <a href={paths.morning}>Say what became of {counted(waiting, 'meal')} from last time</a>
            </p>
          ) : null}
        </header>
        {evening.servings.length === 0 ? <NobodyDue {...props} /> : <RoundForm {...props} />}
        <Withheld {...props} />
      </div>
    </Layout>
  );
};

function headline(evening: Evening, fed: number): string {
  if (evening.servings.length === 0) return 'Nobody is due tonight';
  const unfed = evening.servings.length - fed;
  return `${counted(fed, 'animal eats', 'animals eat')} tonight${unfed > 0 ? `; ${counted(unfed, 'finds', 'find')} nothing that fits` : ''}`;
}

const NobodyDue = ({ evening, nextDay, anybody }: TonightProps) =>
  anybody ? (
    <p class="lede">
      {evening.feedingDay ? '' : 'Tonight is not one of your feeding days. '}
      {nextDay === null ? 'Nobody is due in the next two weeks.' : `Next round: ${longDay(nextDay)}.`}
    </p>
  ) : (
    <p class="lede">
      <a href={paths.newAnimal}>Add an animal</a> or <a href={paths.import}>bring in a list</a>: each evening
      this page says who eats, what, and out of which bin.
    </p>
  );

const RoundForm = (props: TonightProps) => {
  const { evening, forms, cautions, names } = props;
  const binsTonight = [
    ...new Set(evening.servings.flatMap(({ offer }) => (offer === null ? [] : [offer.bin]))),
  ];
  const row = (serving: Serving) => (
    <ServingRow {...props} serving={serving} cautions={cautions.get(serving.animal) ?? []} />
  );
  return (
    <PostForm entry={entryOf(forms, 'round')} action={paths.tonight} class="round-form">
      <input type="hidden" name="day" value={civilDate(evening.day)} />
      <p class="caution">{ROUND_CAUTION}</p>
      <p class="note">
        Out tonight: {binsTonight.map((bin) => nameOf(names.bins, bin)).join(', ') || 'nothing'}. Tap only
        what went otherwise.
      </p>
      {byShelf(evening.servings).map(([shelf, rows]) => (
        <section class="shelf" aria-label={shelf}>
          <h2>{shelf}</h2>
          <ul class="rows">{rows.map(row)}</ul>
        </section>
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

const Withheld = ({ evening, names }: TonightProps) =>
  evening.withheld.length === 0 ? null : (
    <section class="withheld" aria-labelledby="withheld">
      <h2 id="withheld">Not to be fed tonight</h2>
      {byShelf(evening.withheld).map(([shelf, rows]) => (
        <>
          <h3>{shelf}</h3>
          <ul>
            {rows.map(({ animal, reason }) => (
              <li>
                <a href={paths.animal(animal)}>{nameOf(names.animals, animal)}</a>: {reason}
              </li>
            ))}
          </ul>
        </>
      ))}
    </section>
  );

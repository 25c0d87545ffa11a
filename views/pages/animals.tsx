/** Animals: who lives here, found and narrowed, each row a bracket on the ruler where its prey lies. */
import { counted, type LengthUnit } from '../format.ts';
import { Layout, type Shell } from '../layout.tsx';
import { FirstSteps } from '../partials/hints.tsx';
import { paths } from '../paths.ts';
import { Lent, type LentRow } from './animals-lent.tsx';
import { type AnimalRow, type HerdSection, Rows } from './animals-rows.tsx';
import { Filters, type HerdFilter, type HerdSearch, Search } from './animals-search.tsx';

export type { AnimalRow, HerdFilter, HerdSearch, HerdSection, LentRow };

/** A link to the list asked otherwise, and how many that finds. */
export interface Otherwise {
  readonly label: string;
  readonly href: string;
  readonly count: number;
}

export interface Leaves {
  /** Place of the first and last row shown, counted from 1. */
  readonly from: number;
  readonly to: number;
  readonly of: number;
  readonly previous: string | null;
  readonly next: string | null;
}

/**
 * The list posts nothing: it is a GET form to `paths.changeAnimals` with `animal` (one each), `of` ('ticked', 'page' or
 * 'found'), and `list` and `seen`, which say what was shown.
 */
export interface AnimalsProps {
  readonly shell: Shell;
  readonly unit: LengthUnit;
  /** Heads that live here, found or not. */
  readonly total: number;
  /** Entries they stand in: a group is one. */
  readonly entries: number;
  readonly search: HerdSearch;
  readonly filters: readonly HerdFilter[];
  /** What was asked for and how many were found; '' when all are shown. */
  readonly found: string;
  /** Where the whole list is, when it is narrowed. */
  readonly clear: string | null;
  /** What to leave out, when nobody was found. */
  readonly instead: readonly Otherwise[];
  readonly sections: readonly HerdSection[];
  readonly leaves: Leaves;
  /** The list as it was asked for, and a mark of who was in it. */
  readonly list: string;
  readonly seen: string;
  readonly lent: readonly LentRow[];
}

export const AnimalsPage = (props: AnimalsProps) => {
  const { shell, total, lent } = props;
  return (
    <Layout shell={shell} title="Animals" here="animals">
      <header class="page-head">
        <h1>
          {total === 0 ? 'Nobody lives here yet' : `${counted(total, 'animal lives', 'animals live')} here`}
        </h1>
        {props.entries === total ? null : (
          <p class="note">{props.entries.toLocaleString('en-GB')} entries: a group kept together is one.</p>
        )}
        <p class="acts">
          <a class="button" href={paths.newAnimal}>
            Add an animal
          </a>
          <a class="button quiet" href={paths.import}>
            Bring in a list
          </a>
          {total === 0 ? null : (
            <a class="button quiet" href={paths.labels}>
              Labels
            </a>
          )}
        </p>
      </header>
      {total === 0 ? (
        <FirstSteps animals={false} prey={false} formId={shell.formId} />
      ) : (
        <>
          <Search search={props.search} />
          <Found {...props} />
        </>
      )}
      <Lent rows={lent} today={shell.today} />
    </Layout>
  );
};

const Found = (props: AnimalsProps) => (
  <div id="found">
    <Filters filters={props.filters} />
    <p role="status" class="found-words">
      {props.found} {props.clear === null ? null : <a href={props.clear}>Show all</a>}
    </p>
    {props.leaves.of === 0 ? <Instead instead={props.instead} /> : <Herd {...props} />}
  </div>
);

/** Nobody matches everything asked for: what each part is worth leaving out. */
const Instead = ({ instead }: Pick<AnimalsProps, 'instead'>) =>
  instead.length === 0 ? null : (
    <ul class="instead">
      {instead.map(({ label, href, count }) => (
        <li>
          <a href={href}>
            Without {label}: {count}
          </a>
        </li>
      ))}
    </ul>
  );

const Herd = ({ sections, unit, leaves, list, seen }: AnimalsProps) => (
  <form method="get" action={paths.changeAnimals} class="herd">
    <input type="hidden" name="list" value={list} />
    <input type="hidden" name="seen" value={seen} />
    <fieldset class="herd-acts" aria-label="Change several at once">
      <button type="submit" name="of" value="ticked" class="small">
        Change those ticked
      </button>
      {leaves.of > 1 ? <Whole leaves={leaves} /> : null}
    </fieldset>
    <p class="note">On the ruler: bracket, the prey it takes; dot, the best length; star, its own body.</p>
    {sections.map((section) => (
      <Rows section={section} unit={unit} />
    ))}
    <Turn leaves={leaves} />
  </form>
);

/** Everybody on the page, or everybody found. */
const Whole = ({ leaves: { from, to, of } }: { leaves: Leaves }) => (
  <>
    {to - from + 1 < of ? (
      <button type="submit" name="of" value="page" class="quiet small">
        All {to - from + 1} on this page
      </button>
    ) : null}
    <button type="submit" name="of" value="found" class="quiet small">
      All {of.toLocaleString('en-GB')} found
    </button>
  </>
);

const Turn = ({ leaves: { from, to, of, previous, next } }: { leaves: Leaves }) =>
  previous === null && next === null ? null : (
    <nav class="leaves" aria-label="Pages of the list">
      {previous === null ? null : (
        <a class="button quiet" href={previous} rel="prev">
          Before
        </a>
      )}
      <span>
        {from.toLocaleString('en-GB')}–{to.toLocaleString('en-GB')} of {of.toLocaleString('en-GB')}
      </span>
      {next === null ? null : (
        <a class="button quiet" href={next} rel="next">
          After
        </a>
      )}
    </nav>
  );

/** The Book: every kind of animal and prey known here, and how far its numbers are to be trusted. */
import type { Status } from '../../src/husbandry/sourced.ts';
import { counted, type LengthUnit, sentenceCase } from '../format.ts';
import { Layout, type Shell } from '../layout.tsx';
import { STATUS_WORDS } from '../partials/sources.tsx';
import { paths } from '../paths.ts';
import { type BookPrey, Prey } from './book-prey.tsx';

export interface BookKind {
  readonly code: string;
  readonly name: string;
  readonly commonName: string;
  readonly isOwn: boolean;
  /** '127 to 152 mm'. */
  readonly adult: string;
  /** Heads of the keeper's. */
  readonly heads: number;
  /** Values the keeper changed. */
  readonly changed: number;
}

export interface BookGroup {
  /** 'tarantulas'. */
  readonly name: string;
  /** The general kind a kind of one's own would begin with. */
  readonly general: string;
  readonly kinds: readonly BookKind[];
}

export interface BookProps {
  readonly shell: Shell;
  readonly unit: LengthUnit;
  /** What was searched for, '' for all; sent as `q`. */
  readonly query: string;
  readonly kinds: number;
  readonly ownKinds: number;
  readonly preySpecies: number;
  readonly standing: Readonly<Record<Status, number>>;
  /** Those found. */
  readonly groups: readonly BookGroup[];
  readonly prey: readonly BookPrey[];
}

/** Above the whole list: what the keeper keeps, made or changed. */
const isNear = ({ heads, changed, isOwn }: BookKind): boolean => heads > 0 || changed > 0 || isOwn;

export const BookPage = (props: BookProps) => {
  const { shell, query, groups, prey, unit } = props;
  const all = groups.flatMap(({ kinds }) => kinds);
  const near = query === '' ? all.filter(isNear) : [];
  const open = query !== '';
  return (
    <Layout shell={shell} title="The Book" here="more">
      <Head {...props} />
      <Search query={query} />
      <div id="found">
        <p role="status">{foundWords(query, all.length + prey.length)}</p>
        {near.length === 0 ? null : (
          <section aria-labelledby="near">
            <h2 id="near">Kinds you keep or changed</h2>
            <Kinds kinds={near} unit={unit} />
          </section>
        )}
        <h2>{query === '' ? 'All of the Book' : 'Found'}</h2>
        {groups.map((group) => (
          <Group group={group} unit={unit} open={open} />
        ))}
        {prey.length === 0 ? null : <Prey prey={prey} open={open} />}
        {all.length > 0 ? null : (
          <p>
            <a href={paths.newKind}>Make a kind of your own</a>
          </p>
        )}
      </div>
    </Layout>
  );
};

const STATUSES: readonly Status[] = ['published', 'common practice', 'from memory', 'yours'];

const Head = ({ kinds, ownKinds, preySpecies, standing }: BookProps) => {
  const total = STATUSES.reduce((sum, status) => sum + standing[status], 0);
  const own = ownKinds === 0 ? '' : `${counted(ownKinds, 'kind is', 'kinds are')} your own. `;
  return (
    <header class="page-head">
      <h1>
        The Book knows {counted(kinds, 'kind')} of animal and {preySpecies} of prey
      </h1>
      <p class="lede">
        {own}Every forecast rests on {total.toLocaleString('en-GB')} numbers. Open a kind or prey to see where
        each comes from, and change what you know better. What is made of them:{' '}
        <a href={paths.method}>the method</a>.
      </p>
      <dl class="standing">
        {STATUSES.map((status) => (
          <div>
            <dt>{sentenceCase(STATUS_WORDS[status])}</dt>
            <dd>{standing[status].toLocaleString('en-GB')}</dd>
          </div>
        ))}
      </dl>
    </header>
  );
};

function foundWords(query: string, found: number): string {
  if (query === '') return '';
  return found === 0
    ? `The Book has nothing for “${query}”. Try a part of the name, or make a kind of your own below.`
    : `${found} found for “${query}”.`;
}

const Search = ({ query }: { query: string }) => (
  <search>
    <form method="get" action={paths.book} class="search">
      <label for="q">Find a kind or prey by name</label>
      <input
        id="q"
        name="q"
        type="search"
        value={query}
        aria-keyshortcuts="/"
        data-hx-get={paths.book}
        data-hx-trigger="input changed delay:300ms"
        data-hx-target="#found"
        data-hx-select="#found"
        data-hx-swap="outerHTML"
      />
      <button type="submit" class="quiet">
        Find
      </button>
      {query === '' ? null : <a href={paths.book}>Show all</a>}
    </form>
  </search>
);

const Group = ({ group, unit, open }: { group: BookGroup; unit: LengthUnit; open: boolean }) => (
  <details class="book-group" open={open}>
    <summary>
      {sentenceCase(group.name)}: {counted(group.kinds.length, 'kind')}
    </summary>
    <Kinds kinds={group.kinds} unit={unit} />
    <p>
      No kind here fits? <a href={paths.newKindFrom(group.general)}>Make one of your own</a>
      <span class="unseen"> among the {group.name}</span>.
    </p>
  </details>
);

const Kinds = ({ kinds, unit }: { kinds: readonly BookKind[]; unit: LengthUnit }) => (
  <table class="stacks book-kinds">
    <thead>
      <tr>
        <th scope="col">Kind</th>
        <th scope="col">Full grown, {unit}</th>
        <th scope="col">Yours</th>
      </tr>
    </thead>
    <tbody>
      {kinds.map((kind) => (
        <KindRow kind={kind} />
      ))}
    </tbody>
  </table>
);

const KindRow = ({ kind }: { kind: BookKind }) => (
  <tr>
    <th scope="row">
      <a href={paths.kind(kind.code)}>{sentenceCase(kind.commonName)}</a>
      <small>
        <i>{kind.name}</i>
        {kind.isOwn ? ', your own' : ''}
      </small>
    </th>
    <td data-label="Full grown">{kind.adult}</td>
    <td>
      {kind.heads === 0 ? '' : counted(kind.heads, 'animal')}
      {kind.changed === 0 ? null : <small>{counted(kind.changed, 'value')} changed</small>}
    </td>
  </tr>
);

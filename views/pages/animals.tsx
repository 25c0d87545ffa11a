/** Animals: who lives here in shelf order, each row a bracket on the ruler where its prey lies. */
import type { Mm } from '../../src/husbandry/units.ts';
import { RulerHead, type Window, WindowBracket } from '../charts/window-bracket.tsx';
import { counted, type LengthUnit, lengthRange } from '../format.ts';
import { Layout, type Shell } from '../layout.tsx';
import { FirstSteps } from '../partials/hints.tsx';
import { paths } from '../paths.ts';

export interface AnimalRow {
  readonly code: string;
  readonly name: string;
  readonly kindName: string;
  readonly stageWord: string;
  /** More than 1 for a group kept and fed together. */
  readonly count: number;
  readonly room: string;
  readonly shelf: string;
  /** Body length, derived from the gauge. */
  readonly ownLengthMm: Mm;
  readonly window: Window;
  /** 'due Thu 27 Nov', 'waits after its moult until 3 Dec' ... */
  readonly next: string;
}

export interface AnimalsProps {
  readonly shell: Shell;
  readonly unit: LengthUnit;
  /** What was searched for, '' for all; sent as `q`. */
  readonly query: string;
  /** Heads that live here, found or not. */
  readonly total: number;
  /** Those found, in shelf order. */
  readonly rows: readonly AnimalRow[];
}

export const AnimalsPage = ({ shell, unit, query, total, rows }: AnimalsProps) => (
  <Layout shell={shell} title="Animals" here="animals">
    <header class="page-head">
      <h1>
        {total === 0 ? 'Nobody lives here yet' : `${counted(total, 'animal lives', 'animals live')} here`}
      </h1>
      <p class="acts">
        <a class="button" href={paths.newAnimal}>
          Add an animal
        </a>
        <a class="button quiet" href={paths.import}>
          Bring in a list
        </a>
      </p>
    </header>
    {total === 0 ? (
      <FirstSteps animals={false} prey={false} formId={shell.formId} />
    ) : (
      <>
        <Search query={query} />
        <p class="note">
          On the ruler: bracket, the prey it takes; dot, the best length; star, its own body.
        </p>
        <div id="found">
          <p role="status">{foundWords(query, rows.length)}</p>
          {shelvesOf(rows).map(([place, here]) => (
            <Shelf place={place} rows={here} unit={unit} />
          ))}
        </div>
      </>
    )}
  </Layout>
);

/** What a search found; nothing when none was made. */
function foundWords(query: string, found: number): string {
  if (query === '') return '';
  return found === 0 ? `Nobody here matches “${query}”.` : `${found} found for “${query}”.`;
}

const Search = ({ query }: { query: string }) => (
  <search>
    <form method="get" action={paths.animals} class="search">
      <label for="q">Find by name, kind, shelf</label>
      <input
        id="q"
        name="q"
        type="search"
        value={query}
        aria-keyshortcuts="/"
        data-hx-get={paths.animals}
        data-hx-trigger="input changed delay:300ms"
        data-hx-target="#found"
        data-hx-select="#found"
        data-hx-swap="outerHTML"
      />
      <button type="submit" class="quiet">
        Find
      </button>
      {query === '' ? null : <a href={paths.animals}>Show all</a>}
    </form>
  </search>
);

function shelvesOf(rows: readonly AnimalRow[]): [string, AnimalRow[]][] {
  const shelves = new Map<string, AnimalRow[]>();
  for (const row of rows) {
    const place = row.shelf === '' ? row.room : `${row.room}, ${row.shelf}`;
    shelves.set(place, [...(shelves.get(place) ?? []), row]);
  }
  return [...shelves];
}

const Shelf = ({ place, rows, unit }: { place: string; rows: readonly AnimalRow[]; unit: LengthUnit }) => (
  <table class="animals stacks">
    <caption>{place}</caption>
    <thead>
      <tr>
        <th scope="col">Name and kind</th>
        <th scope="col">Next meal</th>
        <th scope="col" class="on-ruler">
          Prey it takes, {unit}
          <RulerHead unit={unit} />
        </th>
      </tr>
    </thead>
    <tbody>
      {rows.map((row) => (
        <tr>
          <th scope="row">
            <a href={paths.animal(row.code)}>{row.name}</a>
            {row.count > 1 ? ` × ${row.count}` : ''}
            <small>
              {row.kindName}, {row.stageWord}
            </small>
          </th>
          <td>{row.next}</td>
          <td class="on-ruler">
            <WindowBracket
              id={`w-${row.code}`}
              name={row.name}
              window={row.window}
              ownLengthMm={row.ownLengthMm}
              unit={unit}
            />
            <small>{lengthRange(row.window.minMm, row.window.maxMm, unit)}</small>
          </td>
        </tr>
      ))}
    </tbody>
  </table>
);

/** Finding animals: words, a few choices, and filters of one tap that combine; the address keeps all of it. */
import type { Option } from '../partials/form.tsx';
import { paths } from '../paths.ts';

export interface HerdChoice {
  readonly name: 'group' | 'stage' | 'place' | 'order';
  readonly label: string;
  readonly chosen: string;
  readonly options: readonly Option[];
}

export interface HerdSearch {
  /** What is searched for, '' for all; sent as `q`. */
  readonly q: string;
  readonly choices: readonly HerdChoice[];
  /** Filters on, sent along as `show`. */
  readonly show: readonly string[];
}

export interface HerdFilter {
  readonly label: string;
  /** How many the list shows with this filter on. */
  readonly count: number;
  readonly on: boolean;
  /** Turns the filter on or off. */
  readonly href: string;
}

export const Search = ({ search: { q, choices, show } }: { search: HerdSearch }) => (
  <search>
    <form method="get" action={paths.animals} class="search herd-search" {...WHILE_CHOOSING}>
      {show.map((filter) => (
        <input type="hidden" name="show" value={filter} />
      ))}
      <label for="q">Find by name, kind, shelf, note</label>
      <input id="q" name="q" type="search" value={q} aria-keyshortcuts="/" />
      <details class="narrow" open={choices.some(({ chosen }) => chosen !== '')}>
        <summary>Kind, stage, place, order</summary>
        <div class="narrow-fields">
          {choices.map((choice) => (
            <Choice choice={choice} />
          ))}
        </div>
      </details>
      <button type="submit" class="quiet">
        Find
      </button>
    </form>
  </search>
);

/** With script the list follows what is typed and chosen; without, the button does. */
const WHILE_CHOOSING = {
  'data-hx-get': paths.animals,
  'data-hx-trigger': 'input delay:300ms',
  'data-hx-target': '#found',
  'data-hx-select': '#found',
  'data-hx-swap': 'outerHTML',
  'data-hx-replace-url': 'true',
};

const Choice = ({ choice: { name, label, chosen, options } }: { choice: HerdChoice }) => {
  const groups = [...new Set(options.map(({ group }) => group))];
  const line = ({ value, label: words }: Option) => (
    <option value={value} selected={value === chosen}>
      {words}
    </option>
  );
  return (
    <p class="field">
      <label for={`herd-${name}`}>{label}</label>
      <select id={`herd-${name}`} name={name}>
        {groups.map((group) => {
          const lines = options.filter((option) => option.group === group).map(line);
          return group === undefined ? lines : <optgroup label={group}>{lines}</optgroup>;
        })}
      </select>
    </p>
  );
};

/** Each filter is a link; those that would find nobody are left out. */
export const Filters = ({ filters }: { filters: readonly HerdFilter[] }) => (
  <ul class="filters" aria-label="Show only">
    {filters
      .filter(({ on, count }) => on || count > 0)
      .map(({ label, count, on, href }) => (
        <li>
          <a href={href} class="filter" {...(on ? { 'aria-current': 'true' as const } : {})}>
            {label} <b>{count.toLocaleString('en-GB')}</b>
          </a>
        </li>
      ))}
  </ul>
);

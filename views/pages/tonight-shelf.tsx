/** One shelf of the round: its rows, another bin for all of them, and its own button. */

import type { Serving } from '../../src/husbandry/appetite/index.ts';
import { grouped } from '../../src/husbandry/grouped.ts';
import { nameOf } from '../names.ts';
import { paths } from '../paths.ts';
import type { TonightProps } from './tonight.tsx';
import { ServingRow } from './tonight-row.tsx';

/** Rows by shelf, in the order given. */
export const byShelf = <T extends { readonly shelf: string }>(rows: readonly T[]) => [
  ...grouped(rows, ({ shelf }) => shelf),
];

type ShelfProps = TonightProps & {
  readonly shelf: string;
  readonly servings: readonly Serving[];
  /** Place among the shelves. */
  readonly at: number;
};

export const Shelf = (props: ShelfProps) => {
  const { shelf, servings, at, cautions, moultless } = props;
  return (
    <section class="shelf" id={`shelf-${at}`} data-shelf={shelf} aria-label={shelf}>
      <h2>{shelf}</h2>
      <FeedFrom {...props} />
      <ul class="rows">
        {servings.map((serving) => (
          <ServingRow
            {...props}
            serving={serving}
            cautions={cautions.get(serving.animal) ?? []}
            moults={!moultless.has(serving.animal)}
          />
        ))}
      </ul>
      <button type="submit" name="shelf" value={shelf} class="shelf-done">
        This shelf is done<span class="unseen"> ({shelf})</span>
      </button>
    </section>
  );
};

/** Bins that hold something for somebody on the shelf. */
const binsFor = (servings: readonly Serving[]): readonly string[] => [
  ...new Set(
    servings
      .flatMap(({ offer, choices }) => [...(offer === null ? [] : [offer]), ...choices])
      .map(({ bin }) => bin),
  ),
];

const fedFrom = (servings: readonly Serving[], bin: string): number =>
  servings.filter(({ offer }) => offer?.bin === bin).length;

const FeedFrom = ({ shelf, servings, at, chosen, names }: ShelfProps) => {
  const bins = binsFor(servings);
  const now = chosen.get(shelf) ?? '';
  if (bins.length < 2 && now === '') return null;
  const id = `feed-from-${at}`;
  return (
    <details class="feed-from" open={now !== ''}>
      <summary>
        Feed this shelf from another bin<span class="unseen"> ({shelf})</span>
      </summary>
      <div class="feed-from-row">
        <label for={id}>Feed this shelf from</label>
        <select id={id} name={`from:${shelf}`}>
          <option value="">what fits best</option>
          {[...new Set([...bins, ...(now === '' ? [] : [now])])].map((bin) => (
            <option value={bin} selected={bin === now}>
              {nameOf(names.bins, bin)}
            </option>
          ))}
        </select>
        <button type="submit" formaction={`${paths.tonightPreview}#shelf-${at}`}>
          Show it so<span class="unseen"> ({shelf})</span>
        </button>
      </div>
      <p class="note">
        {now === '' ? '' : `${fedFrom(servings, now)} of ${servings.length} get theirs from it now. `}
        Who finds no whole meal in it keeps theirs. Your marks stay; nothing is written down yet.
      </p>
    </details>
  );
};

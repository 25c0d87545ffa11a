/** A list being put in order: each line with its place to type and its buttons; it is kept by one button at the end. */
import type { Child } from 'hono/jsx';

interface ArrangeLineProps {
  /** Names the line among its fellows; a form posts it once for each line, in order. */
  readonly value: string;
  /** Field the value is posted in. */
  readonly field: string;
  /** What it is called, for a screen reader. */
  readonly label: string;
  /** Its place, from 1 on, and how many there are. */
  readonly place: number;
  readonly of: number;
  /** What was typed as its place, where that was refused. */
  readonly typed?: string | undefined;
  /** Where a button posts the list as it is now. */
  readonly moved: string;
  readonly children?: Child;
}

const WAYS = [
  { way: 'up', sign: '↑', label: 'Up' },
  { way: 'down', sign: '↓', label: 'Down' },
  { way: 'top', sign: '⤒', label: 'To the top' },
] as const;

export const ArrangeLine = (props: ArrangeLineProps) => {
  const { value, field, label, place, of, typed, moved, children } = props;
  const id = encodeURIComponent(value);
  const isIdle = (way: string) => (way === 'down' ? place === of : place === 1);
  return (
    <li class="arrange-line" id={`line-${id}`}>
      <input type="hidden" name={field} value={value} />
      <label class="unseen" for={`place-${id}`}>
        Place of {label}, 1 to {of}
      </label>
      <input
        class="arrange-place"
        name="place"
        id={`place-${id}`}
        inputmode="numeric"
        autocomplete="off"
        value={typed ?? `${place}`}
      />
      <div class="arrange-words">{children}</div>
      <div class="arrange-ways">
        {WAYS.map(({ way, sign, label: words }) => (
          <button
            type="submit"
            class="quiet arrange-way"
            id={`${way}-${id}`}
            name="move"
            value={`${way}:${value}`}
            formaction={`${moved}#line-${id}`}
            {...(isIdle(way) ? { disabled: true } : {})}
            {...swapped(moved)}
          >
            <span aria-hidden="true">{sign}</span>
            <span class="unseen">
              {words}: {label}
            </span>
          </button>
        ))}
      </div>
    </li>
  );
};

/** With script only the list is fetched and put in its place. */
export const swapped = (moved: string) => ({
  'data-hx-post': moved,
  'data-hx-target': '#arrange',
  'data-hx-select': '#arrange',
  'data-hx-swap': 'outerHTML',
});

/** Says that what is shown is not kept yet, with the one button that keeps it. */
export const KeepOrder = ({ changed, button }: { changed: boolean; button: string }) => (
  <div class="arrange-keep">
    <button type="submit" class="act-here">
      {button}
    </button>
    <span role="status">{changed ? 'Moved, but not kept yet.' : ''}</span>
  </div>
);

/** What Enter does in a place: shows the list with the places typed. */
export const TypedPlaces = ({ moved }: { moved: string }) => (
  <button type="submit" class="unseen" tabindex={-1} formaction={moved} {...swapped(moved)}>
    Show it in the places typed
  </button>
);

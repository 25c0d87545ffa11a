/** The order you walk: every shelf with who lives there, to be put in the order of the keeper's own steps. */
import type { ShelfPlace } from '../../src/husbandry/walk.ts';
import { counted, fewOf } from '../format.ts';
import { Layout, type Shell } from '../layout.tsx';
import { ArrangeLine, KeepOrder, swapped, TypedPlaces } from '../partials/arrange.tsx';
import { entryOf, type PageForms, PostForm } from '../partials/form.tsx';
import { paths } from '../paths.ts';

export interface WalkShelf extends ShelfPlace {
  /** Names the shelf in forms. */
  readonly key: string;
  /** 'Warm room, A2'. */
  readonly label: string;
  /** Names of those who live there, in order. */
  readonly animals: readonly string[];
}

/**
 * Posts `shelf` (its key) and `place` once for each shelf, in order: to `paths.walk` to keep them, to
 * `paths.walkMoved` with `move` ('up:<key>', 'down:…', 'top:…' or 'by name') to see them moved.
 */
export interface WalkProps {
  readonly shell: Shell;
  readonly forms: PageForms;
  readonly shelves: readonly WalkShelf[];
  /** What is shown differs from what is kept. */
  readonly changed: boolean;
  /** Places as typed, where they were refused. */
  readonly places?: readonly string[];
  /** Revision the keeper began from. */
  readonly revision: string;
}

const NAMED = 8;

export const WalkPage = (props: WalkProps) => (
  <Layout shell={props.shell} title="The order you walk" here="more">
    <header class="page-head">
      <h1>The order you walk</h1>
      <p class="lede">
        {props.shelves.length === 0
          ? 'Nobody lives here yet. Each shelf stands here as soon as an animal lives on it.'
          : 'The round, the morning, the printed sheets and the list of animals follow it.'}
      </p>
    </header>
    {props.shelves.length === 0 ? <a href={paths.newAnimal}>Add an animal</a> : <WalkForm {...props} />}
  </Layout>
);

const WalkForm = ({ forms, shelves, changed, places, revision }: WalkProps) => (
  <div id="arrange">
    <PostForm entry={entryOf(forms, 'walk')} action={paths.walk} class="arrange">
      <TypedPlaces moved={paths.walkMoved} />
      <input type="hidden" name="asOf" value={revision} />
      <p class="note">Step a shelf up or down, or type its place.</p>
      <ol class="arrange-list">
        {shelves.map((shelf, at) => (
          <ArrangeLine
            field="shelf"
            value={shelf.key}
            label={shelf.label}
            place={at + 1}
            of={shelves.length}
            typed={places?.[at]}
            moved={paths.walkMoved}
          >
            <a class="who" href={paths.walkShelfOf(shelf.room, shelf.shelf)}>
              {shelf.label}
            </a>
            <small>{namesOf(shelf.animals)}</small>
          </ArrangeLine>
        ))}
      </ol>
      <KeepOrder changed={changed} button="Keep this order" />
      <button
        type="submit"
        class="quiet"
        name="move"
        value="by name"
        formaction={paths.walkMoved}
        {...swapped(paths.walkMoved)}
      >
        Put in alphabetical order
      </button>
    </PostForm>
  </div>
);

const namesOf = (animals: readonly string[]): string =>
  `${counted(animals.length, 'animal')}: ${fewOf(animals, NAMED)}`;

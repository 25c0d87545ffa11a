/** One shelf of the walk: its animals, to be put in order or moved to another shelf. */
import type { ShelfPlace } from '../../src/husbandry/walk.ts';
import { counted } from '../format.ts';
import { Layout, type Shell } from '../layout.tsx';
import { ArrangeLine, KeepOrder, swapped, TypedPlaces } from '../partials/arrange.tsx';
import { Toggle } from '../partials/choices.tsx';
import { entryOf, Field, type Option, type PageForms, PostForm, Select } from '../partials/form.tsx';
import { paths } from '../paths.ts';

export interface ShelfAnimal {
  readonly code: string;
  readonly name: string;
  readonly kindName: string;
}

/**
 * Posts `room`, `shelf`, `animal` and `place` once for each animal in order, `take` for each that moves, `to` (a
 * shelf's key) or `newShelf`: to `paths.walkShelf` to keep it, to `paths.walkShelfMoved` with `move` to see it moved.
 */
export interface WalkShelfProps {
  readonly shell: Shell;
  readonly forms: PageForms;
  readonly at: ShelfPlace;
  readonly label: string;
  readonly animals: readonly ShelfAnimal[];
  readonly changed: boolean;
  /** Codes ticked to move. */
  readonly taken: readonly string[];
  readonly places?: readonly string[];
  /** Other shelves, by key. */
  readonly others: readonly Option[];
}

export const WalkShelfPage = (props: WalkShelfProps) => (
  <Layout shell={props.shell} title={props.label} here="more">
    <header class="page-head">
      <p class="eyebrow">
        <a href={paths.walk}>The order you walk</a>
      </p>
      <h1>
        {counted(props.animals.length, 'animal')} on {props.label}
      </h1>
    </header>
    <ShelfForm {...props} />
  </Layout>
);

const ShelfForm = (props: WalkShelfProps) => {
  const { forms, at, animals, changed, taken, places, others } = props;
  const entry = entryOf(forms, 'shelf');
  return (
    <div id="arrange">
      <PostForm entry={entry} action={paths.walkShelf} class="arrange">
        <TypedPlaces moved={paths.walkShelfMoved} />
        <input type="hidden" name="room" value={at.room} />
        <input type="hidden" name="shelf" value={at.shelf} />
        <ol class="arrange-list">
          {animals.map((animal, index) => (
            <ArrangeLine
              field="animal"
              value={animal.code}
              label={animal.name}
              place={index + 1}
              of={animals.length}
              typed={places?.[index]}
              moved={paths.walkShelfMoved}
            >
              <span class="who">
                {animal.name} <small>{animal.code}</small>
              </span>
              <small>{animal.kindName}</small>
              <Toggle
                name="take"
                value={animal.code}
                label="Moves"
                of={`${animal.name} to another shelf`}
                checked={taken.includes(animal.code)}
                class="tap arrange-take"
              />
            </ArrangeLine>
          ))}
        </ol>
        <fieldset class="arrange-to">
          <legend>Those marked “Moves” go to</legend>
          <div class="pair tight">
            <Select entry={entry} name="to" label="A shelf" none="choose" options={others} />
            <Field entry={entry} name="newShelf" label="or a new shelf in this room" />
          </div>
        </fieldset>
        <KeepOrder changed={changed} button="Keep it so" />
        <button
          type="submit"
          class="quiet"
          name="move"
          value="by code"
          formaction={paths.walkShelfMoved}
          {...swapped(paths.walkShelfMoved)}
        >
          Put in the order of their codes
        </button>
      </PostForm>
    </div>
  );
};

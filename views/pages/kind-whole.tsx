/** A kind as a whole on its page: name, size and measure, the way back to the Book, and who is of it. */
import { entryOf, PostForm } from '../partials/form.tsx';
import { type NumberLine, OwnNumbers } from '../partials/own-numbers.tsx';
import { paths } from '../paths.ts';
import type { KindProps } from './kind.tsx';
import { RenameForm } from './kind-whole-form.tsx';

export const Whole = (props: KindProps) => {
  const { code, name, commonName, forms, revision, whole, madeFrom } = props;
  return (
    <section aria-labelledby="whole">
      <h2 id="whole">Name, size and measure</h2>
      <p class="acts">
        <a class="button quiet" href={paths.changeKind(code, 'kind')}>
          Change its size and measure
        </a>
        <a class="button quiet" href={paths.newKindFrom(code)}>
          Make a kind of your own from it
        </a>
      </p>
      <OwnNumbers
        forms={forms}
        action={paths.kindAct(code, 'reset')}
        revision={revision}
        stage=""
        caption={`${whole.length} values of the kind and where they come from`}
        lines={whole}
        fixed={madeFrom === null ? [] : ['name', 'commonName', 'aliases']}
      />
      <RenameForm {...{ forms, code, revision, name, commonName }} />
      <Back {...props} />
    </section>
  );
};

/** Everything back to the Book; and a kind of one's own away. */
const Back = ({ code, forms, revision, stages, whole, madeFrom, animals }: KindProps) => {
  const yours = [...whole, ...stages.flatMap(({ lines }) => lines)].filter(({ own }) => own !== null);
  const reset = entryOf(forms, 'reset-all');
  const remove = entryOf(forms, 'remove');
  return (
    <>
      {yours.length === 0 || (madeFrom !== null && yours.every(isName)) ? null : (
        <PostForm entry={reset} action={paths.kindAct(code, 'reset')}>
          <input type="hidden" name="asOf" value={`${revision}`} />
          <button type="submit" class="quiet">
            Reset all of it to the Book
          </button>
        </PostForm>
      )}
      {madeFrom === null ? null : (
        <PostForm entry={remove} action={paths.kindAct(code, 'remove')}>
          <input type="hidden" name="asOf" value={`${revision}`} />
          {animals.length === 0 ? null : <p>It can be removed once nobody is of this kind.</p>}
          <button type="submit" class="quiet">
            Remove this kind
          </button>
        </PostForm>
      )}
    </>
  );
};

const isName = ({ field }: NumberLine): boolean => ['name', 'commonName', 'aliases'].includes(field);

export const Yours = ({ animals }: KindProps) => (
  <section aria-labelledby="yours">
    <h2 id="yours">Yours of this kind</h2>
    {animals.length === 0 ? (
      <p>
        Nobody yet. <a href={paths.newAnimal}>Add an animal</a>.
      </p>
    ) : (
      <ul class="name-list">
        {animals.map(({ code, name }) => (
          <li>
            <a href={paths.animal(code)}>{name}</a>
          </li>
        ))}
      </ul>
    )}
  </section>
);

/** Colony start: the question as a form of its own address, and its answer above it. */
import type { DayTemp, PreySpecies } from '../../src/husbandry/prey/index.ts';
import { plural } from '../../src/husbandry/words.ts';
import type { LengthUnit } from '../format.ts';
import { Layout, type Shell } from '../layout.tsx';
import type { FormEntry, Option } from '../partials/form.tsx';
import { Select } from '../partials/form.tsx';
import { paths } from '../paths.ts';
import { ColonyAnswerPart, type ColonyShown } from './colony-answer.tsx';
import { ColonyForm } from './colony-form.tsx';

/** Asks itself by GET; the fields are those of `ColonyForm`. Setting up posts to the same address. */
export interface ColonyStartProps {
  readonly shell: Shell;
  readonly unit: LengthUnit;
  /** What was asked, as typed. */
  readonly asked: FormEntry;
  readonly prey: {
    readonly species: PreySpecies;
    /** Why the prey asked for is not bred in a colony. */
    readonly amiss: string | null;
    readonly options: readonly Option[];
  };
  readonly rooms: readonly (Option & { readonly temp: DayTemp })[];
  /** Trade sizes, for young to begin with. */
  readonly sizes: readonly Option[];
  /** Null until something is asked that can be answered. */
  readonly answer: ColonyShown | null;
}

export const ColonyStartPage = (props: ColonyStartProps) => (
  <Layout shell={props.shell} title="Start a colony" here="larder">
    <p class="eyebrow">
      <a href={paths.larder}>Larder</a> · Start a colony
    </p>
    {props.answer === null ? <Asking {...props} /> : <ColonyAnswerPart shown={props.answer} />}
    <section class="colony-question" aria-labelledby="colony-question">
      <h2 id="colony-question">{props.answer === null ? 'What do you want of it?' : 'Ask it otherwise'}</h2>
      <PreyChoice {...props} />
      <ColonyForm {...props} />
    </section>
  </Layout>
);

const Asking = ({ asked }: ColonyStartProps) => (
  <header class="page-head">
    <h1>When must you start, to feed from your own colony?</h1>
    {Object.keys(asked.problems).length === 0 ? (
      <p class="lede">
        Say what you want to take each week. This page then says how many breeders that takes, when the first
        harvest comes, what to buy until then, and when it has paid for itself.
      </p>
    ) : (
      <p class="problem" role="alert">
        {asked.problems[''] ??
          'Nothing is worked out yet. Put right what is marked below; what you typed is kept.'}
      </p>
    )}
  </header>
);

/** Other prey has other sizes: it is chosen first. */
const PreyChoice = ({ prey }: ColonyStartProps) => {
  const entry: FormEntry = {
    name: 'colony-prey',
    formId: '',
    values: {},
    problems: prey.amiss === null ? {} : { species: prey.amiss },
  };
  const options = prey.options.map((option) => ({ ...option, label: plural(option.label) }));
  return (
    <form method="get" action={paths.colonyStart} class="form colony-prey" id={entry.name}>
      <Select entry={entry} name="species" label="Prey" options={options} start={prey.species.code} />
      <button type="submit" class="quiet">
        Take this prey
      </button>
    </form>
  );
};

/** What may be said of a bin: one tap for how it looks, a number for what was counted, weighed, thrown out or moved. */

import { civilDate } from '../../src/husbandry/calendar.ts';
import type { Bin, CupLook, Level } from '../../src/husbandry/larder/index.ts';
import type { Shell } from '../layout.tsx';
import { ActForm } from '../partials/act.tsx';
import { SubmitButtons } from '../partials/choices.tsx';
import { entryOf, Field, type Option, type PageForms, PostForm, Select } from '../partials/form.tsx';
import { type BinAct, paths } from '../paths.ts';

/**
 * Forms, each posting to `paths.binAct(code, …)` with `day`: look (`level`), size (`sizeClass`), cup-look
 * (`look`), count (`heads`, `size` or ''), weigh (`mass` as typed, '12 g'), discard (`heads`), move (`heads`, `to`).
 */
interface BinActsProps {
  readonly shell: Shell;
  readonly forms: PageForms;
  readonly bin: Bin;
  readonly sizes: readonly Option[];
  readonly otherBins: readonly Option[];
}

const LEVELS: readonly { value: Level; label: string }[] = [
  { value: 'none', label: 'None' },
  { value: 'a few', label: 'A few' },
  { value: 'a quarter', label: 'A quarter' },
  { value: 'half', label: 'Half' },
  { value: 'full', label: 'Full' },
];

const CUP_LOOKS: readonly { value: CupLook; label: string }[] = [
  { value: 'started', label: 'Just started' },
  { value: 'larvae', label: 'Larvae' },
  { value: 'producing', label: 'Producing' },
  { value: 'slow', label: 'Slow' },
  { value: 'finished', label: 'Finished' },
  { value: 'crashed', label: 'Crashed' },
  { value: 'mites', label: 'Mites' },
];

export const BinActs = (props: BinActsProps) =>
  props.bin.role === 'cup' ? (
    <section class="bin-acts" aria-labelledby="see">
      <h2 id="see">What do you see?</h2>
      <OneTap {...props} act="cup-look" name="look" legend="The cup looks" options={CUP_LOOKS} />
      <Discard {...props} title="Throw flies out" />
      <Close {...props} />
    </section>
  ) : (
    <section class="bin-acts" aria-labelledby="see">
      <h2 id="see">What do you see?</h2>
      {props.bin.capacity === null ? null : (
        <OneTap {...props} act="look" name="level" legend="By eye, against full" options={LEVELS} />
      )}
      <OneTap {...props} act="size" name="sizeClass" legend="Most look the size of" options={props.sizes} />
      <Count {...props} />
      <Weigh {...props} />
      <Discard {...props} title="Dead or thrown out" />
      {props.otherBins.length === 0 ? null : <Move {...props} />}
      <Close {...props} />
    </section>
  );

interface OneTapProps extends BinActsProps {
  readonly act: BinAct;
  readonly name: string;
  readonly legend: string;
  readonly options: readonly Option[];
}

const OneTap = ({ forms, bin, shell, act, name, legend, options }: OneTapProps) => (
  <PostForm
    entry={entryOf(forms, act)}
    action={paths.binAct(bin.code, act)}
    class="one-tap"
    keep={`${bin.name}: ${legend.toLowerCase()}`}
  >
    <fieldset class="choices">
      <legend>{legend}</legend>
      <input type="hidden" name="day" value={civilDate(shell.today)} />
      <SubmitButtons name={name} options={options} />
    </fieldset>
  </PostForm>
);

const OnDay = ({ forms, shell, act }: BinActsProps & { act: BinAct }) => (
  <Field
    entry={entryOf(forms, act)}
    name="day"
    label="On"
    type="date"
    start={civilDate(shell.today)}
    required
  />
);

const Count = (props: BinActsProps) => {
  const entry = entryOf(props.forms, 'count');
  return (
    <ActForm
      entry={entry}
      action={paths.binAct(props.bin.code, 'count')}
      title="Counted"
      keep={`${props.bin.name}: counted`}
      button="Write down the count"
    >
      <Field entry={entry} name="heads" label="Heads alive" type="number" min="0" required />
      <Select entry={entry} name="size" label="Size" none="Not looked at" options={props.sizes} />
      <OnDay {...props} act="count" />
    </ActForm>
  );
};

const Weigh = (props: BinActsProps) => {
  const entry = entryOf(props.forms, 'weigh');
  return (
    <ActForm
      entry={entry}
      action={paths.binAct(props.bin.code, 'weigh')}
      title="Weighed"
      keep={`${props.bin.name}: weighed`}
      button="Write down the weight"
    >
      <Field entry={entry} name="mass" label="Prey alone" hint="Without the box: 12 g, 450 mg." required />
      <OnDay {...props} act="weigh" />
    </ActForm>
  );
};

const Discard = (props: BinActsProps & { title: string }) => {
  const entry = entryOf(props.forms, 'discard');
  return (
    <ActForm
      entry={entry}
      action={paths.binAct(props.bin.code, 'discard')}
      title={props.title}
      button="Write it down"
      caution="Live prey you do not want: freeze it, never release it."
    >
      <Field entry={entry} name="heads" label="Heads" type="number" min="1" required />
      <OnDay {...props} act="discard" />
    </ActForm>
  );
};

const Move = (props: BinActsProps) => {
  const entry = entryOf(props.forms, 'move');
  return (
    <ActForm
      entry={entry}
      action={paths.binAct(props.bin.code, 'move')}
      title="Moved or harvested"
      button="Move them"
    >
      <Field entry={entry} name="heads" label="Heads" type="number" min="1" required />
      <Select entry={entry} name="to" label="Into" options={props.otherBins} />
      <OnDay {...props} act="move" />
    </ActForm>
  );
};

const Close = ({ forms, bin }: BinActsProps) => (
  <ActForm
    entry={entryOf(forms, 'close')}
    action={paths.binAct(bin.code, 'close')}
    title="No longer in use"
    button="Take it out of use"
  >
    <p class="note">What is left in it is no longer counted on. Its record is kept, and it can come back.</p>
  </ActForm>
);

/** What may be said of a bin: one tap for how it looks, a number for what was counted, weighed, thrown out or moved. */

import { civilDate } from '../../src/husbandry/calendar.ts';
import type { CupLook, Level } from '../../src/husbandry/larder/index.ts';
import { ActForm } from '../partials/act.tsx';
import { SubmitButtons } from '../partials/choices.tsx';
import { entryOf, Field, type Option, PostForm, Select } from '../partials/form.tsx';
import { type BinAct, paths } from '../paths.ts';
import { type BinActsProps, OnDay, Sure } from './bin-act-parts.tsx';
import { Dead } from './bin-losses.tsx';
import { Keeping } from './bin-place.tsx';
import { Discard, Parting, TakeOut } from './bin-take.tsx';

/**
 * Forms, each posting to `paths.binAct(code, …)` with `day`: look (`level`), size (`sizeClass`), cup-look (`look`), count
 * (`heads`, `grown` or '', `size` or ''), weigh (`mass` as typed, '12 g'; `sampleHeads` and `sampleMass` or ''), dead
 * (`heads`), adults, sexed (`females`, `males`), die-off (`left`); and those of `bin-take.tsx` and `bin-place.tsx`.
 */
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

export const BinActs = (props: BinActsProps) => {
  const { role } = props.bin;
  if (role === 'cup') return <CupActs {...props} />;
  return (
    <>
      <section class="bin-acts" aria-labelledby="see">
        <h2 id="see">What do you see?</h2>
        {role === 'frozen' ? null : <Glances {...props} />}
        <Count {...props} />
        <Weigh {...props} />
        {role === 'frozen' ? null : <Dead {...props} />}
      </section>
      <TakeOut {...props} />
      {role === 'frozen' ? null : <Keeping {...props} />}
      {role === 'frozen' ? null : <Crashed {...props} />}
      <More {...props} />
    </>
  );
};

const CupActs = (props: BinActsProps) => (
  <>
    <section class="bin-acts" aria-labelledby="see">
      <h2 id="see">What do you see?</h2>
      <OneTap {...props} act="cup-look" name="look" legend="The cup looks" options={CUP_LOOKS} />
      <Discard {...props} title="Throw flies out" />
    </section>
    <Keeping {...props} />
    <More {...props} />
  </>
);

/** One tap, and the page says what it means. */
const Crashed = (props: BinActsProps) => {
  const { forms, bin, shell, leftAlive } = props;
  const entry = entryOf(forms, 'die-off');
  return (
    <section class="bin-acts" aria-labelledby="crash">
      <h2 id="crash">It crashed</h2>
      <PostForm
        entry={entry}
        action={paths.binAct(bin.code, 'die-off')}
        class="one-tap"
        keep={`${bin.name}: it crashed`}
      >
        <fieldset class="choices">
          <legend>How many are left?</legend>
          <input type="hidden" name="day" value={civilDate(shell.today)} />
          <SubmitButtons name="left" options={leftAlive} />
        </fieldset>
      </PostForm>
    </section>
  );
};

/** What is done seldom. */
const More = (props: BinActsProps) => (
  <section class="bin-acts" aria-labelledby="more-acts">
    <h2 id="more-acts">More</h2>
    {props.bin.role === 'cup' ? null : <Parting {...props} />}
    <Close {...props} />
  </section>
);

const Glances = (props: BinActsProps) => (
  <>
    {props.bin.capacity === null ? null : (
      <OneTap {...props} act="look" name="level" legend="By eye, against full" options={LEVELS} />
    )}
    <OneTap {...props} act="size" name="sizeClass" legend="Most look the size of" options={props.sizes} />
  </>
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

const GROWN_HINT = 'If you counted them apart. They are what the colony grows from.';

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
      {props.bin.role === 'colony' ? (
        <Field entry={entry} name="grown" label="Of them grown" hint={GROWN_HINT} type="number" min="0" />
      ) : null}
      <Select entry={entry} name="size" label="Size" none="Not looked at" options={props.sizes} />
      <OnDay {...props} act="count" />
      <Sure entry={entry} />
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
      <Field entry={entry} name="sampleHeads" label="Of these counted out" type="number" min="1" />
      <Field
        entry={entry}
        name="sampleMass"
        label="And weighed by themselves"
        hint="Tells how large they are."
      />
      <OnDay {...props} act="weigh" />
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

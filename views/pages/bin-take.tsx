/** Prey taken out of a bin: harvested, moved, split off, merged, retired, culled or thrown out. */

import { CULL_CAUTION, TRANSFER_CAUTION } from '../cautions.ts';
import { ActForm } from '../partials/act.tsx';
import { RadioButtons } from '../partials/choices.tsx';
import { entryOf, Field, type FormEntry, Select } from '../partials/form.tsx';
import { paths } from '../paths.ts';
import { type BinActsProps, OnDay, Sure } from './bin-act-parts.tsx';

/**
 * Forms to `paths.binAct(code, …)` with `day` and, once asked, `sure`: harvest (`heads`, `sizeClass`, `to` or ''),
 * move (`heads`, `size` or '', `to`), retire (`heads`, `to` or ''), split (`heads` or `percent`, `name`), merge (`to`),
 * cull (`heads`, `size` or '', `how`), discard (`heads`).
 */
export const TakeOut = (props: BinActsProps) => {
  const { bin, otherBins } = props;
  const living = bin.role !== 'frozen';
  return (
    <section class="bin-acts" aria-labelledby="take">
      <h2 id="take">Take out</h2>
      {living ? <Harvest {...props} /> : null}
      {otherBins.length === 0 ? null : <Move {...props} />}
      {living ? <Cull {...props} /> : null}
      <Discard {...props} title="Thrown out" />
      {bin.role === 'colony' ? <Retire {...props} /> : null}
    </section>
  );
};

/** A bin made into two, or two into one. */
export const Parting = (props: BinActsProps) => (
  <>
    <Split {...props} />
    {props.otherBins.length === 0 ? null : <Merge {...props} />}
  </>
);

const Heads = ({ entry }: { entry: FormEntry }) => (
  <Field entry={entry} name="heads" label="Heads" type="number" min="1" required />
);

const Harvest = (props: BinActsProps) => {
  const entry = entryOf(props.forms, 'harvest');
  const kept = props.bin.keepAdults ? ' Breeders are left.' : '';
  return (
    <ActForm
      entry={entry}
      action={paths.binAct(props.bin.code, 'harvest')}
      title="Harvested"
      button="Write down the harvest"
      caution={`${TRANSFER_CAUTION}${kept}`}
    >
      <Heads entry={entry} />
      <Select entry={entry} name="sizeClass" label="Size" options={props.sizes} start={props.sizeNow} />
      <Select entry={entry} name="to" label="Into" none="A new bin" options={props.otherBins} />
      <OnDay {...props} act="harvest" />
      <Sure entry={entry} />
    </ActForm>
  );
};

const Move = (props: BinActsProps) => {
  const entry = entryOf(props.forms, 'move');
  return (
    <ActForm
      entry={entry}
      action={paths.binAct(props.bin.code, 'move')}
      title="Moved"
      button="Move them"
      caution={TRANSFER_CAUTION}
    >
      <Heads entry={entry} />
      <Select entry={entry} name="size" label="Size" none="All sizes alike" options={props.sizes} />
      <Select entry={entry} name="to" label="Into" options={props.otherBins} />
      <OnDay {...props} act="move" />
      <Sure entry={entry} />
    </ActForm>
  );
};

const HOW = [
  { value: 'frozen', label: 'Frozen, to feed later' },
  { value: 'humanely', label: 'Killed humanely, thrown away' },
];

const Cull = (props: BinActsProps) => {
  const entry = entryOf(props.forms, 'cull');
  return (
    <ActForm
      entry={entry}
      action={paths.binAct(props.bin.code, 'cull')}
      title="Culled"
      button="Write down the cull"
      caution={CULL_CAUTION}
    >
      <Heads entry={entry} />
      <Select entry={entry} name="size" label="Size" none="All sizes alike" options={props.sizes} />
      <RadioButtons entry={entry} name="how" legend="They were" options={HOW} start="frozen" />
      <OnDay {...props} act="cull" />
      <Sure entry={entry} />
    </ActForm>
  );
};

export const Discard = (props: BinActsProps & { title: string }) => {
  const entry = entryOf(props.forms, 'discard');
  return (
    <ActForm
      entry={entry}
      action={paths.binAct(props.bin.code, 'discard')}
      title={props.title}
      button="Write it down"
      caution="Live prey you do not want: freeze it, never release it."
    >
      <Heads entry={entry} />
      <OnDay {...props} act="discard" />
      <Sure entry={entry} />
    </ActForm>
  );
};

const Retire = (props: BinActsProps) => {
  const entry = entryOf(props.forms, 'retire');
  const after = props.species.laying?.retireAfterDays;
  return (
    <ActForm
      entry={entry}
      action={paths.binAct(props.bin.code, 'retire')}
      title="Breeders retired"
      button="Take them out"
    >
      {after === undefined ? null : (
        <p class="note">Breeders are replaced after about {after.value} days as adults.</p>
      )}
      <Field entry={entry} name="heads" label="Adults" type="number" min="1" required />
      <Select entry={entry} name="to" label="Into" none="A new bin" options={props.otherBins} />
      <OnDay {...props} act="retire" />
      <Sure entry={entry} />
    </ActForm>
  );
};

const Split = (props: BinActsProps) => {
  const entry = entryOf(props.forms, 'split');
  return (
    <ActForm
      entry={entry}
      action={paths.binAct(props.bin.code, 'split')}
      title="Split"
      button="Split it"
      caution={TRANSFER_CAUTION}
    >
      <Field entry={entry} name="heads" label="Heads into the new one" type="number" min="1" />
      <Field entry={entry} name="percent" label="Or a share, %" hint="50 for half of it." />
      <Field entry={entry} name="name" label="Name of the new one" />
      <OnDay {...props} act="split" />
      <Sure entry={entry} />
    </ActForm>
  );
};

const Merge = (props: BinActsProps) => {
  const entry = entryOf(props.forms, 'merge');
  return (
    <ActForm
      entry={entry}
      action={paths.binAct(props.bin.code, 'merge')}
      title="Merged into another"
      button="Merge them"
      caution="Merge only what you know to be healthy."
    >
      <p class="note">All of it goes over, and this one is then out of use.</p>
      <Select entry={entry} name="to" label="Into" options={props.otherBins} />
      <OnDay {...props} act="merge" />
      <Sure entry={entry} />
    </ActForm>
  );
};

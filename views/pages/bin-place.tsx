/** Where a bin stands and how it is kept: its room, its own temperatures, the cold, quarantine, rest, cleaning. */

import { QUARANTINE_CAUTION } from '../cautions.ts';
import { ActForm } from '../partials/act.tsx';
import { entryOf, Field, type FormEntry, Select } from '../partials/form.tsx';
import { paths } from '../paths.ts';
import { type BinActsProps, OnDay } from './bin-act-parts.tsx';
import { FirstAdults, Sexed } from './bin-losses.tsx';

/**
 * Forms to `paths.binAct(code, …)`: place (`room`, `dayTemp` and `nightTemp` or '' for the room's, `day`), cold (`temp`
 * or '', `day`), quarantine (`days`), rest (`days`), clean-out (`eggsLost` in percent, `day`).
 */
export const Keeping = (props: BinActsProps) => (
  <section class="bin-acts" aria-labelledby="keep">
    <h2 id="keep">Look after</h2>
    <CleanOut {...props} />
    <Place {...props} />
    {props.species.coldStore === undefined || props.bin.role === 'cup' ? null : <Cold {...props} />}
    <Quarantine {...props} />
    {props.bin.role === 'cup' ? null : <Rest {...props} />}
    {props.bin.role === 'cup' ? null : <Grown {...props} />}
  </section>
);

const Grown = (props: BinActsProps) => (
  <>
    {props.species.laying === null ? null : <Sexed {...props} />}
    <FirstAdults {...props} />
  </>
);

const Place = (props: BinActsProps) => {
  const { bin, rooms } = props;
  const entry = entryOf(props.forms, 'place');
  const own = (tempC: number | undefined) => (tempC === undefined ? '' : `${tempC} C`);
  return (
    <ActForm
      entry={entry}
      action={paths.binAct(bin.code, 'place')}
      title="Put elsewhere, warmed or cooled"
      button="Put it there"
    >
      <Select entry={entry} name="room" label="Stands in" options={rooms} start={bin.room} />
      <Field
        entry={entry}
        name="dayTemp"
        label="In the bin by day"
        start={own(bin.ownC?.dayC)}
        hint="30 C or 86 F. Empty: as warm as the room."
      />
      <Field entry={entry} name="nightTemp" label="In the bin by night" start={own(bin.ownC?.nightC)} />
      <OnDay {...props} act="place" />
    </ActForm>
  );
};

const Cold = (props: BinActsProps) => {
  const entry = entryOf(props.forms, 'cold');
  const { fromC, toC, days } = props.species.coldStore ?? {};
  return (
    <ActForm
      entry={entry}
      action={paths.binAct(props.bin.code, 'cold')}
      title="Put in the cold"
      button="Put it in the cold"
    >
      <p class="note">
        At {fromC?.value} to {toC?.value} °C they stand still, for {days?.value} days at most.
      </p>
      <Field entry={entry} name="temp" label="Temperature" hint="Empty: the middle of that range." />
      <OnDay {...props} act="cold" />
    </ActForm>
  );
};

const Quarantine = (props: BinActsProps) => {
  const entry = entryOf(props.forms, 'quarantine');
  return (
    <ActForm
      entry={entry}
      action={paths.binAct(props.bin.code, 'quarantine')}
      title="Kept apart"
      button="Write it down"
      caution={QUARANTINE_CAUTION}
    >
      <ForDays entry={entry} start={`${props.quarantineDays}`} />
    </ActForm>
  );
};

const Rest = (props: BinActsProps) => {
  const entry = entryOf(props.forms, 'rest');
  return (
    <ActForm
      entry={entry}
      action={paths.binAct(props.bin.code, 'rest')}
      title="Left alone"
      button="Write it down"
    >
      <p class="note">
        So that it grows and breeds, it then feeds only those for whom nothing else is there.
      </p>
      <ForDays entry={entry} start="" />
    </ActForm>
  );
};

const ForDays = ({ entry, start }: { entry: FormEntry; start: string }) => (
  <Field
    entry={entry}
    name="days"
    label="For how many days"
    type="number"
    min="0"
    start={start}
    hint="From today; 0 ends it."
    required
  />
);

const CleanOut = (props: BinActsProps) => {
  const entry = entryOf(props.forms, 'clean-out');
  return (
    <ActForm
      entry={entry}
      action={paths.binAct(props.bin.code, 'clean-out')}
      title="Cleaned out"
      button="Write it down"
    >
      <Field
        entry={entry}
        name="eggsLost"
        label="Eggs thrown out with it, %"
        type="number"
        min="0"
        start="0"
        hint="A guess will do."
        required
      />
      <OnDay {...props} act="clean-out" />
    </ActForm>
  );
};

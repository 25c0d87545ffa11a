/** What is seen of the living in a bin besides their number: the dead, the first adults, sexes. */

import { civilDate } from '../../src/husbandry/calendar.ts';
import { ActForm } from '../partials/act.tsx';
import { entryOf, Field, PostForm } from '../partials/form.tsx';
import { paths } from '../paths.ts';
import { type BinActsProps, OnDay, Sure } from './bin-act-parts.tsx';

export const Dead = (props: BinActsProps) => {
  const entry = entryOf(props.forms, 'dead');
  return (
    <ActForm
      entry={entry}
      action={paths.binAct(props.bin.code, 'dead')}
      title="Dead taken out"
      keep={`${props.bin.name}: dead taken out`}
      button="Write it down"
    >
      <Field entry={entry} name="heads" label="Heads" type="number" min="1" required />
      <OnDay {...props} act="dead" />
      <Sure entry={entry} />
    </ActForm>
  );
};

export const FirstAdults = ({ forms, bin, shell }: BinActsProps) => (
  <PostForm
    entry={entryOf(forms, 'adults')}
    action={paths.binAct(bin.code, 'adults')}
    class="one-tap"
    keep={`${bin.name}: first adults`}
  >
    <input type="hidden" name="day" value={civilDate(shell.today)} />
    <button type="submit" class="quiet">
      First adults seen today
    </button>
  </PostForm>
);

export const Sexed = (props: BinActsProps) => {
  const entry = entryOf(props.forms, 'sexed');
  return (
    <ActForm
      entry={entry}
      action={paths.binAct(props.bin.code, 'sexed')}
      title="Females and males"
      button="Write it down"
    >
      <Field entry={entry} name="females" label="Adult females" type="number" min="0" required />
      <Field entry={entry} name="males" label="Adult males" type="number" min="0" required />
      <OnDay {...props} act="sexed" />
    </ActForm>
  );
};

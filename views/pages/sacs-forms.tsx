/** The acts of a sac: what happened to it, each with its day, and what is planned of it changed. */

import { civilDate } from '../../src/husbandry/calendar.ts';
import type { PlannedChange } from '../../src/husbandry/snapshot.ts';
import type { LengthUnit } from '../format.ts';
import type { Shell } from '../layout.tsx';
import { type Names, nameOf } from '../names.ts';
import { ActForm } from '../partials/act.tsx';
import { SubmitButtons } from '../partials/choices.tsx';
import { AsOf, entryOf, Field, type PageForms, PostForm } from '../partials/form.tsx';
import { COMES_OFF, PercentField, PlanFields } from '../partials/plan-fields.tsx';
import { paths } from '../paths.ts';

/**
 * Forms post to `paths.sacAct(code, …)`: pulled (`day`), hatched (`day`, `count`), settled (`day`, `count`, `name`,
 * `shelf`), ended (`day`, `how`), edit (`from`, `to`, `count`, `gauge`, `chance`, `shareKept` in percent, `asOf`),
 * cancel.
 */
interface FormsProps {
  readonly forms: PageForms;
  readonly shell: Shell;
  readonly names: Names;
  readonly unit: LengthUnit;
  readonly revision: number;
  /** Hours within which prey not taken comes out. */
  readonly leftoversOutHours: number;
}

type StepsProps = FormsProps & { readonly sac: { readonly change: PlannedChange } };

export const SacSteps = (props: StepsProps) => {
  const { change } = props.sac;
  const { pulled = null, hatched = null } = change.sac ?? {};
  return (
    <div class="sac-steps">
      {hatched === null && pulled === null && change.animal !== null ? <Pulled {...props} /> : null}
      {hatched === null ? <Hatched {...props} /> : null}
      <Settled {...props} open={hatched !== null} />
      {hatched === null ? <Ended {...props} /> : null}
      <Edit {...props} />
    </div>
  );
};

const today = ({ shell }: FormsProps): string => civilDate(shell.today);
const entryFor = ({ forms, sac }: StepsProps, act: string) => entryOf(forms, `${act}-${sac.change.code}`);

const Pulled = (props: StepsProps) => {
  const entry = entryFor(props, 'pulled');
  return (
    <ActForm
      entry={entry}
      action={paths.sacAct(props.sac.change.code, 'pulled')}
      title="Taken from the mother"
      button="It was taken"
    >
      <Field entry={entry} name="day" label="On" type="date" start={today(props)} required />
    </ActForm>
  );
};

const Hatched = (props: StepsProps) => {
  const entry = entryFor(props, 'hatched');
  return (
    <ActForm
      entry={entry}
      action={paths.sacAct(props.sac.change.code, 'hatched')}
      title="The young are out"
      button="They are out"
    >
      <Field entry={entry} name="day" label="On" type="date" start={today(props)} required />
      <Field
        entry={entry}
        name="count"
        label="How many"
        type="number"
        min="1"
        hint="Leave empty when not counted."
      />
    </ActForm>
  );
};

const Settled = (props: StepsProps & { readonly open: boolean }) => {
  const { change } = props.sac;
  const entry = entryFor(props, 'settled');
  const mother = change.animal === null ? '' : `Young of ${nameOf(props.names.animals, change.animal)}`;
  return (
    <ActForm
      entry={entry}
      action={paths.sacAct(change.code, 'settled')}
      title="First feed: the young become a group"
      button="They eat"
      open={props.open}
      caution={`Prey no longer than the young, or killed and cut; what is left comes out within ${props.leftoversOutHours} hours.`}
    >
      <Field entry={entry} name="day" label="First fed on" type="date" start={today(props)} required />
      <Field
        entry={entry}
        name="count"
        label="How many stay"
        type="number"
        min="1"
        start={`${Math.max(1, Math.round(change.count * (change.sac?.shareKept ?? 1)))}`}
        required
      />
      <Field entry={entry} name="name" label="Name" start={mother} />
      <Field entry={entry} name="shelf" label="Shelf" />
    </ActForm>
  );
};

const Ended = (props: StepsProps) => {
  const entry = entryFor(props, 'ended');
  return (
    <details class="act-form" open={Object.keys(entry.problems).length > 0}>
      <summary>It came to nothing</summary>
      <PostForm entry={entry} action={paths.sacAct(props.sac.change.code, 'ended')}>
        <Field entry={entry} name="day" label="On" type="date" start={today(props)} required />
        <SubmitButtons
          name="how"
          options={[
            { value: 'dud', label: 'A dud' },
            { value: 'eaten', label: 'Eaten' },
          ]}
        />
      </PostForm>
    </details>
  );
};

const EDITED = {
  from: 'First feed at the earliest',
  to: 'First feed at the latest',
  count: 'Young',
  gauge: 'Size at the first feed',
  chance: COMES_OFF,
};

const Edit = (props: StepsProps) => {
  const { change } = props.sac;
  const entry = entryFor(props, 'edit');
  return (
    <>
      <ActForm
        entry={entry}
        action={paths.sacAct(change.code, 'edit')}
        title="Change its days or numbers"
        button="Save"
      >
        <AsOf revision={props.revision} />
        <PlanFields entry={entry} change={change} unit={props.unit} words={EDITED} />
        <PercentField
          entry={entry}
          name="shareKept"
          label="Share that stays, in percent"
          least={0}
          share={change.sac?.shareKept ?? 1}
        />
      </ActForm>
      <PostForm entry={entryFor(props, 'cancel')} action={paths.sacAct(change.code, 'cancel')} class="inline">
        <button type="submit" class="quiet small">
          Entered by mistake: remove it
        </button>
      </PostForm>
    </>
  );
};

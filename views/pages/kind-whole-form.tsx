/** The forms of a kind as a whole: how it is measured, how large it grows; and another name for it. */
import type { LengthUnit } from '../format.ts';
import { type Effect, EffectView } from '../partials/effect.tsx';
import { AsOf, entryOf, Field, type FormEntry, type PageForms, PostForm } from '../partials/form.tsx';
import { paths } from '../paths.ts';
import { KindFormFoot } from './kind-form-foot.tsx';

/**
 * Form 'kind' posts `gauge`, `bodyPerGauge` and `bodyPerGaugeMale` in percent, `massPerCubicMm`, `adultLeast`,
 * `adultMost`, `firstLeast`, `firstMost` (lengths as typed), `aliases`, `why`, `asOf` to `paths.kindAct(code, 'edit')`;
 * form 'rename' posts `name`, `commonName`, `why`, `asOf` to 'rename'.
 */
export interface WholeFormProps {
  readonly forms: PageForms;
  readonly unit: LengthUnit;
  readonly code: string;
  readonly revision: number;
  readonly figures: Readonly<Record<string, string>>;
  readonly hasMale: boolean;
  readonly effect: Effect;
}

type PartProps = WholeFormProps & { readonly entry: FormEntry };

export const WholeForm = (props: WholeFormProps) => {
  const { code, revision, unit, effect } = props;
  const entry = entryOf(props.forms, 'kind');
  const look = paths.kindAct(code, 'edit-effect');
  return (
    <PostForm entry={entry} action={paths.kindAct(code, 'edit')} class="form book-form">
      <AsOf revision={revision} />
      <div class="book-fields">
        <Sizes {...props} entry={entry} />
        <Field
          entry={entry}
          name="aliases"
          label="Other names your lists may use"
          start={props.figures.aliases ?? ''}
          hint="Parted by commas."
        />
        <KindFormFoot entry={entry} code={code} look={look} />
      </div>
      <EffectView effect={effect} unit={unit} action={look} />
    </PostForm>
  );
};

const Sizes = ({ entry, figures, hasMale, unit }: PartProps) => {
  const figure = (name: string, label: string, hint?: string) => (
    <Field entry={entry} name={name} label={label} hint={hint} start={figures[name] ?? ''} />
  );
  return (
    <fieldset>
      <legend>Size</legend>
      {figure('gauge', 'What you measure', 'Such as diagonal leg span or body length.')}
      <div class="pairs-of">
        {figure('adultLeast', 'Full grown, smallest', `In ${unit}.`)}
        {figure('adultMost', 'Full grown, largest', `In ${unit}.`)}
        {figure('firstLeast', 'At its first feed, smallest')}
        {figure('firstMost', 'At its first feed, largest')}
        {figure('bodyPerGauge', 'Body, % of the measure')}
        {hasMale ? figure('bodyPerGaugeMale', 'The same, mature male, %') : null}
        {figure('massPerCubicMm', 'Mass, mg × length cubed', 'Length of the body in mm.')}
      </div>
    </fieldset>
  );
};

interface RenameProps {
  readonly forms: PageForms;
  readonly code: string;
  readonly revision: number;
  readonly name: string;
  readonly commonName: string;
}

export const RenameForm = ({ forms, code, revision, name, commonName }: RenameProps) => {
  const entry = entryOf(forms, 'rename');
  return (
    <details class="act-form" open={Object.keys(entry.problems).length > 0}>
      <summary>Give it another name</summary>
      <PostForm entry={entry} action={paths.kindAct(code, 'rename')}>
        <AsOf revision={revision} />
        <p>Every animal and record stays. The old name is still understood in lists.</p>
        <Field entry={entry} name="name" label="Scientific name" start={name} required />
        <Field entry={entry} name="commonName" label="Common name" start={commonName} required />
        <Field entry={entry} name="why" label="Why (for yourself)" />
        <button type="submit">Rename it</button>
      </PostForm>
    </details>
  );
};

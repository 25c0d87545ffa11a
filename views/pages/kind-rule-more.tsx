/** What is changed less often of a stage's rule: waits, danger, prey taken, moults; and one figure as a field. */
import { CheckButtons, RadioButtons, Toggle } from '../partials/choices.tsx';
import { Field, type FormEntry } from '../partials/form.tsx';
import type { RuleFormProps } from './kind-rule-form.tsx';

export type PartProps = RuleFormProps & { readonly entry: FormEntry };

interface FigureProps extends PartProps {
  readonly name: string;
  readonly label: string;
  readonly hint?: string;
}

export const Figure = ({ entry, figures, name, label, hint }: FigureProps) => (
  <Field entry={entry} name={name} label={label} hint={hint} start={figures[name] ?? ''} />
);

const URGENCIES = [
  { value: 'fragile', label: 'Fragile: first' },
  { value: 'ordinary', label: 'Ordinary' },
  { value: 'robust', label: 'Robust: can wait' },
];

const MORE_FIELDS = [
  'killFirstAbove',
  'portions',
  'needLeast',
  'needMost',
  'waitAfterMoultDays',
  'retryDays',
  'graceDays',
  'safeGapDays',
  'moultDays',
  'moultCv',
  'moultGrowth',
  'accepts',
  'urgency',
];

/** What is changed less often; open where something in it was refused. */
export const More = (props: PartProps) => {
  const wrong = Object.keys(props.entry.problems);
  const open = wrong.some((field) => MORE_FIELDS.includes(field) || field.startsWith('cap-'));
  return (
    <details class="act-form" open={open}>
      <summary>More: waits, danger, prey it takes{props.moults ? ', moults' : ''}</summary>
      <div class="form">
        <Waits {...props} />
        <Taken {...props} />
        {props.moults ? <Moults {...props} /> : null}
      </div>
    </details>
  );
};

const Waits = (props: PartProps) => (
  <fieldset>
    <legend>Days</legend>
    <div class="pairs-of">
      <Figure {...props} name="waitAfterMoultDays" label="Wait after a moult" />
      <Figure {...props} name="retryDays" label="Again after a refusal" />
      <Figure {...props} name="graceDays" label="Late counts as missed after" />
      <Figure {...props} name="safeGapDays" label="Danger without food after" />
    </div>
    <RadioButtons
      entry={props.entry}
      name="urgency"
      legend="When prey is short"
      options={URGENCIES}
      start={props.urgency}
    />
  </fieldset>
);

const Taken = (props: PartProps) => {
  const { entry, accepts, preyForms, refusesHard } = props;
  const typed = entry.values.accepts;
  const wasTyped = entry.values.stage !== undefined;
  return (
    <fieldset>
      <legend>Prey</legend>
      <CheckButtons
        entry={entry}
        name="accepts"
        legend="It takes"
        options={preyForms}
        checked={wasTyped ? (typed ?? '').split(',') : accepts}
      />
      <Toggle
        name="refusesHard"
        value="on"
        label="No hard beetles"
        checked={wasTyped ? entry.values.refusesHard === 'on' : refusesHard}
      />
      <div class="pairs-of">
        <Figure {...props} name="killFirstAbove" label="Killed first above, %" hint="Empty: never." />
        <Figure {...props} name="portions" label="Larger prey cut into" hint="1: not cut." />
        <Figure {...props} name="needLeast" label="Weekly need, least %" hint="Of its own mass." />
        <Figure {...props} name="needMost" label="Weekly need, most %" hint="Of its own mass." />
        {preyForms.map(({ label, cap }) => (
          <Figure
            {...props}
            name={cap}
            label={`${label}: at most, %`}
            hint="Of a week’s items. Empty: no limit."
          />
        ))}
      </div>
    </fieldset>
  );
};

const Moults = (props: PartProps) => (
  <fieldset>
    <legend>Moults</legend>
    <div class="pairs-of">
      <Figure {...props} name="moultDays" label="Days from moult to moult" />
      <Figure {...props} name="moultCv" label="Give or take, %" />
      <Figure {...props} name="moultGrowth" label="Grows at a moult by, %" />
    </div>
  </fieldset>
);

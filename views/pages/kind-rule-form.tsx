/** The rule of one stage as a form: what it takes, how often, its moults, and what holds when prey is short. */
import type { PreyForm } from '../../src/husbandry/prey-form.ts';
import type { LengthUnit } from '../format.ts';
import { CheckButtons, RadioButtons, Toggle } from '../partials/choices.tsx';
import { type Effect, EffectView } from '../partials/effect.tsx';
import {
  AsOf,
  entryOf,
  Field,
  type FormEntry,
  type Option,
  type PageForms,
  PostForm,
} from '../partials/form.tsx';
import { paths } from '../paths.ts';

/**
 * Form 'rule' posts `stage`, the figures by name (shares in percent), `accepts` repeated, `cap-<form>`, `refusesHard`
 * ('on' or absent), `urgency`, `why`, `asOf` to `paths.kindAct(code, 'rule')`; for a look to 'rule-effect'.
 */
export interface RuleFormProps {
  readonly forms: PageForms;
  readonly unit: LengthUnit;
  readonly code: string;
  readonly stage: string;
  readonly revision: number;
  /** Each figure as it stands, by the name of its field. */
  readonly figures: Readonly<Record<string, string>>;
  readonly accepts: readonly PreyForm[];
  readonly refusesHard: boolean;
  readonly urgency: string;
  readonly moults: boolean;
  /** Forms of prey, each with the field of its greatest share. */
  readonly preyForms: readonly (Option & { readonly cap: string })[];
  readonly effect: Effect;
}

type PartProps = RuleFormProps & { readonly entry: FormEntry };

export const RuleForm = (props: RuleFormProps) => {
  const { code, stage, revision, unit, effect } = props;
  const entry = entryOf(props.forms, 'rule');
  const look = paths.kindAct(code, 'rule-effect');
  return (
    <PostForm entry={entry} action={paths.kindAct(code, 'rule')} class="form book-form">
      <AsOf revision={revision} />
      <input type="hidden" name="stage" value={stage} />
      <div class="book-fields">
        <Prey {...props} entry={entry} />
        <Meals {...props} entry={entry} />
        <More {...props} entry={entry} />
        <Field
          entry={entry}
          name="why"
          label="Why (for yourself)"
          hint="Kept beside each number you change."
        />
        <p class="acts">
          <button type="submit" class="act-here">
            Save
          </button>
          <button type="submit" class="quiet" formaction={look}>
            Show the effect
          </button>
          <a class="button quiet" href={paths.kind(code)}>
            Leave it
          </a>
        </p>
      </div>
      <EffectView effect={effect} unit={unit} action={look} />
    </PostForm>
  );
};

interface FigureProps extends PartProps {
  readonly name: string;
  readonly label: string;
  readonly hint?: string;
}

const Figure = ({ entry, figures, name, label, hint }: FigureProps) => (
  <Field entry={entry} name={name} label={label} hint={hint} start={figures[name] ?? ''} />
);

const Prey = (props: PartProps) => (
  <fieldset>
    <legend>Length of its prey, in % of its own length</legend>
    <div class="three">
      <Figure {...props} name="windowMin" label="Shortest" />
      <Figure {...props} name="windowIdeal" label="Best" />
      <Figure {...props} name="windowMax" label="Longest" />
    </div>
  </fieldset>
);

const Meals = (props: PartProps) => (
  <fieldset>
    <legend>A meal</legend>
    <div class="pairs-of">
      <Figure {...props} name="itemsLeast" label="Items, least" />
      <Figure {...props} name="itemsMost" label="Items, most" />
      <Figure {...props} name="intervalLeast" label="Days between, least" />
      <Figure {...props} name="intervalMost" label="Days between, most" />
    </div>
  </fieldset>
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
const More = (props: PartProps) => {
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

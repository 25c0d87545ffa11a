/** The rule of one stage as a form: what it takes, how often, its moults, and what holds when prey is short. */
import type { PreyForm } from '../../src/husbandry/prey-form.ts';
import type { LengthUnit } from '../format.ts';
import { type Effect, EffectView } from '../partials/effect.tsx';
import { AsOf, entryOf, type Option, type PageForms, PostForm } from '../partials/form.tsx';
import { paths } from '../paths.ts';
import { KindFormFoot } from './kind-form-foot.tsx';
import { Figure, More, type PartProps } from './kind-rule-more.tsx';

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
        <KindFormFoot entry={entry} code={code} look={look} />
      </div>
      <EffectView effect={effect} unit={unit} action={look} />
    </PostForm>
  );
};

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

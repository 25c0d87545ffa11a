/** The stages of a kind as its page shows them, and the form of one. */

import { lengthText, oneOf, sentenceCase } from '../../../views/format.ts';
import type { StageView } from '../../../views/pages/kind.tsx';
import type { RuleFormProps } from '../../../views/pages/kind-rule-form.tsx';
import type { Refused } from '../../../views/partials/form.tsx';
import type { Tried } from '../../actions/index.ts';
import { capField, FORMS, figuresShown } from '../../actions/rule-fields.ts';
import {
  type Animal,
  adultGauge,
  type Kind,
  type KindChanges,
  ruleOf,
  type StageRule,
} from '../../husbandry/animals/index.ts';
import { type Diet, dietOf } from '../../husbandry/supply/index.ts';
import { plural } from '../../husbandry/words.ts';
import { allSizesWords, oftenWords, takesWords, windowOf } from './diet-words.ts';
import { effectOf, keptIn, typicalOf } from './kind-effect.ts';
import { stageLines } from './kind-numbers.ts';
import type { Visit } from './visit.ts';

/** What a form shown again carries besides what was typed. */
export interface Showing {
  readonly refused?: Refused | null;
  /** The room with the change tried. */
  readonly tried?: Tried | undefined;
  /** Why it cannot be tried. */
  readonly wrong?: readonly string[] | undefined;
  /** It was only looked at: nothing was refused. */
  readonly looked?: boolean;
}

interface Desk {
  readonly here: Visit;
  readonly kind: Kind;
  /** The kind as the Book has it. */
  readonly book: Kind;
  readonly changes: KindChanges;
  readonly tried: Tried;
}

const ownOf = ({ here, kind }: Desk): readonly Animal[] =>
  here.snapshot.animals.filter((animal) => animal.kind === kind.code);

const headsOf = (animals: readonly Animal[]): number => animals.reduce((sum, { count }) => sum + count, 0);

const inStage = (desk: Desk, stage: string): readonly Animal[] =>
  ownOf(desk).filter((animal) => ruleOf(desk.kind, animal).stage === stage);

/** What a typical animal of the stage eats. */
function typicalDiet({ here, kind }: Desk, rule: StageRule): Diet {
  const { snapshot } = here;
  return dietOf(typicalOf(kind, rule.stage), { facts: snapshot.facts, kept: keptIn(snapshot) }) as Diet;
}

export const stageViews = (desk: Desk): readonly StageView[] =>
  desk.kind.stages.map((rule, at) => {
    const diet = typicalDiet(desk, rule);
    return {
      stage: rule.stage,
      word: rule.words[0] ?? rule.stage,
      from: fromWords(desk, rule),
      prey: allSizesWords(diet),
      often: oftenWords(diet),
      window: windowOf(diet),
      ownLengthMm: diet.eater.referenceMm,
      heads: headsOf(inStage(desk, rule.stage)),
      lines: stageLines(rule, desk.book.stages[at] ?? rule, desk.changes),
    };
  });

function fromWords({ kind, here }: Desk, { stage, fromShareOfAdult }: StageRule): string {
  if (stage === 'mature male') return 'once it has matured';
  if (fromShareOfAdult === 0) return '';
  return `from ${lengthText(fromShareOfAdult * adultGauge(kind), here.unit)} of ${kind.gauge}`;
}

/** '6 of yours. A spiderling of 12 mm takes 2–5 mm, best 3 mm: pinhead house crickets; 1 to 2 every 3 to 7 days.' */
export function ledeOf(desk: Desk): string {
  const { kind, here } = desk;
  const heads = headsOf(ownOf(desk));
  const most = kind.stages.toSorted(
    (a, b) => headsOf(inStage(desk, b.stage)) - headsOf(inStage(desk, a.stage)),
  );
  const rule = most[0] as StageRule;
  const diet = typicalDiet(desk, rule);
  const gauge = lengthText(typicalOf(kind, rule.stage).gaugeMm, here.unit);
  const yours = heads === 0 ? 'None of yours.' : `${heads} of yours.`;
  const who = `${sentenceCase(oneOf(rule.words[0] ?? rule.stage))} of ${gauge}`;
  return `${yours} ${who} ${takesWords(diet, here.unit)}; ${oftenWords(diet)}.`;
}

/** The form of a stage, with what it does. */
export const ruleForm = (desk: Desk, rule: StageRule, wrong: Showing['wrong'] = []): RuleFormProps => ({
  forms: desk.here.forms,
  unit: desk.here.unit,
  code: desk.kind.code,
  stage: rule.stage,
  revision: desk.here.snapshot.revision,
  figures: figuresShown(rule),
  accepts: rule.accepts,
  refusesHard: rule.refusesHard,
  urgency: rule.urgency,
  moults: rule.moult !== null,
  preyForms: FORMS.map((form) => ({
    value: form,
    label: sentenceCase(plural(form)),
    cap: capField(form),
  })),
  effect: effectOf(desk.here, desk.tried, { kind: desk.kind, stage: rule.stage, wrong }),
});

/** What ifs: up to three plans beside the plan, each for something supposed. Nothing is applied. */
import type { PlanAnswer } from '../../src/husbandry/plan/index.ts';
import { counted } from '../format.ts';
import { Layout, type Shell } from '../layout.tsx';
import type { Option } from '../partials/form.tsx';
import { planAt, type WhatIfAsked } from '../plan-address.ts';
import type { PlanSaid } from './plan-words.ts';
import { type Working, WorkingPart } from './plan-working.tsx';
import { BesideCard } from './what-if-card.tsx';
import { type Supposing, WhatIfForms } from './what-if-forms.tsx';
import { changeWords, costWords } from './what-if-words.ts';

/** One thing supposed, in words, with its plan where it is made. */
export interface Beside {
  readonly words: string;
  readonly plan: PlanAnswer | null;
}

export interface WhatIfShown extends Omit<PlanSaid, 'plan'> {
  readonly asked: WhatIfAsked;
  /** The plan as it is; null while it is being made. */
  readonly base: PlanAnswer | null;
  readonly besides: readonly Beside[];
  readonly working: Working | null;
  /** Why one of them is not there, and the address that asks again. */
  readonly amiss: { readonly sentence: string; readonly again: string } | null;
}

export interface WhatIfProps {
  readonly shell: Shell;
  readonly shown: WhatIfShown;
  /** What is wrong with the address, in sentences. */
  readonly problems: readonly string[];
  /** What is being typed into one of the forms, and what there is to choose from. */
  readonly supposing: Supposing;
  readonly choices: {
    readonly kinds: readonly Option[];
    readonly suppliers: readonly Option[];
    readonly bins: readonly Option[];
    readonly offers: readonly Option[];
  };
}

export const WhatIfPage = (props: WhatIfProps) => (
  <Layout shell={props.shell} title="What if" here="more">
    <p class="eyebrow">
      <a href={planAt({ weeks: props.shown.asked.weeks, wishes: [] })}>Plan</a> · What if
    </p>
    {props.problems.map((sentence) => (
      <p class="problem" role="alert">
        {sentence}
      </p>
    ))}
    <WhatIfPart shown={props.shown} />
    <WhatIfForms {...props} />
  </Layout>
);

/** What is swapped when a plan is there. */
export const WhatIfPart = ({ shown }: { shown: WhatIfShown }) => {
  const { asked, besides, working, amiss } = shown;
  return (
    <section id="what-ifs">
      <header class="page-head">
        <h1>{headline(shown)}</h1>
        <p class="lede">
          {asked.ifs.length === 0
            ? 'Suppose something, and see what it would cost, who would go short and which steps would change. Nothing is written down.'
            : 'Compared with the plan as it is. Nothing is written down; this page’s address can be kept and opened again.'}
        </p>
      </header>
      {amiss === null ? null : (
        <p class="problem" role="alert">
          {amiss.sentence} <a href={amiss.again}>Ask again</a>
        </p>
      )}
      {working === null ? null : (
        <WorkingPart
          working={working}
          title={`${counted(missing(shown), 'plan is', 'plans are')} being made`}
        />
      )}
      <div class="what-ifs">
        {besides.map((beside, at) => (
          <BesideCard shown={shown} beside={beside} at={at} />
        ))}
      </div>
    </section>
  );
};

const missing = ({ base, besides }: WhatIfShown): number =>
  [base, ...besides.map(({ plan }) => plan)].filter((plan) => plan === null).length;

/** What each thing supposed changes: of one all in a few words, of several what they cost. */
function headline({ besides, base, market }: WhatIfShown): string {
  const { currency } = market.purse;
  const [first, ...others] = besides;
  if (first === undefined) return 'What if …?';
  if (base === null || besides.every(({ plan }) => plan === null))
    return `What if: ${besides.map(({ words }) => words).join('; ')}?`;
  const saying = others.length === 0 ? changeWords : costWords;
  return besides
    .flatMap(({ words, plan }) =>
      plan === null ? [] : [`${words}: ${lowerFirst(saying(base, plan, currency).replace(/\.$/, ''))}`],
    )
    .join('. ');
}

/** A currency sign or a figure stays; 'Costs' becomes 'costs'. */
const lowerFirst = (text: string): string => text.charAt(0).toLowerCase() + text.slice(1);

/** One what if beside the plan: what it changes in words, in numbers, and step by step. */
import type { PlanAnswer, PlanLine } from '../../src/husbandry/plan/index.ts';
import { money, roundly, sentenceCase } from '../format.ts';
import { nameOf } from '../names.ts';
import { whatIfAt, withoutIf } from '../plan-address.ts';
import { CLASS_NAMES, estimateText, shareText, timesText } from './plan-service.ts';
import { timeWords } from './plan-whole.tsx';
import { amountWords, lineTitle, manyHeads, whenWords } from './plan-words.ts';
import type { Beside, WhatIfShown } from './what-if.tsx';
import { changeWords, type StepsChanged, stepsChanged } from './what-if-words.ts';

interface CardProps {
  readonly shown: WhatIfShown;
  readonly beside: Beside;
  readonly at: number;
}

export const BesideCard = ({ shown, beside, at }: CardProps) => {
  const { base, market } = shown;
  const { plan, words } = beside;
  return (
    <article class="what-if">
      <h2>{words}</h2>
      {base === null || plan === null ? (
        <p class="note">Not worked out yet.</p>
      ) : (
        <>
          <p class="what-if-sum">{changeWords(base, plan, market.purse.currency)}</p>
          <Compared shown={shown} base={base} plan={plan} words={words} />
          {plan.obstacles.map(({ sentence }) => (
            <p class="look">{sentence}</p>
          ))}
          <Steps changed={stepsChanged(base, plan)} shown={shown} />
        </>
      )}
      <p class="acts">
        <a class="button small quiet" href={whatIfAt(withoutIf(shown.asked, at))}>
          Leave it out<span class="unseen">: {words}</span>
        </a>
      </p>
    </article>
  );
};

interface ComparedProps {
  readonly shown: WhatIfShown;
  readonly base: PlanAnswer;
  readonly plan: PlanAnswer;
  readonly words: string;
}

const Compared = ({ shown, base, plan, words }: ComparedProps) => {
  const { currency } = shown.market.purse;
  const [now, then] = [figures(base, currency), figures(plan, currency)];
  return (
    <table>
      <caption class="unseen">{words}: beside the plan</caption>
      <thead>
        <tr>
          <th scope="col">
            <span class="unseen">Of the plan</span>
          </th>
          <th scope="col">As it is</th>
          <th scope="col">Then</th>
        </tr>
      </thead>
      <tbody>
        {then.map(([name, value]) => (
          <tr>
            <th scope="row">{name}</th>
            <td>{now.find(([each]) => each === name)?.[1] ?? '–'}</td>
            <td>{value}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
};

type Figure = readonly [name: string, value: string];

const figures = ({ whole }: PlanAnswer, currency: string): readonly Figure[] => [
  ['Cost', money(whole.cents.total, currency)],
  ['Missed meals', estimateText(whole.missedMeals)],
  ['Too long without food', timesText(whole.dangers)],
  ...whole.service.map(
    ({ urgency, notMissed, met }): Figure => [
      `${sentenceCase(CLASS_NAMES[urgency])} served`,
      `${shareText(notMissed.mean)}${met ? '' : ', short'}`,
    ],
  ),
  ['Dies or outgrows', roundly(whole.died + whole.outgrown).toLocaleString('en-GB')],
  ['Your time', timeWords(whole.minutes)],
];

const Steps = ({ changed, shown }: { changed: StepsChanged; shown: WhatIfShown }) => {
  const { added, dropped } = changed;
  const others = [
    ...changed.changed.map(
      ({ line, before, after }) =>
        `${lineTitle(line, shown)}, ${whenWords(line, shown)}: ${amountWords(line, after)} in place of ${before}`,
    ),
    ...changed.taken.map(
      ({ what, bin, before, after }) =>
        `${nameOf(shown.names.bins, bin)}: ${manyHeads(after)} ${what === 'harvest' ? 'harvested' : 'culled'} in all, in place of ${manyHeads(before)}`,
    ),
  ];
  return (
    <>
      <StepList title="Added" lines={added} shown={shown} />
      <StepList title="Dropped" lines={dropped} shown={shown} />
      {others.length === 0 ? null : (
        <>
          <h3>Changed</h3>
          <ul>
            {others.map((words) => (
              <li>{words}</li>
            ))}
          </ul>
        </>
      )}
    </>
  );
};

const StepList = ({
  title,
  lines,
  shown,
}: {
  title: string;
  lines: readonly PlanLine[];
  shown: WhatIfShown;
}) =>
  lines.length === 0 ? null : (
    <>
      <h3>{title}</h3>
      <ul>
        {lines.map((line) => (
          <li>
            {lineTitle(line, shown)}, {whenWords(line, shown)}
          </li>
        ))}
      </ul>
    </>
  );
